// A supply that is opened.
import { sentence } from '../../figures/sentence';
import { fits, sure } from '../../figures/truth';
import { inOneClause } from '../../trade/clauses';
import { check } from '../check';
import { atKey, change, outcome } from '../kit';

/**
 * “Open the supply”, “unscrew its cover”; not “open the case and put the supply in”, “unscrew the supply”, “open the
 * supply’s box”: what is opened stands right behind the verb.
 */
const which = '(?:the |a |an |its |that |this |old |new |faulty |dead |power ){0,6}';
const housing = '(?:cover|housing|lid|shell|top)';
const notIts = "(?!(?:’s|'s)? (?:lead|cable|bag|box|carton|package|packaging|bay|shroud|switch))";
const opens = new RegExp(
  [
    `\\b(?:open|opening|take apart|dismantle)(?: up)? ${which}supply\\b${notIts}`,
    `\\b(?:open|opening|unscrew|unscrewing|remove|lift off|take off|pry off) ${which}supply(?:’s|'s)? ${housing}\\b`,
    `\\b(?:open|unscrew|remove|lift off|take off|pry off|take) ${which}${housing} (?:of|off|from) ${which}supply\\b`,
  ].join('|'),
  'i',
);
const forbids = (note: string): boolean =>
  inOneClause(
    note,
    /\b(?:never|not|no one|nobody|without)\b/i,
    /\b(?:open|take apart|dismantle|unscrew|remove|lift|take|pry)/gi,
  ) !== undefined;

export default check({
  id: 'supply-opened',
  area: 'power',
  grade: 'harm',
  what: 'The supply’s own housing stays closed.',
  why: 'Its capacitors hold up to 400 V after it is unplugged; nothing inside is for a builder to mend.',
  source: 'makers’ handbooks; stored energy E = C U² / 2',
  limits: ['It is judged from `bench.supply-cover` and from the notes of steps, which are read in English ' + 'only.'],
  caution: 'mains-inside-supply',
  examples: [
    {
      faulty: `
bench: { supply-cover: opened }
#                      ^^^^^^
`,
      mended: `
bench: { supply-cover: closed }
`,
    },
  ],
  test(build, report) {
    const cover = build.file.bench['supply-cover'];
    if (cover.entry) {
      report(
        outcome(
          atKey(build, cover),
          fits(cover, 'whether the supply stays closed', (is) => is === 'closed'),
          {
            broken: () => sentence`The supply’s housing is opened; it is to stay closed.`,
            fixes: () => [change(cover, 'closed', 'Leave the supply closed')],
          },
        ),
      );
    }
    for (const step of build.file.steps.value ?? []) {
      const { note } = step;
      if (note.value === undefined || !opens.test(note.value) || forbids(note.value)) continue;
      report(
        outcome(atKey(build, note), sure(false, note), {
          broken: () => sentence`A step opens the supply; it is to stay closed, and a faulty one is replaced whole.`,
        }),
      );
    }
  },
});
