// The last lines of a report for a terminal: what was left out, what was found by grade, and what waits for facts.
import type { Language } from '../core/words/language';
import { block } from './layout';
import { settingsText } from './left-out';
import type { FormatOptions } from './section';
import type { Tally, Worst } from './tally';

const worstOrder: readonly Worst[] = ['harm', 'stop', 'shortfall', 'note', 'unknown', 'clear'];

/** The closing lines: what was left out, then findings by grade, builds by worst grade, and what waits for facts. */
export const closingText = (tally: Tally, look: FormatOptions, notRead = 0): string =>
  `${closingLines(tally, look, notRead)
    .flatMap((line) => block(line, 0))
    .join('\n')}\n`;

/** Each as it is, however long. */
export function closingLines(tally: Tally, look: FormatOptions, notRead: number): string[] {
  const hints = [...settingsText(tally.settings, tally.off, look.language), ...hintsOf(tally, look, notRead)];
  const { language } = look;
  const worst = worstOrder
    .filter((grade) => tally.builds[grade] > 0)
    .map((grade) => `${tally.builds[grade]} ${grade}`)
    .join(', ');
  const builds =
    tally.buildCount === 0
      ? language.word('No builds.')
      : tally.buildCount === 1
        ? language.words`1 build: ${worst}.`
        : language.words`${tally.buildCount} builds: ${worst}.`;
  const { unknown } = tally.findings;
  const waits =
    unknown === 1 ? language.word('1 answer waits for facts.') : language.words`${unknown} answers wait for facts.`;
  return [...hints, `${findingsText(tally, language)} ${builds} ${waits}`];
}

function hintsOf(tally: Tally, { language, from, accepted }: FormatOptions, notRead: number): string[] {
  const hints: string[] = [];
  const hint = (count: number, one: () => string, several: () => string): void => {
    if (count > 0) hints.push(count === 1 ? one() : several());
  };
  const { unknown } = tally.findings;
  const lighter = tally.lighterThan(from);
  const { accepted: weighed, notMended, cut, known, recorded, cleared, along } = tally;
  hint(
    along,
    () => language.word('1 file goes with what was named, and is checked with it; --alone leaves it out.'),
    () => language.words`${along} files go with what was named, and are checked with it; --alone leaves them out.`,
  );
  hint(
    notRead,
    () => language.word('1 file or check could not be read or run.'),
    () => language.words`${notRead} files or checks could not be read or run.`,
  );
  hint(
    known,
    () => language.word('1 finding stood before and is not listed.'),
    () => language.words`${known} findings stood before and are not listed.`,
  );
  hint(
    lighter,
    () => language.words`1 finding is lighter than ${from}; --from note lists them.`,
    () => language.words`${lighter} findings are lighter than ${from}; --from note lists them.`,
  );
  hint(
    from === 'unknown' ? 0 : unknown,
    () => language.word('1 answer waits for facts that no file states; --from unknown lists them by fact.'),
    () => language.words`${unknown} answers wait for facts that no file states; --from unknown lists them by fact.`,
  );
  hint(
    accepted ? 0 : weighed,
    () => language.word('1 finding is accepted; --accepted shows it.'),
    () => language.words`${weighed} findings are accepted; --accepted shows them.`,
  );
  hint(
    accepted ? 0 : recorded,
    () => language.word('1 finding is known and let stand; --accepted shows it.'),
    () => language.words`${recorded} findings are known and let stand; --accepted shows them.`,
  );
  hint(
    cleared,
    () => language.word('1 known finding is found no more; recording anew drops it.'),
    () => language.words`${cleared} known findings are found no more; recording anew drops them.`,
  );
  hint(
    notMended,
    () => language.word('Fixes of 1 finding were not looked for; --all-fixes looks for all.'),
    () => language.words`Fixes of ${notMended} findings were not looked for; --all-fixes looks for all.`,
  );
  hint(
    cut,
    () => language.word('1 finding is past the most that is listed of one file.'),
    () => language.words`${cut} findings are past the most that is listed of one file.`,
  );
  return hints;
}

function findingsText(tally: Tally, language: Language): string {
  const counted = countedFindings(tally);
  return counted === '' ? language.word('No findings.') : language.words`Findings: ${counted}.`;
}

/** `1 stop, 2 note`; what waits for facts is not among them. */
export const countedFindings = ({ findings }: Tally): string =>
  worstOrder
    .flatMap((grade) =>
      grade === 'clear' || grade === 'unknown' || findings[grade] === 0 ? [] : [`${findings[grade]} ${grade}`],
    )
    .join(', ');
