// A run on one thread: each file is judged, narrowed or recorded, has its fixes looked for, and is printed.
import { listed, type FormatOptions, type Section } from '../report/section';
import type { Tally } from '../report/tally';
import type { Mending } from '../session/mending';
import type { RunTrouble } from '../session/run-trouble';
import type { CheckRun } from './judged';
import type { Printer } from './printers';
import type { Judgings } from './settings-from';
import type { Stale } from './stale';

/** The ways to judge and print a run: on one thread, on several, or with what was kept of the run before. */
export interface Printed {
  /** What kept files from being read and checks from being run, so far. */
  readonly troubles: readonly RunTrouble[];
  /** What is printed, in the order of the files; each section is added to the tally. */
  texts(tally: Tally, stale: Stale): AsyncIterable<string>;
}

export interface OneByOneOptions {
  readonly judging: Judgings;
  readonly printer: Printer;
  readonly look: FormatOptions;
  readonly mending: Mending;
  /** What is reported of a file that was judged: all of it, what a change brings, or it as it is recorded. */
  readonly taken: (found: CheckRun) => CheckRun | Promise<CheckRun>;
  /** The root that the section at hand lies under: `look` shows paths by it. */
  readonly at: { root: string };
}

export class OneByOne implements Printed {
  constructor(private readonly options: OneByOneOptions) {}

  get troubles(): readonly RunTrouble[] {
    return this.options.judging.troubles;
  }

  async *texts(tally: Tally, stale: Stale): AsyncGenerator<string> {
    const { judging, printer, taken, at } = this.options;
    for await (const found of judging.sections()) {
      const run = await taken(found);
      at.root = run.root;
      stale.add(run);
      tally.add(run.section);
      yield (await judging.guarded(run, async () => printer.section(await this.withFixes(run, tally)))) ?? '';
    }
  }

  private async withFixes({ section, file }: CheckRun, tally: Tally): Promise<Section> {
    const { mending, look } = this.options;
    const fixes = await mending.fixesOf(section, file, listed(section, look));
    tally.notMended += fixes.notSought;
    return { ...section, fixes };
  }
}
