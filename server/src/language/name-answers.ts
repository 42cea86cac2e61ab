// Answers about names: where one is used, what shares it under the cursor, and its rename.
import {
  DocumentHighlightRequest,
  LSPErrorCodes,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  ResponseError,
} from 'vscode-languageserver/node';
import { prepareRename, references, rename } from '../features/references';
import { editForClient } from './client';
import type { Shared } from './findings';
import { guarded } from './guard';

/** Registers the answers. */
export function answerNames(shared: Shared): void {
  const { connection, log, session } = shared;
  connection.onRequest(
    ReferencesRequest.type,
    guarded(ReferencesRequest.method, log, async ({ textDocument, position, context }) => {
      const judged = await session.judge(textDocument.uri);
      return judged ? references(judged, position, context.includeDeclaration) : null;
    }),
  );
  connection.onRequest(
    DocumentHighlightRequest.type,
    guarded(DocumentHighlightRequest.method, log, async ({ textDocument, position }) => {
      const judged = await session.judge(textDocument.uri);
      return judged ? references(judged, position, true).map(({ range }) => ({ range })) : null;
    }),
  );
  connection.onRequest(
    PrepareRenameRequest.type,
    guarded(PrepareRenameRequest.method, log, async ({ textDocument, position }) => {
      const judged = await session.judge(textDocument.uri);
      return (judged && prepareRename(judged, position)) ?? null;
    }),
  );
  connection.onRequest(
    RenameRequest.type,
    guarded(RenameRequest.method, log, async ({ textDocument, position, newName }) => {
      const judged = await session.judge(textDocument.uri);
      if (!judged) return null;
      const edit = rename(judged, position, newName);
      if (typeof edit === 'string') throw new ResponseError(LSPErrorCodes.RequestFailed, edit);
      return editForClient(edit, shared.client.versionedEdits);
    }),
  );
}
