// Builds made from texts in memory, as tests need them.
import { Build } from '../../server/src/core/build/build';
import { kindOfPart } from '../../server/src/core/build/placed';
import { WorkspaceConfig } from '../../server/src/core/build/workspace-config';
import type { Candidates } from '../../server/src/core/judge/swaps';
import { Guide } from '../../server/src/core/guide/guide';
import { tiesOf } from '../../server/src/core/guide/ties';
import { recordOf } from '../../server/src/core/machine/as-built';
import { Doc, kindOfFile } from '../../server/src/core/parts/doc';

/** The day on which every test takes place. */
export const today = '2026-11-25';

export interface Bench {
  readonly docs: ReadonlyMap<string, Doc>;
  readonly house: WorkspaceConfig;
  readonly build?: Build;
  /** The first guide, where there is one: what is judged then. */
  readonly guide?: Guide;
  readonly candidates: Candidates;
}

/** Files by name; the first build among them is the one on the bench. */
export function bench(files: Iterable<{ readonly name: string; readonly text: string }>): Bench {
  const docs = new Map<string, Doc>();
  for (const { name, text } of files) docs.set(name, new Doc(name, kindOfFile(name) ?? 'build', text));
  const house = new WorkspaceConfig(docs.get('fettle.yaml'));
  const find = (name: string): Doc | undefined => docs.get(`parts/${name}.part.yaml`);
  const own = [...docs.values()].find((doc) => doc.kind === 'build');
  const parts = [...docs.values()]
    .filter((doc) => doc.kind === 'part')
    .map((doc) => ({ name: doc.name.replace(/^parts\//, '').replace(/\.part\.yaml$/, ''), doc }));
  const record = [...docs.values()].find((doc) => doc.kind === 'asbuilt');
  const build = own && new Build(own, find, house, today, record && recordOf(record));
  const guide = [...docs.values()].find((doc) => doc.kind === 'guide');
  const isNamed = guide && own && tiesOf(guide).build?.path === own.name;
  return {
    docs,
    house,
    ...(build ? { build } : {}),
    ...(guide ? { guide: new Guide(guide, find, house, today, isNamed ? build : undefined) } : {}),
    candidates: (kind) => parts.filter((part) => kindOfPart(part.doc) === kind),
  };
}
