// The way of the heat through a whole build, against worked examples from outside, and its working against its values.
import { describe, expect, it } from 'vitest';
import type { Build } from '../../../server/src/core/build/build';
import { airNeeded, caseRise, deliveredAir, dewPoint, freeAir } from '../../../server/src/core/figures/air';
import { known, type Figure } from '../../../server/src/core/figures/figure';
import { chainResistance, powerWithin, processorTemperature } from '../../../server/src/core/figures/heat';
import { bench, today } from '../../support/bench';

function build(text: string): Build {
  const { build: made } = bench([{ name: 'case.pcbuild.yaml', text }]);
  expect(made?.today).toBe(today);
  return made!;
}

/** Every step of a working gives its value again from its inputs' values. */
function expectWorking(figure: Figure): void {
  figure.inputs.forEach(expectWorking);
  if (figure.work && figure.lo === figure.hi && figure.inputs.every((input) => input.lo === input.hi)) {
    expect(figure.work(...figure.inputs.map((input) => input.lo)), figure.label).toBeCloseTo(figure.lo, 9);
  }
}

// Processor thermal design guide, worked example: (67 − 38) ÷ 100 W = 0.29 K/W, of which 0.10 lie before the cooler.
const guide = build(`
place: { inlet: 38 °C, altitude: 0 m }
parts:
  processor: { power: { sustained: 100 W }, hottest: 67 °C, die-to-lid: 0.09 K/W, lid: { area: 1000 mm² } }
  cooler: { thermal-resistance: 0.19 K/W }
  paste: { bond-line: 40 µm, conductivity: 4 W/m·K }
`);

describe('the chain from inlet to die', () => {
  const { processor, cooler, paste } = guide.parts;

  it('gives the temperature of the guide, and the power at its limit', () => {
    const reached = processorTemperature(guide, processor!, cooler!);
    expect([reached.lo, reached.hi]).toEqual([expect.closeTo(67, 9), expect.closeTo(67, 9)]);
    expect(chainResistance(processor!, cooler!, paste).lo).toBeCloseTo(0.29, 9);
    expect(powerWithin(guide, processor!, cooler!, known(67.01, 'temperature', 'limit', { source: 'the guide' }))).toBe(
      100,
    );
    expectWorking(reached);
  });
});

describe('air through the case', () => {
  // A fan maker's rule prints 3.16 W ÷ ΔT°F in CFM; 340 W at 15 K are 39.5 CFM, 67.1 m³/h, at 1.21 kg/m³ (about 18.5
  // °C).
  const warm = build(`
place: { ambient: 18.6 °C, humidity: 50 %, altitude: 0 m }
parts:
  graphics: [{ power: { sustained: 340 W } }]
  case: { fan-places: { front: { fitted: 2, flow: in, airflow: 50 m³/h }, rear: { fitted: 0 } } }
  fans: [{ airflow: 30 m³/h, flow: out, draw: { peak: 0 W } }]
`);

  it('needs what the rule says', () => {
    const needed = airNeeded(warm, known(15, 'temperature-difference', 'rise', { source: 'the rule' }));
    expect(needed.lo / 67.1).toBeCloseTo(1, 2);
    expectWorking(needed);
  });

  it('is the greater of both ways, and less than free air', () => {
    expect([freeAir(warm).lo, freeAir(warm).hi]).toEqual([100, 100]);
    expect([deliveredAir(warm).lo, deliveredAir(warm).hi]).toEqual([40, 70]);
    expectWorking(deliveredAir(warm));
  });

  it('warms by what it carries: needed and risen are each other turned round', () => {
    const rise = caseRise(warm);
    for (const end of [rise.lo, rise.hi]) {
      const needed = airNeeded(warm, known(end, 'temperature-difference', 'rise', { source: 'the rise itself' })).lo;
      expect([40, 70].some((flow) => Math.abs(flow - needed) < 1e-6)).toBe(true);
    }
  });

  it('leaves the rise open where no fan moves any', () => {
    const still = build(
      'place: { ambient: 20 °C, altitude: 0 m }\nparts:\n  case: { fan-places: {} }\n  graphics: [{ power: ' +
        '{ sustained: 100 W } }]\n',
    );
    expect([caseRise(still).lo, caseRise(still).hi]).toEqual([0, Infinity]);
  });
});

// WMO Guide No. 8, annex 4.B: 25 °C at 50 % → 13.85 °C, 5 °C at 90 % → 3.50 °C.
it.each([
  [25, 50, 13.85],
  [5, 90, 3.5],
])('dew falls from air of %i °C and %i %% at %f °C', (room, humidity, dew) => {
  expect(dewPoint(build(`place: { ambient: ${room} °C, humidity: ${humidity} % }\n`)).lo).toBeCloseTo(dew, 2);
});
