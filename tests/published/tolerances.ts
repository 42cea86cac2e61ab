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
} as const;
