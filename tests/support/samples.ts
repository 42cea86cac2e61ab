// The sample workspace, read into memory once.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Build } from '../../server/src/core/build/build';
import { WorkspaceConfig } from '../../server/src/core/build/workspace-config';
import { Doc, kindOfFile } from '../../server/src/core/parts/doc';
import { today } from './bench';

const folder = join(__dirname, '../../samples');

export interface Samples {
  readonly docs: ReadonlyMap<string, Doc>;
  readonly house: WorkspaceConfig;
  readonly builds: readonly Build[];
}

/** Reads every file of ours below samples/; names are relative to it. */
export function readSamples(): Samples {
  const docs = new Map<string, Doc>();
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort()) {
    const name = path.replaceAll('\\', '/');
    const kind = kindOfFile(name);
    if (kind) docs.set(name, new Doc(name, kind, readFileSync(join(folder, path), 'utf8')));
  }
  const house = new WorkspaceConfig(docs.get('fettle.yaml'));
  const builds = [...docs.values()]
    .filter((doc) => doc.kind === 'build')
    .map((doc) => new Build(doc, findIn(docs), house, today));
  return { docs, house, builds };
}

/** Finds parts by name, in the samples’ one parts folder; `instead` stands in for a file of the same name. */
export function findIn(docs: ReadonlyMap<string, Doc>, instead?: Doc): (name: string) => Doc | undefined {
  return (name) => {
    const path = `parts/${name}.part.yaml`;
    return instead?.name === path ? instead : docs.get(path);
  };
}
