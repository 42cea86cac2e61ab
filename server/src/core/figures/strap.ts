// The wrist strap of a build: whether one is worn, and whether it has a cord.
import type { Build } from '../build/build';
import type { Fact } from '../parts/fact';
import { missing } from './figure';
import { statedSteps } from './steps';
import { lacking, sure, type Truth } from './truth';

/** Whether the build says that a strap is worn: by its facts, by `equalise-by`, or by a step. */
export function wearsStrap(build: Build): boolean {
  const { strap, 'equalise-by': by } = build.file.bench;
  if (strap.worn.value !== undefined) return strap.worn.value;
  return strap.$.stated || by.value === 'strap' || statedSteps(build).some((step) => step.kind === 'wear strap');
}

/** What says whether a strap is worn, and of which kind. */
export function strapFacts(build: Build): readonly Fact<unknown>[] {
  const { strap, 'equalise-by': by } = build.file.bench;
  return [strap.worn, strap.kind, by, build.file.steps];
}

/** Whether it has a cord: said, or plain from the cord’s resistor or clip. */
export function hasCord(build: Build): Truth {
  const { kind, 'series-resistance': resistor, 'clipped-to': clip } = build.file.bench.strap;
  if (kind.value !== undefined) return sure(kind.value === 'corded', kind);
  if (resistor.value !== undefined || clip.value !== undefined)
    return sure(true, resistor.value === undefined ? clip : resistor);
  return lacking([missing(kind, 'whether the strap has a cord')], kind);
}
