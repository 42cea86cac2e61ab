// A new part file: the keys that the checks ask for most, each with nothing after it yet, and what belongs there.
import type { Field } from '../core/parts/field';
import { kinds, type Kind, type Kinds } from '../core/parts/kinds';
import type { Language } from '../core/words/language';

type Keys = { readonly [K in Kind]: readonly (keyof Kinds[K] & string)[] };

/** What of each kind of part is looked up first; the reference of fields holds the rest. */
const firstKeys: Keys = {
  board: [
    'size',
    'socket',
    'firmware',
    'processors',
    'memory',
    'slots',
    'ports',
    'headers',
    'power-connectors',
    'draw',
  ],
  processor: ['family', 'socket', 'power', 'hottest', 'graphics', 'memory', 'lanes', 'generation'],
  cooler: ['sockets', 'height', 'rated-power', 'paste', 'memory-room', 'fans', 'draw'],
  paste: ['class', 'electrically', 'gallium', 'conductivity', 'volume'],
  memory: ['type', 'shape', 'class', 'ecc', 'capacity', 'modules-in-kit', 'ranks', 'standard-speed', 'rated-speed'],
  drive: ['bus', 'shape', 'size', 'link', 'capacity', 'read', 'write', 'endurance', 'needs-heat-sink', 'draw'],
  graphics: ['edge', 'link', 'length', 'height', 'openings', 'power', 'connectors', 'outputs'],
  card: ['edge', 'link', 'length', 'height', 'openings', 'bracket', 'power'],
  supply: ['rating', 'form', 'depth', 'badge', 'rails', 'connectors', 'own-cables', 'modular', 'inlet'],
  case: [
    'board-sizes',
    'cooler-height',
    'card-length',
    'openings',
    'supply-forms',
    'supply-depth',
    'bays',
    'fan-places',
    'radiator-places',
    'front-cables',
  ],
  fan: ['size', 'thickness', 'pins', 'current', 'speed', 'airflow', 'level'],
  radiator: ['class', 'length', 'width', 'thickness', 'fan-size', 'fans'],
  display: ['modes', 'inputs', 'compression', 'draw'],
  cable: ['connector', 'adapter', 'length', 'gauge'],
  fixing: ['item', 'thread', 'length'],
  stick: ['filesystem', 'capacity'],
};

/** A line of the file: a key with nothing after it, and what is to be said behind it. */
interface PartLine {
  readonly key: string;
  readonly said: string;
}

/** How long a line is kept; a word of the reference takes over where more would have to be said. */
const width = 110;

function partLines(kind: Kind, language: Language): readonly PartLine[] {
  const table: Readonly<Record<string, Field>> = kinds[kind];
  return [...firstKeys[kind], 'price'].map((key) => ({ key, said: said(key, table[key]!, language) }));
}

/** An example is never a value: what nobody looked up must not stand there as if somebody had. */
function said(key: string, field: Field, language: Language): string {
  const [what, { example }] = [language.word(field.what), field];
  const whole = `${what} ${language.words`Such as: ${example}`}`;
  return example !== '' && key.length + whole.length + 8 <= width ? whole : what;
}

/** The keys that every part file has, before the facts of its kind. */
const shared = (kind: Kind, head: string): string =>
  `# ${head}\nkind: ${kind}\nmaker: \nmodel: \nsource:\n  title: \n\n`;

/** Lines with what is said of each in one column. */
function factLines(kind: Kind, language: Language): string {
  const lines = partLines(kind, language);
  const widest = Math.max(...lines.map(({ key }) => key.length));
  return lines.map(({ key, said }) => `${`${key}: `.padEnd(widest + 3)}# ${said}\n`).join('');
}

/** The text of a new part file of a kind, and the offset at which its writer goes on. */
export function newPart(kind: Kind, language: Language): { readonly text: string; readonly at: number } {
  const head = language.word(
    'What is true of this part in any build. Leave a value empty where no page of its maker states it.',
  );
  const text = shared(kind, head) + factLines(kind, language);
  return { text, at: text.indexOf('maker: ') + 'maker: '.length };
}
