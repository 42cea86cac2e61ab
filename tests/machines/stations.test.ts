// The samples’ flood gauge and survey desk as finished machines: as they should be, and with ten differences each.
import { describe, expect, it } from 'vitest';
import type { Build } from '../../server/src/core/build/build';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { ofTheMachine } from '../../server/src/core/judge/machine';
import { distil } from '../../server/src/core/machine/distill';
import { Doc } from '../../server/src/core/parts/doc';
import { outputsOf, type MadeMachine } from '../support/machines';
import { readSamples } from '../support/samples';
import { desk, gauge, wrongDesk, wrongGauge } from './made';

const samples = readSamples();
const named = (name: string): Build => samples.builds.find(({ doc }) => doc.name === `${name}.pcbuild.yaml`)!;

function heldAgainst(build: Build, machine: MadeMachine) {
  const docs = Object.entries(outputsOf(machine)).map(([name, text]) => new Doc(`out/${name}`, 'output', text));
  const { machine: read, unknown } = distil(docs, 'out', '2026-11-29');
  expect(unknown).toEqual([]);
  return ofTheMachine(judgeBuild(build.heldAgainst(read), { throwOn: true }));
}

const lines = (build: Build, machine: MadeMachine): string[] =>
  heldAgainst(build, machine).findings.map(({ grade, underline, said, id }) => {
    const line = underline.doc.lines.positionAt(underline.span.start).line + 1;
    return `${line} ${grade} ${id}: ${said.text}`;
  });

const brief = (build: Build, machine: MadeMachine): string[] =>
  lines(build, machine).map((line) => line.replace(/:.*/, ''));

describe.each([
  ['flood-gauge', gauge],
  ['survey-desk', desk],
] as const)('%s', (name, machine) => {
  it('has nothing to say of a machine that is as it should be', () => {
    expect(lines(named(name), machine)).toEqual([]);
  });
});

it('finds each difference of a flood gauge, at its line', () => {
  expect(brief(named('flood-gauge'), wrongGauge)).toEqual([
    '15 stop built-processor-differs',
    '21 stop built-drive-failing',
    '3 shortfall built-fans-still',
    '14 shortfall built-firmware-differs',
    '15 shortfall built-too-hot',
    '19 shortfall built-memory-short',
    '19 shortfall built-memory-slower',
    '21 shortfall built-drive-used',
    '21 shortfall built-drive-used',
    '21 shortfall built-link-slower',
    '22 shortfall built-part-differs',
    '14 unknown built-board-differs',
    '26 unknown built-part-missing',
  ]);
});

it('finds each difference of a survey desk, at its line', () => {
  expect(brief(named('survey-desk'), wrongDesk)).toEqual([
    '27 stop built-drive-failing',
    '14 shortfall built-firmware-differs',
    '19 shortfall built-memory-misplaced',
    '19 shortfall built-memory-slower',
    '22 shortfall built-drive-used',
    '22 shortfall built-link-slower',
    '27 shortfall built-drive-used',
    '27 shortfall built-link-slower',
    '32 shortfall built-link-slower',
    '43 shortfall built-link-slower',
    '45 shortfall built-memory-slower',
    '47 shortfall built-display-mode',
    '3 note built-part-unlisted',
    '39 note built-display-mode',
  ]);
});
