// Puts the labels that data sheets print onto the fields of a table.
import type { Field, Table } from './field';

/** By the path of a field, `draw.peak`, `slots.*.key`: labels with ` | ` between them. */
export type Labels = Readonly<Record<string, string>>;

/** The same table, each named field with its labels; throws for a path that is no field’s. */
export function labelled<T extends Table>(table: T, labels: Labels): T {
  const fields: Record<string, Field> = { ...table } as Record<string, Field>;
  const byKey = new Map<string, Record<string, string>>();
  for (const [path, words] of Object.entries(labels)) {
    const [key, ...rest] = path.split('.');
    const below = byKey.get(key!) ?? {};
    below[rest.join('.')] = words;
    byKey.set(key!, below);
  }
  for (const [key, below] of byKey) {
    if (!Object.hasOwn(table, key)) throw new RangeError(`no field is called ${key}`);
    fields[key] = withLabels(fields[key]!, below);
  }
  return fields as T;
}

function withLabels(field: Field, { '': own, ...below }: Labels): Field {
  const named = own === undefined ? field : { ...field, labels: own.split(' | ') };
  if (Object.keys(below).length === 0) return named;
  if (named.type === 'group') return { ...named, fields: labelled(named.fields, below) };
  if (named.type !== 'list' && named.type !== 'named') throw new RangeError('labels stand below a field of one value');
  const inner = Object.fromEntries(Object.entries(below).map(([path, words]) => [path.replace(/^\*\.?/, ''), words]));
  return { ...named, of: withLabels(named.of as Field, inner) } as Field;
}
