// What was read of a machine, in the words of the report: the outputs that bear witness, and those that nobody reads.
import type { Distilled } from '../core/machine/distill';
import type { Doc } from '../core/parts/doc';
import type { Language } from '../core/words/language';
import { block, safe } from './layout';
import type { FormatOptions } from './section';

export function readText({ machine }: Distilled, { language }: Pick<FormatOptions, 'language'>): string {
  const from = machine.from.value?.flatMap(({ value }) => value ?? []) ?? [];
  return `${block(language.words`Read: ${safe(from.join(', '))}.`, 0).join('\n')}\n`;
}

export const unreadText = (docs: readonly Doc[], language: Language): readonly string[] =>
  docs.map(({ name }) => safe(language.words`${name}: is the output of no tool that Fettle reads; it was left aside.`));
