// The one table of tolerances: how far our sums may stand from a published value, and why.
// `relative` is a share of the published value; `absolute` is in the row's own unit.

export const TOLERANCES = {
  /** Programs that print link rates cut them off to whole megabytes a lane. */
  linkRate: { relative: 1e-4 },
  /** Pixel clocks are multiples of a step (0.25 or 0.001 MHz): equal up to floating point. */
  pixelClockMHz: { absolute: 1e-6 },
  /** edid-decode prints the refresh rate to six decimal places. */
  refreshHz: { absolute: 1e-6 },
  /** Payloads in Gb/s are published with two decimal places. */
  linkPayloadGbps: { absolute: 0.005 },
  /** Fan hole pitches carry the makers' ±0.5 mm. */
  fanHolePitchMm: { absolute: 0.5 },
  /** GNU Units prints 15 digits; the sums in between differ in the last of them. */
  unitFactor: { relative: 1e-13 },
  /** GNU units on a worked sum: both sides round in the last of twelve digits. */
  workedByUnits: { relative: 1e-9 },
  /** Wire diameters are published in mils with four or five digits. */
  wireDiameter: { relative: 2e-4 },
  /** Wire resistances are published with four digits, for copper of 1.7241 µΩ·cm. */
  wireResistance: { relative: 1e-3 },
  /** A maker's factors are measured on contacts; ours count the heat of the wire alone. */
  wireCurrentShare: { relative: 0.03 },
  /** Worked resistances of a metre are given to a hundredth of a milliohm. */
  wireMilliohm: { absolute: 0.005 },
  /** The worked drop along a cable is given to a tenth of a millivolt. */
  cableDropMv: { absolute: 0.05 },
  /** Air densities are published with four digits, by tables that use the real gas. */
  airDensity: { relative: 1e-3 },
  /** Atmosphere tables give three to five digits; the closed form differs by its rounded constants. */
  pressureRatio: { relative: 7e-4 },
  /** Air flows for one watt and kelvin are published with four digits. */
  airflow: { relative: 5e-4 },
  /** Fan makers round air's properties into a rule of thumb, 3.16 or 1.76. */
  airflowRule: { relative: 0.01 },
  /** Dew points are worked to a hundredth of a kelvin. */
  dewPointC: { absolute: 0.005 },
  /** Levels are published to a tenth of a decibel, one example to a hundredth. */
  soundLevelDb: { absolute: 0.05 },
  /** The example with two decimal places. */
  soundLevelFineDb: { absolute: 0.005 },
  /** Thermal guides give resistances with two decimal places, one with three. */
  thermalResistance: { absolute: 0.005 },
  /** Film resistances are worked to four decimal places. */
  filmResistance: { absolute: 5e-5 },
  /** Whole units, as published. */
  exact: { absolute: 1e-9 },
} as const;
