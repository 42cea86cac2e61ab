// The plugs of a case’s front, each as the cable that it has.
import { HEADER_WORDS } from '../../trade/header-words';
import { sheetFrontCable } from '../../trade/sheet-forms';
import { wordOf } from '../../trade/vocabulary';
import { nothing, plain, type Taker } from '../taken';

const AUDIO = /^(?:3[.,]5 ?mm(?: audio| klinke)?|(?:audio )?combo.{0,11}|(?:hd )?[aá]udio|headset|mic|headphones?)$/i;
const GERMAN_AUDIO = /^(?:kopfhörer|mikrofon|(?:kombi-?)?klinke|kombibuchse)$/i;

/** Each as the header that it wants; two plugs of one kind share a cable. */
export const frontCables: Taker = (value, { path }) => {
  const pieces = value
    .split(/\s?[,;•\n]\s?|\s(?:and|und|&|\+)\s/)
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '' && !/^(?:reset|led|reset button)$/i.test(piece));
  const read = pieces.map((piece) => {
    if (/^power(?: button|\/reset)?$/i.test(piece)) return 'front panel';
    const bare = piece
      .replace(/^\d ?[x×] ?|(?: ?[x×] ?\d)$/g, '')
      .replace(/ ?(?:ports?|anschlüsse?|jacks?|buchsen?)$/i, '')
      .replace(/^USB[ -]?(?:Type[ -]?)?A \(([^()]{1,12})\)$/i, 'USB $1')
      .replace(/\s?\([^()]{0,20}\)/g, '')
      .replace(/^USB[ -]?(?:Type[ -]?)?A ?(\d\.\d.*)$/i, 'USB $1')
      .replace(/^USB[ -]?(?:Type[ -]?)?C \d.{0,12}$/i, 'USB-C')
      .replace(/^USB ?(\d(?:\.\d)?)/i, 'USB $1')
      .replace(AUDIO, 'audio jack')
      .replace(GERMAN_AUDIO, 'audio jack')
      .trim();
    return (
      wordOf(HEADER_WORDS, piece) ?? wordOf(HEADER_WORDS, sheetFrontCable(piece) ?? '') ?? wordOf(HEADER_WORDS, bare)
    );
  });
  if (read.length === 0 || read.some((one) => one === undefined)) return nothing;
  return plain({ path, value: [...new Set(read as string[])] });
};
