// Findings in a line each, for problem matchers of editors and for grep: place, grade, sentence, the check’s id.
import { safe } from './layout';
import { listed, type FormatOptions, type Section } from './section';

/** `desk.pcbuild.yaml:4:11: stop: The cooler stands 168 mm tall; … (cooler-too-tall)`, both counted from one. */
export function sectionLines(section: Section, look: FormatOptions): string {
  return listed(section, look)
    .map(({ underline: { doc, span }, grade, accepted, said, id }) => {
      const { line, character } = doc.lines.positionAt(span.start);
      const word = accepted ? 'accepted' : grade;
      const place = `${placeOf(look.shown(doc))}:${line + 1}:${character + 1}`;
      return `${safe(`${place}: ${word}: ${look.language.said(said)}`)} (${id})\n`;
    })
    .join('');
}

/** A path at the start of a line that the reader of a job’s log would take for a command of its own. */
const placeOf = (path: string): string => (/^\s*(?:::|##)/.test(path) ? `./${path}` : path);
