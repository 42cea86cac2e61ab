// A workspace as trees: facts taken away or put in, and a single check asked of the build that comes of it.
import { Build } from '../../../server/src/core/build/build';
import { meaningOf, type Path } from '../../../server/src/core/build/field-at';
import type { WorkspaceConfig } from '../../../server/src/core/build/workspace-config';
import type { Check } from '../../../server/src/core/checks/check';
import type { Outcome } from '../../../server/src/core/checks/kit';
import { judgeBuild } from '../../../server/src/core/judge/judge';
import { Doc } from '../../../server/src/core/parts/doc';
import type { Field } from '../../../server/src/core/parts/field';
import { today } from '../../support/bench';
import { at, pathIn, put, treeOf, written, type Tree } from './fact-trees';

/**
 * Keys that make a build or a part another one (a cooler with tubes is liquid), set it otherwise, or say
 * nothing of it.
 */
const structural = new Set([
  'use',
  'kind',
  'count',
  'name',
  'format',
  'build',
  'steps',
  'accept',
  'expect',
  'source',
  'maker',
  'model',
  'tubes',
  'mount',
  'pump-header',
  'flow',
  'tube-length',
  'power-limit',
  'applied-compound',
]);

export interface Place {
  readonly file: string;
  readonly path: Path;
}

interface File {
  readonly doc: Doc;
  readonly tree: Tree;
}

export class Workspace {
  constructor(
    private readonly files: ReadonlyMap<string, File>,
    private readonly house: WorkspaceConfig,
    readonly name: string,
  ) {}

  static of(docs: ReadonlyMap<string, Doc>, house: WorkspaceConfig, name: string): Workspace {
    const files = new Map<string, File>();
    for (const [file, { kind, parsed }] of docs) {
      if (kind === 'house') continue;
      const tree = treeOf(parsed.root);
      files.set(file, { tree, doc: new Doc(file, kind, written(tree)) });
    }
    return new Workspace(files, house, name);
  }

  /** With a value at a place; undefined takes away what is there. */
  with({ file, path }: Place, value: Tree | undefined): Workspace {
    const { doc, tree } = this.files.get(file)!;
    const changed = put(tree, path, value);
    const files = new Map(this.files);
    files.set(file, { tree: changed, doc: new Doc(file, doc.kind, written(changed)) });
    return new Workspace(files, this.house, this.name);
  }

  withAll(values: Iterable<readonly [Place, Tree]>): Workspace {
    let all: Workspace = this;
    for (const [place, value] of values) all = all.with(place, value);
    return all;
  }

  get build(): Build {
    const find = (name: string): Doc | undefined => this.files.get(`parts/${name}.part.yaml`)?.doc;
    return new Build(this.files.get(this.name)!.doc, find, this.house, today);
  }

  tree(file: string): Tree {
    return this.files.get(file)!.tree;
  }

  place(file: string, text: string): Place {
    return { file, path: pathIn(this.tree(file), text) };
  }

  at({ file, path }: Place): Tree | undefined {
    return at(this.tree(file), path);
  }

  fieldAt({ file, path }: Place): Field | undefined {
    return meaningOf(this.files.get(file)!.doc, path)?.field;
  }

  /** The facts that a file could state beside those it states: at its top and in its groups. */
  absentIn(file: string): readonly Place[] {
    const found: Place[] = [];
    const visit = (path: Path): void => {
      const meaning = meaningOf(this.files.get(file)!.doc, path);
      const tree = at(this.tree(file), path);
      if (!(tree instanceof Map)) return;
      for (const [key, field] of Object.entries((meaning?.table ?? {}) as Record<string, Field>)) {
        const below = [...path, key];
        if (!tree.has(key) && field.type !== 'group' && !structural.has(key)) found.push({ file, path: below });
      }
      for (const key of tree.keys()) visit([...path, key]);
    };
    visit([]);
    return found;
  }

  /** The answers of some checks by id and subject. */
  ask(checks: readonly Check[]): ReadonlyMap<string, Outcome> {
    const { answers } = judgeBuild(this.build, { checks, throwOn: true });
    return new Map(
      answers.flatMap(({ check, taken }) =>
        taken.map(({ outcome }) => [`${check.id} at ${outcome.subject}`, outcome] as const),
      ),
    );
  }
}
