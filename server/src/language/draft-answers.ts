// The answer to `fettle/draftPart`: a part file drafted from the text of a data sheet, or what is to be asked first.
import { isKind } from '../core/parts/kinds';
import { drawFrom, partNameOf, partText, type Draft } from '../core/sheets';
import { placeOfPart } from '../session/new-part';
import { sheetReaders } from '../session/sheet-readers';
import type { Language } from '../core/words/language';
import type { Shared } from './findings';
import { guarded } from './guard';
import { noPartName, placeNear } from './near';
import type { ToServer } from './requests';

type Asked = ToServer['fettle/draftPart']['params'];
type Answer = ToServer['fettle/draftPart']['result'];

/** Registers the answers. */
export function answerDrafts(shared: Shared, today: () => string): void {
  const { connection, session, log } = shared;
  connection.onRequest<Answer, void>(
    'fettle/draftPart',
    guarded('fettle/draftPart', log, async (asked: Asked): Promise<Answer> => {
      const readers = await sheetReaders();
      const { text, name, kind, variant } = asked;
      const drawn = drawFrom(
        { name, text },
        {
          ...readers,
          isWhole: true,
          ...(kind !== undefined && isKind(kind) ? { kind } : {}),
          ...(variant === undefined ? {} : { variant }),
        },
      );
      if (!('draft' in drawn)) return { kinds: drawn.candidates };
      return drawn.draft.variants.length > 0
        ? { variants: [...new Set(drawn.draft.variants)] }
        : drafted(drawn.draft, today(), shared.language);
    }),
  );
  connection.onRequest<ToServer['fettle/partPlace']['result'], void>(
    'fettle/partPlace',
    guarded('fettle/partPlace', log, async ({ near, name }: ToServer['fettle/partPlace']['params']) => {
      const at = await placeNear(shared, near);
      if ('problem' in at) return at;
      const { host, found } = at;
      const place = await placeOfPart(session.texts, host, found.root, name);
      return place ? { uri: host.uriOf(place.path) } : noPartName(shared);
    }),
  );
}

function drafted(draft: Draft, today: string, language: Language): Answer {
  const name = partNameOf(draft.facts);
  const title = name === undefined ? language.word('Data sheet') : language.words`Data sheet of ${name}`;
  return {
    text: partText(draft, { today, title: draft.title ?? title }),
    facts: draft.facts.length,
    unread: draft.unread.length,
    ...(name === undefined ? {} : { name }),
  };
}
