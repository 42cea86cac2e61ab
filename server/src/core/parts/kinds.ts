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
import { boardLabels, caseLabels, supplyLabels } from './sheet-labels-large';

export const kinds = {
  board: labelled(board, boardLabels),
  processor: labelled(processor, labels.processorLabels),
  cooler: labelled(cooler, labels.coolerLabels),
  paste: labelled(paste, labels.pasteLabels),
  memory: labelled(memory, labels.memoryLabels),
  drive: labelled(drive, driveLabels),
  graphics: labelled(graphics, cardLabels),
  card: labelled(card, cardLabels),
  supply: labelled(supply, supplyLabels),
  case: labelled(pcCase, caseLabels),
  fan: labelled(fan, labels.fanPartLabels),
  radiator: labelled(radiator, labels.radiatorPartLabels),
  display: labelled(display, displayLabels),
  cable: labelled(cable, labels.cableLabels),
  fixing: labelled(fixing, labels.fixingLabels),
  stick: labelled(stick, labels.stickLabels),
} as const;

export type Kinds = typeof kinds;
export type Kind = keyof Kinds;

export const kindNames = Object.keys(kinds) as readonly Kind[];

export function isKind(word: string): word is Kind {
  return Object.hasOwn(kinds, word);
}
