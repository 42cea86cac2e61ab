// The rate that the memory of a finished machine runs at, against the rate that the build sets and the modules’ own.
import type { Build } from '../../build/build';
import { builtModules, slowest } from '../../figures/built-memory';
import { figure, type Figure } from '../../figures/figure';
import { bandwidthAt, isSet, memorySpeed, ratedSpeed, setSpeed } from '../../figures/memory-speed';
import type { Kit } from '../../figures/memory';
import { sentence } from '../../figures/sentence';
import { atLeast, sure, type Truth } from '../../figures/truth';
import { ROUNDED_MTS } from '../../trade/reported';
import { toBase } from '../../quantity';
import { check } from '../check';
import { aspectOf, at, atKey, change, outcome, type Reporter } from '../kit';
import { notShown } from './built-kit';

export default check({
  id: 'built-memory-slower',
  area: 'built',
  grade: 'shortfall',
  what: 'The memory runs at the rate that the build sets and promises.',
  why: 'Until the profile is switched on, modules run at the rate of their standard, however fast they were sold.',
  source: 'DMTF DSP0134, SMBIOS: type 17, Configured Memory Speed; JEDEC JESD79-4, JESD79-5',
  limits: ['Rates that two standards round differently, such as 2666 and 2667 MT/s, are one.'],
  examples: [
    {
      faulty: `
parts:
  memory: [{ rated-speed: 6000 MT/s, count: 2, speed: 6000 MT/s }]
#                                                     ^^^^^^^^^
`,
      instead: 'Switch the profile on in the firmware, and read again.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [dmidecode]\nmemory: [{ capacity: 32 GiB, running: 4800 MT/s }]\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { memory } = build.parts;
    const found = builtModules(build);
    const kit = memory[0];
    if (!found || !kit) return;
    const module = slowest(found) ?? found[0];
    const planned = plannedRate(build, kit);
    if (!module || !planned) return;
    const running = figure(module.running, 'rate that the memory runs at');
    const { speed } = build.file.expect.memory;
    const target = at(kit, kit.at.speed);
    // The modules’ own rate needs no profile.
    const needsProfile = isSet(kit) && !(planned.hi <= (module.standard.value?.hi ?? 0));
    const broken = () =>
      sentence`The memory runs at ${running}; ${planned} is planned. ${needsProfile ? profile : settings}`;
    if (module.running.value === undefined)
      return report(notShown(target, module.running, 'the rate that the memory runs at', { broken }));
    report(
      outcome(target, reaches(running, planned), {
        broken,
        fixes: () => [change(kit.at.speed, module.running.text, `Write ${module.running.text}, which it runs at`)],
      }),
    );
    if (speed.node) {
      const promised = figure(speed, 'memory speed promised');
      report(
        outcome(atKey(build, speed), reaches(running, promised), {
          broken: () => sentence`The memory runs at ${running}; ${promised} is promised.`,
        }),
      );
    }
    // A plan that falls short of its promise by itself is found without a machine.
    if (running.hi < planned.hi) bandwidth(build, running, report);
    unused(build, running, report);
  },
});

/** What the channels carry at the rate that runs, against what is promised. */
function bandwidth(build: Build, running: Figure, report: Reporter): void {
  const promise = build.file.expect.memory.bandwidth;
  if (!promise.node || build.parts.memory.some(({ part }) => part.type.value?.startsWith('LPDDR'))) return;
  const carried = bandwidthAt(build, running);
  const promised = figure(promise, 'memory bandwidth promised');
  report(
    outcome(atKey(build, promise), atLeast(carried, promised), {
      broken: () => sentence`At ${running} the memory carries ${carried}; ${promised} is promised.`,
    }),
  );
}

const profile = sentence`Switch its profile on, and read again.`;
const settings = sentence`Look at the firmware’s settings of the memory.`;

/** What is reached by the build’s figures; where these lack facts, what the build says that it is set to. */
function plannedRate(build: Build, kit: Kit): Figure | undefined {
  const planned = memorySpeed(build);
  return planned && planned.missing.length > 0 && kit.at.speed.value ? setSpeed(kit) : planned;
}

/** At least as fast, but for rounding. */
function reaches(running: Figure, wanted: Figure): Truth {
  const isRounded = Math.abs(wanted.lo - running.hi) <= toBase(ROUNDED_MTS, 'MT/s');
  return isRounded ? sure(true, running, wanted) : atLeast(running, wanted);
}

/** Modules that could run faster, where the build does not say at what rate they are to run. */
function unused(build: Build, running: Figure, report: Reporter): void {
  const kit = build.parts.memory[0]!;
  const rated = ratedSpeed(kit);
  if (isSet(kit) || rated.missing.length > 0) return;
  report(
    outcome(aspectOf(at(kit), 'rated'), reaches(running, rated), {
      grade: 'note',
      broken: () =>
        sentence`The memory runs at ${running}; ${kit.label} is rated for ${rated}, and no rate is planned.`,
    }),
  );
}
