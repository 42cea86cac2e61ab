// Findings as diagnostics: broken checks one each, open checks gathered into hints at what no file states.
import { atLeastAsBad } from '../core/build/workspace-config';
import { cautionWords } from '../core/checks/page';
import { relatedTo, type Finding } from '../core/judge/finding';
import type { Grade } from '../core/manifest/house-file';
import { visible, type Span } from '../core/text';
import type { Language } from '../core/words/language';
import { english } from '../core/words/languages';
import { dataOfFindings } from './diagnostic-data';
import { diagnosticOfHint, hintsOf, isOpen, keyOfHint, type Hint, type How } from './hints';
import { pageAddress, severities, sourceOf, type Diagnostic, type View } from './shapes';

export interface DiagnosticOptions {
  /** The lightest grade that is shown. */
  readonly from: Grade;
  /** Whether the client shows related lines. */
  readonly related: boolean;
  /** Hints stand at the keys of values with something worse: the client shows hints above all else at a place. */
  readonly hintsApart?: boolean;
  /** The scheme under which the client opens pages on checks, where it does. */
  readonly pages?: string;
  /** Absent: English. */
  readonly language?: Language;
}

/** Those that decide come first. */
const mostRelated = 5;

const severityOf: Record<Grade, Diagnostic['severity']> = {
  harm: severities.error,
  stop: severities.error,
  shortfall: severities.warning,
  note: severities.information,
  unknown: severities.hint,
};

/** What is shown of a judged file. Accepted findings are not. */
export function diagnosticsOf(view: View & Troubled, options: DiagnosticOptions): Diagnostic[] {
  const shown = view.judgement.findings.filter(
    (finding) => !finding.accepted && (finding.check.unread || atLeastAsBad(finding.grade, options.from)),
  );
  const data = dataOfFindings(view.judgement.findings);
  const how = { related: options.related, language: options.language ?? english() };
  const decided = shown.filter((finding) => !isOpen(finding));
  const hints = hintsOf(view, options.from);
  return [
    ...decided.map((finding) => ({
      ...diagnosticOf(view, finding, how),
      ...pageOf(finding, options),
      data: data.get(finding),
    })),
    ...(options.hintsApart ? hints.map((hint) => apart(view, hint, decided)) : hints).map((hint) =>
      diagnosticOfHint(view, hint, how),
    ),
    ...troublesOf(view, how.language),
  ];
}

interface Troubled {
  readonly troubles?: readonly { readonly name: string; readonly trouble: string }[];
}

/** Where the page on a finding's check opens, for a client that opens such pages. */
function pageOf(finding: Finding, { pages }: DiagnosticOptions): Pick<Diagnostic, 'codeDescription'> {
  return pages ? { codeDescription: { href: pageAddress(pages, finding.id) } } : {};
}

/** A finding as a diagnostic, without the data that tells it from the others of its file. */
export function diagnosticOf(view: View, finding: Finding, { related: withRelated, language }: How): Diagnostic {
  const related = !withRelated
    ? []
    : relatedTo(finding, mostRelated).map(({ doc, span, what }) => ({
        location: { uri: view.uriOf(doc), range: doc.lines.rangeOf(span) },
        message: visible(language.plain(what)),
      }));
  return {
    range: view.doc.lines.rangeOf(finding.underline.span),
    severity: severityOf[finding.grade],
    code: finding.id,
    source: sourceOf(finding.grade),
    message: visible(language.said(finding.said)) + cautionBelow(finding, language),
    ...(related.length > 0 ? { relatedInformation: related } : {}),
  };
}

/** The caution of a finding in the standard’s order: signal word, hazard, consequence, avoidance. */
function cautionBelow({ caution }: Finding, language: Language): string {
  const words = cautionWords(caution);
  if (!words) return '';
  const sentences = words.sentences.slice(0, 3).map((one) => language.word(one));
  return `\n${language.word(words.word)}: ${sentences.join(' ')}`;
}

/** A hint at the key of its value, where one of the findings covers that. */
function apart(view: View, hint: Hint, findings: readonly Finding[]): Hint {
  const covers = ({ start }: Span): boolean =>
    findings.some(({ underline: { span } }) => span.start <= start && start < span.end);
  const key = covers(hint.span) ? keyOfHint(view, hint) : undefined;
  return key && !covers(key) ? { ...hint, span: key } : hint;
}

/**
 * A file that a build asks for and that cannot be read, and a check that failed by itself, are said at the file’s
 * start.
 */
function troublesOf(view: View & Troubled, language: Language): Diagnostic[] {
  const range = view.doc.lines.rangeOf(view.doc.lines.lineSpan(0));
  const plain = (code: string, message: string): Diagnostic => ({
    range,
    severity: severities.warning,
    code,
    source: 'fettle',
    message: visible(message),
  });
  return [
    ...(view.troubles ?? []).map(({ name, trouble }) => plain('file-not-read', `${name} ${language.plain(trouble)}`)),
    ...view.judgement.failed.map(({ id, error }) =>
      plain(id, language.words`This check failed by a fault of its own and says nothing of this file: ${error}`),
    ),
  ];
}
