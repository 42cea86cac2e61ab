// Where a sub-command writes to: standard output, or a file that is written whole or not at all.
import { shortPath } from '../session/run-trouble';
import { Refusal, type World } from './world';

/** @throws Refusal when the file cannot be written. */
export function openOutput(world: World, path: string | undefined): ReturnType<World['sink']> {
  if (path === undefined) return { write: world.out, done: () => undefined, drop: () => undefined };
  try {
    return world.sink(path);
  } catch (error) {
    throw new Refusal(`${shortPath(path)}: cannot be written: ${(error as Error).message}`);
  }
}
