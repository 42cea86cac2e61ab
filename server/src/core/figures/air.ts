// Figures of air: what flows through the case, how much warmer it gets, and where dew falls.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import type { Quantity } from '../quantity';
import {
  AIR_GAS_J_PER_KG_K,
  AIR_J_PER_KG_K,
  airDensityKgPerM3,
  airflowNeededM3PerH,
  airRiseK,
  DELIVERED_OF_FREE_AIR,
  dewPointC,
} from '../trade/air';
import { heatInCase, isOpenFrame } from './case-heat';
import { isLiquid } from './coolers';
import {
  copyWith,
  between,
  counted,
  decidedBy,
  derive,
  figure,
  known,
  missing,
  most,
  times,
  total,
  unknown,
  type Figure,
  type Missing,
} from './figure';
import { aboveZero, guarded, notNegative } from './guard';
import { memo } from './memo';
import { howMany } from './power';

/** Air that some fans move, with the way they blow where anyone says it. */
export interface Stream {
  readonly label: string;
  readonly placed: Placed;
  /** The case’s own place for them; fans of the build name theirs. */
  readonly place?: string;
  readonly count: Figure;
  /** With nothing in the way, all of them together. */
  readonly freeAir: Figure;
  readonly way: 'in' | 'out' | undefined;
  /** The fact that says which way. */
  readonly flow?: Fact<'in' | 'out'>;
  readonly wayLacks: Missing;
}

/** Everything that moves air into or out of the case: fans of the build, of the case, and of a radiator. */
export const streams = memo((build: Build): readonly Stream[] => {
  const { fans, case: box, cooler } = build.parts;
  return [...fans.map(ofFan), ...(box ? ofCase(box) : []), ...(cooler && isLiquid(cooler) ? [ofRadiator(cooler)] : [])];
});

function stream(placed: Placed, label: string, count: Figure, one: Fact<Quantity>, way: Fact<'in' | 'out'>): Stream {
  const freeAir = decidedBy(times(notNegative(figure(one, `airflow of ${label}`)), count, `airflow of ${label}`), way);
  return {
    label,
    placed,
    count,
    freeAir,
    way: way.value,
    flow: way,
    wayLacks: missing(way, `air direction of ${label}`),
  };
}

const ofFan = (fan: Placed<'fans'>): Stream => stream(fan, fan.label, howMany(fan), fan.part.airflow, fan.at.flow);

function ofCase(box: Placed<'case'>): Stream[] {
  const places = box.part['fan-places'];
  if (!places.value) {
    const missingFacts = missing(places, `fan places of ${box.label}`);
    const count = notNegative(unknown('count', `fans of ${box.label}`, [missingFacts]));
    return [
      {
        label: `fans of ${box.label}`,
        placed: box,
        count,
        freeAir: notNegative(unknown('flow', `airflow of the fans of ${box.label}`, [missingFacts])),
        way: undefined,
        wayLacks: missingFacts,
      },
    ];
  }
  return [...places.value].flatMap(([name, place]) => {
    if (place.fitted.value === 0) return [];
    const label = `the fans of ${box.label} at ${name}`;
    const fitted = notNegative(counted(place.fitted, `how many fans ${box.label} has at ${name}`));
    return [{ ...stream(box, label, fitted, place.airflow, place.flow), place: name }];
  });
}

function ofRadiator(cooler: Placed<'cooler'>): Stream {
  const label = `the radiator’s fans of ${cooler.label}`;
  return stream(
    cooler,
    label,
    notNegative(counted(cooler.part.fans.count, `how many fans ${cooler.label} has`)),
    cooler.part.fans.airflow,
    cooler.at.flow,
  );
}

/** Free-air flow of all streams that blow one way; what blows who knows where may add to either. */
function flowing(build: Build, way: 'in' | 'out'): Figure {
  const inputs = streams(build)
    .filter((one) => one.way === way || one.way === undefined)
    .map((one) =>
      one.way === way ? one.freeAir : copyWith(one.freeAir, { lo: 0, missing: [...one.freeAir.missing, one.wayLacks] }),
    );
  return total(way === 'in' ? 'air blown in' : 'air blown out', 'flow', inputs, { unit: 'm³/h' });
}

/**
 * Air through the case if nothing stood in the way: the greater of what is blown in and out; gaps let the rest
 * through.
 */
export const freeAir = memo((build: Build): Figure => {
  const one = most('free-air flow', [flowing(build, 'in'), flowing(build, 'out')], { unit: 'm³/h' });
  return copyWith(one, { lo: Math.max(one.lo, leastAir(build)) });
});

/** What blows who knows where adds to the one or to the other: as much as flows at least, whichever each does. */
function leastAir(build: Build): number {
  const of = (way: 'in' | 'out' | undefined): number[] =>
    streams(build)
      .filter((one) => one.way === way)
      .map((one) => Math.max(0, one.freeAir.lo));
  const sum = (some: readonly number[]): number => some.reduce((a, b) => a + b, 0);
  const [inwards, outwards, open] = [sum(of('in')), sum(of('out')), of(undefined)];
  if (open.length > mostTried) return Math.max(inwards, outwards, (inwards + outwards + sum(open)) / 2);
  let least = Infinity;
  for (let ways = 0; ways < 2 ** open.length; ways++) {
    const entering = inwards + sum(open.filter((_, i) => ways & (1 << i)));
    least = Math.min(least, Math.max(entering, inwards + outwards + sum(open) - entering));
  }
  return least;
}

/** So many streams of unknown direction are tried in every combination. */
const mostTried = 6;

/** Air that really flows, behind grilles and filters and in a filled case. */
export const deliveredAir = memo((build: Build): Figure => {
  const { low, high } = DELIVERED_OF_FREE_AIR;
  const share = between(low, high, 'count', 'share delivered in a filled case', { source: 'common practice' });
  return derive(
    'delivered air',
    'flow',
    [freeAir(build), share],
    'free-air flow × share delivered',
    (flow, part) => flow * part,
    { unit: 'm³/h' },
  );
});

/** Temperature of the air at the case's inlet: as stated, or the room's where nothing else is. */
export const inletTemperature = memo((build: Build): Figure => {
  const { inlet, ambient } = build.file.place;
  return inlet.entry ? figure(inlet, 'air at the inlet') : figure(ambient, 'room temperature');
});

/** Height above the sea; where the build does not say, anywhere on land. */
export const altitude = memo((build: Build): Figure => {
  const fact = build.file.place.altitude;
  if (fact.value) return figure(fact, 'altitude');
  const anywhere = between(-430_000, 5_100_000, 'length', 'altitude', {
    unit: 'm',
    source: 'from the shore of the lowest lake to the highest town',
  });
  return copyWith(anywhere, { missing: [missing(fact, 'altitude')] });
});

const mmPerM = 1000;

/** Density of the air at the inlet, kg/m³, as a plain factor. */
export const airDensity = memo(
  (build: Build): Figure =>
    notNegative(
      derive(
        'density of the air in kg/m³',
        'count',
        [inletTemperature(build), altitude(build)],
        'pressure at that altitude ÷ (gas constant × temperature)',
        guarded((temperature, height) => airDensityKgPerM3(temperature, height / mmPerM)),
        { source: `US Standard Atmosphere 1976; gas constant ${AIR_GAS_J_PER_KG_K} J/(kg·K)` },
      ),
    ),
);

/** How much the air may warm up in the case: as promised, or the house's margin. */
export function riseAllowed(build: Build, house: Figure): Figure {
  const promise = build.file.expect.temperature.rise;
  return promise.entry ? figure(promise, 'promised rise in the case') : house;
}

/** Flow that carries the parts' heat off at a rise. */
export function airNeeded(build: Build, rise: Figure): Figure {
  const work = (heat: number, by: number, rho: number): number => {
    if (by === Infinity || rho === Infinity) return Number.isFinite(heat) ? 0 : NaN;
    if (Number.isFinite(heat) && by > 0 && rho > 0) return airflowNeededM3PerH(heat, by, rho);
    return heat > 0 ? Infinity : NaN;
  };
  return notNegative(
    derive(
      'air needed',
      'flow',
      [heatInCase(build), rise, airDensity(build)],
      `heat ÷ (density × ${AIR_J_PER_KG_K} J/(kg·K) × rise)`,
      work,
      { unit: 'm³/h' },
    ),
  );
}

/** How much warmer the air in the case gets than at its inlet. */
export const caseRise = memo((build: Build): Figure => {
  if (!build.parts.case || isOpenFrame(build))
    return known(0, 'temperature-difference', 'rise in the case', {
      unit: 'K',
      source: build.parts.case ? 'the case is an open frame' : 'the build lists no case',
    });
  const work = (heat: number, flow: number, rho: number): number => {
    if (flow === Infinity || heat === 0) return 0;
    // Where no fan moves any air, what rises and leaks through gaps is not known: the rise is left open.
    return Number.isFinite(heat) && flow > 0 && rho > 0 && Number.isFinite(rho) ? airRiseK(heat, flow, rho) : NaN;
  };
  return notNegative(
    derive(
      'rise in the case',
      'temperature-difference',
      [heatInCase(build), deliveredAir(build), airDensity(build)],
      `heat ÷ (density × ${AIR_J_PER_KG_K} J/(kg·K) × delivered air)`,
      work,
      { unit: 'K' },
    ),
  );
});

/** Temperature of the air around the parts. */
export const caseTemperature = memo(
  (build: Build): Figure =>
    derive(
      'air in the case',
      'temperature',
      [inletTemperature(build), caseRise(build)],
      `${inletTemperature(build).label} + rise in the case`,
      (inlet, rise) => inlet + rise,
      { unit: '°C' },
    ),
);

/** Temperature at which the room's air gives up its water. */
export const dewPoint = memo((build: Build): Figure => {
  const { ambient, humidity } = build.file.place;
  return derive(
    'dew point of the room',
    'temperature',
    [figure(ambient, 'room temperature'), aboveZero(humidity, 'humidity of the room')],
    'Magnus, a = 17.62, b = 243.12 °C',
    guarded((room, percent) => dewPointC(room, percent)),
    { unit: '°C', source: 'WMO Guide No. 8, annex 4.B' },
  );
});
