// Whole figures of builds against worked examples from outside: the sums as a build brings them together, not one by
// one.
import { describe, expect, it } from 'vitest';
import type { Build } from '../../server/src/core/build/build';
import displayModeBeyondLink from '../../server/src/core/checks/slots/display-mode-beyond-link';
import heatIntoRoom from '../../server/src/core/checks/power/heat-into-room';
import { airNeeded, caseRise, dewPoint } from '../../server/src/core/figures/air';
import { needed, payload, type PromisedMode } from '../../server/src/core/figures/display-rates';
import { known, number, type Figure } from '../../server/src/core/figures/figure';
import { filmResistance, processorTemperature } from '../../server/src/core/figures/heat';
import { linkRate } from '../../server/src/core/figures/lanes';
import { efficiencyAtLoad, wallPower, yearlyCost } from '../../server/src/core/figures/mains';
import { memoryBandwidth } from '../../server/src/core/figures/memory-speed';
import { noiseLevel } from '../../server/src/core/figures/noise';
import { dotDiameter, gapVolume, wantedVolume } from '../../server/src/core/figures/paste';
import { batteryTime } from '../../server/src/core/figures/backup';
import { circuitLimit } from '../../server/src/core/figures/circuit';
import { riddenOut } from '../../server/src/core/figures/peaks';
import { cableDrop } from '../../server/src/core/figures/wires';
import { arrayCapacity, arrayDrives } from '../../server/src/core/figures/storage';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { bench } from '../support/bench';
import { expectNear, type Tolerance } from './near';
import { itWithOracle } from './oracle';
import { TOLERANCES } from './tolerances';
import { units } from './units';

function build(text: string): Build {
  return bench([{ name: 'case.pcbuild.yaml', text }]).build!;
}

/** Fails unless the figure is one value, and the published one. */
function expectFigure(figure: Figure | undefined, published: number, tolerance: Tolerance): void {
  expect(figure?.missing).toEqual([]);
  expectNear(figure!.lo, published, tolerance);
  expectNear(figure!.hi, published, tolerance);
}

const kelvins = (rise: number): Figure => known(rise, 'temperature-difference', 'rise', { source: 'the example' });

describe('air', () => {
  const at = (place: string): Build =>
    build(`
place: { ${place} }
parts:
  case: { fan-places: { front: { fitted: 1, flow: in, airflow: 100 m³/h } } }
  graphics: [{ power: { sustained: 340 W } }]
`);
  const room = at('inlet: 20 °C, altitude: 0 m');
  /** Density and specific heat: Çengel, Heat and Mass Transfer, property tables, air at 1 atm and 20 °C. */
  itWithOracle('units', 'the same by GNU units, from the property table', () => {
    const worked = units('340 W / (1.204 kg/m^3 * 1007 J/(kg K) * 15 K)', 'm^3/hour');
    expectFigure(airNeeded(room, kelvins(15)), worked, TOLERANCES.airDensity);
  });

  /** Source: US Standard Atmosphere 1976, pressure at 3000 m, 0.692 of that at sea level. */
  it('at 3000 m, in a room as warm, needs 1 / 0.692 of the flow', () => {
    const high = airNeeded(at('inlet: 20 °C, altitude: 3000 m'), kelvins(15));
    expectNear(airNeeded(room, kelvins(15)).lo / high.lo, 0.692, TOLERANCES.pressureRatio);
  });

  it('a rise is the flow turned round, of which 40 to 70 % are delivered (common practice)', () => {
    const rise = caseRise(room);
    expectNear(airNeeded(room, kelvins(rise.hi)).lo, 40, TOLERANCES.exact);
    expectNear(airNeeded(room, kelvins(rise.lo)).lo, 70, TOLERANCES.exact);
  });

  /** Source: WMO Guide No. 8, annex 4.B (Magnus, 17.62 and 243.12 °C), worked to two places. */
  it.each([
    [25, 50, 13.85],
    [5, 90, 3.5],
  ])('dew at %i °C and a humidity of %i in a hundred: %f °C', (celsius, humidity, dew) => {
    expectFigure(
      dewPoint(build(`place: { ambient: ${celsius} °C, humidity: ${humidity} % }\n`)),
      dew,
      TOLERANCES.dewPointC,
    );
  });
});

/** Limit, inlet, watts, paste and cooler as resistances. */
const GUIDES: [string, number, number, number, number, number][] = [
  ['Intel, Core 2 Extreme QX9770 Thermal and Mechanical Design Guidelines, 3.1.1', 67, 38, 100, 0.1, 0.19],
  [
    'Intel, Core 2 Duo Mobile Processors on 45-nm Process for Embedded Applications, order no. 320028-001, 5.1.1',
    105,
    40,
    35,
    0.5,
    1.36,
  ],
  ['Intel, Dual-Core Xeon Processor 2.80 GHz Thermal/Mechanical Design Guidelines, 2.3.2.1', 68, 45, 85, 0.05, 0.22],
  ['Intel, Pentium III in the FC-PGA2 Package Thermal Design Guidelines, 249660-001, 7.2', 67, 45, 30, 0.15, 0.58],
];

describe('heat', () => {
  /**
   * The paste's share stands as `die-to-lid`, less the film of a very good paste, 40 µm of 4 W/m·K over 1000 mm²:
   * 0.01 K/W.
   */
  it.each(GUIDES)('%s: %i °C from %i °C at %i W', (_guide, limit, inlet, watts, paste, cooler) => {
    const chain = build(`
place: { inlet: ${inlet} °C }
parts:
  processor: { power: { sustained: ${watts} W }, die-to-lid: ${paste - 0.01} K/W, lid: { area: 1000 mm² } }
  cooler: { thermal-resistance: ${cooler} K/W }
  paste: { bond-line: 40 µm, conductivity: 4 W/m·K }
`);
    const reached = processorTemperature(chain, chain.parts.processor!, chain.parts.cooler!);
    expectFigure(reached, limit, { absolute: watts * TOLERANCES.thermalResistance.absolute });
  });

  const lid = (bondLine: string): Build =>
    build(`
parts:
  processor: { lid: { width: 30 mm, depth: 30 mm } }
  paste: { bond-line: ${bondLine}, conductivity: 4 W/m·K }
`);

  /** K/W for 900 mm² at 4 W/m·K. Source: Fourier's law for a plane wall, R = t/(kA), worked to four places. */
  it.each([
    ['20 µm', 0.0056],
    ['50 µm', 0.0139],
    ['100 µm', 0.0278],
  ])('a film of %s makes %f K/W', (bondLine, resistance) => {
    const { processor, paste } = lid(bondLine).parts;
    expectFigure(filmResistance(processor!, paste), resistance, TOLERANCES.filmResistance);
  });

  it('900 mm² at 50 µm hold 45 mm³; 54 to 67.5 are brought on', () => {
    const { processor, paste } = lid('50 µm').parts;
    expectFigure(gapVolume(processor!, paste!), 45, TOLERANCES.exact);
    const wanted = wantedVolume(processor!, paste!);
    expectNear(wanted.lo, 54, TOLERANCES.exact);
    expectNear(wanted.hi, 67.5, TOLERANCES.exact);
  });

  itWithOracle(
    'units',
    'a dot of the width shown holds 60 mm³ as nearly as a tenth of a millimetre can say, by GNU units',
    () => {
      const { lo } = dotDiameter(known(60, 'volume', 'paste', { source: 'the example' }));
      const [less, more] = [lo - 0.05, lo + 0.05].map((diameter) => units(`spherevol(${diameter / 2} mm) / 2`, 'mm^3'));
      expect(less).toBeLessThan(60);
      expect(more).toBeGreaterThan(60);
    },
  );
});

const machine = (place: string, supply: string, watts = 450): Build =>
  build(`
place: { mains: { ${place} } }
parts:
  processor: { power: { sustained: ${watts} W } }
  supply: { ${supply} }
`);
const measured = 'rating: 900 W, efficiency: [{ load: 50 %, percent: 90 % }, { load: 100 %, percent: 90 % }]';

describe('from the wall', () => {
  /** At 20, 50 and 100 % of 900 W. Source: 80 PLUS programme, 230 V EU internal and 115 V internal. */
  it.each([
    [230, 180, 90],
    [230, 450, 92],
    [230, 900, 89],
    [115, 180, 87],
    [115, 450, 90],
    [115, 900, 87],
  ])('gold at %i V and %i W promises %i in a hundred', (volts, watts, percent) => {
    const gold = machine(`voltage: ${volts} V`, `rating: 900 W, badge: gold, badge-mains: ${volts} V`, watts);
    const efficiency = efficiencyAtLoad(gold, gold.parts.supply!);
    expectNear(efficiency.lo, percent, TOLERANCES.exact);
    expectNear(wallPower(gold)!.hi, watts / (percent / 100), TOLERANCES.exact);
    expectNear(wallPower(gold)!.lo, watts, TOLERANCES.exact);
  });

  /** Source: GNU units, `1 kW` in `btu/hour`: 3412.14. */
  it('1 kW from the wall is told as 3412 BTU/h in the room', () => {
    const hot = build(`
parts:
  processor: { power: { sustained: 900 W } }
  supply: { ${measured} }
expect: { heat: 999 W }
`);
    expectFigure(wallPower(hot), 1000, TOLERANCES.exact);
    const [finding] = judgeBuild(hot, { checks: [heatIntoRoom], throwOn: true }).findings;
    expect(finding!.said.text).toContain('1000 W (3412');
    expect(finding!.said.text).toContain('BTU/h');
  });

  /** Source: NFPA 70, National Electrical Code, 210.20(A). */
  it.each([
    [120, 15, 1440],
    [120, 20, 1920],
  ])('a circuit of %i V and %i A carries %i W for hours in the United States', (volts, amperes, watts) => {
    expectFigure(
      circuitLimit(machine(`voltage: ${volts} V, circuit: ${amperes} A, rule: 80 percent continuous`, measured)),
      watts,
      TOLERANCES.exact,
    );
  });

  it('claims between 80 and 100 % of the breaker where the site states no rule', () => {
    const limit = circuitLimit(machine('voltage: 230 V, circuit: 16 A', measured));
    expect([limit.lo, limit.hi]).toEqual([0.8 * 230 * 16, 230 * 16]);
  });

  itWithOracle('units', '9 Ah at 12 V through 85 % carry 500 W at most as long as GNU units says', () => {
    const backed = machine('backup: { energy: 108 Wh, efficiency: 85 % }', measured);
    const worked = units('9 A hour * 12 V * 0.85 / 500 W', 's');
    expectNear(batteryTime(backed, wallPower(backed)!).hi, worked, TOLERANCES.workedByUnits);
  });

  itWithOracle('units', '500 W for 8 hours a day cost a year what GNU units says', () => {
    const paid = machine('price-per-kwh: 0.31 EUR, hours-per-day: 8 h', measured);
    expectFigure(
      yearlyCost(paid, wallPower(paid)!),
      units('500 W * 8 hour * 365', 'kW hour') * 0.31,
      TOLERANCES.workedByUnits,
    );
  });
});

describe('the supply and its cables', () => {
  /** Source: ASTM B258 diameters, IEC 60028 copper, worked to a tenth of a millivolt. */
  it('150 W over three pairs of AWG 18, 0.6 m, lose 104.7 mV', () => {
    const row = build(`
parts:
  supply: { own-cables: [{ connector: PCIe 8-pin, count: 1, connectors: 1, length: 600 mm, gauge: 18, pairs: 3 }] }
`).parts.supply!.part['own-cables'].value![0]!;
    const drop = cableDrop(row, known(150, 'power', 'load', { source: 'the example' }));
    expectFigure({ ...drop, lo: drop.lo * 1000, hi: drop.hi * 1000 }, 104.7, TOLERANCES.cableDropMv);
  });

  /**
   * Seconds, watts of a 1000 W supply with the 16-pin connector, and without. Source: ATX Version 3 design guide,
   * doc. 336521, table 3-3.
   */
  it.each([
    [1e-4, 2000, 1500],
    [1e-3, 1800, 1450],
    [1e-2, 1600, 1350],
    [0.1, 1200, 1100],
    [1, 1000, 1000],
  ])('for %f s rides out %i W, without the 16-pin connector %i W', (seconds, large, other) => {
    const ridden = (connectors: string) => {
      const one = build(`parts:\n  supply: { rating: 1000 W, standard: ATX 3.0, connectors: { ${connectors} } }\n`);
      return riddenOut(one, one.parts.supply!, seconds);
    };
    expectFigure(ridden('16-pin: 1'), large, TOLERANCES.exact);
    expectFigure(ridden('PCIe 8-pin: 4'), other, TOLERANCES.exact);
  });
});

describe('rates', () => {
  const lanes = (generation: number, count: number) => ({
    generation: number(generation, 'generation'),
    lanes: number(count, 'lanes'),
  });

  /** GB/s one way. Source: PCI Express Base Specification; codings as in the Linux kernel, drivers/pci/pci.h. */
  it.each([
    [4, 16, 31.508],
    [3, 4, 3.93846],
    [5, 4, 15.75385],
  ])('a PCIe %i x%i link carries %f GB/s', (generation, count, gb) => {
    expectFigure(linkRate('link', [lanes(generation, count), lanes(6, 16)]), gb * 1e9, TOLERANCES.linkRate);
  });

  /** GB/s of a channel, times two. Source: JEDEC JESD79-4, JESD79-5C, peak bandwidth by speed bin. */
  it.each([
    [3200, 25.6],
    [4800, 38.4],
    [6000, 48],
  ])('two channels at %i MT/s carry twice %f GB/s', (rate, gb) => {
    const filled = build(`
parts:
  board: { memory: { slots: [A2, B2], channels: { A: [A2], B: [B2] }, fill-first: [A2, B2], speeds: [{ modules: 2, ranks: 1, up-to: 6000 MT/s }] } }
  memory: [{ rated-speed: ${rate} MT/s, ranks: 1, count: 2, speed: ${rate} MT/s }]
`);
    expectFigure(memoryBandwidth(filled), 2 * gb * 1e9, TOLERANCES.exact);
  });
});

describe('3840x2160 at 120 Hz, 8 bit, over DisplayPort HBR3', () => {
  const shown = (blanking: string): Build =>
    build(`
parts:
  graphics: { outputs: { DP_1: { link: DisplayPort HBR3 } } }
expect:
  displays: [{ mode: 3840x2160 @ 120 Hz, depth: 8 bit, port: DP_1${blanking} }]
`);
  const promiseOf = (one: Build): PromisedMode => one.file.expect.displays.value![0]!;
  const gbps = (figure: Figure): number[] => [figure.lo, figure.hi].map((bytes) => (bytes * 8) / 1e9);
  const told = (one: Build) => judgeBuild(one, { checks: [displayModeBeyondLink], throwOn: true }).findings;

  /** Source: VESA CVT Standard 1.2; DisplayPort Standard 1.4, 25.92 Gb/s of payload. */
  it.each([
    ['CVT-RB2', 25.82],
    ['CVT-RB1', 26.35],
  ])('with %s needs %f Gb/s', (blanking, published) => {
    const one = shown(`, blanking: ${blanking}`);
    const promise = promiseOf(one);
    for (const end of gbps(needed(promise.mode.value!, promise, false)!))
      expectNear(end, published, TOLERANCES.linkPayloadGbps);
    const output = one.parts.graphics[0]!.part.outputs.value!.get('DP_1')!;
    for (const end of gbps(payload(output.link, 'DP_1'))) expectNear(end, 25.92, TOLERANCES.linkPayloadGbps);
  });

  it('goes through with RB2, if only just: marginal, a note; with RB1 it is beyond', () => {
    const [marginal] = told(shown(', blanking: CVT-RB2'));
    expect(marginal).toMatchObject({ grade: 'note' });
    expect(marginal!.said.text).toMatch(/marginal/);
    const [beyond] = told(shown(', blanking: CVT-RB1'));
    expect(beyond).toMatchObject({ grade: 'shortfall' });
    expect(beyond!.said.text).not.toMatch(/marginal/);
  });

  it(
    'without its blanking stated is anything from the least reduced blanking to the clock of televisions or ' + 'more',
    () => {
      const promise = promiseOf(shown(''));
      const [low, high] = gbps(needed(promise.mode.value!, promise, false)!);
      expect(low!).toBeLessThan(25.82);
      expect(high!).toBeGreaterThan((1188 * 24) / 1000);
    },
  );
});

describe('noise and storage', () => {
  /** Source: 10dB acoustics consultancy, Decibel Maths: a radio of 62 dB and a television of 73 dB. */
  it('62 and 73 dB make 73.3 dB', () => {
    const loud = build(
      'parts:\n  fans:\n    - { level: 62 dBA, level-at: 1 m }\n    - { level: 73 dBA, level-at: 1 m ' +
        '}\nexpect: { noise: { level: 80 dBA, at: 1 m } }\n',
    );
    expectFigure(noiseLevel(loud), 73.3, TOLERANCES.soundLevelDb);
  });

  /**
   * Sources of 50 dB each, rounded to whole decibels. Source: Minnesota Pollution Control Agency, A Guide to Noise
   * Control in Minnesota, October 2008, figure 5.
   */
  it.each([
    [2, 53],
    [4, 56],
    [8, 59],
  ])('%i alike of 50 dB make %i dB', (count, level) => {
    const alike = build(
      `parts:\n  fans: [{ level: 50 dBA, level-at: 1 m, count: ${count} }]\nexpect: { noise: { level: 80 ` +
        `dBA, at: 1 m } }\n`,
    );
    expect(Math.round(noiseLevel(alike)!.lo)).toBe(level);
  });

  /** Kind, drives of 4 TB, what they hold. Source: SNIA Common RAID Disk Drive Format (DDF), levels. */
  it.each([
    ['stripe', 4, 16],
    ['mirror', 2, 4],
    ['single parity', 4, 12],
    ['double parity', 6, 16],
    ['striped mirrors', 6, 12],
  ] as const)('%s of %i × 4 TB holds %i TB', (kind, count, tb) => {
    const made = build(`parts:\n  drives: [{ name: reel, capacity: 4 TB, count: ${count} }]\n`);
    expectFigure(arrayCapacity('array', kind, arrayDrives(made, ['reel'])!), tb * 1e12, TOLERANCES.exact);
  });
});
