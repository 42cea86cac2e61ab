// The worst grade of the file at hand, in the status bar, and where its lenses lead: to its findings, to its users.
import {
  commands,
  EventEmitter,
  l10n,
  languages,
  Location,
  Position,
  Range,
  StatusBarAlignment,
  Uri,
  window,
  workspace,
  type Diagnostic,
  type Disposable,
  type DocumentSelector,
} from 'vscode';

/** From the worst to the lightest, as findings name them behind `fettle · `. */
const grades = ['harm', 'stop', 'shortfall', 'note', 'unknown'] as const;
type Grade = (typeof grades)[number];

/** The grade of a finding of ours. */
export function gradeOf(source: string | undefined): Grade | undefined {
  return grades.find((grade) => source === `fettle · ${grade}`);
}

/** The findings of ours at the cursor of the editor at hand. */
export function findingsAtCursor(): readonly Diagnostic[] {
  const editor = window.activeTextEditor;
  if (!editor) return [];
  return languages
    .getDiagnostics(editor.document.uri)
    .filter(({ source, range }) => gradeOf(source) !== undefined && range.contains(editor.selection.active));
}

/** The open files whose findings have been told, be it that there are none. */
export class Told implements Disposable {
  private readonly uris = new Set<string>();
  private readonly changed = new EventEmitter<void>();
  readonly onDidChange = this.changed.event;
  private readonly closing = workspace.onDidCloseTextDocument(({ uri }) => this.uris.delete(uri.toString()));

  add(uri: Uri): void {
    if (this.uris.has(uri.toString())) return;
    this.uris.add(uri.toString());
    this.changed.fire();
  }

  has(uri: Uri): boolean {
    return this.uris.has(uri.toString());
  }

  clear(): void {
    this.uris.clear();
    this.changed.fire();
  }

  dispose(): void {
    this.closing.dispose();
    this.changed.dispose();
  }
}

/** Shows the worst grade of the file at hand, where it is one of `ours`; before that, that it is being checked. */
export function worstGrade(ours: DocumentSelector, told: Told, isRunning: () => boolean): Disposable[] {
  const item = window.createStatusBarItem('fettle.worst', StatusBarAlignment.Left, 0);
  item.name = l10n.t('Fettle: worst finding');
  item.command = 'fettle.showFindings';
  const show = (): void => {
    const document = window.activeTextEditor?.document;
    if (!document || languages.match(ours, document) === 0) return item.hide();
    if (!told.has(document.uri)) {
      if (!isRunning()) return item.hide();
      item.text = l10n.t('Fettle is checking');
      item.tooltip = undefined;
      return item.show();
    }
    const counts = countsOf(languages.getDiagnostics(document.uri));
    const worst = grades.find((grade) => counts[grade] > 0);
    item.text = worst === undefined ? l10n.t('Fettle: nothing found') : `Fettle: ${worst} (${counts[worst]})`;
    item.tooltip = grades
      .filter((grade) => counts[grade] > 0)
      .map((grade) => `${grade}: ${counts[grade]}`)
      .join('\n');
    item.show();
  };
  show();
  return [
    item,
    told.onDidChange(show),
    window.onDidChangeActiveTextEditor(show),
    languages.onDidChangeDiagnostics(({ uris }) => {
      const at = window.activeTextEditor?.document.uri.toString();
      if (uris.some((uri) => uri.toString() === at)) show();
    }),
    commands.registerCommand('fettle.showFindings', () => commands.executeCommand('workbench.actions.view.problems')),
    commands.registerCommand('fettle.showUses', showUses),
  ];
}

function countsOf(diagnostics: readonly Diagnostic[]): Record<Grade, number> {
  const counts = { harm: 0, stop: 0, shortfall: 0, note: 0, unknown: 0 };
  for (const { source } of diagnostics) {
    const grade = gradeOf(source);
    if (grade) counts[grade]++;
  }
  return counts;
}

interface Place {
  readonly uri: string;
  readonly range: { readonly start: Point; readonly end: Point };
}
interface Point {
  readonly line: number;
  readonly character: number;
}

/** Shows the places that a lens over a part file names. */
async function showUses(uri: string, at: Point, uses: readonly Place[]): Promise<void> {
  const point = ({ line, character }: Point): Position => new Position(line, character);
  const places = uses.map(
    (use) => new Location(Uri.parse(use.uri), new Range(point(use.range.start), point(use.range.end))),
  );
  await commands.executeCommand('editor.action.showReferences', Uri.parse(uri), point(at), places);
}
