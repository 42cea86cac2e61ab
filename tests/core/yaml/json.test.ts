// JSON is read as the engine reads it, and with the places and nodes that the library gives it as YAML.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Node } from '../../../server/src/core/yaml';
import { readJson } from '../../../server/src/core/yaml/json';
import { parseAny } from '../../../server/src/core/yaml/parse';
import { changedTexts } from '../../support/broken';

const samples = [
  '{}',
  '[]',
  ' [1, -2.50, 3e8, true, false, null, "a", {"b": [[]]}]\r\n',
  '{\n  "chip-isa-0290": {\n    "fan1": { "fan1_input": 900.000 },\n    "A\\u0042\\n\\"\\\\\\/": "µ 😀"\n  },\n  "x":[ ]}\n',
  JSON.stringify({ smartctl: { version: [7, 4] }, bytes: 2_000_398_934_016, name: 'Rapid "2T"', none: null }, null, 2),
  `[${JSON.stringify({ Date: '\\/Date(1768176000000)\\/', Code: [80, 51, 0] })}]`,
];

/** What a node says, by the rules of JSON. */
function meantBy(node: Node): unknown {
  if (node.type === 'list') return node.items.map(meantBy);
  if (node.type === 'map') return Object.fromEntries(node.entries.map(({ key, value }) => [key, meantBy(value)]));
  return node.style === 'double' ? node.text : (JSON.parse(node.text) as unknown);
}

const byEngine = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

/** Read as the engine does, or refused with it; where YAML reads the same, with the same nodes. */
function hold(text: string): void {
  const read = readJson(text);
  const expected = byEngine(text);
  if (typeof expected !== 'object' || expected === null) expect(read, text).toBeUndefined();
  else if (read) {
    expect(meantBy(read.root), text).toEqual(expected);
    if (read.isYaml && !/[\t\u007f-\u00a0]|\r(?!\n)/.test(text)) {
      const { root, problems } = parseAny(text);
      expect({ root: JSON.stringify(read.root), problems: [] }, text).toEqual({ root: JSON.stringify(root), problems });
    }
  } else expect(text.match(/[{[]/g)!.length, text).toBeGreaterThan(64);
}

describe('JSON', () => {
  it.each(samples)('is read as the engine and the library read it: %j', (text) => {
    expect(readJson(text)?.isYaml).toBe(true);
    hold(text);
  });

  it('is read so whatever it holds, and however it is broken', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 5 }), fc.constantFrom(0, 2, '\t'), (value, indent) =>
        hold(JSON.stringify(value, null, indent)),
      ),
      { numRuns: 300 },
    );
    for (const text of samples) {
      for (let end = 0; end < text.trimEnd().length; end++) expect(readJson(text.slice(0, end))).toBeUndefined();
      for (const { text: changed } of changedTexts(text, { count: 500, others: samples })) {
        // The engine takes no comma before a bracket, and we take one.
        if (!/,\s*[}\]]/.test(changed) && !changed.startsWith('\uFEFF')) hold(changed);
      }
    }
  });

  it('passes over a comma before a closing bracket, as sensors 3.6 prints one', () => {
    const read = readJson('{\n "nvme-pci-0100":{\n "Adapter": "PCI adapter",\n },\n "x": [1, ]\n}\n')!;
    expect(meantBy(read.root)).toEqual({ 'nvme-pci-0100': { Adapter: 'PCI adapter' }, x: [1] });
    for (const text of ['[,]', '{,}', '[1,,2]', '{"a":1,,}', '[1 2]']) expect(readJson(text)).toBeUndefined();
  });

  it('gives the first of a name that stands twice, and says that YAML reads it otherwise', () => {
    const read = readJson('{"a": 1, "a": 2, "__proto__": 3}')!;
    expect(read.isYaml).toBe(false);
    expect(read.root.type === 'map' && read.root.get('a')!.value).toMatchObject({ text: '1' });
    expect(read.root.type === 'map' && read.root.get('__proto__')!.value).toMatchObject({ text: '3' });
  });

  it('is refused past the depth that everything else is', () => {
    expect(readJson('['.repeat(64) + ']'.repeat(64))).toBeDefined();
    expect(readJson('['.repeat(65) + ']'.repeat(65))).toBeUndefined();
    expect(readJson('['.repeat(1_000_000))).toBeUndefined();
  });
});
