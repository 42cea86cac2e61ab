// No regular expression of ours takes more than linear time, whatever a file holds.
import { checkSync } from 'recheck';
import { describe, expect, it } from 'vitest';
import { builders, expressions, type Expression } from './regexes';
import { judgedSlowly } from './regexes-judged';

const all = await expressions();
const spelled = ({ pattern, flags }: Expression): string => `/${pattern}/${flags}`;

/** Repetition without an end; without any, the work at each place of a text is bounded. */
const endless = ({ pattern }: Expression): boolean =>
  /[*+]|\{\d+,\}/.test(pattern.replace(/\\.|\[(?:\\.|[^\]\\])*\]/gsu, 'x'));

/** Texts that make a search start over: the expression’s own words and signs, repeated, and an end unlike them. */
function hostile({ pattern }: Expression, length: number): string[] {
  const words = pattern.replace(/\\[a-zA-Z]/g, ' ').match(/[A-Za-zäöüµ]{2,}|[^\sA-Za-z\\]/gu) ?? [];
  const signs = [' ', '0', 'a', 'aO1', '- ', ' to ', ', ', '. ', '/', ':', '\n', '\t', '\u{1F600}', 'x '];
  return [...new Set([...signs, ...words.flatMap((word) => [word, `${word} `])])].map(
    (piece) => `${piece.repeat(Math.ceil(length / piece.length))}\u0001`,
  );
}

function slowest(one: Expression, length: number): { ms: number; text: string } {
  let worst = { ms: 0, text: '' };
  for (const text of hostile(one, length)) {
    let ms = Infinity;
    for (let again = 0; again < 2 && ms > limitMs; again++) {
      const started = process.cpuUsage();
      text.replace(new RegExp(one.pattern, one.flags), '');
      const spent = process.cpuUsage(started);
      ms = Math.min(ms, (spent.user + spent.system) / 1000);
    }
    if (ms > worst.ms) worst = { ms, text: text.slice(0, 40) };
    if (ms > limitMs) break;
  }
  return worst;
}

const limitMs = 100;

/** The time is the clock's: on a loaded machine it runs out before the work is done, and more is given once. */
function judged({ pattern, flags }: Expression): ReturnType<typeof checkSync> {
  const found = checkSync(pattern, flags, { timeout: 5_000 });
  return found.status === 'safe' ? found : checkSync(pattern, flags, { timeout: 40_000 });
}

describe('regular expressions', () => {
  it('are found, those built from pieces too', () => {
    expect(all.length).toBeGreaterThan(150);
    expect(builders()).toEqual(['server/src/core/trade/bench-words.ts']);
    expect(all.some(({ pattern }) => pattern.includes('processor|cpu|apu|ihs|spreader|contact'))).toBe(true);
  });

  it('are judged linear by recheck, or listed with the reason', () => {
    process.env.RECHECK_BACKEND = 'pure';
    const faulty = all
      .filter((one) => endless(one) && !judgedSlowly.has(spelled(one)))
      .map((one) => ({ one, found: judged(one) }))
      .filter(({ found }) => found.status !== 'safe')
      .map(({ one, found }) => `${one.where} ${spelled(one)}: ${found.status}`);
    expect(faulty).toEqual([]);
    const known = new Set(all.map(spelled));
    expect([...judgedSlowly.keys()].filter((pattern) => !known.has(pattern))).toEqual([]);
  }, 240_000);

  it('take no more than linear time on their own words repeated', () => {
    const slow = all
      .filter(endless)
      .map((one) => ({ one, worst: slowest(one, 20_000) }))
      .filter(({ worst }) => worst.ms > limitMs)
      .map(
        ({ one, worst }) => `${one.where} ${spelled(one)}: ${Math.round(worst.ms)} ms on ${JSON.stringify(worst.text)}`,
      );
    expect(slow).toEqual([]);
  }, 60_000);

  it('would show a quadratic one', () => {
    const blanks = { pattern: '^(.*?)(\\s+to\\s+)(?=\\d)', flags: '', where: '' };
    expect(slowest(blanks, 20_000).ms).toBeGreaterThan(limitMs);
    expect(checkSync(blanks.pattern, blanks.flags).status).toBe('vulnerable');
  }, 30_000);
});
