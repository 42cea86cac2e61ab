// Figures of noise: every part that sounds, its level at the distance promised, and all of them together.
import type { Build, Placed } from '../build/build';
import type { Fact } from '../parts/fact';
import type { Quantity } from '../quantity';
import { equalSourcesDb, levelAtDistanceDb, sumOfLevelsDb } from '../trade/noise';
import { isLiquid } from './coolers';
import { uniqueMissing } from './missing-facts';
import {
  between,
  copyWith,
  counted,
  decidedBy,
  derive,
  figure,
  isPlainOne,
  missing,
  unknown,
  type Figure,
  isExact,
} from './figure';
import { aboveZero, guarded, notNegative } from './guard';
import { memo } from './memo';
import { howMany } from './power';

/** What a part states of its sound, where it is known that it may; `count` of them sound alike. */
interface Sound {
  readonly placed: Placed;
  readonly label: string;
  readonly stated?: { readonly level: Fact<Quantity>; readonly 'level-at': Fact<Quantity> };
  readonly count: Figure;
}

type Sounding = Placed<'fans'> | Placed<'graphics'> | Placed<'cards'> | Placed<'drives'> | Placed<'supply'>;

/** A part that sounds, with the level of all of its kind at the distance promised. */
export interface Source {
  readonly placed: Placed;
  readonly level: Figure;
}

/** The distance of the promise; undefined where it names none that can be. */
export const promisedDistance = memo((build: Build): Figure | undefined => {
  const distance = aboveZero(build.file.expect.noise.at, 'distance of the promise');
  return distance.missing.length > 0 ? undefined : distance;
});

/** Everything that sounds, at the distance promised. A level of 0 dBA says that a part is silent. */
export const noiseSources = memo((build: Build): readonly Source[] => {
  const to = promisedDistance(build);
  if (!to) return [];
  return sounds(build)
    .filter((sound) => !silent(sound))
    .map((sound) => ({ placed: sound.placed, level: heardAt(sound, to) }));
});

const silent = ({ stated }: Sound): boolean => stated?.level.value?.lo === 0 && stated.level.value.hi === 0;

function sounds({ parts: { fans, cooler, graphics, cards, drives, supply, case: box } }: Build): Sound[] {
  return [
    ...(cooler ? ofCooler(cooler) : []),
    ...[...fans, ...graphics, ...cards, ...drives.filter(mayTurn), ...(supply ? [supply] : [])].map(own),
    ...(box ? ofCase(box) : []),
  ];
}

const own = (placed: Sounding): Sound => ({ placed, label: placed.label, stated: placed.part, count: howMany(placed) });

/** A drive on a module or a card has nothing that turns. */
const mayTurn = ({ part: { shape } }: Placed<'drives'>): boolean => shape.value !== 'M.2' && shape.value !== 'card';

function ofCooler(placed: Placed<'cooler'>): Sound[] {
  const { fans, pump } = placed.part;
  const blows: Sound = {
    placed,
    label: `fans of ${placed.label}`,
    stated: fans,
    count: notNegative(counted(fans.count, `fans of ${placed.label}`)),
  };
  const pumps: Sound = { placed, label: `pump of ${placed.label}`, stated: pump, count: howMany(placed) };
  return [...(fans.count.value === 0 ? [] : [blows]), ...(isLiquid(placed) ? [pumps] : [])];
}

function ofCase(placed: Placed<'case'>): Sound[] {
  const places = placed.part['fan-places'];
  if (!places.value) {
    return [
      {
        placed,
        label: `fans of ${placed.label}`,
        count: notNegative(
          unknown('count', `fans of ${placed.label}`, [missing(places, `fan places of ${placed.label}`)]),
        ),
      },
    ];
  }
  return [...places.value]
    .filter(([, place]) => place.fitted.value !== 0)
    .map(([name, place]) => {
      const label = `fans of ${placed.label} at ${name}`;
      return { placed, label, stated: place, count: notNegative(counted(place.fitted, label)) };
    });
}

/** All of a kind together, at the distance promised. */
function heardAt(sound: Sound, to: Figure): Figure {
  const { placed, label, stated, count } = sound;
  if (!stated) return copyWith(unknown('sound-level', label, count.missing), { unit: 'dBA' });
  const one = figure(stated.level, `level of ${label}`);
  const alike = isPlainOne(count)
    ? one
    : derive(
        `level of ${label} together`,
        'sound-level',
        [one, count],
        'level + 10 lg count',
        guarded(equalSourcesDb),
        { unit: 'dBA', source: 'level addition in acoustics' },
      );
  const heard = atDistance(
    alike,
    aboveZero(stated['level-at'], `distance at which the level of ${label} was measured`),
    to,
    label,
  );
  const shape = placed.role === 'drives' ? (placed as Placed<'drives'>).part.shape : undefined;
  // A drive of no stated shape may be a module, which is silent.
  return !shape || shape.value !== undefined
    ? decidedBy(heard, shape)
    : copyWith(heard, { lo: -Infinity, missing: [...heard.missing, missing(shape, `shape of ${label}`)] });
}

/** In a free field a level falls by 20 lg of the distances; a room leaves less of that fall, or none. */
export function atDistance(level: Figure, from: Figure, to: Figure, label: string): Figure {
  if (isExact(from) && isExact(to) && from.lo === to.lo) return level;
  const share = between(0, 1, 'count', 'share of the free-field fall that the room leaves', {
    source: 'common practice: a room falls off less than a free field',
  });
  return derive(
    `level of ${label} at the promised distance`,
    'sound-level',
    [level, from, to, share],
    'level − share × 20 lg (promised ÷ measured distance)',
    guarded((db, r1, r2, s) => db + s * levelAtDistanceDb(0, r1, r2)),
    { unit: 'dBA', source: 'level of a point source over distance' },
  );
}

/** All sources added as energies; one that is not known can only add to it. Undefined where nothing sounds. */
export const noiseLevel = memo((build: Build): Figure | undefined => {
  const inputs = noiseSources(build).map(({ level }) => level);
  if (inputs.length === 0) return undefined;
  return copyWith(
    between(sumOf(inputs.map(({ lo }) => lo)), sumOf(inputs.map(({ hi }) => hi)), 'sound-level', 'level of all parts', {
      unit: 'dBA',
      source: 'level addition in acoustics',
    }),
    { missing: uniqueMissing(inputs), inputs, formula: '10 lg Σ 10^(level ÷ 10)', work: (...levels) => sumOf(levels) },
  );
});

function sumOf(levels: readonly number[]): number {
  if (levels.includes(Infinity)) return Infinity;
  const heard = levels.filter((level) => level !== -Infinity);
  return heard.length === 0 ? -Infinity : sumOfLevelsDb(heard);
}
