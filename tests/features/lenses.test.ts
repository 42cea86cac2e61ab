// Lenses: what they say above a build and above a part file.
import { describe, expect, test } from 'vitest';
import { buildTitle, changeBetween, lensRange, partTitle, type Change } from '../../server/src/features/lenses';
import { view } from '../support/view';

const parts = (height: string): Record<string, string> => ({
  'parts/boreas/tower.part.yaml': `kind: cooler\n${height}`,
  'parts/tarn/mid.part.yaml': 'kind: case\ncooler-height: 155 mm\n',
});
const desk = 'build: Desk\nparts: { cooler: { use: boreas/tower, price: 60 EUR }, case: { use: tarn/mid } }\n';
const titleOf = (text: string, height = 'height: 162 mm\n'): string => buildTitle(view(text, parts(height)).view);
const judged = (height: string) => view(desk, parts(height)).view.judgement;
const change = (before: string, after: string): Change => changeBetween(judged(before), judged(after));

describe('above a build', () => {
  test('stands the worst grade, the power and the price, at least as far as they are known', () => {
    expect(titleOf(desk)).toBe('worst: stop (1) · at least 60 EUR');
    expect(titleOf(desk, '')).toBe('worst: note (1) · at least 60 EUR');
    const { view: bare } = view(desk, parts(''));
    const findings = bare.judgement.findings.filter(({ grade }) => grade === 'unknown');
    expect(buildTitle({ ...bare, judgement: { ...bare.judgement, findings } })).toMatch(
      /^nothing broken, \d+ unknown · /,
    );
    expect(titleOf(desk.replace('case', 'supply: { use: holm/none }, case'))).toContain(' from the wall · ');
    expect(buildTitle({ ...bare, judgement: { ...bare.judgement, findings: [] } })).toMatch(/^nothing found · /);
  });

  test('is its place, and no place where there is nothing', () => {
    expect(lensRange(view('# first\nbuild: Desk\n').view.doc)?.start).toEqual({ line: 1, character: 0 });
    expect(lensRange(view('').view.doc)).toBeUndefined();
    expect(lensRange(view('parts: []\n', {}, 'fettle.yaml').view.doc)).toBeUndefined();
  });
});

describe('above a part file', () => {
  test('stands how many builds use it', () => {
    expect(partTitle({ builds: 0 })).toBe('used by no build');
    expect(partTitle({ builds: 1 })).toBe('used by 1 build');
    expect(partTitle({ builds: 12 })).toBe('used by 12 builds');
  });

  test('stands what an unsaved change breaks, heals and leaves open', () => {
    const title = (...changes: Change[]): string => partTitle({ builds: changes.length, changes });
    const [low, high, none] = ['height: 150 mm\n', 'height: 162 mm\n', ''];
    expect(title(change(low, high), change(low, low))).toBe(
      'used by 2 builds · unsaved: breaks cooler-too-tall in 1 build',
    );
    expect(title(change(high, low))).toBe('used by 1 build · unsaved: heals cooler-too-tall in 1 build');
    expect(title(change(low, low))).toBe('used by 1 build · unsaved: changes nothing in them');
    expect(title(change(low, none))).toMatch(/^used by 1 build · unsaved: leaves open .* in 1 build$/);
    // What cannot be told any more is not healed.
    expect(change(high, none).healed).toEqual([]);
    expect(partTitle({ builds: 500, changes: [change(low, high)] })).toContain('in 1 build (1 of them tried)');
  });
});
