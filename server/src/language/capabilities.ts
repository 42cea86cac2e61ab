// What the server offers a client at `initialize`.
import { TextDocumentSyncKind, type ServerCapabilities } from 'vscode-languageserver/node';
import { fixAllKind } from '../features/code-actions';
import type { Client } from './client';
import { layoutOffered } from './layout-answers';
import { movesOffered, namesOffered } from './name-answers';
import { numbersOffered } from './number-answers';
import { outlineOffered } from './outline-answers';

/** The files whose changes on disk are of interest. */
export const watched = [
  '**/*.pcbuild.yaml',
  '**/*.part.yaml',
  '**/fettle.yaml',
  '**/*.known.yaml',
  '**/*.asbuilt.yaml',
  '**/*.{md,markdown}',
];

export const checkCommand = 'fettle.checkWorkspace';

export function offered(client: Client): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: {
      openClose: true,
      change: TextDocumentSyncKind.Incremental,
      willSave: client.tellsWhySaved,
      save: { includeText: false },
    },
    hoverProvider: true,
    definitionProvider: true,
    ...namesOffered(client),
    ...outlineOffered,
    ...layoutOffered(client),
    ...numbersOffered(client),
    documentSymbolProvider: { label: 'Fettle' },
    completionProvider: { triggerCharacters: [':', ' ', '-', '{', '[', ',', '/'], resolveProvider: true },
    codeActionProvider: client.actionLiterals
      ? { codeActionKinds: ['quickfix', fixAllKind], resolveProvider: client.resolvesEdits }
      : true,
    ...(client.pullsDiagnostics
      ? { diagnosticProvider: { identifier: 'fettle', interFileDependencies: true, workspaceDiagnostics: true } }
      : {}),
    // Our own client registers its commands itself.
    ...(client.own.explains ? {} : { executeCommandProvider: { commands: [checkCommand] } }),
    workspace: {
      workspaceFolders: { supported: true, changeNotifications: true },
      ...(client.tellsOfMoves ? { fileOperations: movesOffered } : {}),
    },
  };
}
