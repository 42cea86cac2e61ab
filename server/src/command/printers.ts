// The formats that `check` writes: each turns sections into text as they come.
import type { Language } from '../core/words/language';
import { languageOf } from '../core/words/names';
import type { Grade } from '../core/manifest/house-file';
import { explain } from '../features/check-markdown';
import { Annotations, annotate } from '../report/annotations';
import { CodeQuality } from '../report/code-quality';
import type { RunTrouble } from '../session/run-trouble';
import { closingJson, openingJson, sectionJson, toJson } from '../report/json';
import { FindingsComment } from '../report/comment-findings';
import { JunitXml } from '../report/junit-xml';
import { runJson } from '../report/json';
import { addSection } from '../report/sarif';
import { SarifLog } from '../report/sarif-log';
import { sectionLines } from '../report/lines';
import type { Section } from '../report/section';
import type { Tally } from '../report/tally';
import { closingText } from '../report/closing-text';
import { sectionText, type TextFormatOptions } from '../report/text';

export interface Printer {
  readonly open: () => string;
  readonly section: (section: Section) => string;
  readonly close: (tally: Tally, troubles: readonly RunTrouble[]) => string;
}

export interface PrintedRun {
  /** The day that counts as today. */
  readonly on: string;
  /** The version of Fettle. */
  readonly version: string;
  /** The lightest grade that the run fails by. */
  readonly fails: Grade;
  /** Whether only what a change brings is listed. */
  readonly isSince: boolean;
}

/** What is capped for its reader is held back until the worst of it is known; the rest is written as it comes. */
export const printers = {
  text: (look: TextFormatOptions): Printer => ({
    open: () => '',
    section: (section) => sectionText(section, speakingOf(section, look)),
    close: (tally, troubles) =>
      !look.quiet && tally.buildCount + tally.otherFiles > 0 ? closingText(tally, look, troubles.length) : '',
  }),
  lines: (look: TextFormatOptions): Printer => ({
    open: () => '',
    section: (section) => sectionLines(section, speakingOf(section, look)),
    // What was not read is said on standard error, in whole.
    close: () => '',
  }),
  json(look: TextFormatOptions, { on }: PrintedRun): Printer {
    let isFirst = true;
    return {
      open: () => openingJson({ on, from: look.from }),
      section(section) {
        const text = `${isFirst ? '' : separators.json}\n${toJson(sectionJson(section, speakingOf(section, look)))}`;
        isFirst = false;
        return text;
      },
      close: (tally, troubles) => `\n${closingJson(tally, troubles, look)}`,
    };
  },
  sarif(look: TextFormatOptions, { on, version }: PrintedRun): Printer {
    const log = new SarifLog({ version, language: look.language, page: (id) => explain(id, look.language) });
    return {
      open: () => '',
      section(section) {
        addSection(log, section, speakingOf(section, look));
        return '';
      },
      close: (tally, troubles) =>
        log.text({ on, from: look.from, ...runJson(tally, troubles, look) }, troubles, tally.cut),
    };
  },
  annotations(look: TextFormatOptions): Printer {
    const annotations = new Annotations(look.language);
    return {
      open: () => '',
      section(section) {
        annotate(annotations, section, speakingOf(section, look));
        return '';
      },
      close(tally, troubles) {
        for (const { path, trouble } of troubles) annotations.notRead(path, trouble);
        return annotations.text(tally.cut);
      },
    };
  },
  'code-quality'(look: TextFormatOptions): Printer {
    const report = new CodeQuality();
    return {
      open: () => '[',
      section: (section) => report.section(section, speakingOf(section, look)),
      close: (tally, troubles) => report.closing(troubles, tally.cut, look.language),
    };
  },
  'junit-xml'(look: TextFormatOptions, { fails }: PrintedRun): Printer {
    const report = new JunitXml(fails);
    return {
      open: () => report.opening,
      section: (section) => report.section(section, speakingOf(section, look)),
      close: (tally, troubles) => report.closing(troubles, tally.cut, look.language),
    };
  },
  comment(look: TextFormatOptions, { isSince }: PrintedRun): Printer {
    const comment = new FindingsComment(look);
    return {
      open: () => '',
      section(section) {
        comment.add(section);
        return '';
      },
      close: (tally, troubles) => comment.text(tally, troubles, isSince),
    };
  },
} as const;

/** Formats whose sections are whole by themselves, with what stands between two of them. */
export const separators = { text: '', json: ',' } as const;
export type WholeFormat = keyof typeof separators;

export type Format = keyof typeof printers;
export const isWhole = (format: Format): format is WholeFormat => Object.hasOwn(separators, format);
export const formats = Object.keys(printers) as readonly Format[];

/** What holds for a section of a file: no name of its build is told as a word. */
const speakingOf = <L extends { readonly language: Language }>({ build }: Section, look: L): L => ({
  ...look,
  language: languageOf(look.language, build),
});
