// The command that prints the collecting scripts, and the script for Linux itself, over tools that print secrets.
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { desk } from '../machines/made';
import { itWithOracle, runOracle } from '../published/oracle';
import { fettle } from '../support/command';
import { asHex, makeEdid, serialNumber, timing } from '../support/edid';
import { parseHex } from '../support/edid-bytes';
import { outputsOf, secrets } from '../support/machines';

const folders: string[] = [];
const folder = (): string => {
  folders.push(mkdtempSync(join(tmpdir(), 'fettle-collect-')));
  return folders.at(-1)!;
};
afterAll(() => {
  for (const one of folders) rmSync(one, { recursive: true, force: true });
});

const script = async (): Promise<string> => (await fettle({}, 'collect', 'linux')).out;
const shell = (lines: string, input: string): string =>
  spawnSync('/bin/sh', ['-c', lines], { input, encoding: 'utf8' }).stdout;

const machine = outputsOf(desk);
const hidden = [...Object.values(secrets), 'SECRET', '52-54-00', 'someone', '2712847316'];

describe('the script for Linux', () => {
  it('is read by a shell', async () => {
    expect(spawnSync('/bin/sh', ['-n'], { input: await script() }).status).toBe(0);
  });

  it('masks what is private, line by line', async () => {
    const mask = /mask\(\) \{\n([^]*?)\n\}/.exec(await script())![1]!;
    for (const name of [
      'dmidecode.txt',
      'lspci-load.txt',
      'lsblk.json',
      'smartctl-nvme0n1.json',
      'smartctl-sda.json',
    ]) {
      const told = shell(mask, machine[name]!);
      expect(told.split('\n').length, name).toBe(machine[name]!.split('\n').length);
      for (const secret of hidden) expect(told, name).not.toContain(secret);
    }
    // Labels as the tools print them. Source: smartmontools, scsiprint.cpp and nvmeprint.cpp; pciutils, ls-vpd.c.
    const lines: readonly (readonly [string, string])[] = [
      ['      "sas_address": "0x5000c500a1b2c3d5",', '      "sas_address": "--",'],
      ['      "attached_sas_address": "0x5000c500a1b2c3d5",', '      "attached_sas_address": "--",'],
      ['  "wwn": {"naa": 5, "oui": 3152, "id": 271284},', '  "wwn": "--",'],
      ['  "subsystem_nqn": "nqn.2014-08.org.nvmexpress:1e5aS4711",', '  "subsystem_nqn": "--",'],
      ['\t\t\t[SN] Serial number: S4711', '\t\t\t[SN] Serial number: --'],
      ['\t\t\t[V0] Vendor specific: S4711', '\t\t\t[V0] Vendor specific: --'],
      ['\tCapabilities: [148] Device Serial Number 52-54-00-ff-ff-12-34-56', ''],
      ['\tSBDS Serial Number: 4711', '\tSBDS Serial Number: --'],
      ['  "user_capacity": { "bytes": 10000831348736 },', '  "user_capacity": { "bytes": 10000831348736 },'],
      ['\t\tLnkSta:\tSpeed 8GT/s, Width x4', '\t\tLnkSta:\tSpeed 8GT/s, Width x4'],
    ];
    const told = shell(mask, lines.map(([line]) => `${line}\n`).join('')).split('\n');
    for (const [i, [line, masked]] of lines.entries())
      expect(told[i], line).toBe(masked === '' ? '\tCapabilities: [148] Device Serial Number --' : masked);
  });

  it('writes what tools print, and nothing of a tool that has nothing to say', async () => {
    const [home, tools] = [folder(), folder()];
    for (const [tool, output] of [
      ['dmidecode', 'dmidecode.txt'],
      ['lspci', 'lspci-load.txt'],
      ['lsblk', 'lsblk.json'],
      ['lscpu', 'lscpu.json'],
      ['sensors', 'sensors-load-1.json'],
      ['decode-dimms', undefined],
    ] as const) {
      const lines = output === undefined ? '' : `cat <<'END'\n${machine[output]!}END\n`;
      writeFileSync(join(tools, tool), `#!/bin/sh\n${lines}`);
      chmodSync(join(tools, tool), 0o755);
    }
    writeFileSync(join(home, 'collect.sh'), await script());
    const run = (...args: readonly string[]) =>
      spawnSync('/bin/sh', ['collect.sh', ...args], {
        cwd: home,
        encoding: 'utf8',
        env: { PATH: `${tools}:${process.env.PATH}`, HOME: home },
      });
    expect(run('a desk').stderr).not.toContain('not found');
    const written = readdirSync(join(home, 'a desk'));
    expect(written).toEqual(
      expect.arrayContaining(['block.txt', 'dmidecode.txt', 'lsblk.json', 'lscpu.json', 'lspci.txt', 'sensors.json']),
    );
    expect(written).not.toContain('decode-dimms.txt');
    for (const name of written) {
      const text = readFileSync(join(home, 'a desk', name), 'utf8');
      for (const secret of hidden) expect(text, name).not.toContain(secret);
    }
    // A folder that holds anything is another machine’s.
    const again = run('a desk');
    expect(again.status).toBe(1);
    expect(again.stderr).toContain('is not empty: name a new folder.');
    expect(readdirSync(join(home, 'a desk'))).toEqual(written);
    // Nor is another folder touched for a reading under load.
    writeFileSync(join(tools, 'empty'), '');
    for (const elsewhere of ['elsewhere', tools]) expect(run(elsewhere, 'load').status).toBe(1);
    expect(readdirSync(tools)).toContain('empty');
    mkdirSync(join(home, 'empty'));
    expect(run('empty').status).toBe(0);
  });

  const display = makeEdid({
    maker: 'PHR',
    name: 'P32',
    input: 5,
    timings: [timing(3840, 2160, 60)],
    section: [timing(3840, 2160, 120)],
  });

  async function blanked(bytes: Uint8Array): Promise<Uint8Array> {
    const program = /awk '\n([^]*?)' >"\$folder\/edid/.exec(await script())![1]!;
    const { stdout } = spawnSync('awk', [program], { input: `${[...bytes].join(' ')}\n`, encoding: 'utf8' });
    return Uint8Array.from(parseHex(stdout));
  }

  it('blanks a display’s serial numbers, and nothing else', async () => {
    const told = await blanked(display);
    expect(Buffer.from(display).toString('latin1')).toContain(serialNumber.slice(0, 13));
    expect(Buffer.from(told).toString('latin1')).not.toContain(serialNumber.slice(0, 13));
    expect([...told.slice(12, 16)]).toEqual([0, 0, 0, 0]);
    // The section of timings stands as it was: it holds no serial number.
    expect(asHex(told.slice(128))).toBe(asHex(display.slice(128)));
  });

  /** A section with a product’s identification and a tile’s. Source: VESA DisplayID Standard 1.3, blocks 00h and 12h. */
  const section = (): Uint8Array => {
    const product = [0x00, 0, 12, 0x41, 0x12, 0x34, 0x22, 0x22, 0xde, 0xad, 0xbe, 0xef, 10, 20, 0];
    const tile = [0x12, 0, 22, ...Array.from({ length: 18 }, (_, i) => i), 0xde, 0xad, 0xbe, 0xef];
    const blocks = [0x13, product.length + tile.length, 0, 0, ...product, ...tile];
    const bytes = [0x70, ...blocks, (256 - (blocks.reduce((a, b) => a + b) % 256)) % 256];
    while (bytes.length < 127) bytes.push(0);
    const whole = Uint8Array.from([...display.slice(0, 128), ...bytes, 0]);
    whole[126] = 1;
    for (const end of [127, 255])
      whole[end] = (256 - (whole.slice(end - 127, end).reduce((a, b) => a + b, 0) % 256)) % 256;
    return whole;
  };

  itWithOracle('edid-decode', 'blanks those of a DisplayID section too, and makes all check sums anew', async () => {
    const printed = async (bytes: Uint8Array): Promise<string> => {
      const file = join(folder(), 'edid');
      writeFileSync(file, bytes);
      return runOracle('edid-decode', [file]).stdout;
    };
    const [before, after] = [await printed(section()), await printed(await blanked(section()))];
    expect(before).toMatch(/Serial Number: \d{6,}/);
    expect(after).not.toMatch(/Serial Number: [1-9]/);
    expect(after).not.toMatch(/checksum.*should be|Checksum: 0x.. \(should/i);
    expect(after).toContain('P32');
  });
});

describe('the script for Windows', () => {
  it('takes no private field', async () => {
    const { out } = await fettle({}, 'collect', 'windows');
    expect(out).toMatch(/^# What this machine says/);
    expect(out).not.toMatch(/SerialNumber|UUID\b(?!s)|MACAddress|UniqueId/);
  });
});

it('refuses a system that it knows no script for', async () => {
  expect((await fettle({}, 'collect', 'plan9')).status).toBe(2);
});
