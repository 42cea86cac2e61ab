// Sentences in a text file, one a line, with what is to be found in each.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Judged {
  readonly mark: string;
  readonly text: string;
  /** What stands behind `@`, undefined where nothing does. */
  readonly at?: string;
}

export function sentences(name: string): Judged[] {
  const lines = readFileSync(join(__dirname, 'sentences', `${name}.txt`), 'utf8').split('\n');
  return lines
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => {
      const [said = '', at] = line.split(' @');
      const [mark = ''] = said.split(' ');
      return { mark, text: said.slice(mark.length + 1), ...(at === undefined ? {} : { at }) };
    });
}
