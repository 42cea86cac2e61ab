// Figures of boxes: the small things that a build needs, against what the boxes hold and what is bought beside them.
import type { Build, Placed } from '../build/build';
import type { RoleName } from '../manifest/places';
import { boxWord, isCable, SCREWS_PER_DRIVE, SCREWS_PER_FAN, speaksOfScrews, type BoxThing } from '../trade/box-things';
import { boxed, boxHas } from './box-contents';
import { fitOf, type Fit } from './box-fit';
import { countDrives, screwed } from './drive-places';
import {
  between,
  copyWith,
  decidedBy,
  figure,
  known,
  missing,
  number,
  times,
  total,
  unknown,
  type Figure,
} from './figure';
import { plannedUpdate } from './firmware';
import { holesOf } from './fit';
import { notNegative } from './guard';
import { connectorOf } from './cables';
import { memo } from './memo';
import { howMany } from './power';
import { modulesOf } from './redundancy';
import { any, atLeast, sure, type Truth } from './truth';

/** One kind of thing that the build needs. */
export interface Need {
  readonly thing: BoxThing;
  readonly for: Placed;
  readonly needed: Figure;
  readonly held: Figure;
  readonly truth: Truth;
  /** The parts whose boxes hold it in every shop; none where it depends, or where a box says what it holds of it. */
  readonly bringers: readonly Placed[];
}

/** The roles whose boxes may hold a thing. */
const boxes: Readonly<Record<BoxThing, readonly RoleName[]>> = {
  'display cable': ['displays', 'graphics', 'board'],
  'power cord': ['supply'],
  'drive screw': ['case', 'drives'],
  'board screw': ['case', 'board'],
  'fan screw': ['fans', 'case'],
  'USB stick': ['board'],
};

/**
 * The role whose boxes bring a thing as sold. A display’s cable may be of another connector, and a stick comes with
 * nothing. Source: common practice.
 */
const usualBringers: Readonly<Partial<Record<BoxThing, RoleName>>> = {
  'power cord': 'supply',
  'drive screw': 'case',
  'board screw': 'case',
  'fan screw': 'fans',
};

/**
 * Everything small that the build needs and a box may lack; data cables, M.2 screws, power cables and splitters are
 * counted where they are used.
 */
export const needs = memo((build: Build): readonly Need[] => {
  const { displays, supply, board, case: box, fans } = build.parts;
  const all: Need[] = [];
  const add = (thing: BoxThing, placed: Placed, needed: Figure): void => {
    if (needed.hi > 0) all.push(need(build, thing, placed, needed));
  };
  if (displays[0])
    add(
      'display cable',
      displays[0],
      total(
        'displays',
        'count',
        displays.map((display) => howMany(display)),
      ),
    );
  if (supply) add('power cord', supply, modulesOf(supply) ?? number(1, 'supplies'));
  if (box && board) add('board screw', box, boardScrews(board));
  if (box) add('drive screw', box, driveScrews(build, box));
  if (fans[0])
    add(
      'fan screw',
      fans[0],
      times(
        known(SCREWS_PER_FAN, 'count', 'screws a fan', { source: 'common practice' }),
        total(
          'fans',
          'count',
          fans.map((fan) => howMany(fan)),
        ),
        'fan screws',
      ),
    );
  const update = plannedUpdate(build);
  // An update that describes its stick has one on hand.
  if (board && update?.by.value === 'stick without processor' && !update.stick.$.stated)
    add('USB stick', board, number(1, 'sticks for the update'));
  return all;
});

function need(build: Build, thing: BoxThing, placed: Placed, needed: Figure): Need {
  const held = holdings(build, thing);
  const box = build.parts.case;
  const set =
    box && (thing === 'board screw' || thing === 'drive screw') && box.part['in-the-box'].value
      ? boxHas(box, 'screw set')
      : sure(false);
  const role = usualBringers[thing];
  const bringers = role ? build.of(role) : [];
  const isLeftOut = bringers.every((one) => !one.part['in-the-box'].node || namesNoScrew(one, thing));
  return {
    thing,
    for: placed,
    needed,
    held,
    truth: any(set, atLeast(held, needed)),
    bringers: isLeftOut ? bringers : [],
  };
}

/** One screw a hole of the board. */
function boardScrews(board: Placed<'board'>): Figure {
  const letters = holesOf(board);
  const label = `holes of ${board.label}`;
  return 'missingFacts' in letters
    ? notNegative(unknown('count', label, [letters.missingFacts]))
    : number(letters.holes.length, label, 'ATX 2.2, microATX 1.2, Mini-ITX 1.1: hole patterns');
}

function driveScrews(build: Build, box: Placed<'case'>): Figure {
  const drives = countDrives(build, 'drives that screws hold', screwed(box));
  return drives
    ? times(known(SCREWS_PER_DRIVE, 'count', 'screws a drive', { source: 'common practice' }), drives, 'drive screws')
    : number(0, 'drive screws');
}

/** What boxes, cables, fixings and sticks of the build hold of a thing that fits. */
function holdings(build: Build, thing: BoxThing): Figure {
  const { serves, decidedBy: grounds } = fitOf(build, thing);
  const inBoxes = build
    .of(...boxes[thing])
    .map((placed) =>
      times(namesNoScrew(placed, thing) ? unlisted(placed, thing) : boxed(placed, thing, serves), howMany(placed)),
    );
  const held = total(`${thing}s held`, 'count', [...inBoxes, ...bought(build, thing, serves)]);
  return decidedBy(held, ...grounds);
}

/** A list that names other things and no screw at all leaves them out: whoever brings them as sold brings them. */
const namesNoScrew = ({ part, role }: Placed, thing: BoxThing): boolean => {
  const lines = part['in-the-box'].value ?? [];
  return (
    thing.endsWith('screw') &&
    role === usualBringers[thing] &&
    lines.length > 0 &&
    lines.every(({ text }) => !speaksOfScrews(text ?? ''))
  );
};

const unlisted = ({ part, label }: Placed, thing: BoxThing): Figure =>
  copyWith(between(0, Infinity, 'count', `${thing}s in the box of ${label}`, { source: 'no screw is listed' }), {
    missing: [missing(part['in-the-box'], `screws in the box of ${label}`)],
  });

function bought({ parts: { cables, fixings, sticks } }: Build, thing: BoxThing, serves: Fit['serves']): Figure[] {
  if (thing === 'USB stick') return sticks.map((stick) => howMany(stick));
  const kinds = isCable(thing)
    ? cables.map((cable) => ({
        placed: cable as Placed,
        words: cable.part.connector.value === undefined ? cable.at.kind.text : cable.part.connector.text,
        ...connectorOf(cable),
      }))
    : fixings.map((fixing) => ({
        placed: fixing as Placed,
        words: fixing.part.thread.value ?? fixing.part.item.text,
        ...fixingOf(fixing),
      }));
  return kinds.flatMap((one) => {
    if ('missingFacts' in one)
      return [notNegative(unknown('count', `${thing}s among ${one.placed.label}`, [one.missingFacts]))];
    return boxWord(one.kind) === thing && serves(one.words) ? [howMany(one.placed)] : [];
  });
}

function fixingOf(fixing: Placed<'fixings'>): ReturnType<typeof connectorOf> {
  const { item } = fixing.part;
  return item.value === undefined || boxWord(item.value) === undefined
    ? { missingFacts: missing(item, `what ${fixing.label} is`) }
    : { kind: item.value };
}

/** The paste put on against what its tube holds; undefined where the build does not say how much. */
export function pasteTube({
  parts: { paste },
}: Build): { readonly placed: Placed<'paste'>; readonly amount: Figure; readonly holds: Figure } | undefined {
  if (!paste?.at.amount.node) return undefined;
  return {
    placed: paste,
    amount: figure(paste.at.amount, 'paste put on'),
    holds: figure(paste.part.volume, `volume of a tube of ${paste.label}`),
  };
}
