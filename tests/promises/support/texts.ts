// Writes trees as YAML in the many ways in which people do, with numbered comments wherever one can stand.
import fc from 'fast-check';
import { buildTrees, partTrees, type Tree } from './trees';

/** How a text is written; `noise` decides, turn by turn, what is optional. */
export interface Hand {
  readonly noise: readonly number[];
  readonly step: 2 | 4;
  readonly eol: '\n' | '\r\n';
  readonly bom: boolean;
  readonly ended: boolean;
}

export const hands: fc.Arbitrary<Hand> = fc.record({
  noise: fc.array(fc.nat({ max: 11 }), { minLength: 1, maxLength: 13 }),
  step: fc.constantFrom(2, 4),
  eol: fc.constantFrom('\n', '\r\n'),
  bom: fc.boolean(),
  ended: fc.boolean(),
});

const needsQuotes = (text: string): boolean =>
  text === '' || /^[\s\-?:,[\]{}#&*!|>'"%@`]|[\s:]$|: | #|[,[\]{}"]/.test(text);

class Writer {
  private turn = 0;
  private comments = 0;

  constructor(private readonly hand: Hand) {}

  private chance(of: number): boolean {
    return this.hand.noise[this.turn++ % this.hand.noise.length]! < of;
  }

  private scalar(text: string): string {
    if (text === '') return this.chance(6) ? '' : '""';
    if (text === '[]' || text === '~') return text;
    if (needsQuotes(text)) return JSON.stringify(text);
    return this.chance(1) ? `'${text.replaceAll("'", "''")}'` : text;
  }

  private key(text: string): string {
    return needsQuotes(text) || this.chance(1) ? JSON.stringify(text) : text;
  }

  private flow(tree: Tree): string {
    if ('text' in tree) return this.scalar(tree.text) || '""';
    const pad = this.chance(8) ? ' ' : '';
    if ('list' in tree) return `[${pad}${tree.list.map((item) => this.flow(item)).join(', ')}${pad}]`;
    return `{${pad}${tree.map.map(([key, value]) => `${this.key(key)}: ${this.flow(value)}`).join(this.chance(2) ? ',   ' : ', ')}${pad}}`;
  }

  private tail(): string {
    return this.chance(2) ? `${this.chance(6) ? ' ' : '     '}# c${++this.comments}` : this.chance(1) ? '  ' : '';
  }

  private above(indent: number): string {
    return this.chance(1) ? `${' '.repeat(indent)}# c${++this.comments}\n` : this.chance(1) ? '\n' : '';
  }

  /** What follows a colon or dash, to the end of its last line. */
  private value(tree: Tree, indent: number): string {
    const items = 'map' in tree ? tree.map : 'list' in tree ? tree.list : [];
    if ('text' in tree || tree.flow || items.length === 0) {
      const written = 'text' in tree ? this.scalar(tree.text) : this.flow(tree);
      return `${written === '' ? '' : (this.chance(1) ? '   ' : ' ') + written}${this.tail()}\n`;
    }
    return `${this.tail()}\n${this.block(tree, indent)}`;
  }

  block(tree: Tree, indent: number): string {
    const pad = ' '.repeat(indent);
    if ('text' in tree) return `${pad}${this.scalar(tree.text)}\n`;
    if ('list' in tree) return tree.list.map((item) => this.above(indent) + pad + this.item(item, indent)).join('');
    return tree.map
      .map(
        ([key, value]) => `${this.above(indent)}${pad}${this.key(key)}:${this.value(value, indent + this.hand.step)}`,
      )
      .join('');
  }

  /** A map in a list mostly begins behind its dash. */
  private item(tree: Tree, indent: number): string {
    if ('map' in tree && !tree.flow && tree.map.length > 0 && this.chance(9))
      return `- ${this.block(tree, indent + 2)
        .replace(/^(?:\s*#[^\n]*\n|\s*\n)*/, '')
        .trimStart()}`;
    return `-${this.value(tree, indent + this.hand.step)}`;
  }
}

export function write(tree: Tree, hand: Hand): string {
  const written = new Writer(hand).block(tree, 0);
  const text = hand.ended ? written : written.replace(/\n$/, '');
  return (hand.bom ? '\ufeff' : '') + text.replaceAll('\n', hand.eol);
}

export interface Written {
  readonly text: string;
  readonly hand: Hand;
}

const written = (trees: fc.Arbitrary<Tree>): fc.Arbitrary<Written> =>
  fc.record({ tree: trees, hand: hands }).map(({ tree, hand }) => ({ text: write(tree, hand), hand }));

export const builds = written(buildTrees);
export const partFiles = written(partTrees);

/** A text with a few pieces put in, taken out or doubled, as on the way from one state to another. */
export const broken = (texts: fc.Arbitrary<Written>): fc.Arbitrary<string> =>
  fc
    .record({
      from: texts,
      blows: fc.array(
        fc.record({
          at: fc.nat(),
          cut: fc.nat({ max: 12 }),
          put: fc.constantFrom(
            '',
            '',
            '[',
            '}',
            ': ',
            '- ',
            '"',
            "'",
            '\n',
            '\r',
            '\t',
            '  ',
            '&a ',
            '*a',
            '<<: *a',
            '!t ',
            '|\n',
            '\ud83c',
            '\udf0a',
            '🌊',
            '\0',
            '\u202e',
            '# ',
            '---\n',
            '...\n',
            '? ',
            '%YAML 1.1\n',
            '__proto__: ',
          ),
        }),
        { minLength: 1, maxLength: 4 },
      ),
    })
    .map(({ from, blows }) =>
      blows.reduce((text, { at, cut, put }) => {
        const start = at % (text.length + 1);
        return text.slice(0, start) + put + text.slice(start + cut);
      }, from.text),
    );
