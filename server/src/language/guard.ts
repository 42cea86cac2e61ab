// Guards around handlers: what throws is logged with its method and answered as an error, never swallowed.
import { LSPErrorCodes, ResponseError, ErrorCodes, type CancellationToken } from 'vscode-languageserver/node';

export type Log = (message: string) => void;

export const cancelled = (): ResponseError<void> =>
  new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was cancelled.');
export const overtaken = (): ResponseError<void> =>
  new ResponseError(LSPErrorCodes.ContentModified, 'The text has changed meanwhile.');

/**
 * Makes a request handler whose failure is logged and answered, and which gives up once cancelled. A request without
 * parameters is handed over as its token alone, so the token is what comes last.
 */
export function guarded<P, R>(
  method: string,
  log: Log,
  handle: (params: P, token: CancellationToken) => R | Promise<R>,
): (params: P, token: CancellationToken, ...more: unknown[]) => Promise<R> {
  return async (first, second) => {
    const [params, token] = second === undefined ? [undefined as P, first as CancellationToken] : [first, second];
    if (token.isCancellationRequested) throw cancelled();
    try {
      const result = await handle(params, token);
      if (token.isCancellationRequested) throw cancelled();
      return result;
    } catch (error) {
      if (error instanceof ResponseError) throw error;
      log(`${method}: ${wordsOf(error)}`);
      throw new ResponseError(
        ErrorCodes.InternalError,
        `${method} failed by a fault of Fettle: ${error instanceof Error ? error.message : String(error)}`,
      );
    }
  };
}

export function wordsOf(error: unknown): string {
  return error instanceof Error ? (error.stack ?? error.message) : String(error);
}
