// What displays say of themselves: against what was put in, against edid-decode, and broken in every way.
import { describe, expect, it } from 'vitest';
import { edidBytes, readEdid } from '../../../server/src/core/machine/edid';
import { itWithOracle, runOracle } from '../../published/oracle';
import { asHex, everyPlace as made, makeEdid, serialNumber, timing, type Made } from '../../support/edid';

const bytes = makeEdid(made);
const modesOf = (of: Uint8Array): string[] =>
  readEdid(of).modes.map(({ value }) => `${value.widthPx}x${value.heightPx} @ ${value.refreshHz}`);

describe('an EDID', () => {
  it('gives what was put in', () => {
    const { maker, name, input, link, compression, problems } = readEdid(bytes);
    expect([maker, name, input, link, compression].map((one) => one?.value)).toEqual([
      'PHR',
      'P32 4K 120',
      'HDMI',
      'HDMI 2.1 FRL 48',
      true,
    ]);
    expect(problems).toEqual([]);
    expect(modesOf(bytes)).toEqual([
      '3840x2160 @ 60',
      '2560x1440 @ 75',
      '3840x2160 @ 120',
      '1920x1080 @ 60',
      '1920x1080 @ 50',
      '3840x2160 @ 143.9',
      '2560x1440 @ 120',
    ]);
  });

  it('states a link only where a step of the standard is in it', () => {
    const of = (hdmi: Made['hdmi']) => readEdid(makeEdid({ ...made, hdmi: hdmi! })).link?.value;
    expect(of({ clock5Mhz: 120 })).toBe('HDMI 2.0');
    expect(of({ clock5Mhz: 68 })).toBeUndefined();
    expect(of({ clock5Mhz: 120, fixedRate: 2 })).toBeUndefined();
    expect(readEdid(makeEdid({ maker: 'PHR', name: 'P24', input: 5, timings: [timing(1920, 1080, 60)] })).link).toBe(
      undefined,
    );
  });

  it('is read from prints of its bytes', () => {
    const plain = asHex(bytes);
    const xxd = plain
      .trimEnd()
      .split('\n')
      .map(
        (row, at) => `${(at * 16).toString(16).padStart(8, '0')}: ${row.trim().replace(/(..) (..)/g, '$1$2')}  ..AZ..`,
      );
    for (const print of [plain, plain.replace(/\s/g, ''), `edid-decode (hex):\n\n${plain}\n---\n`, xxd.join('\n')]) {
      expect(edidBytes(print), print.slice(0, 60)).toEqual(bytes);
    }
    expect(edidBytes('Resolution: 3840 x 2160\n00ff')).toBeUndefined();
  });

  itWithOracle('edid-decode', 'is read as edid-decode reads it', () => {
    const { stdout } = runOracle('edid-decode', [], bytes);
    const printed = [...stdout.matchAll(/(?:DTD|VIC|DMT).*?:\s+(\d+x\d+)\s+([\d.]+) Hz/g)].map(
      ([, size, hz]) => `${size} @ ${Number(Number(hz).toFixed(2))}`,
    );
    expect([...new Set(printed)].sort()).toEqual(modesOf(bytes).sort());
    expect(stdout).toContain(`Display Product Name: '${readEdid(bytes).name!.value}'`);
    expect(stdout).toContain('6, 8, 10 and 12 Gbps on 4 lanes');
    expect(edidBytes(stdout)).toEqual(bytes);
  });

  it('cut off or changed anywhere gives no mode that was not put in, and never a serial number', () => {
    const whole = new Set(modesOf(bytes));
    const broken = [
      ...[...bytes.keys()].map((end) => bytes.slice(0, end)),
      ...[...bytes.keys()].map((at) => bytes.map((byte, index) => (index === at ? byte ^ 0x41 : byte))),
    ];
    for (const one of broken) {
      const { modes, problems, ...rest } = readEdid(one);
      expect(modesOf(one).filter((mode) => !whole.has(mode))).toEqual([]);
      expect(problems.length).toBeGreaterThan(0);
      expect(JSON.stringify([rest, modes])).not.toContain(serialNumber.slice(0, 6));
    }
  });
});
