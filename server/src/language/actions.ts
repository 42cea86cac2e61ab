// Answers to what can be done: proven fixes listed by what they change, their edits handed over once one is chosen.
import { languageOf } from '../core/words/names';
import {
  CodeActionTriggerKind,
  type CancellationToken,
  type CodeAction as ProtocolAction,
  type CodeActionParams,
} from 'vscode-languageserver/node';
import { codeActionSteps, findingsIn, fixAllKind, type ActionOptions, type CodeAction } from '../features/code-actions';
import { meet } from '../core/text';
import type { Diagnostic, WorkspaceEdit } from '../features/shapes';
import type { PartIndex } from '../session/part-index';
import { Session, type AnalyzedFile } from '../session/session';
import { editForClient } from './client';
import type { Shared } from './findings';
import { overtaken } from './guard';
import { stillWanted, withParts } from './with-parts';

/** How long one answer may go on proving fixes of further findings. */
const provingMs = 1_000;
/** So many answers have their edits kept. */
const mostKept = 8;

export class Actions {
  private readonly kept = new Map<
    number,
    { readonly judged: AnalyzedFile; readonly edits: readonly WorkspaceEdit[] }
  >();
  private serial = 0;

  constructor(
    private readonly shared: Shared,
    private readonly shelf: PartIndex,
    private readonly pause: () => Promise<void>,
  ) {}

  async answer(judged: AnalyzedFile, params: CodeActionParams, token: CancellationToken): Promise<ProtocolAction[]> {
    const { client } = this.shared;
    // Without literals a client knows commands only, and ours are edits.
    if (!client.actionLiterals) return [];
    const { start, end } = params.range;
    const blocks = Session.blocksOf(judged).filter(({ doc }) =>
      meet(doc.lines.rangeOf({ start: 0, end: doc.text.length }), { start, end }),
    );
    const found: CodeAction[] = [];
    for (const one of [judged, ...blocks]) found.push(...(await this.actions(one, params, token)));
    const merged = oneFixAll(found);
    return client.resolvesEdits ? this.listed(judged, merged) : merged.map((action) => this.whole(action));
  }

  /** The edit of an action that was listed; refused where the text it was made for has changed. */
  resolve(action: ProtocolAction): ProtocolAction {
    if (action.data === undefined) return action;
    const { answer, at } = action.data as { answer: number; at: number };
    const kept = this.kept.get(answer);
    const edit = kept?.edits[at];
    if (!edit || !this.shared.session.holds(kept.judged)) throw overtaken();
    return { ...action, edit: editForClient(edit, this.shared.client.versionedEdits) };
  }

  private async actions(
    judged: AnalyzedFile,
    { range, context }: CodeActionParams,
    token: CancellationToken,
  ): Promise<CodeAction[]> {
    const { shared, shelf } = this;
    const { only, triggerKind, diagnostics } = context;
    const automatic = triggerKind === CodeActionTriggerKind.Automatic;
    const options: Omit<ActionOptions, 'candidates'> = {
      ...(only ? { only } : {}),
      automatic,
      from: shared.settings.of(judged.uri).from,
      language: languageOf(shared.language, judged.build),
      explains: shared.client.own.explains === true,
      selects: shared.client.own.writesAt === true,
      diagnostics: diagnostics as unknown as Diagnostic[],
    };
    const isSought = findingsIn(judged, range).length > 0;
    const skips = !isSought || (automatic && !shelf.isListed(judged));
    return withParts(shared, shelf, judged, token, skips, async (candidates) => {
      const begun = performance.now();
      const isSpent = (): boolean => performance.now() - begun > provingMs;
      const steps = codeActionSteps(judged, range, { ...options, candidates, isSpent });
      for (;;) {
        const { done, value } = steps.next();
        if (done) return value;
        await this.pause();
        stillWanted(shared, judged, token);
      }
    });
  }

  private listed(judged: AnalyzedFile, found: readonly CodeAction[]): ProtocolAction[] {
    const answer = ++this.serial;
    const edits: WorkspaceEdit[] = [];
    const listed = found.map(({ edit, ...action }) =>
      edit ? { ...action, data: { answer, at: edits.push(edit) - 1 } } : action,
    );
    this.kept.set(answer, { judged, edits });
    for (const old of this.kept.keys()) if (old <= answer - mostKept) this.kept.delete(old);
    return listed as ProtocolAction[];
  }

  private whole(action: CodeAction): ProtocolAction {
    const edit = action.edit && editForClient(action.edit, this.shared.client.versionedEdits);
    return { ...action, ...(edit ? { edit } : {}) } as ProtocolAction;
  }
}

/** What the blocks of one guide have mended at once is one change: a second would be for an older text. */
function oneFixAll(found: readonly CodeAction[]): CodeAction[] {
  const [first, ...others] = found.filter(({ kind }) => kind === fixAllKind);
  if (!first?.edit || others.length === 0) return [...found];
  const documentChanges = first.edit.documentChanges.map((change) => ({
    ...change,
    edits: [
      ...change.edits,
      ...others.flatMap(({ edit }) => edit?.documentChanges.flatMap(({ edits }) => edits) ?? []),
    ],
  }));
  return [...found.filter(({ kind }) => kind !== fixAllKind), { ...first, edit: { documentChanges } }];
}
