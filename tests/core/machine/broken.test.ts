// Every reader of a machine’s outputs against its samples cut off anywhere and changed anyhow: it throws at nothing, lets
// no serial number through, and invents nothing. What is read stands in the changed text, at the line that it names; of a
// text that is cut off nothing is read but what the whole says. FETTLE_SEED and FETTLE_MUTATIONS ask for other changes.
import { describe, expect, it } from 'vitest';
import { recordOf } from '../../../server/src/core/machine/as-built';
import { distil } from '../../../server/src/core/machine/distill';
import { asBuiltFile, type AsBuilt } from '../../../server/src/core/manifest/as-built';
import { Doc } from '../../../server/src/core/parts/doc';
import type { Fact } from '../../../server/src/core/parts/fact';
import type { Field } from '../../../server/src/core/parts/field';
import { wrongDesk } from '../../machines/made';
import { changedTexts, mutationsTried, randoms, seed, truncations } from '../../support/broken';
import { asHex, everyPlace, makeEdid } from '../../support/edid';
import { changedBytes } from '../../support/edid-bytes';
import { outputsOf } from '../../support/machines';
import { decodedDimm } from '../../support/spd';
import { readFact, stands } from '../../support/stands';
import { windowsOutputs } from '../../support/windows';

/** All that is told of a machine, as far as it is told. */
function factsOf(machine: AsBuilt): Fact<unknown>[] {
  const found: Fact<unknown>[] = [];
  const walk = (field: Field, one: unknown): void => {
    if (field.type === 'group') {
      for (const [key, inner] of Object.entries(field.fields))
        walk(inner as Field, (one as Record<string, unknown>)[key]);
      return;
    }
    const fact = one as Fact<unknown>;
    if (field.type === 'list')
      for (const item of (fact.value as unknown[] | undefined) ?? []) walk(field.of as Field, item);
    else if (fact.node && fact.key !== 'taken') found.push(fact);
  };
  for (const [key, field] of Object.entries(asBuiltFile)) walk(field as Field, machine[key as keyof AsBuilt]);
  return found;
}

const read = (name: string, text: string, beside: Readonly<Record<string, string>> = {}): Fact<unknown>[] => {
  const docs = Object.entries({ ...beside, [name]: text }).map(([one, own]) => new Doc(`out/${one}`, 'output', own));
  return factsOf(distil(docs, 'out', '2026-11-29').machine);
};
const told = (facts: readonly Fact<unknown>[]): string[] => facts.map(({ key, text }) => `${key}: ${text}`);

/** Facts that do not stand where they say. */
const invented = (facts: readonly Fact<unknown>[]): unknown[] =>
  facts.map(readFact).filter((fact) => fact !== undefined && !stands(fact));

/** Whether a fact tells a serial number that stands behind its own label: moved behind another, nothing could know it. */
const isSecret = (fact: Fact<unknown>): boolean =>
  fact.text.includes('SECRET') && /serial|asset/i.test(readFact(fact)?.line ?? '');

const edid = makeEdid(everyPlace);

/** The samples of each reader, by the outputs’ names. */
const readers: Record<string, Readonly<Record<string, string>>> = {};
for (const [name, text] of Object.entries({
  ...outputsOf(wrongDesk),
  ...windowsOutputs,
  'edid-card0-HDMI-A-2.hex': asHex(edid),
  'dimms.txt': decodedDimm,
})) {
  const reader = /^(?:Win32|MSFT|Wmi)/.test(name) ? 'CIM' : /^[a-z]+/.exec(name)![0];
  readers[reader] = { ...readers[reader], [name]: text };
}
const all = Object.values(readers).flatMap((texts) => Object.values(texts));

/** What tells something only of what another output names. */
const companions: Readonly<Record<string, readonly string[]>> = {
  'block.txt': ['lsblk.json', 'lspci-load.txt'],
  'MSFT_StorageReliabilityCounter.json': ['MSFT_PhysicalDisk.json'],
};
const beside = (name: string): Record<string, string> =>
  Object.fromEntries(
    (companions[name] ?? []).map((one) => [one, Object.values(readers).find((texts) => one in texts)![one]!]),
  );

/** Counters alone are no facts, nor are paths: they tell of a drive that another output names. */
const saysNothing = ['block.txt', 'MSFT_StorageReliabilityCounter.json'];

it('reads what Windows prints', () => {
  const facts = Object.entries(windowsOutputs).flatMap(([name, text]) => told(read(name, text)).sort());
  expect(facts.filter((fact) => fact !== 'from: CIM')).toEqual([
    'maker: Norrvik',
    'reports: B7 FORGE',
    'dated: 2026-01-12',
    'firmware: 1.20',
    'reports: Calder C7 840',
    'capacity: 32 GiB',
    'locator: DIMM 1',
    'reports: D5-6000',
    'running: 6000 MT/s',
    'slot: A2',
    'standard: 4800 MT/s',
    'memory-ecc: false',
    'class: 0300',
    'id: 1a2b:7480',
    'port: 00:01.0',
    'reports: Orrery G70',
    'bus: NVMe',
    'capacity: 2.0004 TB',
    'health: passed',
    'reports: Rapid 2T',
    'capacity: 2.0004 TB',
    'reports: Rapid 2T',
    'id: PHR1234',
    'reports: P32',
  ]);
});

describe.each(Object.entries(readers))('the reader of %s', (_, texts) => {
  it('reads its samples, and what it reads stands there', () => {
    for (const [name, text] of Object.entries(texts)) {
      const facts = read(name, text);
      expect(facts.some(({ key }) => key !== 'from')).toBe(!saysNothing.includes(name));
      expect(invented(facts)).toEqual([]);
    }
  });

  it('invents nothing of a text cut off anywhere', () => {
    for (const [name, text] of Object.entries(texts)) {
      const others = beside(name);
      const whole = new Set(told(read(name, text, others)));
      // Of a slot’s name in two parts the first may be lost.
      const isKnown = (fact: string): boolean =>
        whole.has(fact) ||
        (fact.startsWith('locator: ') && [...whole].some((one) => one.endsWith(fact.slice(8)))) ||
        // The version stands on another line than the rest.
        (fact.startsWith('from: ') && [...whole].some((one) => one.startsWith(fact)));
      for (const cut of truncations(text)) {
        const wrong = told(read(name, cut, others)).filter((fact) => !isKnown(fact));
        if (wrong.length > 0) expect({ name, cut: cut.slice(-80), wrong }).toEqual({});
      }
    }
  });

  it(`invents nothing of a text changed anyhow, ${mutationsTried} times, from seed ${seed}`, () => {
    const names = Object.keys(texts);
    for (const [name, text] of Object.entries(texts)) {
      for (const { text: changed, how } of changedTexts(text, { count: mutationsTried / names.length, others: all })) {
        const facts = read(name, changed);
        const wrong = invented(facts);
        if (wrong.length > 0) expect({ name, how, wrong }).toEqual({});
        expect(facts.filter(isSecret).map(({ text }) => text)).toEqual([]);
      }
    }
  });
});

it('invents nothing of a display’s bytes that were changed and summed anew', () => {
  const random = randoms(seed);
  const below = (most: number): number => Math.floor(random.next().value * most);
  let believed = 0;
  for (let i = 0; i < mutationsTried; i++) {
    const facts = read('edid-card0-DP-1.hex', asHex(changedBytes(edid, below)));
    if (facts.length > 3) believed++;
    expect(invented(facts)).toEqual([]);
  }
  expect(believed).toBeGreaterThan(mutationsTried * 0.8);
});

/** A record as it is written beside a build, its lines of one thing each. */
const record = `format: 1
build: survey-desk.pcbuild.yaml
taken: 2026-11-29
from: [dmidecode 3.5, smartctl 7.4]
board: { reports: B7 FORGE, firmware: "B7FORGE 1.08" }
memory-ecc: false
memory:
  - { slot: A2, reports: DDR5 6000 32G, capacity: 32 GiB, running: 4800 MT/s }
drives:
  - { name: archive, bus: SATA, capacity: 12.0001 TB, hours: 20311 h }
unseen: [cooler, paste]
`;

describe('the reader of records', () => {
  const recorded = (text: string): { facts: readonly Fact<unknown>[]; doc: Doc } => {
    const doc = new Doc('survey-desk.asbuilt.yaml', 'asbuilt', text);
    return { facts: factsOf(recordOf(doc)), doc };
  };
  /** A value stands at its place as it is written, but for quotes, their escapes and folded lines. */
  const isWritten = ({ text, doc, node }: Fact<unknown>): boolean =>
    /["'|>&*\n]/.test(doc.text.slice(node!.span.start, node!.span.end)) ||
    doc.text.slice(node!.span.start, node!.span.end) === text;

  it('tells of a text cut off anywhere, or reads nothing but what the whole says', () => {
    const { facts } = recorded(record);
    expect(facts).toHaveLength(17);
    expect(facts.filter((fact) => !isWritten(fact))).toEqual([]);
    const whole = new Set(told(facts));
    for (const cut of truncations(record)) {
      const { facts: left, doc } = recorded(cut);
      if (doc.parsed.problems.length > 0) continue;
      // A file that people write may end with its last value: what stands there is the value of that file.
      const known = left.filter(({ node }) => node!.span.end < cut.trimEnd().length);
      expect(told(known).filter((fact) => !whole.has(fact))).toEqual([]);
    }
  });

  it(`reads what stands there of a text changed anyhow, ${mutationsTried} times, from seed ${seed}`, () => {
    for (const { text, how } of changedTexts(record, { count: mutationsTried, others: [...all, record] })) {
      const wrong = recorded(text).facts.filter((fact) => !isWritten(fact));
      if (wrong.length > 0) expect({ how, wrong: told(wrong) }).toEqual({});
    }
  });
});
