// Where a new file is to be written: in the workspace of a file or folder at hand.
import type { AddressedHost } from '../host/addressed';
import { isTrouble, type FoundPath } from '../host/host';
import type { Shared } from './findings';

/** What lies at an address, with the host that reads it; or why nothing can be written there. */
export async function placeNear(
  { session, language }: Shared,
  uri: string,
): Promise<{ readonly host: AddressedHost; readonly found: FoundPath } | { readonly problem: string }> {
  const host = session.hostFor(uri);
  const path = host?.pathOf(uri);
  const found = host && path !== undefined ? await host.find(path) : undefined;
  return host && found && !isTrouble(found)
    ? { host, found }
    : { problem: language.word('There is no folder to write it into.') };
}

/** Why a part cannot be called so. */
export const noPartName = ({ language }: Shared): { readonly problem: string } => ({
  problem: language.word('A part is called by its path in the parts folder: maker/model, without blanks.'),
});
