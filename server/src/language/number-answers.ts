// Answers with numbers: hints behind values, and lenses above builds and part files.
import { languageOf } from '../core/words/names';
import {
  CodeLensRequest,
  CodeLensResolveRequest,
  InlayHintRequest,
  InlayHintResolveRequest,
  type CodeLens,
  type InlayHint,
  type ServerCapabilities,
} from 'vscode-languageserver/node';
import type { DiagnosticData } from '../features/diagnostic-data';
import { hintsIn, printed, tooltipOf, type Told } from '../features/inlay-hints';
import { buildTitle, lensRange, partTitle } from '../features/lenses';
import type { Location } from '../features/shapes';
import { filesIn } from '../features/guide-uses';
import { wholeFile, type Named } from '../features/subject';
import { Session, type AnalyzedFile } from '../session/session';
import type { Asker } from '../session/use-index';
import type { Across } from './across';
import type { Client } from './client';
import type { Findings, Shared } from './findings';
import { guarded } from './guard';
import type { HintSettings } from './requests';
import { unsavedChanges } from './unsaved';

/** What is offered to a client. */
export const numbersOffered = ({ resolvesTips }: Client): ServerCapabilities => ({
  inlayHintProvider: { resolveProvider: resolvesTips },
  codeLensProvider: { resolveProvider: true },
});

interface HintData {
  readonly uri: string;
}

/** Registers the answers; `settingsFor` gives the hints that are wished for a file. */
export function answerHints(shared: Shared, settingsFor: (uri: string) => Promise<HintSettings>): void {
  const { connection, log, session } = shared;
  const markupKind = (): 'markdown' | 'plaintext' => (shared.client.markdown ? 'markdown' : 'plaintext');
  connection.onRequest(
    InlayHintRequest.type,
    guarded(InlayHintRequest.method, log, async ({ textDocument: { uri }, range }): Promise<InlayHint[] | null> => {
      const shown = await settingsFor(uri);
      const judged = await session.judge(uri);
      const whole = (file: AnalyzedFile, told: Told): Partial<InlayHint> =>
        shared.client.resolvesTips
          ? { data: { uri } satisfies HintData }
          : { tooltip: tooltipOf(file, told, markupKind(), languageOf(shared.language, file.build)) };
      return Session.filesOf(judged).flatMap((file) =>
        hintsIn(file, range, (kind) => shown[kind]).map((told) => ({
          ...printed(file, told, languageOf(shared.language, file.build)),
          ...whole(file, told),
        })),
      );
    }),
  );
  connection.onRequest(
    InlayHintResolveRequest.type,
    guarded(InlayHintResolveRequest.method, log, async (hint): Promise<InlayHint> => {
      const { uri } = hint.data as HintData;
      const shown = await settingsFor(uri);
      const whole = await session.judge(uri);
      const judged = whole && Session.at(whole, hint.position);
      if (!judged?.build) return hint;
      // Where the text has moved on, the client asks for hints anew; no tooltip is better than another’s.
      const told = hintsIn(judged, { start: hint.position, end: hint.position }, (kind) => shown[kind]);
      const same = told.find(
        (one) => printed(judged, one, languageOf(shared.language, judged.build)).label === hint.label,
      );
      return same
        ? { ...hint, tooltip: tooltipOf(judged, same, markupKind(), languageOf(shared.language, judged.build)) }
        : hint;
    }),
  );
}

/** Registers the lenses. What they say is worked out when they are looked at. */
export function answerLenses(shared: Shared, findings: Findings, across: Across, pause: () => Promise<void>): void {
  const { connection, log, session } = shared;
  connection.onRequest(
    CodeLensRequest.type,
    guarded(CodeLensRequest.method, log, async ({ textDocument: { uri } }): Promise<CodeLens[] | null> => {
      const file = await across.at(uri);
      const lenses = file ? filesIn(file).flatMap((one, block) => lensesOf(one, { uri, block })) : [];
      return lenses.length > 0 ? lenses : null;
    }),
  );
  connection.onRequest(
    CodeLensResolveRequest.type,
    guarded(CodeLensResolveRequest.method, log, async (lens, token): Promise<CodeLens> => {
      const { uri, block } = lens.data as LensData;
      const judged = Session.filesOf(await session.judge(uri))[block];
      if (!judged) return lens;
      if (judged.build) return { ...lens, command: commandAbove(shared, judged, findings.waiting(uri, judged)) };
      const asker: Asker = { stopped: () => token.isCancellationRequested };
      return { ...lens, command: await commandFor(shared, across, judged, asker, pause) };
    }),
  );
}

interface LensData {
  readonly uri: string;
  /** Which fenced block of a guide; 0 of any other file. */
  readonly block: number;
}

function lensesOf({ doc, partName }: Named, data: LensData): CodeLens[] {
  const range = doc.kind === 'build' || partName !== undefined ? lensRange(doc) : undefined;
  return range ? [{ range, data }] : [];
}

type Command = NonNullable<CodeLens['command']>;

/** Above a build: as calm as its findings, which wait while someone writes. */
const commandAbove = (
  { client, language }: Shared,
  judged: AnalyzedFile,
  waiting: readonly DiagnosticData[],
): Command => ({
  title: language.plain(buildTitle(judged, waiting)),
  command: client.own.lenses === true ? 'fettle.showFindings' : '',
});

async function commandFor(
  shared: Shared,
  across: Across,
  judged: AnalyzedFile,
  asker: Asker,
  pause: () => Promise<void>,
): Promise<Command> {
  const leads = shared.client.own.lenses === true;
  const { title, uses } = await partLens(shared, across, judged, asker, pause);
  const position = lensRange(judged.doc)?.start;
  return leads && uses.length > 0
    ? { title, command: 'fettle.showUses', arguments: [judged.uri, position, uses] }
    : { title, command: '' };
}

async function partLens(
  shared: Shared,
  across: Across,
  judged: AnalyzedFile,
  asker: Asker,
  pause: () => Promise<void>,
): Promise<{ title: string; uses: Location[] }> {
  const file = await across.read(judged.place);
  if (file?.partName === undefined) return { title: '', uses: [] };
  const uses = (await across.referencesTo(file, wholeFile(file.partName), false, asker)).filter(({ uri }) =>
    uri.endsWith('.pcbuild.yaml'),
  );
  const uris = [...new Set(uses.map(({ uri }) => uri))];
  const changes = await unsavedChanges(shared, file, uris, asker, pause);
  const title = partTitle({ builds: uris.length, ...(changes ? { changes } : {}) });
  return { title: shared.language.plain(title), uses };
}
