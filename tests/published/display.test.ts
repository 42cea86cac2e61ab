// Display timings against edid-decode over a grid of modes, and link payloads against published figures.
import { describe, expect, it } from 'vitest';
import {
  DISPLAY_LINKS,
  highestRefreshHz,
  linkVerdict,
  parseDisplayLink,
  requiredGbps,
} from '../../server/src/core/trade/display';
import { BLANKINGS, clockBoundsMHz, CTA_CLOCKS } from '../../server/src/core/trade/mode-clocks';
import { CTA_MODES } from '../../server/src/core/trade/cta-modes';
import { cvtTiming, rb3ClockMHz } from '../../server/src/core/trade/timing';
import type { CvtBlanking } from '../../server/src/core/trade/timing';
import { expectNear } from './near';
import { itWithOracle, runOracle } from './oracle';
import { TOLERANCES } from './tolerances';

type Mode = [widthPx: number, heightPx: number, refreshHz: number];

const SIZES: [number, number][] = [
  [640, 480],
  [800, 600],
  [1024, 768],
  [1152, 864],
  [1280, 720],
  [1280, 768],
  [1280, 800],
  [1280, 1024],
  [1360, 768],
  [1366, 768],
  [1400, 1050],
  [1440, 900],
  [1600, 900],
  [1600, 1200],
  [1680, 1050],
  [1920, 1080],
  [1920, 1200],
  [1920, 1440],
  [2048, 1152],
  [2560, 1080],
  [2560, 1440],
  [2560, 1600],
  [2880, 1800],
  [3024, 1964],
  [3440, 1440],
  [3840, 1080],
  [3840, 1600],
  [3840, 2160],
  [4096, 2160],
  [5120, 1440],
  [5120, 2160],
  [5120, 2880],
  [6016, 3384],
  [6144, 3456],
  [7680, 2160],
  [7680, 4320],
];
const RATES_HZ = [
  24, 25, 30, 48, 50, 60, 72, 75, 85, 90, 100, 120, 125, 144, 165, 170, 175, 180, 200, 240, 280, 300, 360, 480,
];
const MODES: Mode[] = SIZES.flatMap(([width, height]) => RATES_HZ.map((hz): Mode => [width, height, hz]));

interface Printed {
  refreshHz: number;
  clockMHz: number;
  blankPx: number;
  blankLines: number;
}

function sum(line: string): number {
  return [...line.matchAll(/(?:front|sync|back)\s+(\d+)/g)].reduce((total, match) => total + Number(match[1]), 0);
}

/** One run for all modes: the program takes the option again and again, and prints three lines for each. */
function printedByOracle(modes: readonly Mode[], rb: number): Printed[] {
  const options = modes.flatMap(([w, h, hz]) => ['--cvt', `w=${w},h=${h},fps=${hz},rb=${rb}`]);
  const lines = runOracle('edid-decode', options)
    .stdout.split('\n')
    .filter((line) => /CVT:|Hfront|Vfront/.test(line));
  return modes.map((_, n) => {
    const [head, across, down] = lines.slice(n * 3, n * 3 + 3);
    const [, refresh, clock] = /([\d.]+) Hz.*?([\d.]+) MHz/.exec(head ?? '') ?? [];
    return {
      refreshHz: Number(refresh),
      clockMHz: Number(clock),
      blankPx: sum(across ?? ''),
      blankLines: sum(down ?? ''),
    };
  });
}

/** What the program may lose where the exact clock is a whole number of kilohertz: one step, or nothing. */
function lostStepMHz(exactHz: number, printed: Printed): number {
  const whole =
    exactHz % 1000 === 0 && Math.abs(exactHz / 1e6 - 0.001 - printed.clockMHz) <= TOLERANCES.pixelClockMHz.absolute;
  return whole ? 0.001 : 0;
}

const KINDS: [CvtBlanking, number][] = [
  ['CVT', 0],
  ['CVT-RB1', 1],
  ['CVT-RB2', 2],
];

// Source: edid-decode --cvt, an implementation of the VESA CVT Standard.
describe('CVT against edid-decode', () => {
  for (const [blanking, rb] of KINDS) {
    itWithOracle('edid-decode', `${blanking}: clock and blanking of ${MODES.length} modes`, () => {
      const printed = printedByOracle(MODES, rb);
      MODES.forEach(([width, height, hz], n) => {
        const own = cvtTiming(width, height, hz, blanking);
        const cut = blanking === 'CVT-RB2' ? width : width - (width % 8);
        const label = `${width}x${height} @ ${hz} ${blanking}`;
        const lost =
          blanking === 'CVT-RB2' ? lostStepMHz(hz * own.horizontalTotalPx * own.verticalTotalLines, printed[n]!) : 0;
        expect(Math.abs(own.pixelClockMHz - lost - printed[n]!.clockMHz), label).toBeLessThanOrEqual(
          TOLERANCES.pixelClockMHz.absolute,
        );
        expect(own.horizontalTotalPx - cut, label).toBe(printed[n]!.blankPx);
        expect(own.verticalTotalLines - height, label).toBe(printed[n]!.blankLines);
        const rateOfPrintedClock = (own.refreshHz * printed[n]!.clockMHz) / own.pixelClockMHz;
        if (width === cut)
          expect(Math.abs(rateOfPrintedClock - printed[n]!.refreshHz), label).toBeLessThanOrEqual(
            TOLERANCES.refreshHz.absolute,
          );
      });
    });
  }

  // A conflict: a clock of a whole number of kilohertz can lose one in the program's binary division by 0.001;
  // exactly it does not.
  itWithOracle('edid-decode', 'RB2 of 640x480 at 100 Hz is one step higher than printed', () => {
    const [printed] = printedByOracle([[640, 480, 100]], 2);
    const own = cvtTiming(640, 480, 100, 'CVT-RB2');
    expect(own.pixelClockMHz).toBe((100 * own.horizontalTotalPx * own.verticalTotalLines) / 1e6);
    expect(printed!.clockMHz).toBeCloseTo(own.pixelClockMHz - 0.001, 9);
  });

  // A conflict: the program cuts 1366 to 1360 for the clock and then divides by the uncut width, so that it prints a
  // rate 0.4 % lower.
  itWithOracle('edid-decode', 'a width that is no whole number of cells gives another rate there', () => {
    const [printed] = printedByOracle([[1366, 768, 60]], 1);
    const own = cvtTiming(1366, 768, 60, 'CVT-RB1');
    expect(own.pixelClockMHz).toBe(printed!.clockMHz);
    expect(own.refreshHz).toBeGreaterThan(printed!.refreshHz);
    expect((own.refreshHz * 1520) / 1526).toBeCloseTo(printed!.refreshHz, 5);
  });

  // A conflict: the xcvt program rounds the same mode to 533.00 MHz; formula and edid-decode give 533.25.
  it('3840x2160 at 60 Hz with RB1 is 533.25 MHz', () => {
    expect(cvtTiming(3840, 2160, 60, 'CVT-RB1').pixelClockMHz).toBe(533.25);
  });
});

/**
 * Payload in Gb/s over four lanes. Source: VESA DisplayPort Standards 1.4 and 2.1; HDMI Specifications 1.4, 2.0 and
 * 2.1; RBR: Linux kernel, drm_dp_bw_code_to_link_rate, 162,000 ten-kilobit steps a lane, 8b/10b.
 */
const PAYLOADS: [string, number][] = [
  ['DisplayPort RBR', 5.184],
  ['DisplayPort HBR', 8.64],
  ['DisplayPort HBR2', 17.28],
  ['DisplayPort HBR3', 25.92],
  ['DisplayPort UHBR10', 38.68],
  ['DisplayPort UHBR13.5', 52.22],
  ['DisplayPort UHBR20', 77.37],
  ['HDMI 1.4', 8.16],
  ['HDMI 2.0', 14.4],
  ['HDMI 2.1 FRL 24', 21.33],
  ['HDMI 2.1 FRL 40', 35.56],
  ['HDMI 2.1 FRL 48', 42.67],
];

describe('published payloads', () => {
  it.each(PAYLOADS)('%s carries %f Gb/s', (name, gbps) => {
    const own = DISPLAY_LINKS.find((link) => link.name === name)!.payloadGbps;
    expectNear(own, gbps, TOLERANCES.linkPayloadGbps);
  });

  // A conflict: 128 ÷ 132 would promise 77.58. Source: Linux kernel, drm_dp_bw_channel_coding_efficiency, 967,100 ppm.
  it('UHBR carries less than its coding alone would say', () => {
    const own = parseDisplayLink('DisplayPort UHBR20')!.payloadGbps;
    expect(own).toBeLessThan((80 * 128) / 132);
    expect(own).toBeCloseTo(80 * 0.9671, 9);
  });
});

describe('the boundary of 3840x2160 at 120 Hz, 8 bit, over HBR3', () => {
  const payload = parseDisplayLink('DisplayPort HBR3')!.payloadGbps;
  const clock = (blanking: CvtBlanking) => (hz: number) => cvtTiming(3840, 2160, hz, blanking).pixelClockMHz;
  const gbps = (blanking: CvtBlanking): number => requiredGbps(clock(blanking)(120), 24);

  // Source: VESA CVT Standard 1.2 and DisplayPort Standard 1.4: 25.82 and 26.35 against 25.92 Gb/s.
  it('RB2 goes through by less than 1 %, RB1 does not', () => {
    expect(gbps('CVT-RB2')).toBeCloseTo(25.82, 2);
    expect(gbps('CVT-RB1')).toBeCloseTo(26.35, 2);
    expect(gbps('CVT-RB2')).toBeLessThan(payload);
    expect(linkVerdict(gbps('CVT-RB2'), payload)).toBe('marginal');
    expect(linkVerdict(gbps('CVT-RB1'), payload)).toBe('beyond');
  });

  it('100 Hz is the highest usual rate with room to spare', () => {
    expect(highestRefreshHz(clock('CVT-RB2'), 24, payload)).toBe(100);
    expect(highestRefreshHz(clock('CVT-RB1'), 24, payload)).toBe(100);
  });
});

// Source: edid-decode --list-vics, which prints the table of CTA-861.
describe('the clocks of CTA-861', () => {
  itWithOracle('edid-decode', 'are those of the table, progressive modes all', () => {
    const printed = new Map<string, Set<number>>();
    for (const line of runOracle('edid-decode', ['--list-vics']).stdout.split('\n')) {
      const [, size, hz, clock] = /: +(\d+x\d+) +([\d.]+) Hz.*?([\d.]+) MHz/.exec(line) ?? [];
      // Widths of 1440 and 2880 repeat their pixels: no display is fed so that shows them one by one.
      if (!size || /^(?:1440|2880)x/.test(size)) continue;
      const key = `${size} @ ${Math.round(Number(hz))}`;
      printed.set(key, (printed.get(key) ?? new Set()).add(Number(clock)));
    }
    const own = [...CTA_CLOCKS].flatMap(([size, clocks]) =>
      clocks.map(([hz, clock]): [string, number[]] => [`${size} @ ${hz}`, [clock]]),
    );
    expect(own.length).toBeGreaterThan(60);
    expect(new Map(own)).toEqual(new Map([...printed].map(([key, clocks]) => [key, [...clocks]])));
  });

  itWithOracle('edid-decode', 'stand under the numbers of the table', () => {
    const printed = [
      ...runOracle('edid-decode', ['--list-vics']).stdout.matchAll(/VIC +(\d+): +(\d+)x(\d+) +([\d.]+) Hz/g),
    ];
    const rows = printed
      .filter(([, , width, height]) => !(/^(?:1440|2880)$/.test(width!) && Number(height) < 600))
      .map(([, code, width, height, hz]): [number, string] => [
        Number(code),
        `${width}x${height}@${Number(Number(hz).toFixed(2))}`,
      ]);
    expect(CTA_MODES).toEqual(new Map(rows));
  });

  it('stand for the rates of films and of colour television too', () => {
    const of = (refreshHz: number) => clockBoundsMHz({ widthPx: 3840, heightPx: 2160, refreshHz }, 'CTA-861');
    expect(of(60)).toEqual([594, 594]);
    expect(of(59.94)).toEqual([594, 594]);
    expect(of(23.976)).toEqual([297, 297]);
    expect(of(75)).toBeUndefined();
  });

  it('are none of a picture that the formula is not meant for', () => {
    expect(clockBoundsMHz({ widthPx: 7, heightPx: 1080, refreshHz: 60 })).toBeUndefined();
    expect(clockBoundsMHz({ widthPx: 1920, heightPx: 1080, refreshHz: 1001 })).toBeUndefined();
  });
});

// Source: VESA CVT Standard 2.0: with 80 pixels and 460 µs the third version is the second, cut up instead of down; it
// may blank less and more.
describe('the third version of reduced blanking', () => {
  it('spans the second', () => {
    for (const [width, height, hz] of MODES.filter(([across]) => across % 8 === 0)) {
      const second = cvtTiming(width, height, hz, 'CVT-RB2').pixelClockMHz;
      const label = `${width}x${height} @ ${hz}`;
      expect(rb3ClockMHz(width, height, hz, 'least'), label).toBeLessThan(second + 0.0011);
      expect(rb3ClockMHz(width, height, hz, 'most'), label).toBeGreaterThan(second);
    }
  });

  /** Worked by hand: 1e6 ÷ 120 = 8333.333 µs less 300 is 3.7191 µs a line, 81 lines; 2241 × 3920 × 120. */
  it('3840x2160 at 120 Hz is 1054.167 MHz at least', () => {
    expect(rb3ClockMHz(3840, 2160, 120, 'least')).toBe(1054.167);
  });
});

describe('a mode whose timing nothing states', () => {
  it('has a clock of any of them', () => {
    const mode = { widthPx: 3840, heightPx: 2160, refreshHz: 60 };
    const [low, high] = clockBoundsMHz(mode)!;
    for (const blanking of BLANKINGS)
      for (const end of clockBoundsMHz(mode, blanking)!) {
        expect(end).toBeGreaterThanOrEqual(low);
        expect(end).toBeLessThanOrEqual(high);
      }
  });
});
