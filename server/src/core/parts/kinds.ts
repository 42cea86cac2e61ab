// All kinds of part by name.
import { board } from './board';
import { card, display, drive, graphics, stick } from './devices';
import { fan, fixing, pcCase, radiator } from './housing';
import { supply } from './supply';
import { cable } from './supply';
import { labelled } from './labelled';
import { cooler, memory, paste, processor } from './processing';
import * as labels from './sheet-labels';
import { cardLabels, displayLabels, driveLabels } from './sheet-labels-devices';
import { inOtherLanguages } from './sheet-labels-other';
import { boardLabels, caseLabels, supplyLabels } from './sheet-labels-large';

export const kinds = {
  board: labelled(board, inOtherLanguages('board', boardLabels)),
  processor: labelled(processor, inOtherLanguages('processor', labels.processorLabels)),
  cooler: labelled(cooler, inOtherLanguages('cooler', labels.coolerLabels)),
  paste: labelled(paste, inOtherLanguages('paste', labels.pasteLabels)),
  memory: labelled(memory, inOtherLanguages('memory', labels.memoryLabels)),
  drive: labelled(drive, inOtherLanguages('drive', driveLabels)),
  graphics: labelled(graphics, inOtherLanguages('graphics', cardLabels)),
  card: labelled(card, inOtherLanguages('card', cardLabels)),
  supply: labelled(supply, inOtherLanguages('supply', supplyLabels)),
  case: labelled(pcCase, inOtherLanguages('case', caseLabels)),
  fan: labelled(fan, inOtherLanguages('fan', labels.fanPartLabels)),
  radiator: labelled(radiator, inOtherLanguages('radiator', labels.radiatorPartLabels)),
  display: labelled(display, inOtherLanguages('display', displayLabels)),
  cable: labelled(cable, inOtherLanguages('cable', labels.cableLabels)),
  fixing: labelled(fixing, inOtherLanguages('fixing', labels.fixingLabels)),
  stick: labelled(stick, inOtherLanguages('stick', labels.stickLabels)),
} as const;

export type Kinds = typeof kinds;
export type Kind = keyof Kinds;

export const kindNames = Object.keys(kinds) as readonly Kind[];

export function isKind(word: string): word is Kind {
  return Object.hasOwn(kinds, word);
}
