// Answers to what an editor asks of a file: each request is handed to its feature with the file as judged now.
import {
  CodeActionRequest,
  CompletionRequest,
  CompletionResolveRequest,
  DefinitionRequest,
  DocumentSymbolRequest,
  HoverRequest,
  CodeActionTriggerKind,
  type CancellationToken,
  type DocumentSymbol,
  type SymbolInformation,
  type CodeAction as ProtocolAction,
  type CodeActionParams,
  type CompletionList as ProtocolList,
} from 'vscode-languageserver/node';
import { codeActionSteps, findingsIn, type ActionOptions, type CodeAction } from '../features/code-actions';
import type { PartData } from '../features/completion-item';
import { describePart } from '../features/completion-resolve';
import { definition } from '../features/definition';
import { explain } from '../features/check-markdown';
import { hover } from '../features/hover';
import type { Diagnostic } from '../features/shapes';
import { flatSymbols, symbols } from '../features/symbols';
import type { PartIndex } from '../session/part-index';
import type { AnalyzedFile } from '../session/session';
import { editForClient } from './client';
import type { Shared } from './findings';
import { guarded } from './guard';
import { Completions } from './completions';
import { stillWanted, withParts } from './with-parts';
import type { ToServer } from './requests';

/** How long one answer may go on proving fixes of further findings. */
const provingMs = 1_000;

/** Registers the answers. */
export function answer(shared: Shared, shelf: PartIndex, pause: () => Promise<void>): void {
  const { connection, log, session } = shared;
  const completions = new Completions(shared, shelf, pause);
  const judge = async (uri: string): Promise<AnalyzedFile | undefined> => session.judge(uri);
  const markupKind = (): 'markdown' | 'plaintext' => (shared.client.markdown ? 'markdown' : 'plaintext');

  connection.onRequest(
    HoverRequest.type,
    guarded(HoverRequest.method, log, async ({ textDocument, position }) => {
      const judged = await judge(textDocument.uri);
      return (judged && hover(judged, position, markupKind())) ?? null;
    }),
  );
  connection.onRequest(
    DefinitionRequest.type,
    guarded(DefinitionRequest.method, log, async ({ textDocument, position }) => {
      const judged = await judge(textDocument.uri);
      return (judged && definition(judged, position, shared.client.own.pages)) ?? null;
    }),
  );
  connection.onRequest(
    DocumentSymbolRequest.type,
    guarded(DocumentSymbolRequest.method, log, async ({ textDocument }) => {
      const judged = await judge(textDocument.uri);
      if (!judged) return null;
      return (shared.client.treeSymbols ? symbols(judged.doc) : flatSymbols(judged.doc, textDocument.uri)) as
        | DocumentSymbol[]
        | SymbolInformation[];
    }),
  );
  connection.onRequest(
    CompletionRequest.type,
    guarded(CompletionRequest.method, log, async ({ textDocument, position }, token) => {
      const judged = await judge(textDocument.uri);
      if (!judged) return null;
      return (await completions.answer(judged, position, token)) as ProtocolList;
    }),
  );
  connection.onRequest(
    CompletionResolveRequest.type,
    guarded(CompletionResolveRequest.method, log, async (item) => {
      const data = item.data as PartData | undefined;
      const judged = data && (await judge(data.uri));
      const documentation = judged && hasBuild(judged) && describePart(judged, data, markupKind());
      return documentation ? { ...item, documentation } : item;
    }),
  );
  connection.onRequest(
    CodeActionRequest.type,
    guarded(CodeActionRequest.method, log, async (params, token) => {
      const judged = await judge(params.textDocument.uri);
      return judged ? actions(shared, shelf, pause, judged, params, token) : null;
    }),
  );
  connection.onRequest(
    'fettle/explain',
    guarded('fettle/explain', log, ({ check }: ToServer['fettle/explain']['params']) => {
      const markdown = explain(check);
      return markdown === undefined ? null : { markdown };
    }),
  );
}

async function actions(
  shared: Shared,
  shelf: PartIndex,
  pause: () => Promise<void>,
  judged: AnalyzedFile,
  params: CodeActionParams,
  token: CancellationToken,
): Promise<ProtocolAction[]> {
  const { client } = shared;
  // Without literals a client knows commands only, and ours are edits.
  if (!client.actionLiterals) return [];
  const { only, triggerKind, diagnostics } = params.context;
  const automatic = triggerKind === CodeActionTriggerKind.Automatic;
  const options: Omit<ActionOptions, 'candidates'> = {
    ...(only ? { only } : {}),
    automatic,
    from: shared.settings.from,
    explains: client.own.explains === true,
    diagnostics: diagnostics as unknown as Diagnostic[],
  };
  const isSought = findingsIn(judged, params.range).length > 0;
  const skips = !isSought || (automatic && !shelf.isListed(judged));
  const found = await withParts(shared, shelf, judged, token, skips, async (candidates) => {
    const begun = performance.now();
    const steps = codeActionSteps(judged, params.range, {
      ...options,
      candidates,
      isSpent: () => performance.now() - begun > provingMs,
    });
    for (;;) {
      const { done, value } = steps.next();
      if (done) return value;
      await pause();
      stillWanted(shared, judged, token);
    }
  });
  return found.map((action) => forClient(action, client.versionedEdits));
}

function forClient(action: CodeAction, versioned: boolean): ProtocolAction {
  return (action.edit ? { ...action, edit: editForClient(action.edit, versioned) } : action) as ProtocolAction;
}

const hasBuild = (judged: AnalyzedFile): judged is AnalyzedFile & Required<Pick<AnalyzedFile, 'build'>> =>
  judged.build !== undefined;
