// When the server is wanted: for a file of ours, for a Markdown text that something ties to a build, for a folder that
// holds builds. Every Markdown text wakes the extension, and most of them are nobody's business but their writer's.
import { Disposable, languages, workspace, type DocumentSelector, type TextDocument } from 'vscode';
import { mayTie } from '../../server/src/core/guide/may-tie';
import { guideLanguage } from './languages';

/** Calls `begin` once, as soon as something of `ours` wants it. */
export function onceWanted(ours: DocumentSelector, begin: () => Promise<void>): Disposable {
  let begun = false;
  const wanted = (): void => {
    if (begun) return;
    begun = true;
    watching.dispose();
    void begin();
  };
  const look = (document: TextDocument): void => {
    if (languages.match(ours, document) > 0 && (document.languageId !== guideLanguage || mayTie(document.getText())))
      wanted();
  };
  const watching = Disposable.from(
    workspace.onDidOpenTextDocument(look),
    workspace.onDidChangeTextDocument(({ document }) => look(document)),
  );
  for (const document of workspace.textDocuments) look(document);
  if (!begun) void holdsBuilds().then((holds) => holds && wanted());
  return new Disposable(() => {
    begun = true;
    watching.dispose();
  });
}

/** The editor looks for the same before it wakes the extension, and does not say that it found it. */
async function holdsBuilds(): Promise<boolean> {
  try {
    return (await workspace.findFiles('**/*.pcbuild.yaml', undefined, 1)).length > 0;
  } catch {
    return false; // a folder that cannot be searched starts with the first file of ours that is opened
  }
}
