// Parts as they are named at the bench, and where each goes.
import type { Placed } from '../../core/build/build';
import { roles } from '../../core/manifest/places';
import type { Fact } from '../../core/parts/fact';
import { listed } from '../../core/text';
import { lowerFirst, oneLine, type Line } from './model';
import type { Places } from './places';

/** Maker and model as they stand on the box; else what the build calls it. */
export function boxName({ part, used, label, kind }: Placed): string {
  const { maker, model } = part as unknown as Record<'maker' | 'model', Fact<string>>;
  const printed = [maker.text, model.text].filter((text) => text !== '').join(' ');
  return oneLine(printed === '' ? (used?.name ?? (label === kind ? `${kind}, not named` : label)) : printed);
}

/** How it is spoken of in a line: by its own name with the box’s, `scratch, Lumen Rapid 2T`. */
export function benchName(placed: Placed): string {
  const own = ownName(placed);
  return own === undefined ? boxName(placed) : `${own}, ${boxName(placed)}`;
}

const keysOf = (placed: Placed): Readonly<Record<string, Fact<unknown> | undefined>> =>
  placed.at as unknown as Record<string, Fact<unknown> | undefined>;

export function ownName(placed: Placed): string | undefined {
  const name = keysOf(placed).name;
  return name && name.text !== '' ? oneLine(name.text) : undefined;
}

export const countOf = (placed: Placed): number => (keysOf(placed).count?.value as number | undefined) ?? 1;

/** What a place is called before its name: `slot M2_1`, `into bay 3.5 in`. */
const placeWords: Readonly<Record<string, string>> = {
  slot: 'slot',
  slots: 'slots',
  port: 'port',
  bay: 'bay',
  mount: 'at',
  flow: 'blowing',
  tubes: 'tubes',
  header: 'header',
  'pump-header': 'pump header',
  'light-header': 'light header',
};

/** Where it goes, in the build’s words: `slots A2 and B2`; empty where the build does not say. */
export function whereTo(placed: Placed, keys: readonly string[] = Object.keys(placeWords)): string {
  return keys
    .flatMap((key) => {
      const fact = keysOf(placed)[key];
      const text = fact && textOf(fact);
      return text ? [`${placeWords[key]} ${text}`] : [];
    })
    .join(', ');
}

/** A fact in a line; a list as it is spoken: `A2 and B2`. */
export const textOf = ({ value, text }: Fact<unknown>): string =>
  oneLine(Array.isArray(value) ? listed(value.map((one: Fact<unknown>) => one.text)) : text);

/** A part in a line, with what is chosen of its places: `2 × Boreas F140: at front, blowing in`. */
export function thing(places: Places, placed: Placed, keys: readonly string[], more: readonly string[] = []): Line {
  return { ...plugged(places, placed, keys, more), findings: places.findingsAt(placed.path) };
}

/** The same where nothing but those places is spoken of: only findings about them belong there. */
export function plugged(places: Places, placed: Placed, keys: readonly string[], more: readonly string[] = []): Line {
  const count = countOf(placed);
  const where = [whereTo(placed, keys), ...more].filter((text) => text !== '').join(', ');
  const name = `${count > 1 ? `${count} × ` : ''}${benchName(placed)}`;
  return {
    text: where === '' ? name : `${name}: ${where}`,
    place: placed.path,
    findings: places.findingsAt(...keys.map((key) => `${placed.path}.${key}`)),
  };
}

/** What a part is called on a list, by its role. */
export const roleName = ({ role, kind }: Placed): string =>
  role === 'graphics' ? 'graphics card' : roles[role].several ? kind : lowerFirst(role);

/** The document that a part’s facts were read from: as a rule its handbook. */
export const handbookOf = (placed: Placed): string | undefined => {
  const { source } = placed.part as unknown as { source: Record<'title' | 'revision', Fact<string>> };
  if (source.title.text === '') return undefined;
  return oneLine(`${source.title.text}${source.revision.text === '' ? '' : `, revision ${source.revision.text}`}`);
};
