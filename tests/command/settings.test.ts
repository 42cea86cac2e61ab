// `fettle settings`: what holds for a file, and from which line.
import { describe, expect, it } from 'vitest';
import { fettle } from '../support/command';

const settings = `format: 1
parts: [stock, parts]
margins:
  clearance: 3 mm
grades:
  price-old: off
  supply-overloaded: off
  price-olld: note
`;
const desk = 'benches/desk.pcbuild.yaml';
const files = { 'fettle.yaml': settings, [desk]: 'format: 1\nbuild: Desk\n' };

interface Shown {
  readonly workspace: string;
  readonly settings: readonly { key: string; value: string | null; at?: object; remark?: string }[];
  readonly problems: readonly { id: string; line: number }[];
}
const shown = async (all: Record<string, string>, path: string): Promise<Shown & { status: number }> => {
  const { out, status } = await fettle(all, 'settings', path, '--format', 'json');
  return { ...(JSON.parse(out) as Shown), status };
};
const row = ({ settings: rows }: Shown, key: string): unknown => rows.find((one) => one.key === key);

describe('fettle settings', () => {
  it('names each setting with its file and line, or as the default', async () => {
    const report = await shown(files, desk);
    expect(report.workspace).toBe('.');
    expect(row(report, 'parts')).toMatchObject({ value: '[stock, parts]', at: { file: 'fettle.yaml', line: 2 } });
    expect(row(report, 'margins.clearance')).toEqual({
      key: 'margins.clearance',
      value: '3 mm',
      at: { file: 'fettle.yaml', line: 4 },
    });
    expect(row(report, 'margins.supply-headroom')).toEqual({ key: 'margins.supply-headroom', value: '20 %' });
    expect(row(report, 'currency')).toEqual({ key: 'currency', value: null });
  });

  it('says what a grade changes, and what changes nothing', async () => {
    const report = await shown(files, desk);
    expect(row(report, 'grades.price-old')).toMatchObject({ value: 'off', remark: 'note without it' });
    expect(row(report, 'grades.supply-overloaded')).toMatchObject({ remark: 'changes nothing: it stays harm' });
    expect(row(report, 'grades.price-olld')).toMatchObject({ remark: 'changes nothing: there is no such check' });
    expect(report.problems.map(({ id, line }) => [id, line])).toEqual([
      ['check-unknown', 8],
      ['setting-without-effect', 7],
    ]);
    expect(report.status).toBe(1);
  });

  it('says where none hold, and takes the nearest', async () => {
    expect(await shown({ [desk]: '' }, desk)).toMatchObject({ problems: [], status: 0 });
    const nearer = { ...files, 'benches/fettle.yaml': 'margins: { clearance: 5 mm }\n' };
    const at = { file: 'benches/fettle.yaml', line: 1 };
    expect(row(await shown(nearer, desk), 'margins.clearance')).toMatchObject({ value: '5 mm', at });
    expect(row(await shown(nearer, '.'), 'margins.clearance')).toMatchObject({ value: '3 mm' });
  });

  it('fits a page, and shows what cannot be seen', async () => {
    const odd = { ...files, 'fettle.yaml': 'currency: "EUR\u202e"\nparts: [parts]\n' };
    const { out } = await fettle(odd, 'settings', desk);
    expect(out).toContain('\\u{202e}');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(100);
    expect(out).toMatch(/^margins\.clearance +default +0 mm$/m);
  });

  it('refuses a path that is not there', async () => {
    expect(await fettle(files, 'settings', 'nowhere')).toMatchObject({ status: 2, out: '' });
  });
});
