// Answers about names: where one is used, what shares it under the cursor, its rename, and what moved files bring.
import {
  DidRenameFilesNotification,
  DocumentHighlightRequest,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  WillRenameFilesRequest,
  type CancellationToken,
  type FileOperationRegistrationOptions,
  type ServerCapabilities,
  type WorkDoneProgressParams,
} from 'vscode-languageserver/node';
import { highlights } from '../features/references';
import { prepareRename } from '../features/rename';
import type { Asker } from '../session/use-index';
import type { Across } from './across';
import type { Client } from './client';
import type { Shared } from './findings';
import { guarded } from './guard';
import { filesMoved } from './moves';

/** What is offered to a client. */
export const namesOffered = ({ preparesRename }: Client): ServerCapabilities => ({
  referencesProvider: { workDoneProgress: true },
  documentHighlightProvider: true,
  renameProvider: preparesRename ? { prepareProvider: true, workDoneProgress: true } : true,
});

/** The moves that are followed: of part files, builds and guides, and of folders that may hold some. */
const ourMoves: FileOperationRegistrationOptions = {
  filters: [
    { pattern: { glob: '**/*.part.yaml', matches: 'file' } },
    { pattern: { glob: '**/*.pcbuild.yaml', matches: 'file' } },
    { pattern: { glob: '**/*.{md,markdown}', matches: 'file' } },
    { pattern: { glob: '**', matches: 'folder' } },
  ],
};
export const movesOffered = { willRename: ourMoves, didRename: ourMoves };

/** Registers the answers. `moved` is told once files have another name. */
export function answerNames(shared: Shared, across: Across, moved: () => void): void {
  const { connection, log } = shared;
  connection.onRequest(
    ReferencesRequest.type,
    guarded(ReferencesRequest.method, log, (params, token) =>
      reported(shared, params, token, shared.language.word('Looking for uses'), (asker) =>
        across.references(params.textDocument.uri, params.position, params.context.includeDeclaration, asker),
      ),
    ),
  );
  connection.onRequest(
    DocumentHighlightRequest.type,
    guarded(DocumentHighlightRequest.method, log, async ({ textDocument, position }) => {
      const file = await across.fileAt(textDocument.uri, position);
      return file ? highlights(file, position) : null;
    }),
  );
  connection.onRequest(
    PrepareRenameRequest.type,
    guarded(PrepareRenameRequest.method, log, async ({ textDocument, position }) => {
      const named = await across.namedAt(textDocument.uri, position);
      const found = named && prepareRename(named.file, named.offset);
      const { file, at } = named?.mark ?? {};
      return (found && (file && at ? { ...found, range: file.doc.lines.rangeOf(at) } : found)) ?? null;
    }),
  );
  connection.onRequest(
    RenameRequest.type,
    guarded(RenameRequest.method, log, (params, token) =>
      reported(shared, params, token, shared.language.word('Renaming'), (asker) =>
        across.rename(params.textDocument.uri, params.position, params.newName, asker),
      ),
    ),
  );
  connection.onRequest(
    WillRenameFilesRequest.type,
    guarded(WillRenameFilesRequest.method, log, ({ files }, token) =>
      reported(shared, {}, token, shared.language.word('Following moved files'), (asker) =>
        filesMoved(shared, across, files, asker),
      ),
    ),
  );
  connection.onNotification(DidRenameFilesNotification.type, moved);
}

/** Runs what may take a while over a workspace: it can be given up, and says how far it is where that is wished. */
export async function reported<T>(
  { connection, language }: Shared,
  { workDoneToken }: WorkDoneProgressParams,
  token: CancellationToken,
  title: string,
  work: (asker: Asker) => Promise<T>,
): Promise<T> {
  const progress = workDoneToken === undefined ? undefined : connection.window.attachWorkDoneProgress(workDoneToken);
  progress?.begin(title, 0, undefined, true);
  const told = (done: number, of: number): void =>
    progress?.report(Math.floor((100 * done) / of), language.words`${done} of ${of} files`);
  try {
    return await work({ stopped: () => token.isCancellationRequested, told });
  } finally {
    progress?.done();
  }
}
