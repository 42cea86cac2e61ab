// A finished sheet in another language: its own words are told by the templates of the language, what stands in files
// stays as it is.
import { cautionWords } from '../../core/checks/page';
import type { Finding } from '../../core/judge/finding';
import { CAUTIONS } from '../../core/trade/cautions';
import type { Language } from '../../core/words/language';
import { pictureIn } from './pictures/in-language';
import type { Kept } from './kept';
import type { Block, Body, Cell, Line, Row, Sheet, SheetCaution, SheetFinding, SheetStep } from './model';

export function sheetIn(language: Language, sheet: Sheet, kept: Kept): Sheet {
  if (language.tag === 'en') return sheet;
  const told = new Telling(language);
  return {
    ...sheet,
    verdict: language.plain(sheet.verdict),
    facts: sheet.facts.map((line) => told.line(line)),
    write: sheet.write.map((label) => language.plain(label)),
    blocks: blocksIn(language, sheet.blocks, kept),
  };
}

/** Blocks that are as they were are the same ones in the language too. */
export function blocksIn(language: Language, blocks: readonly Block[], kept: Kept): readonly Block[] {
  if (language.tag === 'en') return blocks;
  const told = new Telling(language);
  return blocks.map((block) => kept.of(block.bodies, () => told.block(block)));
}

/** Findings as they are said in the language. */
export function findingsIn(language: Language, findings: readonly Finding[]): readonly Finding[] {
  if (language.tag === 'en') return findings;
  return findings.map((finding) => ({
    ...finding,
    said: { ...finding.said, text: language.said(finding.said) },
  }));
}

class Telling {
  private known: ReadonlyMap<string, string> | undefined;

  constructor(private readonly language: Language) {}

  block(block: Block): Block {
    return { ...block, heading: this.text(block.heading), bodies: block.bodies.map((body) => this.body(body)) };
  }

  line<L extends Line>(line: L): L {
    return { ...line, text: this.text(line.text) };
  }

  private readonly text = (text: string): string => this.language.plain(text);

  /** A check’s limit, whose words of the format stand in quotes on a sheet. */
  private limit(text: string): string {
    const written = text.replaceAll('“', '`').replaceAll('”', '`');
    const own = this.language.word(written);
    return own === written ? this.text(text) : own.replace(/`([^`]*)`/g, '„$1“');
  }

  private body(body: Body): Body {
    switch (body.type) {
      case 'lines':
        return { ...body, lines: body.lines.map((line) => this.line(line)) };
      case 'ticks':
        return {
          ...body,
          ...(body.title === undefined ? {} : { title: this.text(body.title) }),
          items: body.items.map((item) => ({
            ...this.line(item),
            ...(body.small ? { text: this.limit(item.text) } : {}),
            ...(item.detail === undefined ? {} : { detail: this.text(item.detail) }),
            ...(item.write === undefined ? {} : { write: this.text(item.write) }),
          })),
        };
      case 'table':
        return {
          ...body,
          caption: this.text(body.caption),
          columns: body.columns.map(this.text),
          rows: body.rows.map((row) => this.row(row)),
        };
      case 'steps':
        return { ...body, steps: body.steps.map((step) => this.step(step)) };
      case 'cautions':
        return { ...body, cautions: body.cautions.map((one) => this.caution(one)) };
      case 'finding':
        return { ...body, finding: this.finding(body.finding) };
      case 'picture':
        return { ...body, picture: pictureIn(this.language, body.picture) };
      case 'write':
        return { ...body, labels: body.labels.map(this.text) };
    }
  }

  private row(row: Row): Row {
    const cell = (one: Cell): Cell => (one === 'write' ? one : this.line(one));
    const [first, ...others] = row.cells;
    return { ...row, cells: [this.line(first), ...others.map(cell)] };
  }

  private step(step: SheetStep): SheetStep {
    return {
      ...step,
      title: this.text(step.title),
      cautions: step.cautions.map((one) => this.caution(one)),
      things: step.things.map((line) => this.line(line)),
      notes: step.notes.map(this.text),
      reasons: step.reasons.map(this.text),
      ...(step.write === undefined ? {} : { write: this.text(step.write) }),
    };
  }

  /** Cautions are told one by one on a sheet: those of which both languages have as many sentences, in their order. */
  private get sentences(): ReadonlyMap<string, string> {
    this.known ??= new Map(
      Object.keys(CAUTIONS)
        .flatMap((id) => cautionWords(id)?.sentences ?? [])
        .flatMap((whole) => pairsOf(sentencesOf(whole), sentencesOf(this.language.word(whole)))),
    );
    return this.known;
  }

  /** The signal word stays the key of its look; its own word stands beside it. */
  private caution(caution: SheetCaution): SheetCaution {
    return {
      ...caution,
      called: this.language.word(caution.word),
      sentences: caution.sentences.map((one) => this.sentences.get(one) ?? this.text(one)),
    };
  }

  private finding(finding: SheetFinding): SheetFinding {
    const { accepted, caution, mends, working } = finding;
    return {
      ...finding,
      ...(accepted === undefined ? {} : { accepted: this.text(accepted) }),
      ...(caution ? { caution: this.caution(caution) } : {}),
      mends: mends.map(this.text),
      working: working.map((row) => ({
        ...this.line(row),
        value: this.language.label(row.value),
        from: this.text(row.from),
      })),
    };
  }
}

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=\.) /);

const pairsOf = (some: readonly string[], others: readonly string[]): readonly (readonly [string, string])[] =>
  some.length === others.length ? some.map((one, i) => [one, others[i]!] as const) : [];
