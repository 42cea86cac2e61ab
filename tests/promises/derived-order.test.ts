// The derived order of work, written into its build as steps: no check of the work says more of it than a note.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { workOrder } from '../../server/src/core/figures/work-order';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { bench, today } from '../support/bench';
import { buildName } from '../support/fixture';
import { findIn, readSamples } from '../support/samples';

const samples = readSamples();
const parts = `
  board: { socket: AM5, shield-fitted: false, power-connectors: { 24-pin: 1, EPS 8-pin: 1 }, slots: { M2_1: { kind: M.2, under: [cooler, PCIE_1] }, PCIE_1: { kind: PCIe } } }
  processor: { socket: AM5 }
  memory: [{ count: 2, type: DDR5, profile: used }]
  drives: [{ name: system, shape: M.2, slot: M2_1 }, { name: archive, shape: 3.5 in }]
  graphics: [{ slot: PCIE_1, connectors: { PCIe 8-pin: 1 }, support: true }]
  supply: { rating: 750 W }
  case: { standoffs: { removable: true }, front-cables: [front panel], tray-opening: false }`;
const air = `${parts}
  cooler: { paste: none, film: true, back-plate: true, fans: { count: 1 } }
  paste: { class: ceramic }
  fans: [{ mount: rear }]`;
const update = (by: string): string =>
  `parts:${air}\nbench: { equalise-by: touching bare chassis, firmware-update: { to: "1.20", by: ${by} } }\n`;

const builds: Readonly<Record<string, string>> = {
  'a desk cooled by air': `parts:${air}\n`,
  'a desk with a strap':
    `parts:${air}\nbench: { strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }, power-cord: ` +
    `unplugged }\n`,
  'a liquid cooler in the top':
    `parts:${parts}\n  cooler: { paste: paste applied, film: true, back-plate: true, mount: top, pump: { ` +
    `pins: 3 }, fans: { count: 2 } }\n`,
  'a custom loop':
    `parts:${parts}\n  cooler: { paste: tube in the box, film: false, back-plate: false, fans: { count: 0 } ` +
    `}\n  radiators: [{ mount: top }]\n  fans: [{ mount: top }]\n`,
  'a passive cooler': `parts:${parts}\n  cooler: { paste: pad applied, film: false, back-plate: true, fans: { count: 0 } }\n`,
  'a board with a barrel socket':
    'parts:\n  board: { socket: AM5, shield-fitted: true, power-connectors: {} }\n  processor: { socket: AM5 }\n' +
    '  cooler: { paste: pad applied, film: false, back-plate: false, fans: { count: 1 } }\n' +
    '  case: { standoffs: { removable: false }, front-cables: [] }\n',
  'a soldered processor':
    'parts:\n  board: { socket: BGA1264, shield-fitted: true, power-connectors: { 24-pin: 1 } }\n  ' +
    'processor: { socket: BGA1264 }\n  supply: {}\n',
  'a server board, its processor clipped under the heat sink': `parts:${air.replaceAll('AM5', 'LGA4677')}\n`,
  'an update by stick': update('stick without processor'),
  'an update by an older processor': update('older processor'),
  'an update with this processor': update('with this processor'),
  'an update by a service': update('service'),
};

/**
 * What the checks of the work and of the handling say of the order, above note, with its steps written into the text.
 */
function saidOf(build: Build, read: (text: string) => Build): string[] {
  const steps = workOrder(build).map(({ step, part }) =>
    part && workOrder(build).some((other) => other.step === step && other.part !== part)
      ? `{ do: ${step}, part: ${part.label} }`
      : step,
  );
  const { text } = build.doc;
  const without = text.replace(/^steps:\n(?:[ #].*\n|\n)*/m, '');
  const judged = judgeBuild(read(`${without}steps: [${steps.join(', ')}]\n`), { throwOn: true });
  return judged.findings
    .filter(({ check, grade }) => ['work', 'handling'].includes(check.area) && grade !== 'unknown' && grade !== 'note')
    .filter(({ subject }) => subject.startsWith('steps'))
    .filter(({ id }) => !id.includes('caution'))
    .map(({ id, said }) => `${id}: ${said.text}`);
}

describe('the derived order, written into its build', () => {
  it.each(Object.entries(builds))('keeps every rule: %s', (_, text) => {
    const read = (one: string): Build => bench([{ name: buildName, text: one }]).build!;
    expect(saidOf(read(text), read)).toEqual([]);
  });

  it.each(samples.builds.map((build) => [build.doc.name, build] as const))('keeps every rule: %s', (name, build) => {
    const read = (text: string): Build =>
      new Build(new Doc(name, 'build', text), findIn(samples.docs), samples.house, today);
    expect(saidOf(build, read)).toEqual([]);
  });
});
