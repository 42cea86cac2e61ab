// The modules and the memory of a finished machine against those of its build.
import type { Build } from '../../build/build';
import { builtCapacity, builtCount, builtModules } from '../../figures/built-memory';
import { memoryCapacity, modules, type Kit } from '../../figures/memory';
import { alike } from '../../figures/memory-sizes';
import { sentence } from '../../figures/sentence';
import { all, atLeast } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, some } from '../kit';
import { notShown } from './built-kit';

export default check({
  id: 'built-memory-short',
  area: 'built',
  grade: 'shortfall',
  what: 'The machine has as many modules as the build, and as much memory.',
  why: 'A module that is missing, or not found since it does not sit right, takes its channel with it.',
  source: 'DMTF DSP0134, SMBIOS: type 17',
  examples: [
    {
      faulty: `
parts:
  memory: [{ capacity: 32 GB, count: 2 }]
#          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
`,
      instead: 'Switch off, unplug, and seat the modules until both latches click.',
      beside: { 'example.asbuilt.yaml': '\nfrom: [dmidecode]\nmemory: [{ slot: A2, capacity: 32 GiB }]\n' },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const { memory, board } = build.parts;
    const kit = memory.find((one) => !isSoldered(one)) ?? memory[0];
    const place = kit ?? (board?.part.memory.soldered.node ? board : undefined);
    if (!place) return;
    const found = builtModules(build);
    const what = 'its memory modules';
    const broken = () => words(build);
    if (!found || found.length === 0) return report(notShown(at(place), build.machine.memory, what, { broken }));
    const [wanted, has] = alike([memoryCapacity(build), builtCapacity(build)!]);
    const enough = atLeast(has!, wanted!);
    // How many rows the firmware prints of memory that is soldered down, no maker states.
    const truth = hasSoldered(build) ? enough : all(atLeast(builtCount(found), modules(build)), enough);
    report(outcome(at(place), truth, { broken }));
  },
});

const isSoldered = ({ at: { soldered } }: Kit): boolean => soldered.value === true;

const hasSoldered = ({ parts: { memory, board } }: Build): boolean =>
  memory.some(isSoldered) || board?.part.memory.soldered.node !== undefined;

function words(build: Build): ReturnType<typeof sentence> {
  const found = builtModules(build) ?? [];
  const [wanted, has] = alike([memoryCapacity(build), builtCapacity(build)!]);
  if (hasSoldered(build)) return sentence`The machine finds ${has!} of memory in all; ${wanted!} is to be in it.`;
  const count = builtCount(found);
  return sentence`The machine finds ${count} ${some(count, 'module', 'modules')} with ${has!} in all; ${modules(build)}
    with ${wanted!} are to be in it.`;
}
