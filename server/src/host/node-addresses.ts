// The file system of this machine, by `file:` addresses.
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { AddressedHost } from './addressed';
import { NodeHost } from './node';

export class NodeAddresses extends NodeHost implements AddressedHost {
  pathOf(uri: string): string | undefined {
    if (!uri.startsWith('file:')) return undefined;
    try {
      return fileURLToPath(uri);
    } catch {
      return undefined;
    }
  }

  uriOf(path: string): string {
    return pathToFileURL(path).href;
  }
}
