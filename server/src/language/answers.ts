// Answers to what an editor asks of a file: each request is handed to its feature with the file as judged now.
import { languageOf } from '../core/words/names';
import {
  CodeActionRequest,
  CodeActionResolveRequest,
  CompletionRequest,
  CompletionResolveRequest,
  DefinitionRequest,
  DocumentSymbolRequest,
  HoverRequest,
  type DocumentSymbol,
  type SymbolInformation,
  type CompletionList as ProtocolList,
} from 'vscode-languageserver/node';
import { placeAt } from '../core/build/path-places';
import type { PartData } from '../features/completion-item';
import { describePart } from '../features/completion-resolve';
import { definition } from '../features/definition';
import { touches } from '../core/text';
import { fileLinks, knownPlaceAt } from '../features/links';
import { explain } from '../features/check-markdown';
import { hover } from '../features/hover';
import { wholeWorking } from '../features/hover-working';
import { blockSymbols, flatSymbols, symbols } from '../features/symbols';
import type { PartIndex } from '../session/part-index';
import type { Location, Position } from '../features/shapes';
import { guideCompletion, guideDefinition, guideHover } from '../features/guide-marks';
import { Session, type AnalyzedFile } from '../session/session';
import type { Across } from './across';
import type { Shared } from './findings';
import { guarded } from './guard';
import { Actions } from './actions';
import type { Completions } from './completions';
import type { ToServer } from './requests';

/** Registers the answers. */
export function answer(
  shared: Shared,
  across: Across,
  shelf: PartIndex,
  completions: Completions,
  pause: () => Promise<void>,
): void {
  const { connection, log, session } = shared;
  const actions = new Actions(shared, shelf, pause);
  const judge = async (uri: string): Promise<AnalyzedFile | undefined> => session.judge(uri);
  const judgeAt = async (uri: string, position: Position): Promise<AnalyzedFile | undefined> => {
    const judged = await judge(uri);
    return judged && Session.at(judged, position);
  };
  const markupKind = (): 'markdown' | 'plaintext' => (shared.client.markdown ? 'markdown' : 'plaintext');

  connection.onRequest(
    HoverRequest.type,
    guarded(HoverRequest.method, log, async ({ textDocument, position }) => {
      const judged = await judgeAt(textDocument.uri, position);
      const { workings, showsFindings } = shared.client.own;
      const { from } = shared.settings.of(textDocument.uri);
      const options = {
        kind: markupKind(),
        language: languageOf(shared.language, judged?.build),
        ...(workings === undefined ? {} : { workings }),
        ...(showsFindings ? { shownFrom: from } : {}),
      };
      if (judged?.guide) return guideHover(judged, judged.guide, position, options) ?? null;
      return (judged && hover(judged, position, options)) ?? null;
    }),
  );
  connection.onRequest(
    DefinitionRequest.type,
    guarded(DefinitionRequest.method, log, async ({ textDocument, position }) => {
      const judged = await judgeAt(textDocument.uri, position);
      if (judged?.guide) return guideDefinition(judged, judged.guide, position) ?? null;
      if (!judged) return null;
      return (
        (await inNamedFile(across, judged, position)) ?? definition(judged, position, shared.client.own.pages) ?? null
      );
    }),
  );
  connection.onRequest(
    DocumentSymbolRequest.type,
    guarded(DocumentSymbolRequest.method, log, async ({ textDocument }) => {
      const judged = await judge(textDocument.uri);
      if (!judged) return null;
      // Of a guide its fenced blocks: its headings every editor has.
      const found = judged.guide ? blockSymbols(judged.guide, shared.language) : symbols(judged.doc);
      return (shared.client.treeSymbols ? found : flatSymbols(found, textDocument.uri)) as
        | DocumentSymbol[]
        | SymbolInformation[];
    }),
  );
  connection.onRequest(
    CompletionRequest.type,
    guarded(CompletionRequest.method, log, async ({ textDocument, position }, token) => {
      const judged = await judgeAt(textDocument.uri, position);
      if (!judged) return null;
      if (judged.guide)
        return guideCompletion(judged, judged.guide, position, markupKind(), shared.language) as ProtocolList;
      return (await completions.answer(judged, position, token)) as ProtocolList;
    }),
  );
  connection.onRequest(
    CompletionResolveRequest.type,
    guarded(CompletionResolveRequest.method, log, async (item) => {
      const data = item.data as PartData | undefined;
      const judged = data && (await judge(data.uri));
      const documentation =
        judged &&
        hasBuild(judged) &&
        describePart(judged, data, markupKind(), languageOf(shared.language, judged.build));
      return documentation ? { ...item, documentation } : item;
    }),
  );
  connection.onRequest(
    CodeActionRequest.type,
    guarded(CodeActionRequest.method, log, async (params, token) => {
      const judged = await judge(params.textDocument.uri);
      return judged ? actions.answer(judged, params, token) : null;
    }),
  );
  connection.onRequest(
    CodeActionResolveRequest.type,
    guarded(CodeActionResolveRequest.method, log, (action) => actions.resolve(action)),
  );
  connection.onRequest(
    'fettle/working',
    guarded('fettle/working', log, async ({ uri, ...finding }: ToServer['fettle/working']['params']) => {
      const judged = await judge(uri);
      const markdown = judged && wholeWorking(judged, finding, languageOf(shared.language, judged.build));
      return markdown === undefined ? null : { markdown };
    }),
  );
  connection.onRequest(
    'fettle/explain',
    guarded('fettle/explain', log, ({ check }: ToServer['fettle/explain']['params']) => {
      const markdown = explain(check, shared.language);
      return markdown === undefined ? null : { markdown };
    }),
  );
}

const hasBuild = (judged: AnalyzedFile): judged is AnalyzedFile & Required<Pick<AnalyzedFile, 'build'>> =>
  judged.build !== undefined;

/**
 * A file that another names leads to it, and a known finding to its subject there: of what was moved or taken out
 * since, to as much of it as there is.
 */
async function inNamedFile(across: Across, judged: AnalyzedFile, position: Position): Promise<Location | undefined> {
  const { doc } = judged;
  const offset = doc.lines.offsetAt(position);
  const link = fileLinks(doc).find(({ span }) => touches(span, offset));
  const known = link ?? knownPlaceAt(doc, offset);
  const file = known && (await across.fileNamed(judged, known.file));
  const root = file?.doc.parsed.root;
  if (!known || !file) return undefined;
  const span = root && 'path' in known ? placeAt(root, known.path)?.span : undefined;
  return { uri: file.uri, range: file.doc.lines.rangeOf(span ?? { start: 0, end: 0 }) };
}
