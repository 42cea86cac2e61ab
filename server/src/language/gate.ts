// The gate: before `initialize` and after `shutdown` requests are refused here, whatever they ask for, and at any time
// a message whose parameters have not their shape.
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
import { misshapen } from './shapes';

export const refusals = { notInitialized: -32002, invalidRequest: -32600, invalidParams: -32602 } as const;

interface Refusal {
  readonly code: number;
  readonly message: string;
}

const isRequest = (message: Message): message is RequestMessage => 'method' in message && 'id' in message;
const methodOf = (message: Message): string | undefined =>
  'method' in message ? (message as RequestMessage).method : undefined;

/** Wraps a writer, and tells when the answer to a request has been written. */
export class AnswerWriter implements MessageWriter {
  private readonly awaited = new Map<string | number | null, () => void>();

  constructor(private readonly writer: MessageWriter) {}

  get onError(): MessageWriter['onError'] {
    return this.writer.onError;
  }

  get onClose(): MessageWriter['onClose'] {
    return this.writer.onClose;
  }

  answered(id: string | number | null): Promise<void> {
    return new Promise((resolve) => this.awaited.set(id, resolve));
  }

  async write(message: Message): Promise<void> {
    try {
      await this.writer.write(message);
    } finally {
      const { id } = message as Partial<RequestMessage>;
      if (id !== undefined && methodOf(message) === undefined) this.awaited.get(id)?.();
    }
  }

  end(): void {
    this.writer.end();
  }

  dispose(): void {
    this.writer.dispose();
  }
}

/**
 * Wraps a reader. Until `initialize` is seen, and once `shutdown` is, a request is answered with an error and a
 * notification other than `exit` is dropped. A request of the wrong shape is answered with an error, a notification
 * logged and dropped; what is let through reaches the connection unchanged.
 */
export class GatedReader implements MessageReader {
  private initialized = false;
  private ended = false;
  /** Pending while a request to shut down has no answer yet. */
  left: Promise<void> = Promise.resolve();

  constructor(
    private readonly reader: MessageReader,
    private readonly writer: AnswerWriter,
    /** Told of each message that is let through, before it has its turn. */
    private readonly came: (message: Message) => void,
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
      // `exit` ends the process at once; sent right behind `shutdown`, it waits until that is answered.
      if (methodOf(message) === 'exit') void this.left.then(() => callback(message));
      else if (refusal === undefined) {
        this.came(message);
        callback(message);
      } else if (isRequest(message)) void this.write({ id: message.id, error: refusal });
      else if (refusal.code === refusals.invalidParams) void this.log(refusal.message);
    });
  }

  dispose(): void {
    this.reader.dispose();
  }

  /** The error that answers a message; undefined where it may pass. */
  private refusalOf(message: Message): Refusal | undefined {
    const method = methodOf(message);
    // A response to a request of ours, or `exit`, is never refused.
    if (method === undefined || method === 'exit') return undefined;
    const refusal = this.lifeCycle(method) ?? this.shape(method, (message as RequestMessage).params);
    if (method === 'shutdown' && !refusal && isRequest(message)) this.left = this.writer.answered(message.id);
    return refusal;
  }

  private lifeCycle(method: string): Refusal | undefined {
    if (this.ended)
      return {
        code: refusals.invalidRequest,
        message: 'The server was asked to shut down; it answers no more requests.',
      };
    if (method === 'initialize') {
      return this.initialized
        ? { code: refusals.invalidRequest, message: 'The server is initialized already.' }
        : undefined;
    }
    return this.initialized
      ? undefined
      : { code: refusals.notInitialized, message: 'The server is not initialized yet; send `initialize` first.' };
  }

  /** What passes here takes effect: an `initialize` of the wrong shape may be sent again. */
  private shape(method: string, params: unknown): Refusal | undefined {
    const problem = misshapen(method, params);
    if (problem) return { code: refusals.invalidParams, message: `${method}: ${problem}` };
    if (method === 'initialize') this.initialized = true;
    if (method === 'shutdown') this.ended = true;
    return undefined;
  }

  private log(message: string): Promise<void> {
    return this.write({ method: 'window/logMessage', params: { type: 1, message } });
  }

  private async write(message: object): Promise<void> {
    try {
      await this.writer.write({ jsonrpc: '2.0', ...message } as Message);
    } catch {
      // The client is gone: there is nobody to tell.
    }
  }
}
