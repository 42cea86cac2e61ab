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
import { guarded, wordsOf } from './guard';
import type { Client } from './client';

const newLine = { firstTriggerCharacter: '\n' };

/** A client that sends Markdown has other formatters for it, and would ask which to take. */
export const layoutOffered = ({ own }: Client): ServerCapabilities =>
  own.guides ? {} : { documentFormattingProvider: true, documentOnTypeFormattingProvider: newLine };

/** For such a client: the same, for our own languages. */
export async function registerLayout({ connection, client, log }: Shared): Promise<void> {
  if (!client.own.guides) return;
  const documentSelector = ['fettle-build', 'fettle-part', 'fettle-settings'].map((language) => ({ language }));
  const failed = (error: unknown): void => log(`client/registerCapability: ${wordsOf(error)}`);
  await connection.client.register(DocumentFormattingRequest.type, { documentSelector }).catch(failed);
  await connection.client
    .register(DocumentOnTypeFormattingRequest.type, { documentSelector, ...newLine })
    .catch(failed);
}

/** Registers the answers. */
export function answerLayout(shared: Shared): void {
  const { connection, log, session } = shared;
  connection.onRequest(
    DocumentFormattingRequest.type,
    guarded(DocumentFormattingRequest.method, log, async ({ textDocument }) => {
      const judged = await session.judge(textDocument.uri);
      if (!judged || judged.guide) return null;
      const laid = formatted(judged.doc);
      if ('edits' in laid) return laid.edits;
      const { language } = shared;
      const message = language.words`This file is left as it is: ${language.plain(laid.refused)}`;
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
