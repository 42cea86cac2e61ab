// A planned update to a version that is older than what the board arrives with.
import type { Build } from '../../build/build';
import {
  arriving,
  atLeastVersion,
  plannedUpdate,
  processorListed,
  versionList,
  versionsCompared,
} from '../../figures/firmware';
import { sentence } from '../../figures/sentence';
import { given } from '../../figures/truth';
import { check } from '../check';
import { atKey, change, outcome, type FixIdea } from '../kit';

export default check({
  id: 'firmware-downgrade',
  area: 'board',
  grade: 'shortfall',
  what: 'The planned update goes to no older version than the board arrives with.',
  why:
    'Many boards refuse an older version, or only take it by another way; what newer ones mended comes back ' +
    'with it.',
  source: 'common practice: board makers’ notes beside their firmware versions',
  limits: ['Whether a board takes an older version at all no file states; its maker’s notes tell.'],
  examples: [
    {
      faulty: `
parts:
  board: { firmware: { arriving: "1.20", versions: ["1.02", "1.08", "1.20"] } }
bench:
  firmware-update: { to: "1.08", by: service }
#                        ^^^^^^
`,
      mended: `
parts:
  board: { firmware: { arriving: "1.20", versions: ["1.02", "1.08", "1.20"] } }
bench:
  firmware-update: { to: "1.20", by: service }
`,
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    const to = plannedUpdate(build)?.to;
    if (!board || to?.value === undefined) return;
    const from = arriving(board);
    // Unstated, the board arrives with any version: nothing speaks of a downgrade then.
    if (from.value === undefined) return;
    const needed = until(build);
    report(
      outcome(
        atKey(build, to),
        given(
          atLeastVersion(board, to, 'the update’s target', from, `firmware ${board.label} arrives with`),
          processorListed(build)?.line?.until,
        ),
        {
          // Where a newer version has withdrawn the processor, going back is the plan.
          grade: needed ? 'note' : undefined,
          broken: () =>
            sentence`The update goes to ${to}, which is older than ${from}, with which ${board.label} arrives; many
              boards refuse that. ${needed ? 'Look up whether this one takes it.' : 'Plan a newer version, or none.'}`,
          fixes: () => (needed ? [] : newest(build)),
        },
      ),
    );
  },
});

/** Whether the version that the board arrives with no longer starts the processor. */
function until(build: Build): boolean {
  const { board } = build.parts;
  const last = processorListed(build)?.line?.until;
  if (!board || last?.value === undefined) return false;
  const compared = versionsCompared(board, arriving(board), '', last, '');
  return 'order' in compared && compared.order > 0;
}

function newest(build: Build): FixIdea[] {
  const { board } = build.parts;
  const to = plannedUpdate(build)?.to;
  const last = board && versionList(board).at(-1);
  const fix = to && last !== undefined ? change(to, last, `Set the target to ${last}`) : undefined;
  return fix ? [fix] : [];
}
