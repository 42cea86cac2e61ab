// A check that throws is caught, named, and takes no other check's findings with it.
import { expect, it } from 'vitest';
import type { Build } from '../../../server/src/core/build/build';
import { checks } from '../../../server/src/core/checks/all';
import type { BuildCheck, Check } from '../../../server/src/core/checks/check';
import { judgeBuild } from '../../../server/src/core/judge/judge';
import { bench } from '../../support/bench';

const text = 'format: 1\nbuild: A\nparts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n';
const build = bench([{ name: 'a.pcbuild.yaml', text }]).build as Build;
const tall = checks.find(({ id }) => id === 'cooler-too-tall') as BuildCheck;
const faulty: Check = {
  ...tall,
  id: 'always-throws',
  test: () => {
    throw new Error('no such slot');
  },
};

it('is caught, and the others are asked', () => {
  const judgement = judgeBuild(build, { checks: [faulty, tall] });
  expect(judgement.failed).toEqual([{ id: 'always-throws', error: 'no such slot' }]);
  expect(judgement.findings.map(({ id }) => id)).toEqual(['cooler-too-tall']);
});

it('throws on in tests that ask for it', () => {
  expect(() => judgeBuild(build, { checks: [faulty], throwOn: true })).toThrow('no such slot');
});
