// Figures of radiators: each with its real size and the place of the case that it goes into.
import type { Build, Placed } from '../build/build';
import type { pcCase } from '../parts/housing';
import type { radiatorFields } from '../parts/common';
import type { Fact, Group } from '../parts/fact';
import { RADIATOR_TANKS_MM, radiatorClassMm } from '../trade/air';
import { radiatorClassNamed } from '../trade/forms';
import { isLiquid } from './coolers';
import { copyWith, decidedBy, figure, known, missing, most, total, type Figure, type Missing } from './figure';
import { notNegative } from './guard';
import { memo } from './memo';
import { besideIt, countOf, fansAt, perSide, secondLayer } from './radiator-fans';
import { given, lessThan, not } from './truth';

export type RadiatorPlace = Group<(typeof pcCase)['radiator-places']['of']['fields']>;

/** One radiator where it is to be mounted. */
export interface Radiator {
  readonly placed: Placed<'cooler'> | Placed<'radiators'>;
  readonly label: string;
  readonly facts: Group<typeof radiatorFields>;
  readonly mount: Fact<string>;
  /** The case's place by that name; absent with what is lacking for it, or where the case has no such place. */
  readonly place?: RadiatorPlace;
  readonly missingFacts: readonly Missing[];
  /** Thickness of the fans on it. */
  readonly fan: Figure;
}

/** All radiators of a build that has a case. */
export const radiators = memo((build: Build): readonly Radiator[] => {
  const { case: box, cooler, radiators: loop } = build.parts;
  if (!box) return [];
  const all: Radiator[] = [];
  if (cooler && isLiquid(cooler)) {
    const label = `the radiator of ${cooler.label}`;
    all.push({
      placed: cooler,
      label,
      facts: cooler.part.radiator,
      mount: cooler.at.mount,
      fan: coolerFans(build, cooler, label),
      ...seat(box, cooler.at.mount, label),
    });
  }
  for (const one of loop) {
    const fan = loopFans(build, one);
    all.push({
      placed: one,
      label: one.label,
      facts: one.part,
      mount: one.at.mount,
      fan,
      ...seat(box, one.at.mount, one.label),
    });
  }
  return all;
});

/** A cooler’s own fans, on both sides where it brings more than one side takes, and fans of the build behind it. */
function coolerFans(build: Build, cooler: Placed<'cooler'>, label: string): Figure {
  const { fans, radiator } = cooler.part;
  const thickness = figure(fans.thickness, `thickness of the fans of ${cooler.label}`);
  const own = decidedBy(thickness, fans.count, radiator.class, radiator.fans);
  const more = fansAt(build, cooler.at.mount.value);
  const doubled = fans.count.value !== undefined && fans.count.value > perSide(radiator, label).hi;
  if (doubled) return both(own, own);
  if (more.length === 0) return own;
  const behind = given(not(besideIt(build, radiator, label, cooler.at.mount.value!)), more[0]!.at.mount);
  return both(own, secondLayer(behind, thickest(more)));
}

/** The fans that a loop’s radiator shares its place with; more than one side takes stand on both. */
function loopFans(build: Build, radiator: Placed<'radiators'>): Figure {
  const fans = fansAt(build, radiator.at.mount.value);
  if (fans.length === 0)
    return known(0, 'length', 'thickness of its fans', { unit: 'mm', source: 'the build lists no fan at that place' });
  const fan = thickest(fans);
  const count = countOf(fans);
  // One side of any radiator takes one fan.
  return count.hi <= 1 ? fan : both(fan, secondLayer(lessThan(perSide(radiator.part, radiator.label), count), fan));
}

const thickest = (fans: readonly Placed<'fans'>[]): Figure => {
  const each = fans.map((fan) => figure(fan.part.thickness, `thickness of ${fan.label}`));
  return each.length === 1 ? each[0]! : most('thickness of the fans at the place', each, { unit: 'mm' });
};

const both = (front: Figure, back: Figure): Figure =>
  back.lo === 0 && back.hi === 0
    ? front
    : total('thickness of the fans on both sides', 'length', [notNegative(front), notNegative(back)], { unit: 'mm' });

function seat(box: Placed<'case'>, mount: Fact<string>, label: string): Pick<Radiator, 'place' | 'missingFacts'> {
  if (mount.value === undefined) return { missingFacts: [missing(mount, `place of ${label}`)] };
  const places = box.part['radiator-places'];
  if (!places.value) return { missingFacts: [missing(places, `radiator places of ${box.label}`)] };
  const place = places.value.get(mount.value);
  return place ? { place, missingFacts: [] } : { missingFacts: [] };
}

/** Real length, end tanks included; where it is not stated, what radiators of its class have. */
export function radiatorLength({ facts, label }: Radiator): Figure {
  const own = figure(facts.length, `length of ${label}`);
  if (facts.length.value) return own;
  const length =
    facts.class.value === undefined
      ? copyWith(own, { missing: [...own.missing, missing(facts.class, `class of ${label}`)] })
      : own;
  const row = radiatorClassNamed(facts.class.value ?? '');
  if (!row) return notNegative(length);
  const fans = radiatorClassMm(row.fans, row.frameMm);
  const { low, high } = RADIATOR_TANKS_MM;
  const source = 'common practice: class and end tanks';
  return copyWith(length, { lo: fans + low, hi: fans + high, unit: 'mm', source });
}

/** Thickness with the fans on it. */
export function thicknessWithFans({ facts, label, fan }: Radiator): Figure {
  return total(
    `thickness of ${label} with its fans`,
    'length',
    [notNegative(figure(facts.thickness, `thickness of ${label}`)), notNegative(fan)],
    { unit: 'mm' },
  );
}

/** Whether the case’s place lists the radiator’s class: such radiators are made for it. */
export const listsClass = ({ facts, place }: Radiator): boolean =>
  facts.class.value !== undefined && (place?.classes.value ?? []).some(({ value }) => value === facts.class.value);

/** Whether radiator and fans are no thicker than most of its class. Source: common practice. */
export const isUsuallyThick = (radiator: Radiator): boolean => thicknessWithFans(radiator).hi <= 55;
