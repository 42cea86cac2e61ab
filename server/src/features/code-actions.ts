// Code actions: proven fixes of the findings in a range, keys to be filled in, accepting, explaining, fixing all that
// is certain.
import type { Finding } from '../core/judge/finding';
import {
  mayBePreferred,
  provenFileFixes,
  provenFixes,
  provenGuideFixes,
  staysWithin,
  type ProvenFix,
} from '../core/judge/prove';
import type { Candidates } from '../core/judge/swaps';
import type { Grade } from '../core/manifest/house-file';
import { visible, type Span } from '../core/text';
import { acceptEdits, reasonAfter } from './accept';
import { dataOfFindings, sameAs } from './diagnostic-data';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { diagnosticOf } from './diagnostics';
import { FillIns } from './fill-ins';
import { changedBy } from './fit';
import { fixAllEdits } from './fix-all';
import { diagnosticOfHint, hintsOf, keyOfHint, type Hint, type How } from './hints';
import {
  documentEdit,
  type Command,
  type Diagnostic,
  type Position,
  type Range,
  type View,
  type WorkspaceEdit,
} from './shapes';

/** Each fix is proven by judging a copy, so a selection of a whole faulty file must not ask for all of them. */
const mostFindings = 20;

export const fixAllKind = 'source.fixAll.fettle';

export interface CodeAction {
  title: string;
  kind: string;
  diagnostics?: Diagnostic[];
  isPreferred?: boolean;
  edit?: WorkspaceEdit;
  command?: Command;
}

export interface ActionOptions {
  /** Parts that may stand in for others. */
  readonly candidates: Candidates;
  /** The lightest grade that the client is shown; everything when undefined. */
  readonly from?: Grade;
  /** Kinds that the client asks for; all when undefined. */
  readonly only?: readonly string[];
  /** The client asks by itself, without anyone waiting: what costs much is left out. */
  readonly automatic?: boolean;
  /** The client can show a page on a check. */
  readonly explains?: boolean;
  /** The client can put the cursor somewhere. */
  readonly selects?: boolean;
  /** The language of the client; absent: English. */
  readonly language?: Language;
  /** The client’s own diagnostics in the range; an action names those it belongs to. */
  readonly diagnostics?: readonly Diagnostic[];
  /** Asked before each proof but the first: whether no more time is to be spent on proving. Never, when undefined. */
  readonly isSpent?: () => boolean;
}

/**
 * What can be done about a range of a judged file, in steps, so that others get their turn and a request can be given
 * up: it stands still after each finding. Worst findings come first, then those nearest to the start of the range;
 * once the time is spent, what costs much is left out.
 */
export function* codeActionSteps(view: View, range: Range, options: ActionOptions): Generator<undefined, CodeAction[]> {
  const actions: CodeAction[] = [];
  const isSpent = options.isSpent ?? (() => false);
  if (wants(options, 'quickfix')) {
    const found = findingsIn(view, range).slice(0, mostFindings);
    for (const [i, finding] of found.entries()) {
      if (i > 0 && isSpent()) break;
      actions.push(...fixes(view, finding, options));
      yield;
    }
    const hints = hintsIn(view, range, options);
    const keys = new FillIns(view, hints);
    while (keys.isOpen && !(found.length + keys.tried > 0 && isSpent())) {
      keys.tryNext();
      yield;
    }
    for (const { title, hints, edits } of keys.made(options.language ?? english()))
      actions.push({
        title,
        kind: 'quickfix',
        ...named(...hints.flatMap((hint) => ofHint(hint, view, options) ?? [])),
        edit: { documentChanges: edits },
      });
    for (const finding of found) actions.push(...accepting(view, finding, options));
    if (options.explains)
      for (const id of new Set(found.map((finding) => finding.id))) actions.push(explaining(id, options));
  }
  if (wants(options, fixAllKind) && !options.automatic && (options.only || !isSpent()))
    actions.push(...fixAll(view, options));
  return merged(actions);
}

/** Two findings that one and the same change mends are offered it once. */
function merged(actions: readonly CodeAction[]): CodeAction[] {
  const met = new Map<string, CodeAction>();
  for (const action of actions) {
    const key = JSON.stringify([action.kind, action.edit, action.command]);
    const before = met.get(key);
    if (!before) met.set(key, action);
    else {
      const diagnostics = [...(before.diagnostics ?? []), ...(action.diagnostics ?? [])];
      if (diagnostics.length > 0) before.diagnostics = [...new Set(diagnostics)];
      // One of the findings may have a fix of its own that is preferred: each has one at most.
      if (!action.isPreferred) delete before.isPreferred;
    }
  }
  return [...met.values()];
}

/** A kind is wanted when it, or one above it, is asked for. */
function wants({ only }: ActionOptions, kind: string): boolean {
  return only === undefined || only.some((asked) => asked === kind || kind.startsWith(`${asked}.`) || asked === '');
}

/** Findings that something can be done about: not accepted, and meeting the range; worst first, then by place. */
export function findingsIn(view: View, range: Range): Finding[] {
  const meets = meeting(view, range);
  return view.judgement.findings.filter(
    ({ underline, grade, accepted }) =>
      underline.doc === view.doc && grade !== 'unknown' && !accepted && meets(underline.span),
  );
}

function meeting({ doc: { lines } }: View, range: Range): (span: Span) => boolean {
  const start = lines.offsetAt(range.start);
  const end = lines.offsetAt(range.end);
  return (span) => span.start <= end && span.end >= start;
}

function hintsIn(view: View, range: Range, options: ActionOptions): Hint[] {
  const meets = meeting(view, range);
  return view.build
    ? hintsOf(view, options.from ?? 'unknown').filter(
        (hint) => meets(hint.span) || meets(keyOfHint(view, hint) ?? hint.span),
      )
    : [];
}

function fixes(view: View, finding: Finding, options: ActionOptions): CodeAction[] {
  const proven = view.guide
    ? provenGuideFixes(view.guide, view.judgement, finding)
    : view.build
      ? provenFixes(view.build, view.judgement, finding, options.candidates)
      : provenFileFixes(view.doc, view.judgement, finding);
  return proven
    .filter((fix) => staysWithin(view.doc, fix))
    .map((fix, i) => ({
      title: titleOf(view, fix, options.language ?? english()),
      kind: 'quickfix',
      ...belongingTo(finding, view, options),
      ...(i === 0 && mayBePreferred(view.doc, finding, fix) ? { isPreferred: true } : {}),
      edit: { documentChanges: [documentEdit(view, fix.doc, fix.edits)] },
    }));
}

const longestTitle = 160;

/** What it changes, what it brings, and what it costs: in money and power, or in what was settled. */
function titleOf(view: View, { title, swap, gives }: ProvenFix, language: Language): string {
  const costs = [swap ? changedBy(view, swap.placed, swap.name) : '', gives ? language.word(gives) : ''].filter(
    (one) => one !== '',
  );
  const whole = visible([language.plain(title), ...costs].join('; ')).replace(/\s+/g, ' ');
  return whole.length > longestTitle ? `${whole.slice(0, longestTitle - 1)}…` : whole;
}

function accepting(view: View, finding: Finding, options: ActionOptions): CodeAction[] {
  const edits = acceptEdits(view, finding);
  if (!edits) return [];
  return [
    {
      title: (options.language ?? english()).words`Accept this finding, with a reason to fill in (${finding.id})`,
      kind: 'quickfix',
      ...belongingTo(finding, view, options),
      edit: { documentChanges: [documentEdit(view, view.doc, edits)] },
      ...(options.selects ? selecting(view, reasonAfter(view, finding, edits), options) : {}),
    },
  ];
}

/** Puts the cursor where someone is to write, once the edit is made. */
function selecting(
  view: View,
  at: Position | undefined,
  { language = english() }: ActionOptions,
): Pick<CodeAction, 'command'> {
  const title = language.word('Write the reason');
  return at ? { command: { title, command: 'fettle.writeAt', arguments: [view.uriOf(view.doc), at] } } : {};
}

function explaining(id: string, { language = english() }: ActionOptions): CodeAction {
  const title = language.words`Explain ${id}`;
  return { title, kind: 'quickfix', command: { title, command: 'fettle.explain', arguments: [id] } };
}

function fixAll(view: View, { language = english() }: ActionOptions): CodeAction[] {
  const edits = fixAllEdits(view);
  if (edits.length === 0) return [];
  return [
    {
      title: language.word('Mend everything in this file that has one reading'),
      kind: fixAllKind,
      edit: { documentChanges: [documentEdit(view, view.doc, edits)] },
    },
  ];
}

/** The client’s own diagnostic of the finding, which the action then belongs to. */
function belongingTo(finding: Finding, view: View, options: ActionOptions): Pick<CodeAction, 'diagnostics'> {
  if (!options.diagnostics?.length) return {};
  const data = dataOfFindings(view.judgement.findings).get(finding);
  return named(sameAs({ ...diagnosticOf(view, finding, howIn(options)), data }, options.diagnostics));
}

const ofHint = (hint: Hint, view: View, options: ActionOptions): Diagnostic | undefined =>
  sameAs(diagnosticOfHint(view, hint, howIn(options)), options.diagnostics ?? []);

const howIn = ({ language = english() }: ActionOptions): How => ({ related: false, language });

const named = (...own: readonly (Diagnostic | undefined)[]): Pick<CodeAction, 'diagnostics'> => {
  const diagnostics = own.filter((one) => one !== undefined);
  return diagnostics.length > 0 ? { diagnostics } : {};
};
