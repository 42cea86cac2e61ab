// A complete order of work with one of its steps left out: something is said, whichever step it is.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { statedSteps, stepList } from '../../server/src/core/figures/steps';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { applyEdits } from '../../server/src/core/text';
import { removeItem } from '../../server/src/core/yaml';
import { bench, today } from '../support/bench';
import { buildName } from '../support/fixture';
import { findIn, readSamples } from '../support/samples';

const samples = readSamples();
const floodGauge = samples.builds.find(({ doc }) => doc.name.startsWith('flood-gauge'))!;

/** A desk with a liquid cooler, put together with a strap on and updated by stick. */
const chartTable = `
place: { humidity: 45 %, floor: vinyl }
parts:
  board: { socket: LGA1851, shield-fitted: false, power-connectors: { 24-pin: 1, EPS 8-pin: 1 }, slots: { M2_1: { kind: M.2, under: [PCIE_1] }, PCIE_1: { kind: PCIe } } }
  processor: { socket: LGA1851, graphics: true }
  cooler: { back-plate: true, film: true, paste: none, mount: top, pump: { pins: 3 }, fans: { count: 2 } }
  paste: { class: ceramic }
  memory: [{ count: 2, type: DDR5, speed: 6000 MT/s, standard-speed: 4800 MT/s, profile: used }]
  drives: [{ name: system, shape: M.2, slot: M2_1 }, { name: archive, shape: 3.5 in }]
  graphics: [{ slot: PCIE_1, connectors: { PCIe 8-pin: 1 }, support: true }]
  supply: { rating: 750 W }
  case: { standoffs: { removable: true }, front-cables: [front panel], tray-opening: true }
  fans: [{ mount: rear, flow: out }]
bench:
  strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }
  power-cord: unplugged
  firmware-update: { to: "1.20", by: stick without processor, memory-profile: standard }
acceptance:
  memory-test: { passes: 1, errors: 0 }
  stress-test: { until-rise: 1 K, throttling: none }
  drive-tests: [{ test: long self-test, failed-sectors: 0 }]
  room-temperature: logged
hand-over: { includes: [serials, firmware, settings, slots, temperatures, noise, wall power, logs, spares] }
steps: [read handbooks, { do: open case, caution: { word: CAUTION, hazard: Cut sheet metal has sharp edges., consequence: They could cut fingers., avoidance: Wear gloves. } }, wear strap, take parts from bags, connect 24-pin, connect EPS, take off strap,
  plug in mains, update firmware, unplug mains, drain residual charge, wear strap, fit processor, take off socket cover,
  fit memory, { do: fit M.2 drive, part: system }, fit back plate, clean surfaces, remove film, apply paste, fit cooler, connect fan cables,
  connect pump cable, take off strap, bench start, wait for memory training, unplug mains, drain residual charge,
  wear strap, set standoffs, fit I/O shield, fit supply, fit fans, fit board, connect 24-pin, connect EPS,
  connect fan cables, connect pump cable, fit radiator, connect front cables, { do: fit drive, part: archive }, connect drive cables,
  fit graphics, fit card support, connect card power, check inside, close case, take off strap, plug in mains,
  first start, default settings, memory test, set profile, drive test, install system, stress test, measure,
  record settings, hand over]
`;

/** A custom loop that goes straight into its case, on a board updated by an older processor. */
const tideModel = `
place: { humidity: 45 %, floor: vinyl }
parts:
  board: { socket: AM5, shield-fitted: true, power-connectors: { 24-pin: 1, EPS 8-pin: 2 } }
  processor: { socket: AM5, graphics: true }
  cooler: { back-plate: false, film: false, paste: tube in the box, fans: { count: 0 } }
  memory: [{ count: 2, type: DDR5 }]
  drives: [{ name: system, shape: 2.5 in }]
  radiators: [{ mount: front }]
  supply: { rating: 850 W }
  case: { standoffs: { removable: true }, front-cables: [front panel], tray-opening: true }
  fans: [{ count: 3, mount: front, flow: in }, { mount: rear, flow: out }]
bench:
  equalise-by: touching bare chassis
  power-cord: unplugged
  firmware-update: { to: "1.20", by: older processor, memory-profile: standard, older-processor: { family: C6, graphics: true } }
acceptance:
  memory-test: { passes: 1, errors: 0 }
  stress-test: { until-rise: 1 K, throttling: none }
  drive-tests: [{ test: long self-test, failed-sectors: 0 }]
  room-temperature: logged
hand-over: { includes: [serials, firmware, settings, slots, temperatures, noise, wall power, logs, spares] }
steps: [read handbooks, { do: open case, caution: { word: CAUTION, hazard: Cut sheet metal has sharp edges., consequence: They could cut fingers., avoidance: Wear gloves. } }, equalise, take parts from bags,
  fit processor, take off socket cover, fit memory, apply paste, fit cooler, connect 24-pin, connect EPS, connect fan cables,
  plug in mains, update firmware, unplug mains, drain residual charge, equalise,
  set standoffs, fit supply, fit fans, fit board, fit processor, clean surfaces, apply paste, fit cooler, fit radiator,
  connect 24-pin, connect EPS, connect fan cables, connect pump cable, connect front cables, fit drive,
  connect drive cables, fill loop, leak test, check inside, close case, plug in mains, first start,
  wait for memory training, default settings, memory test, drive test, install system, stress test, measure,
  record settings, hand over]
`;

const buildOf = (text: string): Build =>
  text.startsWith('\n')
    ? bench([{ name: buildName, text }]).build!
    : new Build(new Doc(floodGauge.doc.name, 'build', text), findIn(samples.docs), samples.house, today);

const found = (build: Build): string[] =>
  judgeBuild(build, { throwOn: true })
    .findings.filter(({ grade }) => grade !== 'unknown')
    .map(({ id, subject, said }) => `${id} ${subject} ${said.text}`);

describe.each([
  ['the flood gauge', floodGauge.doc.text],
  ['a strapped desk updated by stick', chartTable],
  ['a custom loop updated by an older processor', tideModel],
])('the order of work of %s', (_, text) => {
  const whole = buildOf(text);
  const before = found(whole);

  it('is complete: nothing is said of its steps', () => {
    expect(before.filter((one) => one.includes('steps'))).toEqual([]);
  });

  it.each(statedSteps(whole).map(({ label, index }) => [index, label] as const))('step %i, %s, is missed', (index) => {
    const edits = removeItem(whole.doc.parsed, stepList(whole)!, index)!;
    const after = found(buildOf(applyEdits(text, edits)));
    expect(after.filter((one) => !before.includes(one))).not.toEqual([]);
  });
});
