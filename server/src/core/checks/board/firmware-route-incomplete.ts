// What the planned way of updating the firmware needs to have said.
import type { Build } from '../../build/build';
import { drivenByCard } from '../../figures/display';
import { arriving, olderStarts, plannedUpdate, processorListed } from '../../figures/firmware';
import { missing } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
import { agree, all, any, fits, given, lacking, sure, type Truth } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { sameFileOnFat } from '../../trade/firmware';
import type { Value } from '../../yaml';
import { check } from '../check';
import { atKey, outcome, put, target, type Outcome, type Reporter } from '../kit';

type Board = NonNullable<Build['parts']['board']>;
type Update = NonNullable<ReturnType<typeof plannedUpdate>>;

export default check({
  id: 'firmware-route-incomplete',
  area: 'board',
  grade: 'stop',
  what:
    'The planned firmware update says all that its way needs: stick, file system, port, file name and ' +
    'cables; or which older processor, and that it gives a picture.',
  why:
    'An update without a processor shows nothing on a screen: a wrong file system, port or file name only ' +
    'leaves the light dark.',
  source: 'common practice: board makers’ handbooks on updating without a processor',
  examples: [
    {
      faulty: `
parts:
  board:
    firmware:
      update-without-processor: true
      update-port: FLASH
      update-file: B7.CAP
      update-cables: [24-pin]
bench:
  firmware-update:
    to: "1.20"
    by: stick without processor
    stick: { filesystem: exFAT, port: FLASH, file-name: B7.CAP }
#                        ^^^^^
    cables: [24-pin]
`,
      mended: `
parts:
  board:
    firmware:
      update-without-processor: true
      update-port: FLASH
      update-file: B7.CAP
      update-cables: [24-pin]
bench:
  firmware-update:
    to: "1.20"
    by: stick without processor
    stick: { filesystem: FAT32, port: FLASH, file-name: B7.CAP }
    cables: [24-pin]
`,
    },
  ],
  test(build, report) {
    const { board } = build.parts;
    const update = plannedUpdate(build);
    if (!board || !update) return;
    const since = processorListed(build)?.line?.since.value;
    if (update.by.value !== 'service')
      report(
        needed(
          build,
          update.to,
          said(update.to, 'version of the planned update'),
          sentence`The planned firmware update does not say to which version it goes.`,
          since,
        ),
      );
    if (update.by.value === undefined)
      report(
        needed(
          build,
          update.by,
          said(update.by, 'way of the planned update'),
          sentence`The planned firmware update does not say by which way.`,
        ),
      );
    if (update.by.value === 'stick without processor') stickRoute(build, board, update, report);
    if (update.by.value === 'older processor') olderRoute(build, board, update, report);
  },
});

const keysTo = (fact: Fact<unknown>): string[] => fact.path.split('.');

/** What the keys are called in a sentence, where their own name does not read well. */
const names: Readonly<Record<string, string>> = {
  to: 'target',
  by: 'way',
  filesystem: 'file system',
  'file-name': 'file name',
};

/**
 * One thing the way needs; `value` is what to write where it is known. What is not said at all is looked for at the
 * update.
 */
function needed(build: Build, fact: Fact<unknown>, truth: Truth, broken: Sentence, value?: Value): Outcome {
  const key = build.file.bench['firmware-update'].$.entry?.keySpan;
  const place = fact.node || !key ? atKey(build, fact) : target(fact.path, build.doc, key);
  return outcome(place, given(truth, build.file.bench['firmware-update'].by), {
    broken: () => broken,
    fixes: () =>
      value === undefined
        ? []
        : [
            put(
              build.doc,
              keysTo(fact),
              value,
              `Set the ${names[fact.key] ?? fact.key} to ${Array.isArray(value) ? value.join(' and ') : String(value)}`,
            ),
          ],
  });
}

/** Said at all; a word that cannot be read is reported as such, and leaves this open. */
function said(fact: Fact<unknown>, what: string): Truth {
  if (fact.value !== undefined) return sure(true, fact);
  return fact.text === '' ? sure(false, fact) : lacking([missing(fact, what)], fact);
}

function stickRoute(build: Build, board: Board, update: Update, report: Reporter): void {
  const { filesystem, port, 'file-name': name } = update.stick;
  const { 'update-port': ownPort, 'update-file': ownName, 'update-cables': ownCables } = board.part.firmware;
  report(
    needed(
      build,
      filesystem,
      all(
        said(filesystem, 'file system of the stick'),
        sure(filesystem.value === undefined || filesystem.value === 'FAT32', filesystem),
      ),
      filesystem.value === undefined
        ? sentence`The stick’s file system is not said; an update without processor reads FAT32.`
        : sentence`The stick is formatted with ${filesystem}; an update without processor reads FAT32.`,
      'FAT32',
    ),
  );
  report(
    needed(
      build,
      port,
      sameAs(port, ownPort, `port for updates of ${board.label}`, (a, b) => a.toUpperCase() === b.toUpperCase()),
      differs(port, ownPort, 'the USB port for the stick', board),
      ownPort.value,
    ),
  );
  report(
    needed(
      build,
      name,
      sameAs(name, ownName, `file name for updates of ${board.label}`, sameFileOnFat),
      differs(name, ownName, 'the name of the file on the stick', board),
      ownName.value,
    ),
  );
  const wanted = ownCables.value?.flatMap((cable) => cable.value ?? []);
  const planned = update.cables.value?.flatMap((cable) => cable.value ?? []) ?? [];
  const missingFacts = wanted?.filter((cable) => !planned.includes(cable)) ?? [];
  report(
    needed(
      build,
      update.cables,
      wanted
        ? sure(missingFacts.length === 0, update.cables, ownCables)
        : lacking([missing(ownCables, `cables for updates of ${board.label}`)], update.cables),
      sentence`The update without processor needs ${missingFacts.join(' and ')} plugged in as well.`,
      wanted,
    ),
  );
}

/** A value that the build must say, and say as the board’s handbook does. */
function sameAs(fact: Fact<string>, own: Fact<string>, what: string, same: (a: string, b: string) => boolean): Truth {
  return fact.value === undefined ? said(fact, what) : agree(fact, '', own, what, same);
}

function differs(fact: Fact<string>, own: Fact<string>, what: string, board: Board): Sentence {
  if (fact.value === undefined) return sentence`The planned update does not say ${what}.`;
  return sentence`${fact} is planned as ${what}; ${board.label} wants ${own}.`;
}

function olderRoute(build: Build, board: Board, update: Update, report: Reporter): void {
  const older = update['older-processor'];
  const named = older.family.value !== undefined || older.model.value !== undefined;
  if (!named)
    return report(
      needed(
        build,
        older.family,
        sure(false, older.family),
        sentence`The planned update does not say which older processor is on hand.`,
      ),
    );
  const spoken = older.family.value === undefined ? older.model : older.family;
  report(
    needed(
      build,
      spoken,
      olderStarts(board, older),
      sentence`${board.label} does not start ${spoken} with the firmware it arrives with (${arriving(board)}).`,
    ),
  );
  const picture = any(
    drivenByCard(build),
    fits(older.graphics, 'graphics of the older processor', (has) => has),
  );
  report(
    needed(
      build,
      older.graphics,
      picture,
      sentence`The older processor drives no display and no graphics card does, so the update cannot be seen.`,
    ),
  );
}
