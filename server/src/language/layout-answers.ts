// Answers about the layout of a text: the whole on request, and a new line’s indentation.
import {
  DocumentFormattingRequest,
  DocumentOnTypeFormattingRequest,
  MessageType,
  ShowMessageNotification,
  type ServerCapabilities,
} from 'vscode-languageserver/node';
import { formatted, indented } from '../features/formatting';
import type { Shared } from './findings';
import { guarded } from './guard';

export const layoutOffered: ServerCapabilities = {
  documentFormattingProvider: true,
  documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
};

/** Registers the answers. */
export function answerLayout({ connection, log, session }: Shared): void {
  connection.onRequest(
    DocumentFormattingRequest.type,
    guarded(DocumentFormattingRequest.method, log, async ({ textDocument }) => {
      const judged = await session.judge(textDocument.uri);
      if (!judged || judged.guide) return null;
      const laid = formatted(judged.doc);
      if ('edits' in laid) return laid.edits;
      const message = `This file is left as it is: ${laid.refused}`;
      void connection.sendNotification(ShowMessageNotification.type, { type: MessageType.Warning, message });
      return [];
    }),
  );
  connection.onRequest(
    DocumentOnTypeFormattingRequest.type,
    guarded(DocumentOnTypeFormattingRequest.method, log, async ({ textDocument, position }) => {
      const judged = await session.judge(textDocument.uri);
      return judged && !judged.guide ? indented(judged.doc, position) : null;
    }),
  );
}
