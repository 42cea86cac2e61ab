// The life-cycle gate: before `initialize` and after `shutdown` requests are refused here, whatever they ask for.
import type {
  DataCallback,
  Disposable,
  Event,
  Message,
  MessageReader,
  MessageWriter,
  PartialMessageInfo,
  RequestMessage,
} from 'vscode-languageserver/node';

export const refusals = { notInitialized: -32002, invalidRequest: -32600 } as const;

const isRequest = (message: Message): message is RequestMessage => 'method' in message && 'id' in message;
const methodOf = (message: Message): string | undefined =>
  'method' in message ? (message as RequestMessage).method : undefined;

/**
 * Wraps a reader. Until `initialize` is seen, and once `shutdown` is, a request is answered with an error and a
 * notification other than `exit` is dropped; what is let through reaches the connection unchanged.
 */
export class GatedReader implements MessageReader {
  private initialized = false;
  private ended = false;

  constructor(
    private readonly reader: MessageReader,
    private readonly writer: MessageWriter,
  ) {}

  get onError(): Event<Error> {
    return this.reader.onError;
  }

  get onClose(): Event<void> {
    return this.reader.onClose;
  }

  get onPartialMessage(): Event<PartialMessageInfo> {
    return this.reader.onPartialMessage;
  }

  listen(callback: DataCallback): Disposable {
    return this.reader.listen((message) => {
      const refusal = this.refusalOf(message);
      if (refusal === undefined) callback(message);
      else if (isRequest(message)) void this.refuse(message, refusal);
    });
  }

  dispose(): void {
    this.reader.dispose();
  }

  /** The error that answers a message; undefined where it may pass. */
  private refusalOf(message: Message): { code: number; message: string } | undefined {
    const method = methodOf(message);
    // A response to a request of ours, or `exit`, is never refused.
    if (method === undefined || method === 'exit') return undefined;
    if (this.ended)
      return {
        code: refusals.invalidRequest,
        message: 'The server was asked to shut down; it answers no more requests.',
      };
    if (method === 'initialize') {
      if (this.initialized) return { code: refusals.invalidRequest, message: 'The server is initialized already.' };
      this.initialized = true;
      return undefined;
    }
    if (!this.initialized)
      return { code: refusals.notInitialized, message: 'The server is not initialized yet; send `initialize` first.' };
    if (method === 'shutdown') this.ended = true;
    return undefined;
  }

  private async refuse({ id, jsonrpc }: RequestMessage, error: { code: number; message: string }): Promise<void> {
    try {
      await this.writer.write({ jsonrpc, id, error } as Message);
    } catch {
      // The client is gone: there is nobody to tell.
    }
  }
}
