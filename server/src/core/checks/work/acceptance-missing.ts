// Tests that the build’s parts and promises ask for and its acceptance leaves out.
import type { Build } from '../../build/build';
import { sentence } from '../../figures/sentence';
import { sure } from '../../figures/truth';
import type { Value } from '../../yaml';
import { check } from '../check';
import { outcome, put } from '../kit';
import { atGroup } from './acceptance-kit';

export default check({
  id: 'acceptance-missing',
  area: 'work',
  grade: 'shortfall',
  what: 'Where an acceptance is stated, it tests memory, processor and drives, and measures what is promised.',
  why: 'What nobody tests is found by whoever the machine is for.',
  source: 'common practice',
  limits: ['Nothing is judged where `acceptance:` is not stated.'],
  examples: [
    {
      faulty: `
parts:
  memory: [{ slots: [A2] }]
acceptance:
#^^^^^^^^^
  room-temperature: logged
`,
      mended: `
parts:
  memory: [{ slots: [A2] }]
acceptance:
  room-temperature: logged
  memory-test: { passes: 1, errors: 0 }
`,
    },
  ],
  test(build, report) {
    const { acceptance } = build.file;
    if (!acceptance.$.stated) return;
    for (const { key, what, stated, value } of wanted(build)) {
      report(
        outcome(atGroup(build, acceptance, `acceptance.${key}`), sure(stated), {
          broken: () => sentence`The acceptance leaves out ${what}; add it.`,
          fixes: () => (value === undefined ? [] : [put(build.doc, ['acceptance', key], value, `Add ${what}`)]),
        }),
      );
    }
  },
});

interface Wanted {
  readonly key: string;
  readonly what: string;
  readonly stated: boolean;
  readonly value?: Value;
}

/** What this build’s parts and promises ask for. */
function wanted(build: Build): Wanted[] {
  const { acceptance, expect } = build.file;
  const { processor, memory, drives } = build.parts;
  const tests = acceptance['drive-tests'].value ?? [];
  const untested = drives.filter(
    (drive) => !tests.some((test) => test.drive.value === undefined || test.drive.value === drive.at.name.value),
  );
  return [
    ...(memory.length > 0
      ? [
          {
            key: 'memory-test',
            what: 'a memory test',
            stated: acceptance['memory-test'].$.stated,
            value: { passes: 1, errors: 0 },
          },
        ]
      : []),
    ...(processor
      ? [
          {
            key: 'stress-test',
            what: 'a stress test',
            stated: acceptance['stress-test'].$.stated,
            value: { 'until-rise': '1 K', throttling: 'none' },
          },
        ]
      : []),
    ...(drives.length > 0
      ? [
          {
            key: 'drive-tests',
            what:
              tests.length > 0
                ? `a test of ${untested.map((drive) => drive.label).join(', ')}`
                : 'a test of the drives',
            stated: untested.length === 0,
            ...(tests.length > 0 ? {} : { value: [{ test: 'long self-test', 'failed-sectors': 0 }] }),
          },
        ]
      : []),
    ...(expect.power.wall.node
      ? [
          {
            key: 'wall-power',
            what: 'the promised power from the wall',
            stated: !!acceptance['wall-power'].node,
            value: expect.power.wall.text,
          },
        ]
      : []),
    ...(expect.noise.level.node
      ? [
          {
            key: 'noise',
            what: 'the promised noise',
            stated: acceptance.noise.$.stated,
            value: { level: expect.noise.level.text, at: expect.noise.at.text || '1 m' },
          },
        ]
      : []),
    ...(expect.temperature.processor.node
      ? [
          {
            key: 'processor-temperature',
            what: 'the promised processor temperature',
            stated: !!acceptance['processor-temperature'].node,
            value: expect.temperature.processor.text,
          },
        ]
      : []),
  ];
}
