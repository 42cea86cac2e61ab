// All generators, in the order in which they must run: the list of checks comes before what reads it.
import { allChecks } from './all-checks';
import { messageValidators } from './message-validators';
import { schemas } from './schemas';

/** `make` gives whole files by path; `owns` names a folder in which nothing else may stand. */
export interface Generator {
  readonly make: (read: (path: string) => string | undefined) => Promise<ReadonlyMap<string, string>> | ReadonlyMap<string, string>;
  readonly owns?: string;
}

export const generators: readonly Generator[] = [allChecks, schemas, messageValidators];
