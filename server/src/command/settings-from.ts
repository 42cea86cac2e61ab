// Judges by the settings of a revision: what a change says of settings is checked, and decides nothing.
import type { Host } from '../host/host';
import { SettingsFrom } from '../host/settings-from';
import { Loader } from '../session/loader';
import { Judging, type JudgingOptions } from './judged';
import type { Ours } from '../session/walk';
import { revisionSide } from './sides';
import type { World } from './world';

/** Settings of a revision stand in for those that lie here. @throws Refusal where there is no such revision. */
export const hostFor = (revision: string | undefined, world: World): Host =>
  revision === undefined
    ? world.host
    : new SettingsFrom(world.host, revisionSide(world, revision, '.', world.today).host);

export const isSettings = ({ kind }: Ours): boolean => kind === 'house' || kind === 'known';

export type Judgings = Pick<Judging, 'sections' | 'of' | 'troubles' | 'guarded'>;

/** Settings that decide nothing this time are checked as they lie here all the same. */
export function judgingOf(options: JudgingOptions, world: World): Judgings {
  if (options.host === world.host) return new Judging(options);
  const { files, loader } = options;
  const plain = new Judging({ ...options, files: files.filter((file) => !isSettings(file)) });
  const houses = files.filter(isSettings);
  const apart = new Judging({ host: world.host, loader: new Loader(loader.today), files: houses, alone: true });
  return {
    async *sections() {
      yield* plain.sections();
      yield* apart.sections();
    },
    of: (file) => (isSettings(file) ? apart : plain).of(file),
    get troubles() {
      return [...plain.troubles, ...apart.troubles];
    },
    guarded: (run, print) => plain.guarded(run, print),
  };
}
