// The answer to `fettle/draftPart`: a part file drafted from the text of a data sheet, or what is to be asked first.
import { isKind } from '../core/parts/kinds';
import { drawFrom, partNameOf, partText, type Draft } from '../core/sheets';
import { isTrouble } from '../host/host';
import { placeOfPart } from '../session/new-part';
import type { Language } from '../core/words/language';
import type { Shared } from './findings';
import { guarded } from './guard';
import type { ToServer } from './requests';

type Asked = ToServer['fettle/draftPart']['params'];
type Answer = ToServer['fettle/draftPart']['result'];

/** Registers the answer; the readers of pages and tables are brought in with the first sheet. */
export function answerDrafts(shared: Shared, today: () => string): void {
  const { connection, session, log } = shared;
  connection.onRequest<Answer, void>(
    'fettle/draftPart',
    guarded('fettle/draftPart', log, async (asked: Asked): Promise<Answer> => {
      const [{ isMarkup, markupSheet }, { separatedSheet }] = await Promise.all([
        import('../core/sheets/markup'),
        import('../core/sheets/separated'),
      ]);
      const { text, name, kind, variant } = asked;
      const drawn = drawFrom(
        { name, text },
        {
          markup: { is: isMarkup, read: markupSheet },
          separated: separatedSheet,
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
      const host = session.hostFor(near);
      const path = host?.pathOf(near);
      const found = host && path !== undefined ? await host.find(path) : undefined;
      if (!host || !found || isTrouble(found))
        return { problem: shared.language.word('There is no folder to write it into.') };
      const place = await placeOfPart(session.texts, host, found.root, name);
      if (!place)
        return {
          problem: shared.language.word(
            'A part is called by its path in the parts folder: maker/model, without blanks.',
          ),
        };
      return { uri: host.uriOf(host.pathIn(place.root, place.name)) };
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
