// All generators. The list of checks comes first, because the others read the checks through it.
import { allChecks } from './all-checks';

/** `make` gives whole files by path; `owns` names a folder in which nothing else may stand. */
export interface Generator {
  readonly make: (
    read: (path: string) => string | undefined,
  ) => Promise<ReadonlyMap<string, string>> | ReadonlyMap<string, string>;
  readonly owns?: string;
}

export const first: readonly Generator[] = [allChecks];

/** Loaded only when the list of checks is written, so that they see it as it is. */
export async function others(): Promise<readonly Generator[]> {
  const [
    { schemas },
    { messageValidators },
    { checkPages },
    { fieldPages },
    { notices },
    { readme },
    { styleHashes },
    { snippets },
    { guidePage },
    { formatsPage },
  ] = await Promise.all([
    import('./schemas'),
    import('./message-validators'),
    import('./check-pages'),
    import('./field-pages'),
    import('./notices'),
    import('./readme'),
    import('./style-hashes'),
    import('./snippets'),
    import('./guide-page'),
    import('./formats-page'),
  ]);
  return [
    styleHashes,
    snippets,
    schemas,
    messageValidators,
    checkPages,
    fieldPages,
    guidePage,
    formatsPage,
    notices,
    readme,
  ];
}
