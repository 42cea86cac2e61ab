// Whatever number stands in a field, nothing throws and no sentence or working holds ∞ or NaN (promises P1 and P21).
import { describe, expect, it } from 'vitest';
import { buildFile } from '../../server/src/core/manifest/build-file';
import { houseFile } from '../../server/src/core/manifest/house-file';
import { roles } from '../../server/src/core/manifest/places';
import { kinds } from '../../server/src/core/parts/kinds';
import type { Field, QuantityField, Table } from '../../server/src/core/parts/field';
import { readScalar } from '../../server/src/core/parts/scalar';
import { inUnit, plainNumber } from '../../server/src/core/quantity';
import { workingOf } from '../../server/src/core/judge/working-steps';
import { readSamples } from '../support/samples';
import { judge } from './support/judged';

function quantitiesOf(field: Field, path: string): [string, QuantityField][] {
  if (field.type === 'list' || field.type === 'named') return quantitiesOf(field.of as Field, path);
  if (field.type === 'group')
    return Object.entries(field.fields as Table).flatMap(([key, one]) => quantitiesOf(one as Field, `${path}.${key}`));
  return field.type === 'quantity' ? [[path, field]] : [];
}
const tables: Readonly<Record<string, Table>> = {
  build: buildFile,
  house: houseFile,
  ...kinds,
  ...Object.fromEntries(Object.entries(roles).map(([name, role]) => [`role ${name}`, role.fields])),
};
const quantities = Object.entries(tables).flatMap(([name, table]) =>
  Object.entries(table).flatMap(([key, field]) => quantitiesOf(field as Field, `${name}.${key}`)),
);

describe('every quantity field', () => {
  it.each(quantities)('%s is read within its range, and outside it is a slip without a value', (_, field) => {
    const [least, most] = field.range;
    const write = (base: number): string => `${plainNumber(inUnit(base, field.unit))} ${field.unit}`;
    for (const text of [write(least), write(most), field.example])
      expect(readScalar(field, text), text).toEqual({ value: expect.anything() });
    for (const text of [write(most * 2 + 1), `1000000000000000 ${field.unit}`, write(least - Math.abs(least) - 1)]) {
      const read = readScalar(field, text);
      expect([read.value, read.slip?.code], text).toEqual([
        undefined,
        expect.stringMatching(/^number-(out-of-range|odd)$/),
      ]);
    }
  });
});

const { docs } = readSamples();
const usedUnits = '°C % K V W A mm m h min ms s GB/s TB GB Wh dBA EUR MT/s bel g rpm m³/h Pa W/m·K K/W mm² mm³ µm MΩ';
const written = new RegExp(
  `([a-z-]+): (-?\\d+(?:\\.\\d+)?)(?= (?:${usedUnits.replaceAll(' ', '|')})(?:[\\s,}\\]]|$))`,
  'gm',
);
const numbers = ['0', '-40', '1000000000', '0.0001', '100'];

/** Each key once, in the first sample that states it. */
function places(): { readonly key: string; readonly name: string; readonly at: number; readonly length: number }[] {
  const first = new Map<string, { key: string; name: string; at: number; length: number }>();
  for (const doc of docs.values())
    if (doc.kind === 'build')
      for (const match of doc.text.matchAll(written)) {
        const [whole, key = '', number = ''] = match;
        if (!first.has(key))
          first.set(key, {
            key,
            name: doc.name,
            at: match.index + whole.length - number.length,
            length: number.length,
          });
      }
  return [...first.values()];
}

describe('a sample', () => {
  it.each(places())('with other numbers in $key of $name says nothing infinite', ({ name, at, length }) => {
    const { text } = [...docs.values()].find((doc) => doc.name === name)!;
    for (const number of numbers) {
      const { judgement } = judge(text.slice(0, at) + number + text.slice(at + length));
      for (const finding of judgement.findings) {
        const said = finding.said.text + JSON.stringify(workingOf(finding).map(({ label, value }) => [label, value]));
        expect(said, `${number}: ${finding.id}`).not.toMatch(/∞|Infinity|NaN/);
      }
    }
  });

  it('with a room of unknown temperature is not short of air', () => {
    const shed = [...docs.values()].find(({ name }) => name.endsWith('hot-shed-storage.pcbuild.yaml'))!;
    const { judgement } = judge(shed.text.replace(/ambient: [\d.]+ °C/, 'ambient: 100 °C'));
    const found = judgement.findings.filter(({ id }) => id === 'airflow-short');
    expect(found.map(({ grade }) => grade)).not.toContain('shortfall');
    expect(judgement.findings.map(({ id }) => id)).toContain('number-out-of-range');
  });
});
