// The formats that `check` writes: each turns sections into text as they come.
import type { RunTrouble } from '../session/run-trouble';
import { closingJson, openingJson, sectionJson, toJson } from '../report/json';
import type { Section } from '../report/section';
import type { Tally } from '../report/tally';
import { closingText } from '../report/closing-text';
import { sectionText, type TextFormatOptions } from '../report/text';

export interface Printer {
  readonly open: () => string;
  readonly section: (section: Section) => string;
  readonly close: (tally: Tally, troubles: readonly RunTrouble[]) => string;
}

export const printers = {
  text: (look: TextFormatOptions): Printer => ({
    open: () => '',
    section: (section) => sectionText(section, look),
    close: (tally, troubles) =>
      tally.buildCount + tally.otherFiles > 0 ? closingText(tally, look, troubles.length) : '',
  }),
  json(look: TextFormatOptions, on: string): Printer {
    let between = '\n';
    return {
      open: () => openingJson({ on, from: look.from }),
      section(section) {
        const text = between + toJson(sectionJson(section, look));
        between = ',\n';
        return text;
      },
      close: (tally, troubles) => `\n${closingJson(tally, troubles, look)}`,
    };
  },
} as const;

export type Format = keyof typeof printers;
export const formats = Object.keys(printers) as readonly Format[];
