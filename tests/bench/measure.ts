// Measuring: contestants take turns in one run, medians are compared, and each figure is held against its target.
import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

export interface Row {
  readonly figure: string;
  readonly measured: string;
  readonly target: string;
  readonly met: boolean | undefined;
}

export const median = (times: readonly number[]): number => share(times, 0.5);

export function share(times: readonly number[], part: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * part))]!;
}

/**
 * Runs contestants in turns; times in ms, those of the first `warm` turns left out. In a turn each runs `often`
 * times, as what is warm does.
 */
export function inTurns(turns: number, warm: number, contestants: readonly (() => unknown)[], often = 1): number[][] {
  const times: number[][] = contestants.map(() => []);
  for (let turn = 0; turn < warm + turns; turn++) {
    contestants.forEach((work, i) => {
      for (let time = 0; time < often; time++) {
        const begun = performance.now();
        work();
        if (turn >= warm) times[i]!.push(performance.now() - begun);
      }
    });
  }
  return times;
}

/** Runs a program to its end; it must not fail by itself. */
export function run(words: readonly string[], cwd: string): void {
  const { status, signal, stderr } = spawnSync(process.execPath, words, {
    cwd,
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  if (signal || status === null) throw new Error(`node ${words.join(' ')} ended by ${signal}: ${stderr}`);
}

/** Time in ms and peak memory in MB of one run of a program; memory is unknown where the system does not tell it. */
export async function timed(
  words: readonly string[],
  cwd: string,
): Promise<{ ms: number; peakMb: number | undefined }> {
  const begun = performance.now();
  const child = spawn(process.execPath, words, { cwd, stdio: 'ignore' });
  let peakMb: number | undefined;
  const look = setInterval(() => (peakMb = memoryOf(child.pid!, 'VmHWM') ?? peakMb), 20);
  await new Promise<void>((resolve) => child.once('exit', () => resolve()));
  clearInterval(look);
  return { ms: performance.now() - begun, peakMb };
}

/** A line of the system's account of a process, in MB; undefined where there is none. */
export function memoryOf(pid: number, line: 'VmHWM' | 'VmRSS'): number | undefined {
  try {
    const kb = new RegExp(`^${line}:\\s+(\\d+) kB`, 'm').exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1];
    return kb === undefined ? undefined : Number(kb) / 1024;
  } catch {
    return undefined;
  }
}

export function printTable(rows: readonly Row[]): void {
  const cells = [
    ['figure', 'measured', 'target', 'verdict'],
    ...rows.map(({ figure, measured, target, met }) => [
      figure,
      measured,
      target,
      met === undefined ? '' : met ? 'met' : 'MISSED',
    ]),
  ];
  const widths = cells[0]!.map((_, i) => Math.max(...cells.map((row) => row[i]!.length)));
  for (const row of cells)
    console.log(
      row
        .map((cell, i) => cell.padEnd(widths[i]!))
        .join('  ')
        .trimEnd(),
    );
}
