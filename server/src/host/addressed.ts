// Hosts whose files have addresses (URIs), as editors name them.
import type { Host } from './host';

export interface AddressedHost extends Host {
  /**
   * The path behind an address, which `find` takes and which stands for the file here; undefined for a foreign
   * address.
   */
  pathOf(uri: string): string | undefined;
  /** The address of a path. */
  uriOf(path: string): string;
}
