// Runs an editor without a screen through the scenario; the editor's own script does the work and writes an outcome.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runGroup } from '../../tools/group.mjs';
import { placeOfName, places, removeFolder, scenario, serverPath, temporaryFolder, workspaceCopy } from './scenario';

/** What the editor's script wrote down. */
export interface Outcome {
  /** What went wrong, where something did. */
  problem?: string;
  keystrokeToFindingMs?: number;
  /** The finding's source, as shown. */
  source?: string;
  /** The text with the mistake in it. */
  broken?: string;
  hover?: string;
  /** The title of the fix that was chosen. */
  fix?: string;
  /** The saved text after the fix. */
  mended: string;
  /** The lines, counted from 1, on which the editor finds the name that is changed. */
  uses?: number[];
  /** The text once the name is changed, and whether one undo brought the text before. */
  renamed?: string;
  undone?: boolean;
  /** The hints that the editor shows; absent where its version shows none. */
  hints?: string[];
}

const RUN_LIMIT_MS = 45_000;
const STEP_LIMIT_MS = 10_000;

/** Runs `program` on a copy of the workspace. Throws with its output when it writes no outcome. */
export async function runPlainEditor(program: string, args: string[]): Promise<Outcome> {
  const workspace = workspaceCopy();
  const scratch = temporaryFolder('plain');
  const file = join(workspace, scenario.build);
  const { line, key, value } = places();
  const job = {
    workspace,
    file,
    line,
    key,
    value,
    valueEnd: value + scenario.value.length,
    typed: scenario.typed,
    finding: scenario.finding,
    nameAt: placeOfName(),
    newName: scenario.rename.to,
    languageId: 'fettle-build',
    command: [process.execPath, serverPath, '--stdio'],
    limitMs: STEP_LIMIT_MS,
    outcome: join(scratch, 'outcome.json'),
  };
  const jobFile = join(scratch, 'job.json');
  writeFileSync(jobFile, JSON.stringify(job));
  try {
    const env = {
      ...process.env,
      HOME: scratch,
      XDG_CACHE_HOME: scratch,
      XDG_STATE_HOME: scratch,
      FETTLE_JOB: jobFile,
    };
    const ended = await runGroup(program, args, { cwd: workspace, env, limitMs: RUN_LIMIT_MS });
    if (!existsSync(job.outcome))
      throw new Error(`${program} wrote no outcome (status ${ended.status}):\n${ended.output}`);
    const outcome = JSON.parse(readFileSync(job.outcome, 'utf8')) as Outcome;
    return { ...outcome, mended: readFileSync(file, 'utf8') };
  } finally {
    removeFolder(workspace);
    removeFolder(scratch);
  }
}
