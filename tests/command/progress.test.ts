// How far a run is: told on a terminal alone, after a second, on one line that is taken away.
import { describe, expect, it } from 'vitest';
import { english } from '../../server/src/core/words/languages';
import { Progress } from '../../server/src/command/progress';

function told(isTerminal: boolean, ...times: readonly number[]): string {
  let text = '';
  let now = 5_000;
  const progress = new Progress(isTerminal ? (more) => void (text += more) : undefined, 3, () => now, english());
  for (const time of times) {
    now = 5_000 + time;
    progress.step();
  }
  progress.end();
  return text;
}

describe('progress', () => {
  it('is quiet for a second, then tells at intervals and clears its line', () => {
    expect(told(true, 10, 999)).toBe('');
    expect(told(true, 10, 1_000, 1_050, 1_400)).toBe('\r\u001b[K2 of 3 files\r\u001b[K3 of 3 files\r\u001b[K');
  });

  it('writes nothing, no control either, where there is no terminal', () => {
    expect(told(false, 10, 2_000, 9_000)).toBe('');
  });
});
