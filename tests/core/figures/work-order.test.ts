// The order of work worked out from a build's parts.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { statedSteps } from '../../../server/src/core/figures/steps';
import { workOrder, type WorkStep } from '../../../server/src/core/figures/work-order';
import { ENERGISING, HANDLING, type StepKind } from '../../../server/src/core/trade/steps';
import { ORDER_RULES } from '../../../server/src/core/trade/work-order';
import { bench } from '../../support/bench';
import { buildName } from '../../support/fixture';

const build = (text: string) => bench([{ name: buildName, text }]).build!;
const order = (text: string): readonly WorkStep[] => workOrder(build(text));
const words = (steps: readonly WorkStep[]): string[] =>
  steps.map(({ step, part }) => (part ? `${step} ${part.label}` : step));
const at = (steps: readonly WorkStep[], kind: StepKind): number => steps.findIndex(({ step }) => step === kind);
const last = (steps: readonly WorkStep[], kind: StepKind): number => steps.findLastIndex(({ step }) => step === kind);

const desk = `
place: { brought-from: 5 °C }
parts:
  board: { socket: LGA1851, slots: { M2_1: { kind: M.2, under: [cooler] }, PCIE_1: { kind: PCIe } } }
  processor: { socket: LGA1851 }
  cooler: { film: true, back-plate: true, pump: { pins: 3 }, mount: top }
  paste: { gallium: true }
  memory: [{ speed: 6000 MT/s }]
  drives: [{ name: scratch, shape: M.2, slot: M2_1 }, { name: archive, shape: 3.5 in }]
  graphics: [{ length: 300 mm, connectors: { 16-pin: 1 }, support: true }]
  cards: [{ name: capture, length: 170 mm, connectors: {} }]
  supply: { rating: 750 W }
  case: { front-cables: [front panel], tray-opening: false, glass-panel: true }
  fans: [{ mount: front }]
bench: { strap: { series-resistance: 1 MΩ, clipped-to: bare chassis }, firmware-update: { to: "1.20", by: older processor } }
`;

describe('the order of work', () => {
  it('is that of the parts, with the work on the bench undone before the work in the case', () => {
    expect(words(order(desk))).toEqual([
      'read handbooks',
      'let parts warm up',
      'open case',
      'wear strap',
      'take parts from bags',
      'fit processor',
      'take off socket cover',
      'fit memory',
      'apply paste',
      'fit cooler',
      'connect 24-pin',
      'connect EPS',
      'connect fan cables',
      'connect pump cable',
      'take off strap',
      'plug in mains',
      'update firmware',
      'unplug mains',
      'drain residual charge',
      'wear strap',
      'fit processor',
      'fit M.2 drive scratch',
      'fit back plate',
      'clean surfaces',
      'remove film',
      'apply paste',
      'fit cooler',
      'connect fan cables',
      'connect pump cable',
      'take off strap',
      'bench start',
      'wait for memory training',
      'unplug mains',
      'drain residual charge',
      'wear strap',
      'set standoffs',
      'fit I/O shield',
      'fit supply',
      'fit fans',
      'fit board',
      'connect 24-pin',
      'connect EPS',
      'connect fan cables',
      'connect pump cable',
      'fit radiator',
      'connect front cables',
      'fit drive archive',
      'connect drive cables',
      'fit card capture',
      'fit graphics graphics',
      'fit card support',
      'connect card power',
      'check inside',
      'close case',
      'take off strap',
      'plug in mains',
      'first start',
      'default settings',
      'memory test',
      'set profile',
      'drive test',
      'install system',
      'stress test',
      'measure',
      'record settings',
      'hand over',
    ]);
  });

  it('gives a reason for what comes before', () => {
    const cooler = order(desk).findLast(({ step }) => step === 'fit cooler')!;
    expect(cooler.reasons).toContainEqual({ after: 'fit processor', because: 'the cooler stands on the processor' });
    expect(cooler.reasons).toContainEqual({ after: 'fit M.2 drive', because: 'the cooler stands over its slot' });
  });

  it('has the cautions of its parts before their steps', () => {
    const cautions = (kind: StepKind) => order(desk).find(({ step }) => step === kind)!.cautions;
    expect(cautions('apply paste')).toEqual(['gallium-paste']);
    expect(cautions('open case')).toEqual(['sharp-edges', 'glass-panel']);
    expect(cautions('plug in mains')).toEqual(['circuit-overload']);
    expect(cautions('fit memory')).toEqual([]);
  });

  it('equalises by touch where no strap is worn, and never powers a strapped wearer', () => {
    const plain = order('parts:\n  board: { socket: AM4 }\n  processor: { socket: AM4 }\n  supply: {}\n  case: {}\n');
    expect(at(plain, 'wear strap')).toBe(-1);
    expect(at(plain, 'equalise')).toBeGreaterThan(-1);
    expect(at(plain, 'take off socket cover')).toBe(-1);
    const strapped = order(desk);
    let worn = false;
    for (const { step } of strapped) {
      if (step === 'wear strap') worn = true;
      if (step === 'take off strap') worn = false;
      if (step === 'update firmware' || ENERGISING.has(step)) expect(worn).toBe(false);
    }
  });

  it(
    'has the cable out and the charge drained between power and the next hand, on every route to newer ' + 'firmware',
    () => {
      for (const route of ['stick without processor', 'older processor', 'service', 'with this processor']) {
        const steps = order(desk.replace('by: older processor', `by: ${route}`));
        let live = false;
        for (const { step } of steps) {
          if (ENERGISING.has(step) || (step === 'update firmware' && route !== 'service')) live = true;
          else if (step === 'drain residual charge') live = false;
          else if (HANDLING.has(step)) expect(live, `${step} by ${route}`).toBe(false);
        }
      }
    },
  );

  it(
    'fits no shield that the board brings, sets no standoffs that do not come out, and switches on no ' +
      'profile that is not needed',
    () => {
      const small = order(
        'parts:\n  board: { shield-fitted: true }\n  case: { standoffs: { removable: false } }\n  memory: [{ ' +
          'speed: 4800 MT/s, standard-speed: 4800 MT/s, type: DDR4 }]\n',
      );
      for (const kind of ['fit I/O shield', 'set standoffs', 'set profile', 'wait for memory training'] as const)
        expect(at(small, kind), kind).toBe(-1);
      expect(at(small, 'fit board')).toBeGreaterThan(-1);
    },
  );

  it('updates on this processor once the machine runs, and before settings are made', () => {
    const steps = order(desk.replace('by: older processor', 'by: with this processor'));
    expect(at(steps, 'update firmware')).toBeGreaterThan(at(steps, 'bench start'));
    expect(at(steps, 'update firmware')).toBeLessThan(at(steps, 'set profile'));
  });

  it('fits an older processor for its update first, and says so', () => {
    const steps = order(
      desk.replace('by: older processor', 'by: older processor, older-processor: { family: Calder C6 }'),
    );
    const notes = steps.filter(({ step }) => step === 'fit processor').map(({ note }) => note);
    expect(notes).toEqual(['the older Calder C6', 'take out the older Calder C6 first']);
    const update = at(steps, 'update firmware');
    for (const kind of ['fit processor', 'fit memory', 'fit cooler', 'connect fan cables', 'plug in mains'] as const)
      expect(at(steps, kind), kind).toBeLessThan(update);
    for (const kind of ['fit processor', 'fit cooler', 'connect fan cables'] as const)
      expect(last(steps, kind), kind).toBeGreaterThan(update);
    expect(steps.filter(({ step }) => step === 'fit memory')).toHaveLength(1);
  });

  it('plugs nothing into a board that takes no supply’s cables, and no fan of a cooler that has none', () => {
    const steps = order(
      'parts:\n  board: { socket: AM5, power-connectors: {} }\n  processor: { socket: AM5 }\n' +
        '  cooler: { fans: { count: 0 } }\n  case: {}\n',
    );
    for (const kind of ['connect 24-pin', 'connect EPS', 'connect fan cables', 'connect pump cable'] as const)
      expect(at(steps, kind), kind).toBe(-1);
    for (const kind of ['bench start', 'unplug mains', 'plug in mains', 'first start'] as const)
      expect(at(steps, kind), kind).toBeGreaterThan(-1);
  });

  it('starts a loop in its case, with its pump plugged in', () => {
    const loop = order(
      'parts:\n  board: { socket: AM5 }\n  processor: { socket: AM5 }\n  cooler: {}\n  radiators: [{ mount: top }]\n' +
        '  supply: {}\n  case: {}\n',
    );
    expect(at(loop, 'bench start')).toBe(-1);
    expect(at(loop, 'connect pump cable')).toBeLessThan(at(loop, 'first start'));
    expect(at(loop, 'leak test')).toBeLessThan(at(loop, 'first start'));
  });

  it('fits no processor that is soldered', () => {
    const steps = order('parts:\n  board: { socket: BGA1264 }\n  processor: { socket: BGA1264 }\n');
    expect(at(steps, 'fit processor')).toBe(-1);
    expect(at(steps, 'take off socket cover')).toBe(-1);
  });

  it('says a caution once, though its step comes again', () => {
    const outs = order(desk).filter(({ step }) => step === 'wear strap');
    expect(outs.map(({ cautions }) => cautions.length)).toEqual([1, 0, 0]);
  });

  it('updates with this processor behind it, and by stick wherever custom has it', () => {
    const by = (route: string) => order(desk.replace('by: older processor', `by: ${route}`));
    expect(at(by('with this processor'), 'update firmware')).toBeGreaterThan(
      at(by('with this processor'), 'fit processor'),
    );
    expect(at(by('service'), 'update firmware')).toBeLessThan(at(by('service'), 'fit processor'));
    expect(at(by('stick without processor'), 'update firmware')).toBeGreaterThan(-1);
  });

  it('fills and tests a loop before power', () => {
    const loop = order('parts:\n  cooler: {}\n  radiators: [{ mount: top }]\n  supply: {}\n  case: {}\n');
    expect(at(loop, 'fit radiator')).toBeLessThan(at(loop, 'fill loop'));
    expect(at(loop, 'fill loop')).toBeLessThan(at(loop, 'leak test'));
    expect(at(loop, 'leak test')).toBeLessThan(at(loop, 'plug in mains'));
  });

  it('has every step it knows of, however odd the build', () => {
    for (const text of [
      '',
      'parts:\n',
      'parts: {}\n',
      'parts:\n  cooler: 7\n',
      'parts:\n  drives: [{}, { shape: M.2, slot: X }]\n  graphics: [{}, {}]\n  case: {}\n  board: {}\n  ' +
        'processor: {}\n',
    ]) {
      const steps = order(text);
      expect(at(steps, 'read handbooks')).toBe(0);
      expect(last(steps, 'hand over')).toBe(steps.length - 1);
    }
  });

  it('keeps every rule of need, leaves nothing out and stays quick, for builds of any make', () => {
    const maybe = (text: string) => fc.constantFrom('', text);
    const builds = fc
      .tuple(
        maybe(
          '  board: { socket: LGA1851, slots: { M2_1: { kind: M.2, under: [cooler, PCIE_1] }, PCIE_1: { ' +
            'kind: PCIe } } }\n',
        ),
        maybe('  processor: {}\n'),
        fc.constantFrom(
          '',
          '  cooler: {}\n',
          '  cooler: { mount: top, back-plate: true, film: true, pump: { pins: 3 } }\n',
        ),
        maybe('  paste: {}\n'),
        maybe('  memory: [{ speed: 6000 MT/s }]\n'),
        fc.nat(12).map((n) => `  drives: [${'{ shape: M.2, slot: M2_1 }, '.repeat(n)}{ shape: 3.5 in }]\n`),
        fc.nat(6).map((n) => `  graphics: [${'{ slot: PCIE_1, connectors: { 16-pin: 1 } }, '.repeat(n)}{}]\n`),
        maybe('  supply: {}\n'),
        fc.constantFrom('', '  case: {}\n', '  case: { tray-opening: false, front-cables: [front panel] }\n'),
        maybe('  radiators: [{ mount: top }]\n'),
        fc.constantFrom(
          '',
          'bench: { strap: { worn: true } }\n',
          'bench: { firmware-update: { by: older processor } }\n',
          'bench: { firmware-update: { by: with this processor } }\n',
          'bench: { firmware-update: { to: "1" } }\n',
        ),
      )
      .map((pieces) => `parts:\n${pieces.join('')}`);
    fc.assert(
      fc.property(builds, (text) => {
        const steps = order(text);
        expect(at(steps, 'hand over')).toBe(steps.length - 1);
        expect(steps.length).toBeGreaterThan(6);
        for (const rule of ORDER_RULES) {
          if (
            rule.strength !== 'needed' ||
            rule.when !== undefined ||
            at(steps, rule.before) < 0 ||
            at(steps, rule.after) < 0
          )
            continue;
          const first = Math.min(
            ...[rule.before, rule.or ?? rule.before].map((kind) => at(steps, kind)).filter((place) => place >= 0),
          );
          expect(first, `${rule.before} before ${rule.after}`).toBeLessThan(last(steps, rule.after));
        }
      }),
      { numRuns: 60, seed: 7 },
    );
  });

  it('is the same for the same text', () => expect(words(order(desk))).toEqual(words(order(desk))));
});

describe('stated steps', () => {
  it('read a bare text like a map, and keep their places when others come before', () => {
    const steps = statedSteps(
      build(
        'parts:\n  drives: [{ name: scratch, slot: M2_1 }]\nsteps:\n  - fit fans\n  - { do: fit M.2 drive, ' +
          'part: scratch }\n  - { do: fit M.2 drive, part: M2_1 }\n  - fit fans\n  - caution: { word: NOTICE ' +
          '}\n  - fit fanz\n  - 7\n  -\n  - [fit fans]\n',
      ),
    );
    expect(steps.map(({ kind }) => kind)).toEqual([
      'fit fans',
      'fit M.2 drive',
      'fit M.2 drive',
      'fit fans',
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(steps.slice(0, 5).map(({ path }) => path)).toEqual([
      'steps.fit fans',
      'steps.fit M.2 drive scratch',
      'steps.fit M.2 drive M2_1',
      'steps.fit fans (2)',
      'steps.caution',
    ]);
    expect(steps[1]!.part).toBe(steps[2]!.part);
    expect(steps[0]!.part).toBeUndefined();
  });

  it('are none where the list is none', () => {
    for (const text of ['', 'steps:\n', 'steps: []\n', 'steps: fit fans\n', 'steps: { do: fit fans }\n'])
      expect(statedSteps(build(text))).toEqual([]);
  });
});
