// What the boxes hold beside the parts, with what is bought beside them, against what the build needs.
import type { Build } from '../../build/build';
import { needs, pasteTube, type Need } from '../../figures/boxes';
import { many } from '../../figures/lists';
import { sentence } from '../../figures/sentence';
import { atMost } from '../../figures/truth';
import { check } from '../check';
import { isCable } from '../../trade/box-things';
import { aspectOf, at, outcome } from '../kit';
import { addToList } from './costs-kit';

export default check({
  id: 'box-leaves-short',
  area: 'costs',
  grade: 'stop',
  what:
    'The boxes, and what is bought beside them, hold the display cables, power cords, screws, stick and ' +
    'paste that the build needs.',
  why: 'Work stops for want of a cable or four screws, on the day when everything else is on the bench.',
  source: 'common practice: the pages of the handbooks on the contents of each package',
  remarks: [
    'SATA data cables, M.2 screws, power cables, splitters, standoffs and the I/O shield are judged by ' +
      'checks of their own.',
  ],
  examples: [
    {
      faulty: `
parts:
  supply: { rating: 750 W, in-the-box: [] }
# ^^^^^^
`,
      mended: `
parts:
  supply: { rating: 750 W, in-the-box: [] }
  cables: [{ kind: power cord, count: 1 }]
`,
    },
  ],
  test(build, report) {
    for (const need of needs(build)) {
      const { thing, needed, held, truth } = need;
      report(
        outcome(aspectOf(at(need.for), thing), truth, {
          broken: () =>
            sentence`The build needs ${many(needed, thing)}; boxes and what is bought hold ${held} that fit. Order
              the rest.`,
          fixes: () => [toBuy(build, need)],
          usual: usualIn(need),
        }),
      );
    }
    const tube = pasteTube(build);
    if (tube) {
      report(
        outcome(at(tube.placed, tube.placed.at.amount), atMost(tube.amount, tube.holds), {
          broken: () =>
            sentence`The build puts on ${tube.amount} of paste; the tube holds ${tube.holds}. Order another.`,
        }),
      );
    }
  },
});

/** What the box of such a part holds in every shop, where no file states its contents. Source: common practice. */
function usualIn({ thing, bringers }: Need): (() => string) | undefined {
  if (bringers.length === 0) return undefined;
  const labels = [...new Set(bringers.map(({ label }) => label))];
  return () =>
    labels.length === 1
      ? `the box of ${labels[0]} holds the ${thing}s needed`
      : `the boxes of ${labels.join(', ')} hold the ${thing}s needed`;
}

/** What is missing, put on the list of what is bought, or of the sticks on hand. */
function toBuy(build: Build, { thing, needed, held }: Need) {
  const count = needed.hi - held.lo;
  if (!Number.isFinite(count)) return undefined;
  if (thing === 'USB stick') return addToList(build, 'sticks', { filesystem: 'FAT32' }, 'List a USB stick');
  const title = `Buy ${count} × ${thing}`;
  if (isCable(thing)) return addToList(build, 'cables', { kind: thing.replace(/ cable$/, ''), count }, title);
  return addToList(build, 'fixings', { item: thing, count }, title);
}
