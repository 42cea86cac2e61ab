// The answer to `fettle/new`: the text of a new build or part file, and where it belongs. The client writes it.
import { isKind, kindNames, type Kind } from '../core/parts/kinds';
import { Lines } from '../core/text';
import { newBuild, startOf } from '../features/first-files';
import { newPart } from '../features/first-part';
import type { AddressedHost } from '../host/addressed';
import { folderOf, isTrouble, within } from '../host/host';
import { placeOfPart } from '../session/new-part';
import { answerDrafts } from './draft-answers';
import type { Language } from '../core/words/language';
import type { Shared } from './findings';
import { guarded } from './guard';
import type { ToServer } from './requests';

type Asked = ToServer['fettle/new']['params'];
type Answer = ToServer['fettle/new']['result'];

/** Registers the answers. */
export function answerNew(shared: Shared, today: () => string): void {
  const { connection, session, log } = shared;
  answerDrafts(shared, today);
  connection.onRequest('fettle/kinds', (): ToServer['fettle/kinds']['result'] => kindNames);
  connection.onRequest<Answer, void>(
    'fettle/new',
    guarded('fettle/new', log, async ({ near, what, name }: Asked): Promise<Answer> => {
      const host = session.hostFor(near);
      const path = host?.pathOf(near);
      const found = host && path !== undefined ? await host.find(path) : undefined;
      if (!host || !found || isTrouble(found))
        return { problem: shared.language.word('There is no folder to write it into.') };
      const { root, name: at, kind, isMarked } = found;
      if (what !== 'build') {
        const place = isKind(what) ? await placeOfPart(session.texts, host, root, name) : undefined;
        if (!place || !isKind(what))
          return {
            problem: shared.language.word(
              'A part is called by its path in the parts folder: maker/model, without blanks.',
            ),
          };
        return partAnswer(host, place.root, place.name, what, shared.language);
      }
      const files = newBuild(name, isMarked, shared.language);
      if (!files)
        return { problem: shared.language.word('A build is called by letters, digits, blanks, - and _ here.') };
      const folder = kind === 'folder' ? at : folderOf(at);
      const written = [...files].map(([file, text]) => ({ uri: uriIn(host, root, within(folder, file)), text }));
      const text = written[0]?.text ?? '';
      return { files: written, at: new Lines(text).positionAt(startOf(text)) };
    }),
  );
}

const uriIn = (host: AddressedHost, root: string, name: string): string => host.uriOf(host.pathIn(root, name));

function partAnswer(host: AddressedHost, root: string, name: string, kind: Kind, language: Language): Answer {
  const { text, at } = newPart(kind, language);
  return { files: [{ uri: uriIn(host, root, name), text }], at: new Lines(text).positionAt(at) };
}
