// Lines that lack their colon or the blank behind it, or begin too far in. The library reads such a line and the next
// as one long name, or as a map within a value; what is at fault is the line.
import { clampSpan, type Span } from '../text/span';
import { lineStartAt } from './layout';
import { plainMessage } from './messages';
import { commaFaults, type Fault, type LibraryError } from './missing-commas';

/** A key and its value with nothing between the colon and the value; an address is none. */
const withoutBlank = /^([A-Za-z][\w.-]*:)([^\s/].*)$/;

/** Behind a blank, a value that begins so would be something else to YAML than text. */
const beginsWithSign = /^[?:&*!|>%@`#,\]}]/;

/** The faults behind one of the library’s errors; `others` are all of them. */
export function faultsOf(
  error: LibraryError,
  others: readonly LibraryError[],
  commas: ReadonlyMap<LibraryError, Span>,
  text: string,
): Fault[] {
  const { code, message, pos } = error;
  const span = clampSpan(text, pos[0], pos[1]);
  const missing = commaFaults(error, commas, text);
  if (missing) return missing;
  const isWithin = (one: LibraryError, named: string): boolean => one.code === named && one.pos[0] === pos[0];
  if (code === 'BLOCK_AS_IMPLICIT_KEY') {
    const long = others.find((one) => isWithin(one, 'MULTILINE_IMPLICIT_KEY'));
    const last = long && lastLineOf(clampSpan(text, ...long.pos), text);
    if (last) return [{ message: plainMessage('BAD_INDENT', tooFarIn), span: last }];
  }
  if (code === 'MULTILINE_IMPLICIT_KEY' && others.some((one) => isWithin(one, 'BLOCK_AS_IMPLICIT_KEY'))) return [];
  if (code === 'MULTILINE_IMPLICIT_KEY' && /[^\s"']/.test(text.charAt(span.start))) {
    const lines = linesOf(span, text);
    const last = lines.pop();
    if (last && lines.length > 0 && beginsLine(span, text)) return lines.map((line) => faultOf(line, text));
  }
  if (/^Implicit map keys need to be followed/.test(message)) {
    const [line] = linesOf(span, text);
    if (line && withoutBlank.test(text.slice(line.start, line.end))) return [faultOf(line, text)];
  }
  return [{ message: plainMessage(code, message), span }];
}

const tooFarIn = 'All mapping items must start at the same column';

const faultOf = (line: Span, text: string): Fault =>
  lineWithoutBlank(line, text) ?? { message: plainMessage('', 'Implicit map keys need to be followed'), span: line };

/** The fault of a line, or of what stands on one, that lacks the blank behind its colon. */
export function lineWithoutBlank(line: Span, text: string): Fault | undefined {
  const [, key, value] = withoutBlank.exec(text.slice(line.start, line.end)) ?? [];
  if (key === undefined || value === undefined) return undefined;
  const at = line.start + key.length;
  return {
    message: plainMessage('', 'Missing space after :'),
    span: line,
    ...(!beginsWithSign.test(value) && {
      meant: { text: `${key} ${value}`, edit: { span: { start: at, end: at }, text: ' ' } },
    }),
  };
}

/** Whether nothing but dashes stands before a place on its line; within braces something does. */
const beginsLine = ({ start }: Span, text: string): boolean =>
  /^[ \t-]*$/.test(text.slice(lineStartAt(text, start), start));

/** The lines of a span that say anything, each without the blanks around it. */
function linesOf({ start, end }: Span, text: string): Span[] {
  return [...text.slice(start, end).matchAll(/[^\s][^\r\n]*/g)].map(({ 0: line, index }) => ({
    start: start + index,
    end: start + index + line.trimEnd().length,
  }));
}

/** The last line of a name that stands on several: where its colon is, and all that belongs to it. */
export const lastLineOf = (span: Span, text: string): Span | undefined => {
  const lines = linesOf(span, text);
  return lines.length > 1 ? lines.at(-1) : undefined;
};
