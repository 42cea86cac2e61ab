// Reads a text as YAML 1.2 into nodes and problems; whatever the text, it never throws.
import { Composer, visit } from 'yaml';
import type { CST, Document, YAMLError } from 'yaml';
import { clampSpan } from '../text/span';
import type { Span } from '../text/span';
import { buildNodes } from './build';
import { faultsOf } from './faulty-lines';
import { readJson } from './json';
import { lineEndAt } from './layout';
import { withCommas, limits, readTokens } from './limits';
import { besideComma, commasMissing, type LibraryError } from './missing-commas';
import type { Node, Parsed, Problem } from './nodes';
import { isPlainText, readPlain } from './plain';

// Reported by us in our own words, with the tag's node.
const tagCodes = new Set(['TAG_RESOLVE_FAILED', 'BAD_COLLECTION_TYPE']);

const mostErrors = limits.syntaxProblems * 10;

/**
 * Reads one document. Bad text gives problems and as many nodes as can be had. Only the first of
 * several documents is read. Problems come in order of place, their spans inside the text.
 */
export function parse(text: string): Parsed {
  const root = readPlain(text) ?? plainJson(text);
  return root ? { text, root, problems: [] } : parseAny(text);
}

/** JSON of which the library reads the same. */
function plainJson(text: string): Node | undefined {
  const json = isPlainText(text) ? readJson(text) : undefined;
  return json?.isYaml ? json.root : undefined;
}

/** The same by the library, whatever stands in the text. */
export function parseAny(text: string): Parsed {
  const conflict = conflictIn(text);
  if (conflict) return { text, root: undefined, problems: [conflict] };
  const { tokens, extra, refused } = readTokens(text);
  if (refused) return { text, root: undefined, problems: [clamped(text, refused)] };
  const problems: Problem[] = [];
  const { document, untold } = compose(tokens, text, problems);
  const { broken, all, commas } = syntaxErrors(document, text, untold);
  if (extra !== undefined) {
    problems.push({
      code: 'several-documents',
      message: 'A second document begins here; Fettle reads only the first, so give this one a file of its own.',
      span: { start: extra, end: extra + 3 },
    });
  }
  const root = document && buildNodes(document, text, broken, problems);
  const told = problems.filter(({ span }) => commas.length === 0 || !besideComma(span, commas, text));
  const placed = [...told, ...all].map((problem) => clamped(text, problem)).sort((a, b) => a.span.start - b.span.start);
  return { text, root, problems: placed };
}

const conflictMarks = [/^<{7}(?: |\r?$)/m, /^={7}\r?$/m, /^>{7}(?: |\r?$)/m] as const;

/** Two versions that a merge left beside each other: which holds is nobody’s to guess, so nothing is read. */
function conflictIn(text: string): Problem | undefined {
  if (!text.includes('<<<<<<<')) return undefined;
  let at = 0;
  const starts = conflictMarks.map((mark) => {
    const found = text.slice(at).search(mark);
    at += Math.max(found, 0);
    return found < 0 ? -1 : at;
  });
  if (starts.includes(-1)) return undefined;
  const [start] = starts as [number];
  const ends = /\r|\n|$/.exec(text.slice(start))!.index;
  return {
    code: 'yaml-syntax',
    message:
      'A merge left two versions of this text beside each other here, and nothing of the file is read; keep one of ' +
      'them, and take the lines with <<<<<<<, ======= and >>>>>>> out.',
    span: { start, end: start + ends },
  };
}

function clamped(text: string, problem: Problem): Problem {
  return { ...problem, span: clampSpan(text, problem.span.start, problem.span.end) };
}

type OnError = (source: unknown, code: string, message: string, warning?: boolean) => void;

/** The library's document; `untold` counts the errors past those worth making. */
function compose(
  tokens: readonly CST.Token[],
  text: string,
  problems: Problem[],
): { document: Document.Parsed | undefined; untold: number } {
  // With the failsafe schema every scalar is text, and nothing is tried against number patterns.
  const composer = new Composer({
    version: '1.2',
    schema: 'failsafe',
    uniqueKeys: false,
    strict: true,
    merge: false,
    resolveKnownTags: false,
    logLevel: 'silent',
  });
  // Each error the library makes takes a stack trace: a flood of them would take seconds. It has no
  // option against that, so its handler is wrapped.
  const handler = composer as unknown as { onError: OnError };
  const { onError } = handler;
  let made = 0;
  handler.onError = (...error) => {
    if (++made <= mostErrors) onError(...error);
  };
  let streamErrors = 0;
  const passed = function* (): Generator<CST.Token> {
    for (const token of readAs12(tokens, problems)) {
      if (token.type !== 'error' || ++streamErrors <= mostErrors) yield token;
    }
  };
  const [document] = composer.compose(passed(), true, text.length);
  const untold = Math.max(0, made - mostErrors) + Math.max(0, streamErrors - mostErrors);
  return { document: document as Document.Parsed | undefined, untold };
}

/** Reports `%YAML 1.1` and hands it on as 1.2: the older rules would read `no` and `1:30` differently. */
function* readAs12(tokens: readonly CST.Token[], problems: Problem[]): Generator<CST.Token> {
  for (const token of tokens) {
    if (token.type !== 'directive' || !/^%YAML[ \t]+1\.1(?=\s|$)/.test(token.source)) {
      yield token;
      continue;
    }
    const span = { start: token.offset, end: token.offset + token.source.length };
    problems.push({
      code: 'yaml-1.1-asked-for',
      message: 'This line asks for YAML 1.1, but Fettle reads by the rules of 1.2; take the line out, or write 1.2.',
      span,
    });
    yield { ...token, source: token.source.replace('1.1', '1.2') };
  }
}

/** A quote that is not closed is told where it opens: the library tells it where the text has come to its end. */
function fromOpening(error: YAMLError, document: Document.Parsed | undefined, text: string): LibraryError {
  if (!document || !/^Missing closing ["']quote/.test(error.message)) return error;
  let opening: number | undefined;
  visit(document, {
    Scalar: (_, { type, range }) => {
      if (!type?.startsWith('QUOTE') || range?.[1] !== error.pos[0]) return undefined;
      [opening] = range;
      return visit.BREAK;
    },
  });
  if (opening === undefined) return error;
  return { code: error.code, message: error.message, pos: [opening, lineEndAt(text, opening)] };
}

/** Syntax errors as problems, one a place and at most so many; where there are more, `broken` is the whole text. */
function syntaxErrors(
  document: Document.Parsed | undefined,
  text: string,
  untold: number,
): { broken: Span[]; all: Problem[]; commas: readonly Span[] } {
  const found: YAMLError[] = [...(document?.errors ?? []), ...(document?.warnings ?? [])];
  // Past a tab that indents, nothing stands where it should: one finding says so, none guesses at the rest.
  const tab = Math.min(...found.filter(({ code }) => code === 'TAB_AS_INDENT').map(({ pos }) => pos[0]));
  const errors = found.filter(({ code, pos }) => pos[0] < tab || (code === 'TAB_AS_INDENT' && pos[0] === tab));
  const commas = commasMissing(errors, text);
  const all = errors
    .filter(({ code }) => !tagCodes.has(code))
    .flatMap((error) =>
      faultsOf(fromOpening(error, document, text), errors, commas, text).map(
        (fault): Problem => ({
          code: 'yaml-syntax',
          ...fault,
          ...(error.code === 'TAB_AS_INDENT' && { tabs: true as const }),
        }),
      ),
    )
    .sort((a, b) => a.span.start - b.span.start)
    .filter(({ span }, index, sorted) => index === 0 || span.start !== sorted[index - 1]!.span.start);
  const places = [...all.map(({ span }) => span), ...errors.map(({ pos }) => clampSpan(text, pos[0], pos[1]))];
  const broken = tab < Infinity ? [{ start: 0, end: text.length }] : places;
  if (all.length <= limits.syntaxProblems) return { broken, all, commas: [...commas.values()] };
  const rest = all.splice(limits.syntaxProblems);
  const message =
    `There are ${withCommas(rest.length + untold)} more places from here on that cannot be read as YAML; mend ` +
    'those above first.';
  all.push({ code: 'limits-reached', message, span: rest[0]!.span });
  return { broken: [{ start: 0, end: text.length }], all, commas: [] };
}
