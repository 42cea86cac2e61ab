// The command that holds a finished machine against its build.
import { describe, expect, it } from 'vitest';
import { counter, gauge, wrongDesk, wrongGauge } from '../machines/made';
import { fettle } from '../support/command';
import { outputsOf, secrets, type MadeMachine } from '../support/machines';
import { readSamples } from '../support/samples';

const samples = Object.fromEntries([...readSamples().docs].map(([name, { text }]) => [name, text]));
const withMachine = (machine: MadeMachine, more: Record<string, string> = {}): Record<string, string> => ({
  ...samples,
  ...Object.fromEntries(Object.entries(outputsOf(machine)).map(([name, text]) => [`out/${name}`, text])),
  ...more,
});

describe('verify', () => {
  it('says nothing of a machine that is as it should be, and ends with 0', async () => {
    const { out, err, status } = await fettle(withMachine(gauge), 'verify', 'flood-gauge.pcbuild.yaml', 'out');
    expect(err).toBe('');
    expect(out).toContain(
      'Read: EDID, dmidecode 3.5, lsblk, lscpu, lspci under load, sensors under load, smartctl 7.4.',
    );
    expect(out).toContain('No findings.');
    expect(status).toBe(0);
  });

  it('shows each difference down to the line of the output', async () => {
    const { out, status } = await fettle(
      withMachine(wrongDesk),
      'verify',
      'survey-desk.pcbuild.yaml',
      'out',
      '--working',
    );
    expect(status).toBe(1);
    expect(out).toMatch(/rate that the memory runs at +4800 MT\/s\s+out\/dmidecode\.txt:53/);
    expect(out).toContain('out/lspci-load.txt:');
    expect(out).toContain('out/smartctl-sda.json:');
    for (const line of out.split('\n')) expect([...line].length).toBeLessThanOrEqual(100);
  });

  it('lets no serial number, identifier or address through, in any format', async () => {
    for (const machine of [wrongDesk, wrongGauge])
      for (const words of [['--working'], ['--format', 'json', '--working']]) {
        const build = machine === wrongGauge ? 'flood-gauge.pcbuild.yaml' : 'survey-desk.pcbuild.yaml';
        const { out, err } = await fettle(withMachine(machine), 'verify', build, 'out', ...words);
        for (const secret of [...Object.values(secrets), 'SECRET', '52-54-00', 'someone', '2712847316'])
          expect(out + err).not.toContain(secret);
      }
  });

  it('names what it does not read, and refuses a folder without outputs', async () => {
    const more = await fettle(
      withMachine(gauge, { 'out/notes.txt': 'The pump house, on Monday.\n' }),
      'verify',
      'flood-gauge.pcbuild.yaml',
      'out',
    );
    expect(more.err).toBe('fettle: out/notes.txt: is the output of no tool that Fettle reads; it was left aside.\n');
    const none = await fettle({ ...samples, 'out/notes.txt': '' }, 'verify', 'flood-gauge.pcbuild.yaml', 'out');
    expect(none.err).toContain('holds no output that is known');
    expect(none.status).toBe(2);
    const absent = await fettle(samples, 'verify', 'flood-gauge.pcbuild.yaml', 'nowhere');
    expect(absent.status).toBe(2);
    const file = await fettle(samples, 'verify', 'flood-gauge.pcbuild.yaml', 'fettle.yaml');
    expect(file.err).toContain('is no folder');
  });
});

describe('verify --record', () => {
  it('wrote the record of the samples, whose findings stand at the lines of its build', async () => {
    const { 'counter-pc.asbuilt.yaml': kept, ...files } = withMachine(counter);
    const { out, files: written } = await fettle(
      files,
      'verify',
      'counter-pc.pcbuild.yaml',
      'out',
      '--record',
      '--on',
      '2026-11-24',
    );
    expect(written.get('counter-pc.asbuilt.yaml')).toBe(kept);
    expect(out.match(/counter-pc\.pcbuild\.yaml:\d+|built-[a-z-]+$/gm)).toEqual([
      ...['counter-pc.pcbuild.yaml:19', 'built-memory-slower'],
      ...['counter-pc.pcbuild.yaml:21', 'built-drive-used'],
      ...['counter-pc.pcbuild.yaml:21', 'built-link-slower'],
      ...['counter-pc.pcbuild.yaml:29', 'built-link-slower'],
    ]);
  });

  it('keeps what was read beside the build, from which the same is found', async () => {
    const files = withMachine(wrongDesk);
    const verified = await fettle(files, 'verify', 'survey-desk.pcbuild.yaml', 'out', '--record', '--on', '2026-11-25');
    const text = verified.files.get('survey-desk.asbuilt.yaml')!;
    expect(text).toContain('build: survey-desk.pcbuild.yaml\ntaken: 2026-11-25\n');
    expect(text).toContain('  - { name: scratch, ');
    expect(text).toContain('unseen: [cooler, paste, supply, case, fans]');
    for (const secret of [...Object.values(secrets), 'SECRET']) expect(text).not.toContain(secret);
    const found = (out: string): string[] => out.match(/built-[a-z-]+$/gm)!.sort();
    const checked = await fettle(
      { ...samples, 'survey-desk.asbuilt.yaml': text },
      'check',
      'survey-desk.pcbuild.yaml',
      '--from',
      'unknown',
    );
    expect(found(checked.out)).toEqual(found(verified.out));
    const sheet = await fettle(
      { ...samples, 'survey-desk.asbuilt.yaml': text },
      'sheet',
      'survey-desk.pcbuild.yaml',
      '--markdown',
    );
    expect(sheet.out).toContain('As the machine said of itself on 2026-11-25');
    expect(sheet.out).toMatch(/Memory in A2.*DDR5 6000 32G, 32 GiB, running at 4800 MT\/s/);
    const own = await fettle(
      { ...samples, 'survey-desk.asbuilt.yaml': text },
      'check',
      'survey-desk.asbuilt.yaml',
      '--alone',
    );
    expect(own).toMatchObject({ status: 0, err: '' });
  });
});
