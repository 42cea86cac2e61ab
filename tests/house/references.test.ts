// Every field that refers to something: what it refers to can be listed, and a name that nothing has is found.
import { describe, expect, it } from 'vitest';
import { thingLists } from '../../server/src/core/build/named-things';
import { referentsOf } from '../../server/src/core/build/references';
import { judgeBuild, judgeFile } from '../../server/src/core/judge/judge';
import type { Finding } from '../../server/src/core/judge/finding';
import { buildFile } from '../../server/src/core/manifest/build-file';
import { houseFile } from '../../server/src/core/manifest/house-file';
import { roles, type Role } from '../../server/src/core/manifest/places';
import { board } from '../../server/src/core/parts/board';
import { referents, type Field, type Referent, type Table } from '../../server/src/core/parts/field';
import { kinds } from '../../server/src/core/parts/kinds';
import { bench } from '../support/bench';

type Tree = { [key: string]: unknown };

/** What boards and cases list, so that a name that is not among it is known to be wrong. */
const lists: Readonly<Record<string, Tree>> = {
  board: {
    slots: { PCIE_1: { kind: 'PCIe' } },
    ports: { SATA_1: {} },
    headers: { CPU_FAN: { kind: 'fan' } },
    'display-outputs': { HDMI: { link: 'HDMI 2.0' } },
    memory: { slots: ['A1'] },
    firmware: { versions: ['1.00', '1.08'] },
  },
  case: { 'fan-places': { front: {} }, 'radiator-places': { top: {} }, bays: { '3.5 in': 1 } },
  graphics: { outputs: { DP_1: { link: 'DisplayPort HBR3' } } },
  supply: { modular: 'full' },
  cables: { connector: 'EPS 8-pin' },
};

const wrong = (kind: Referent): string =>
  kind === 'part file'
    ? 'no/such'
    : kind === 'step'
      ? 'fit processor'
      : kind === 'firmware version'
        ? '9.99'
        : 'nosuch';

interface Site {
  readonly path: string;
  readonly kind: Referent;
  /** The value of the field that leads to the wrong name. */
  readonly value: unknown;
}

/** Everywhere that a name may stand below a field, with what else must be written for it to be read. */
function sites(field: Field, path: string): Site[] {
  const [kind] = referentsOf(field);
  switch (field.type) {
    case 'group':
      return sitesIn(field.fields, path).map(({ value, ...site }) => ({
        ...site,
        value: { ...beside(path), ...(value as Tree) },
      }));
    case 'list':
      return sites(field.of as Field, `${path}[]`).map((site) => ({ ...site, value: [site.value] }));
    case 'named':
      return [
        ...(kind ? [{ path, kind, value: { [wrong(kind)]: (field.of as Field).type === 'choice' ? 'off' : {} } }] : []),
        ...sites(field.of as Field, `${path}.*`).map((site) => ({ ...site, value: { any: site.value } })),
      ];
    default:
      return kind ? [{ path, kind, value: wrong(kind) }] : [];
  }
}

const sitesIn = (table: Table, path: string): Site[] =>
  Object.entries(table).flatMap(([key, field]) =>
    sites(field as Field, path === '' ? key : `${path}.${key}`).map((site) => ({
      ...site,
      value: { [key]: site.value },
    })),
  );

/** What a group needs beside a name for the name to be read. */
function beside(path: string): Tree {
  if (path === 'steps[]') return { do: 'fit board' };
  if (path === 'accept[]') return { finding: 'unknown-key' };
  return path === 'bench.firmware-update' ? { by: 'service' } : {};
}

function merged(base: Tree, over: Tree): Tree {
  const isTree = (value: unknown): value is Tree =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  return Object.entries(over).reduce<Tree>(
    (all, [key, value]) => ({ ...all, [key]: isTree(value) && isTree(all[key]) ? merged(all[key], value) : value }),
    base,
  );
}

const boardFile = {
  name: 'parts/norrvik/board.part.yaml',
  text: JSON.stringify({ kind: 'board', ...lists.board }),
};

function findingsIn(name: string, tree: Tree): { text: string; findings: readonly Finding[] } {
  const text = JSON.stringify(tree);
  const { docs, build } = bench([{ name, text }, boardFile]);
  const { findings } = build ? judgeBuild(build, { throwOn: true }) : judgeFile(docs.get(name)!, { throwOn: true });
  return { text, findings };
}

/** Checks that find a wrong name and underline more than it: the line, or the part. */
const saidOtherwise: Partial<Record<Referent, string>> = {
  finding: 'accepted-but-gone',
  'part file': 'cable-from-another-supply',
};

/** Ids of the checks that find the wrong name. */
function found(name: string, tree: Tree, { kind }: Site): string[] {
  const { text, findings } = findingsIn(name, tree);
  return findings
    .filter(({ grade }) => grade !== 'unknown')
    .filter(
      ({ id, underline: { span } }) =>
        text.slice(span.start, span.end).replaceAll('"', '') === wrong(kind) || id === saidOtherwise[kind],
    )
    .map(({ id }) => id);
}

const onRole = (name: string, value: Tree): Tree => {
  const { several } = roles[name as keyof typeof roles] as Role;
  const own = name === 'board' ? { use: 'norrvik/board', ...value } : merged(lists[name] ?? {}, value);
  return {
    parts: { board: lists.board, case: lists.case, supply: lists.supply, [name]: several ? [own] : own },
  };
};

const buildParts = {
  board: lists.board,
  case: lists.case,
  graphics: [lists.graphics],
  drives: [{ name: 'scratch' }],
};

const cases: readonly (readonly [string, string, Tree, Site])[] = [
  ...sitesIn(buildFile, '').map(
    (site) => [`build ${site.path}`, 'a.pcbuild.yaml', { parts: buildParts, ...(site.value as Tree) }, site] as const,
  ),
  ...Object.entries(roles).flatMap(([role, { fields }]) =>
    sitesIn(fields, `parts.${role}`).map(
      (site) => [`build ${site.path}`, 'a.pcbuild.yaml', onRole(role, site.value as Tree), site] as const,
    ),
  ),
  ...Object.entries(roles).flatMap(([role, { kind }]) =>
    sitesIn(kinds[kind], `parts.${role} spelled out`).map(
      (site) => [`build ${site.path}`, 'a.pcbuild.yaml', onRole(role, site.value as Tree), site] as const,
    ),
  ),
  ...sitesIn(board, '').map(
    (site) =>
      [
        `board ${site.path}`,
        'parts/norrvik/b7-forge.part.yaml',
        { kind: 'board', ...merged(lists.board!, site.value as Tree) },
        site,
      ] as const,
  ),
  ...sitesIn(houseFile, '').map((site) => [`house ${site.path}`, 'fettle.yaml', site.value as Tree, site] as const),
];

describe('a name that nothing has', () => {
  it('may stand at many places, and at places of every kind', () => {
    expect(cases.length).toBeGreaterThan(35);
    expect(new Set(cases.map(([, , , { kind }]) => kind))).toEqual(new Set(referents));
  });

  for (const [title, name, tree, site] of cases)
    it(`is found at ${title}`, () => expect(found(name, tree, site), JSON.stringify(tree)).not.toEqual([]));
});

describe('what is referred to', () => {
  const tree = { parts: buildParts, steps: ['fit board'] };
  const { build } = bench([{ name: 'a.pcbuild.yaml', text: JSON.stringify(tree) }]);
  // Which files and which findings there are is for the folder and the judgement to say.
  for (const kind of referents.filter((one) => one !== 'part file' && one !== 'finding'))
    it(`can be listed: ${kind}`, () =>
      expect(thingLists(build!, kind).flatMap(({ things }) => things ?? []).length).toBeGreaterThan(0));
});
