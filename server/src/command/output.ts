// Where a sub-command writes to: standard output, or a file that is written whole or not at all; and what it could not
// read, on standard error.
import { safe } from '../report/layout';
import { shortPath, type RunTrouble } from '../session/run-trouble';
import { refusal, type World } from './world';

/** @throws Refusal when the file cannot be written. */
export function openOutput(world: World, path: string | undefined): ReturnType<World['sink']> {
  if (path === undefined) return { write: world.out, done: () => undefined, drop: () => undefined };
  try {
    return world.sink(path);
  } catch (error) {
    throw refusal`${shortPath(path)}: cannot be written: ${(error as Error).message}`;
  }
}

export function tellTroubles(
  troubles: readonly RunTrouble[],
  { err, language }: Pick<World, 'err' | 'language'>,
): void {
  if (troubles.length === 0) return;
  const own = language();
  for (const { path, trouble } of troubles) {
    const told = own.plain(trouble);
    err(`fettle: ${safe(path === '' ? told : `${path}: ${told}`)}\n`);
  }
}
