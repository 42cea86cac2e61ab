// Texts that were put together in English before a language was known: titles of fixes, labels of figures, lines of the
// bench sheet. Each is held against the templates of a language, and what was put in is told by itself.

/** A template in pieces: what stands before, between and after what is put in. */
interface Template {
  readonly literals: readonly string[];
  readonly own: string;
}

export class PlainTexts {
  private readonly told = new Map<string, string>();
  private readonly byStart = new Map<string, Template[]>();
  private readonly open: Template[] = [];
  /** What is put into a template that has no colon stands on one side of it. */
  private readonly withColon: readonly Template[];
  /** What a fix brings stands in brackets behind its title, whichever words that has. */
  private readonly behind: Template[] = [];

  constructor(
    table: Readonly<Record<string, string>>,
    /** A text that is known as it stands. */
    private readonly known: (text: string) => string | undefined,
    /** What is put in, and what is no template’s. */
    private readonly inner: (text: string) => string,
  ) {
    for (const [english, own] of Object.entries(table)) {
      const literals = english.split(/\{\d+\}/);
      if (literals.length > 1) this.listOf(firstWord(literals[0]!)).push({ literals, own });
      if (literals[0] === '' && literals[1]?.startsWith(' (brings ')) this.behind.push({ literals, own });
    }
    for (const list of [...this.byStart.values(), this.open]) list.sort((a, b) => weight(b) - weight(a));
    this.withColon = this.open.filter(({ literals }) => literals.some((literal) => literal.includes(': ')));
  }

  /** The text in the language; as it is where no template has it. */
  said(text: string): string {
    const known = this.told.get(text);
    if (known !== undefined) return known;
    const said = this.whole(text) ?? (isProse(text) ? this.prose(text) : this.inParts(text));
    if (this.told.size >= mostKept) this.told.clear();
    this.told.set(text, said);
    return said;
  }

  /** A text that is known, also where it begins a line, or a sentence ends with it. */
  exact(text: string): string | undefined {
    const own = this.known(text) ?? withoutStop(this.known(`${text}.`));
    if (own !== undefined) return own;
    const within = lowerFirst(text);
    return within === text ? undefined : upperFirst(this.known(within));
  }

  /** A text by a template into which one thing is put; where it begins a line, too. */
  template(text: string): string | undefined {
    const own = this.matched(text, this.beginning(text), isOne) ?? this.matched(text, this.open, isOne);
    const within = lowerFirst(text);
    return own ?? (within === text ? undefined : upperFirst(this.matched(within, this.beginning(within), isOne)));
  }

  private beginning(text: string): readonly Template[] {
    return this.byStart.get(firstWord(text)) ?? [];
  }

  /** A template into which one thing is put goes before a list told item by item, and one that takes a list after. */
  private whole(text: string): string | undefined {
    if (text.startsWith(formulaSign)) return formulaSign + this.said(text.slice(formulaSign.length));
    const own = this.beginning(text);
    const open = text.includes('; ') ? [] : text.includes(': ') ? this.withColon : this.open;
    return (
      this.exact(text) ??
      this.ended(text) ??
      this.matched(text, this.behind) ??
      this.matched(text, own, isOne) ??
      this.matched(text, open, isOne) ??
      this.listed(text) ??
      this.matched(text, own, isWhole) ??
      this.matched(text, open, endsAsList)
    );
  }

  /** A sentence that is known without its full stop: the same words are put into others. */
  private ended(text: string): string | undefined {
    const own = isProse(text) ? this.exact(text.slice(0, -1)) : undefined;
    return own === undefined ? undefined : `${own}.`;
  }

  /** A sentence is told whole or left in English: half of each would be worse. */
  private prose(text: string): string {
    const sentences = this.bySentence(text);
    if (sentences !== undefined) return sentences;
    const line = text.slice(0, -1);
    const within = this.whole(line) ?? this.begun(line) ?? (isLine(line) ? this.inParts(line) : undefined);
    return within === undefined ? text : `${within}.`;
  }

  /** A label that stands as a sentence: it begins with a capital and has no verb. */
  private begun(text: string): string | undefined {
    const within = lowerFirst(text);
    if (within === text) return undefined;
    const own = this.whole(within) ?? (verb.test(text) ? undefined : this.inner(within));
    return own === within ? undefined : upperFirst(own);
  }

  /** Whether a piece is no name and no label: half of one, or what goes on behind a single word such as `slot`. */
  private isTorn(pieces: readonly string[], literals: readonly string[]): boolean {
    const isWord = literals.length === 2 && /^[a-z]+ $/.test(literals[0]!) && literals[1] === '';
    return pieces.some(
      (one) => (half.test(one) && this.exact(one) === undefined) || (isWord && /^[a-z]+ [a-z]/.test(one)),
    );
  }

  private inParts(text: string): string {
    // What a list or a value follows.
    if (text.endsWith(':') && text.length > 1) return `${this.said(text.slice(0, -1))}:`;
    return this.bySentence(text) ?? this.byParts(text) ?? this.inner(text);
  }

  /** `A, b and c` of which each can be told by itself: a template around all of them would tear them apart. */
  private listed(text: string): string | undefined {
    if (isProse(text) || signs.some((sign) => sign !== ', ' && text.includes(sign))) return undefined;
    const parts = text.split(/(, | and | or )/);
    if (parts.length < 3) return undefined;
    let told = '';
    for (let i = 0; i < parts.length; i += 2) {
      const part = this.said(parts[i]!);
      if (part === parts[i]) return undefined;
      told = i === 0 ? part : this.joined(told, parts[i - 1]!, part);
    }
    return told;
  }

  private joined(head: string, joint: string, rest: string): string {
    const own = this.known(`{0}${joint}{1}`) ?? `{0}${joint}{1}`;
    return own.replace(/\{(\d)\}/g, (_, i) => (i === '0' ? head : rest));
  }

  private matched(
    text: string,
    templates: readonly Template[],
    takes: (pieces: readonly string[], literals: readonly string[]) => boolean = () => true,
  ): string | undefined {
    for (const { literals, own } of templates) {
      const pieces = piecesOf(text, literals);
      // What begins or ends with a joint is half of something else.
      if (pieces && !this.isTorn(pieces, literals) && takes(pieces, literals))
        return own.replace(/\{(\d+)\}/g, (_, i) => this.said(pieces[Number(i)]!));
    }
    return undefined;
  }

  private bySentence(text: string): string | undefined {
    const sentences = text.split(sentenceBreak);
    return sentences.length > 1 ? this.eachSentence(sentences).join(' ') : undefined;
  }

  /** Each by itself, but for several at the beginning that are known together. */
  private eachSentence(sentences: readonly string[]): readonly string[] {
    for (let count = sentences.length - 1; count > 1; count--) {
      const known = this.exact(sentences.slice(0, count).join(' '));
      if (known !== undefined) return [known, ...this.eachSentence(sentences.slice(count))];
    }
    return sentences.map((one) => this.said(one));
  }

  /** What a list, a formula or a line of several things is made of. */
  private byParts(text: string): string | undefined {
    const sign = signs.find((one) => text.includes(one));
    return sign === undefined
      ? undefined
      : text
          .split(sign)
          .map((one) => this.said(one))
          .join(sign);
  }

  private listOf(word: string): Template[] {
    if (word === '') return this.open;
    const known = this.byStart.get(word);
    if (known) return known;
    const list: Template[] = [];
    this.byStart.set(word, list);
    return list;
  }
}

const withoutStop = (text: string | undefined): string | undefined => text?.replace(/\.$/, '');

/** What ends as a sentence does. */
const isProse = (text: string): boolean => text.endsWith('.') && text.includes(' ');

/** A session says the same texts again and again, and others now and then. */
const mostKept = 5000;

const half = /^(?:or|and|of) | (?:or|and|of|in|on|at|by|for|from|to|with|than|as|is|are|no|not|a|an|the)$/;

/** More than one sentence, summand or line. */
const isSeveral = /; |: | [+−×÷] |\. \p{L}/u;
const isList = /, | and | or /;

const isWhole = (pieces: readonly string[]): boolean => !pieces.some((one) => isSeveral.test(one));
const isOne = (pieces: readonly string[]): boolean => isWhole(pieces) && !pieces.some((one) => isList.test(one));

/** Whether only a piece that no words stand behind is a list. */
const endsAsList = (pieces: readonly string[], literals: readonly string[]): boolean =>
  isWhole(pieces) && !pieces.some((one, i) => isList.test(one) && /\p{L}/u.test(literals[i + 1]!));

/** Behind a full stop lines of pictures go on with the name of a part. */
const sentenceBreak = /(?<=\.) (?=\p{L})|(?<=:) (?=\p{Lu})/u;

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

function upperFirst(text: string): string;
function upperFirst(text: string | undefined): string | undefined;
function upperFirst(text: string | undefined): string | undefined {
  return text && text.charAt(0).toUpperCase() + text.slice(1);
}

const weight = ({ literals }: Template): number => literals.join('').length;

/** What begins with a name, as lines of pictures do, and has no verb. */
const isLine = (text: string): boolean => /^\p{Ll}/u.test(text) && !verb.test(text);

const verb = / (?:is|are|was|were|has|have|had|can|cannot|could|does|do|did|may|must|will|failed|fails) /;

const formulaSign = '= ';

/** What stands between parts that are told by themselves, the loosest first. */
const signs = ['; ', ' · ', ': ', ', ', ' + ', ' − ', ' × ', ' ÷ '] as const;

/** Up to the first blank; empty where something is put in before it. */
const firstWord = (text: string): string => text.slice(0, Math.max(text.indexOf(' '), 0));

/** What stands between literals that follow one another in a text, none of it empty. */
function piecesOf(text: string, literals: readonly string[]): string[] | undefined {
  const [first, last] = [literals[0]!, literals.at(-1)!];
  if (!text.startsWith(first) || !text.endsWith(last) || text.length <= first.length + last.length) return undefined;
  const pieces: string[] = [];
  let from = first.length;
  for (const literal of literals.slice(1, -1)) {
    const at = text.indexOf(literal, from + 1);
    if (at < 0) return undefined;
    pieces.push(text.slice(from, at));
    from = at + literal.length;
  }
  const end = text.length - last.length;
  if (end <= from) return undefined;
  return [...pieces, text.slice(from, end)];
}
