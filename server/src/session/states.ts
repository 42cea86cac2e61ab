// What stands in files, told by digests alone: whoever only asks whether a file is another holds no text.
import { isTrouble, type Host } from '../host/host';

export type Digest = (text: string) => string;

export class States {
  private readonly known = new Map<string, string | null>();

  constructor(private readonly digest: Digest) {}

  /** A digest of a file’s text, as it stood when first asked for; why it cannot be read; null where there is none. */
  async of(host: Host, root: string, name: string): Promise<string | null> {
    const path = host.pathIn(root, name);
    const known = this.known.get(path);
    if (known !== undefined) return known;
    const text = await host.read(root, name);
    const state = text === undefined ? null : isTrouble(text) ? `: ${text.trouble}` : this.digest(text);
    this.known.set(path, state);
    return state;
  }
}
