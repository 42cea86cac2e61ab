// The answer to `fettle/new`: the text of a new build or part file, and where it belongs. The client writes it.
import { isKind, kindNames, type Kind } from '../core/parts/kinds';
import { Lines } from '../core/text';
import { newBuild, startOf } from '../features/first-files';
import { newPart } from '../features/first-part';
import type { AddressedHost } from '../host/addressed';
import { folderOf, within } from '../host/host';
import { placeOfPart } from '../session/new-part';
import type { FileRef } from '../session/texts';
import { answerDrafts } from './draft-answers';
import type { Language } from '../core/words/language';
import type { Shared } from './findings';
import { guarded } from './guard';
import { noPartName, placeNear } from './near';
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
      const place = await placeNear(shared, near);
      if ('problem' in place) return place;
      const { host, found } = place;
      const { root, name: at, kind, isMarked } = found;
      if (what !== 'build') {
        const part = isKind(what) ? await placeOfPart(session.texts, host, root, name) : undefined;
        return part && isKind(what) ? partAnswer(part, what, shared.language) : noPartName(shared);
      }
      const files = newBuild(name, isMarked, shared.language);
      if (!files)
        return { problem: shared.language.word('A build is called by letters, digits, blanks, - and _ here.') };
      const folder = kind === 'folder' ? at : folderOf(at);
      const written = [...files].map(([file, text]) => ({
        uri: host.uriOf(host.pathIn(root, within(folder, file))),
        text,
      }));
      const text = written[0]?.text ?? '';
      return { files: written, at: new Lines(text).positionAt(startOf(text)) };
    }),
  );
}

function partAnswer({ host, path }: FileRef<AddressedHost>, kind: Kind, language: Language): Answer {
  const { text, at } = newPart(kind, language);
  return { files: [{ uri: host.uriOf(path), text }], at: new Lines(text).positionAt(at) };
}
