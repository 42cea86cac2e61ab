// The trade’s list of what a good technician looks at, row by row, against the checks that judge it.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checks } from '../../src/core/checks/all';
import { areas, type Area } from '../../src/core/checks/check';
import type { Generator } from './index';

/** Every row of the list, in the area in which it stands there. */
export const rows: Readonly<Record<Area, readonly string[]>> = {
  board:
    words(`socket-differs processor-not-listed firmware-too-old-for-processor firmware-route-incomplete firmware-target-unknown
    firmware-target-too-old firmware-drops-processor firmware-arriving-unstated firmware-fact-old update-risky no-picture board-power-short
    processor-pressed socket-cover-early`),
  cooling:
    words(`paste-missing paste-doubled paste-amount-off paste-dose-vague paste-conducts metal-paste-on-aluminium paste-claim-implausible
    film-left cooler-socket-missing cooler-too-tall cooler-over-memory cooler-over-slot cooler-capacity-short inlet-taken-as-room
    radiator-too-long radiator-too-thick radiator-place-unsupported pump-highest tubes-short fan-holes-differ fan-places-short
    header-overloaded headers-short airflow-short airflow-one-way drive-too-hot drive-too-high dew-on-parts cooler-too-heavy`),
  storage:
    words(`drive-bus-not-carried m2-key-differs m2-length-unsupported m2-too-thick m2-screw-missing drive-slower-than-promised
    drive-in-slow-slot eightfold-slip slot-takes-ports slot-takes-lanes ports-short drive-power-short bays-short data-cables-missing
    boot-drive-not-bootable capacity-short array-capacity-short endurance-short drive-thread-wrong screw-too-deep`),
  memory:
    words(`memory-type-differs memory-shape-differs memory-class-unsupported memory-slots-short module-too-large memory-over-limit
    memory-slots-wrong memory-speed-over-population memory-kits-mixed memory-profile-needed bandwidth-short memory-capacity-short`),
  slots:
    words(`card-slot-missing card-edge-too-long cards-overlap bracket-wrong card-too-long card-too-thick card-lanes-fewer
    link-generation-lower lanes-oversubscribed riser-slower display-mode-beyond-link display-ports-short card-unsupported`),
  power:
    words(`supply-overloaded supply-headroom-thin excursion-beyond-supply power-cables-missing cable-overloaded cable-from-another-supply
    adapter-risky sixteen-pin-power-level bend-too-tight voltage-drop-high supply-shape-differs supply-too-deep circuit-overloaded
    backup-too-short wall-power-over running-cost-over heat-into-room supply-voltage-differs strips-chained earth-defeated supply-opened`),
  case: words(`board-too-big standoff-under-bare-board standoff-missing standoff-too-low board-size-vague shield-missing
    front-cable-without-header cable-too-short loose-margin too-heavy-to-lift-alone glass-care`),
  handling:
    words(`no-equalising-step strap-on-paint strap-without-resistor strap-while-energised cordless-strap dry-room bag-as-mat
    vacuum-at-board contacts-touched bag-open-early inside-before-unplugging no-residual-discharge leak-test-missing hot-part-touched
    coin-cell-caution-missing sharp-edge-caution-missing`),
  work: words(`step-before-its-prerequisite steps-circular step-missing step-needless buried-part-late no-bench-start start-without-fan-or-EPS
    training-wait-missing acceptance-missing acceptance-unmeasurable memory-errors-tolerated room-temperature-unlogged hand-over-incomplete
    shipped-with-heavy-card caution-after-step caution-incomplete signal-word-wrong`),
  costs: words(
    'noise-over-promise noise-kinds-mixed noise-distance-missing cost-over price-old currency-mixed box-leaves-short',
  ),
  text: words(`unknown-key wrong-kind-of-value unit-missing unit-of-other-dimension unit-look-alike part-not-found part-kind-wrong-here
    name-twice place-twice place-unknown override-needless promise-uncheckable accepted-without-reason accepted-but-gone accepted-out-of-date
    accepted-harm-without-name format-newer limits-reached yaml-1.1-asked-for alias-or-merge-used`),
};

function words(text: string): readonly string[] {
  return text.trim().split(/\s+/);
}

export interface RowFate {
  readonly row: string;
  readonly area: Area;
  readonly by?: string;
  readonly because?: string;
}

/** For each row the check that judges it; a merged row is named in its area’s notes, with the reason. */
export function rowFates(): readonly RowFate[] {
  const notes = readNotes();
  const ids = new Map(checks.map((check) => [check.id.toLowerCase(), check.id]));
  return (Object.keys(rows) as Area[]).flatMap((area) =>
    rows[area].map((row): RowFate => {
      const own = ids.get(row.toLowerCase());
      if (own) return { row, area, by: own };
      const note = notes.get(row.toLowerCase());
      const by = note && ids.get(note.by.toLowerCase());
      return note && by ? { row, area, by, because: note.because } : { row, area };
    }),
  );
}

/** Lines `row: judged by check, because …` of the areas’ notes. */
function readNotes(): Map<string, { by: string; because: string }> {
  const folder = join(__dirname, '../../src/core/checks');
  const found = new Map<string, { by: string; because: string }>();
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('notes.md'),
  )) {
    for (const match of readFileSync(join(folder, path), 'utf8').matchAll(
      /^[-*]?\s*`?([\w.-]+)`?: judged by `?([\w.-]+)`?,? (?:because )?(.+)$/gm,
    )) {
      found.set(match[1]!.toLowerCase(), { by: match[2]!, because: match[3]! });
    }
  }
  return found;
}

export const rowTable: Generator = {
  make() {
    const sections = (Object.keys(rows) as Area[]).flatMap((area) => [
      `## ${areas[area]}`,
      '',
      '| what a technician looks at | judged by |',
      '| --- | --- |',
      ...rowFates()
        .filter((fate) => fate.area === area)
        .map(
          ({ row, by, because }) =>
            `| ${row} | ${by ? `[${by}](checks/${by}.md)` : '**nothing yet**'}${because ? `: ${because}` : ''} |`,
        ),
      '',
    ]);
    const text = [
      '# What is looked at, and by which check',
      '',
      'Every row of the trade’s list. A row that shares its judgement with another names the check that ' +
        'gives it, and why.',
      '',
      ...sections,
    ].join('\n');
    return new Map([['server/docs/rows.md', `${text.trimEnd()}\n`]]);
  },
};
