// A stream of this machine that takes the messages of the protocol.
import { Writable } from 'node:stream';

/**
 * Takes messages as a writer gives them, head and body in turn, and hands both on together: a client would else be
 * woken by each head, to wait for its body.
 */
export class WholeMessages extends Writable {
  private head: Buffer | undefined;

  constructor(private readonly out: Writable) {
    super();
  }

  override _write(chunk: Buffer, _encoding: string, done: (error?: Error | null) => void): void {
    const { head, out } = this;
    if (!head) {
      this.head = chunk;
      done();
      return;
    }
    this.head = undefined;
    out.cork();
    out.write(head);
    out.write(chunk, done);
    out.uncork();
  }

  override _final(done: () => void): void {
    this.out.end(done);
  }
}
