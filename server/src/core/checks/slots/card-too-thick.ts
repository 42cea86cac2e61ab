// The openings and the room that a card takes against those of the case.
import type { Build, Placed } from '../../build/build';
import { bracketOpenings, firstOpening, lastOpening, openingsOver } from '../../figures/card-size';
import { counted, figure, missing } from '../../figures/figure';
import { sentence, type Sentence } from '../../figures/sentence';
import { seatOf } from '../../figures/slots';
import { all, any, atMost, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, swap } from '../kit';
import { cardMoves, cardsOf, type Card } from './slots-kit';

export default check({
  id: 'card-too-thick',
  area: 'slots',
  grade: 'stop',
  what: 'Each card’s bracket ends within the case’s expansion openings, and its cooler within the room beside them.',
  why: 'A card of three openings in the lowest slot meets the supply’s cover or the case’s floor.',
  source: 'PCI Express Card Electromechanical Specification: slots 20.32 mm apart; common practice',
  examples: [
    {
      faulty: `
parts:
  board: { slots: { PCIE_2: { kind: PCIe, position: 3 } } }
  graphics: { openings: 3, slot: PCIE_2 }
#                                ^^^^^^
  case: { openings: 4 }
`,
      instead: 'Put the card into a higher slot, or choose a case with more openings.',
    },
  ],
  test(build, report) {
    const box = build.parts.case;
    if (!box) return;
    for (const card of cardsOf(build)) {
      const { bracket, room } = card.at.riser.entry ? onRiser(box, card) : inSlot(build, box, card);
      report(
        outcome(at(card, card.at.slot), given(all(bracket, room), card.at.riser, card.part.edge), {
          broken: () => (bracket.is === false ? openingsWords(build, box, card) : roomWords(box, card)),
          *fixes() {
            if (!card.at.riser.entry) yield* cardMoves(build, card);
            yield swap(box);
          },
        }),
      );
    }
  },
});

type Case = Placed<'case'>;
interface Sides {
  readonly bracket: Truth;
  readonly room: Truth;
}

const openingsOf = (box: Case) => counted(box.part.openings, `openings of ${box.label}`);

/** In line with its slot: the bracket within the openings, and so the cooler, unless the case states more room. */
function inSlot(build: Build, box: Case, card: Card): Sides {
  const has = openingsOf(box);
  const first = firstOpening(build, seatOf(build, card), card.label);
  const bracket = atMost(lastOpening(`last opening of ${card.label}`, first, bracketOpenings(card)), has);
  if (!card.part.thickness.value) return { bracket, room: sure(true) };
  const over = atMost(lastOpening(`last opening under ${card.label}`, first, openingsOver(card)), has);
  return { bracket, room: box.part['card-thickness'].value ? inRoom(box, card) : any(over, inRoom(box, card)) };
}

/** On a riser it stands at openings of its own; where the case lists none, perhaps at the plain ones. */
function onRiser(box: Case, card: Card): Sides {
  const taken = bracketOpenings(card);
  const own = box.part['vertical-openings'];
  const words = `openings of ${box.label} for a card on a riser`;
  const bracket =
    own.value === undefined
      ? any(atMost(taken, openingsOf(box)), lacking([missing(own, words)]))
      : atMost(taken, counted(own, words));
  return {
    bracket,
    room: card.part.thickness.value && box.part['card-thickness'].value ? inRoom(box, card) : sure(true),
  };
}

const inRoom = (box: Case, card: Card): Truth =>
  atMost(
    figure(card.part.thickness, `thickness of ${card.label}`),
    figure(box.part['card-thickness'], `room for the thickness of a card in ${box.label}`),
  );

function openingsWords(build: Build, box: Case, card: Card): Sentence {
  const taken = bracketOpenings(card);
  if (card.at.riser.entry)
    return sentence`${card.label} takes ${taken} openings on its riser; ${box.label} has
      ${counted(box.part['vertical-openings'], 'openings for a card on a riser')} there.`;
  const last = lastOpening(
    `last opening of ${card.label}`,
    firstOpening(build, seatOf(build, card), card.label),
    taken,
  );
  return last.lo === last.hi
    ? sentence`${card.label} reaches to opening ${last}; ${box.label} has ${openingsOf(box)}.`
    : sentence`${card.label} takes ${taken} openings; ${box.label} has ${openingsOf(box)}.`;
}

const roomWords = (box: Case, card: Card): Sentence =>
  sentence`${card.label} is ${figure(card.part.thickness, 'thickness')} thick; ${box.label} leaves
    ${figure(box.part['card-thickness'], 'room for it')}.`;
