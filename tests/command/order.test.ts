// `fettle order`: the derived order of work on a terminal and as JSON.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

const files = {
  'desk.pcbuild.yaml': [
    'format: 1',
    'build: Survey desk',
    'parts:',
    '  board: { socket: LGA1851 }',
    '  processor: { socket: LGA1851 }',
    '  cooler: { paste: none, back-plate: true }',
    '  paste: { use: lindqvist/grey-4 }',
    '  memory: [{ count: 2 }]',
    '  supply: { rating: 650 W }',
    '  case: { size: ATX }',
    '',
  ].join('\n'),
  'parts/lindqvist/grey-4.part.yaml': 'kind: paste\n',
  'fettle.yaml': 'format: 1\n',
};

describe('fettle order', () => {
  it('puts paste between processor and cooler, with the reasons', async () => {
    const { out, status } = await fettle(files, 'order', 'desk.pcbuild.yaml');
    expect(status).toBe(0);
    const at = (step: string): number => out.indexOf(`  ${step}\n`);
    expect(at('Fit processor')).toBeGreaterThan(0);
    expect(at('Apply paste: lindqvist/grey-4')).toBeGreaterThan(at('Fit processor'));
    expect(at('Fit cooler')).toBeGreaterThan(at('Apply paste: lindqvist/grey-4'));
    expect(out).toContain('after fit back plate: the cooler is screwed to it');
  });

  it('says a caution before its step, and only once', async () => {
    const { out } = await fettle(files, 'order', 'desk.pcbuild.yaml');
    const caution = out.indexOf('Inside a power supply parts stay at up to 400 V');
    expect(caution).toBeGreaterThan(0);
    expect(caution).toBeLessThan(out.indexOf('Fit supply'));
    expect(out.split('People carry charges that they do not feel.')).toHaveLength(2);
  });

  it('names the parts and where they go, and leaves no blank line between steps without a caution', async () => {
    const { out } = await fettle(
      {
        'a.pcbuild.yaml':
          'format: 1\nparts:\n  memory: [{ model: M5, slots: [A2, B2] }]\n  drives: [{ name: log, shape: ' +
          'M.2, slot: M2_1 }]\n',
      },
      'order',
      'a.pcbuild.yaml',
    );
    expect(out).toMatch(/Fit memory: M5 in A2 and B2\n +\d+\. +Fit M\.2 drive: log in M2_1\n/);
  });

  it('says of an update on an older processor which one goes in', async () => {
    const bench = 'bench: { firmware-update: { by: older processor, older-processor: { family: Calder C6 } } }\n';
    const { out } = await fettle(
      { ...files, 'desk.pcbuild.yaml': files['desk.pcbuild.yaml'] + bench },
      'order',
      'desk.pcbuild.yaml',
    );
    expect(out).toContain('Fit processor (the older Calder C6)');
  });

  it('stays within 100 columns', async () => {
    const { out } = await fettle(files, 'order', 'desk.pcbuild.yaml');
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(100);
  });

  it('gives the same steps as JSON', async () => {
    const { out } = await fettle(files, 'order', 'desk.pcbuild.yaml', '--format', 'json');
    const { build, steps } = JSON.parse(out) as {
      build: string;
      steps: { number: number; step: string; parts: { path: string; name: string }[] }[];
    };
    expect(steps.find(({ step }) => step === 'apply paste')?.parts).toEqual([
      { path: 'parts.paste', name: 'lindqvist/grey-4' },
    ]);
    expect(build).toBe('Survey desk');
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    expect(steps.some(({ step }) => step === 'fit cooler')).toBe(true);
  });

  it('refuses what is no build', async () => {
    const { err, status } = await fettle(files, 'order', 'fettle.yaml');
    expect(status).toBe(2);
    expect(err).toContain('is no build');
  });
});
