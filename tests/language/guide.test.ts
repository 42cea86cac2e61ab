// Guides over the wire: findings in Markdown, their fixes, completion and hover, and files that are left alone.
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { TestClient } from '../support/client';
import type {
  CodeAction,
  CodeLens,
  CompletionList,
  DocumentLink,
  DocumentSymbol,
  FoldingRange,
  Hover,
  InlayHint,
  Location,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';

const guide = `---
build: ../desk.pcbuild.yaml
---
# Desk

It takes <!-- fettle: power.draw -->900 W<!-- /fettle -->.

- > ~~~pcbuild
  > build: Other
  > parts:
  >   processor: { use: calder/c7 }
  >   bord: {}
  > ~~~
`;
const files = {
  'ws/fettle.yaml': 'format: 1\n',
  'ws/desk.pcbuild.yaml': 'build: Desk\nparts:\n  processor: { use: calder/c7 }\n',
  'ws/parts/calder/c7.part.yaml': 'kind: processor\npower: { sustained: 120 W }\n',
  'ws/guides/desk.md': guide,
  'ws/README.md': '# Nothing of ours\n\n```yaml\nbuild: x\n```\n',
};
const name = 'guides/desk.md';

let client: TestClient;
beforeEach(async () => {
  client = new TestClient(files);
  await client.start({
    textDocument: {
      codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix'] } } },
      documentSymbol: { hierarchicalDocumentSymbolSupport: true },
      rename: { prepareSupport: true },
    },
    workspace: { workspaceEdit: { documentChanges: true, resourceOperations: ['rename'] } },
  });
});
afterEach(() => client.dispose());

const ask = <R>(method: string, more: object, of = name): Promise<R> =>
  client.connection.sendRequest<R>(method, { textDocument: { uri: client.uri(of) }, ...more });
const codes = async (of = name): Promise<string[]> =>
  (await client.findings(of)).filter(({ severity }) => severity !== 4).map(({ code }) => String(code));

describe('a guide', () => {
  test('shows what is stale and what its blocks hold, at their places', async () => {
    await client.open(name, guide, 'markdown');
    const found = await client.findings(name);
    const at = (code: string): unknown => found.find((one) => one.code === code)?.range.start;
    expect(at('guide-value-stale')).toEqual(client.at(name, '900 W'));
    expect(at('unknown-key')).toEqual(client.at(name, 'bord'));
  });

  test('follows its build and its parts, unsaved', async () => {
    await client.open(name, guide, 'markdown');
    expect(await codes()).toContain('guide-value-stale');
    await client.open('parts/calder/c7.part.yaml');
    await client.type('parts/calder/c7.part.yaml', '120 W', '900 W');
    expect(await codes()).not.toContain('guide-value-stale');
    await client.open('desk.pcbuild.yaml');
    await client.type('desk.pcbuild.yaml', '{ use: calder/c7 }', '{ use: calder/c7, power-limit: 95 W }');
    expect(await codes()).toContain('guide-value-stale');
  });

  test('is mended in its value alone, and in a block within its fence', async () => {
    await client.open(name, guide, 'markdown');
    const fixed = async (text: string, title: string): Promise<string> => {
      const start = client.at(name, text);
      const found = await ask<CodeAction[]>('textDocument/codeAction', {
        range: { start, end: start },
        context: { diagnostics: [] },
      });
      return client.applied(name, found.find((one) => one.title.startsWith(title))!.edit!);
    };
    expect(await fixed('900 W', 'Write 120 W')).toBe(guide.replace('900 W', '120 W'));
    expect(await fixed('bord', 'Write `board`')).toBe(guide.replace('bord', 'board'));
  });

  test('completes names in a mark, and keys and parts in a block', async () => {
    const begun = guide
      .replace('It takes', 'It takes <!-- fettle: power and')
      .replace('  >   bord: {}', '  >   processor: { use:  }');
    await client.open(name, begun, 'markdown');
    const labels = async (text: string, into: number): Promise<string[]> =>
      (await ask<CompletionList>('textDocument/completion', { position: client.at(name, text, into) })).items.map(
        ({ label }) => label,
      );
    expect(await labels('fettle: power and', 13)).toEqual(expect.arrayContaining(['power.draw', 'step fit processor']));
    expect(await labels('use:  }', 5)).toContain('calder/c7');
    expect(await labels('# Desk', 3)).toEqual([]);
  });

  test('says what a mark means, and what stands in a block', async () => {
    await client.open(name, guide, 'markdown');
    const said = async (text: string): Promise<string> =>
      JSON.stringify(await ask<Hover | null>('textDocument/hover', { position: client.at(name, text, 1) }));
    expect(await said('power.draw')).toContain('120 W');
    expect(await said('use: calder/c7 }')).toContain('use');
    expect(await said('# Desk')).toBe('null');
  });

  test('leads to its build, and from a block to a part', async () => {
    await client.open(name, guide, 'markdown');
    const to = async (text: string): Promise<unknown> =>
      (await ask<Location | null>('textDocument/definition', { position: client.at(name, text, 2) }))?.uri;
    expect(await to('../desk')).toBe(client.uri('desk.pcbuild.yaml'));
    expect(await to('calder/c7')).toBe(client.uri('parts/calder/c7.part.yaml'));
  });
});

describe('a fenced block', () => {
  test('has its own outline, hints, lens, folds and links, at its places', async () => {
    await client.open(name, guide, 'markdown');
    const range = { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } };
    const [block] = await ask<DocumentSymbol[]>('textDocument/documentSymbol', {});
    expect(block).toMatchObject({ name: 'Other', detail: 'build', range: { start: client.at(name, 'build: Other') } });
    expect(block!.children!.map((one) => one.name)).toEqual(['build', 'parts']);
    const [hint] = await ask<InlayHint[]>('textDocument/inlayHint', { range });
    expect(hint).toMatchObject({ label: '120 W', position: client.at(name, ' }\n  >   bord') });
    const [lens, none] = await ask<CodeLens[]>('textDocument/codeLens', {});
    expect([lens!.range.start, none]).toEqual([client.at(name, 'build: Other'), undefined]);
    const { command } = await client.connection.sendRequest<CodeLens>('codeLens/resolve', lens);
    expect(command!.title).toMatch(/^worst: stop/);
    expect(await ask<FoldingRange[]>('textDocument/foldingRange', {})).toEqual([{ startLine: 9, endLine: 11 }]);
    const links = await ask<DocumentLink[]>('textDocument/documentLink', {});
    expect(links.map(({ target, range: { start } }) => [target, start.line])).toEqual([
      [client.uri('desk.pcbuild.yaml'), 1],
      [client.uri('parts/calder/c7.part.yaml'), 10],
    ]);
  });
});

describe('files moved by the editor', () => {
  const moved = async (...moves: [string, string][]): Promise<WorkspaceEdit | null> =>
    client.connection.sendRequest('workspace/willRenameFiles', {
      files: moves.map(([from, to]) => ({ oldUri: client.uri(from), newUri: client.uri(to) })),
    });
  const named = async (...moves: [string, string][]): Promise<string | undefined> => {
    const edit = await moved(...moves);
    return edit ? /build: (.*)/.exec(client.applied(name, edit))![1] : undefined;
  };

  test('keep a guide at its build, whichever of them moves', async () => {
    await client.open(name, guide, 'markdown');
    expect(await named(['desk.pcbuild.yaml', 'builds/desk 2.pcbuild.yaml'])).toBe('../builds/desk 2.pcbuild.yaml');
    expect(await named(['guides/desk.md', 'desk.md'])).toBe('desk.pcbuild.yaml');
    expect(await named(['guides', 'texts/bench'])).toBe('../../desk.pcbuild.yaml');
    expect(await named(['guides', 'texts'])).toBeUndefined();
    expect(await named(['desk.pcbuild.yaml', 'guides/desk.pcbuild.yaml'], ['guides/desk.md', 'desk.md'])).toBe(
      'guides/desk.pcbuild.yaml',
    );
  });

  test('bring nothing where the build is none any more or leaves the workspace', async () => {
    await client.open(name, guide, 'markdown');
    expect(await moved(['desk.pcbuild.yaml', 'desk.txt'])).toBeNull();
    const files = [{ oldUri: client.uri('desk.pcbuild.yaml'), newUri: 'file:///apart/desk.pcbuild.yaml' }];
    expect(await client.connection.sendRequest('workspace/willRenameFiles', { files })).toBeNull();
    expect(await moved(['README.md', 'guides/README.md'])).toBeNull();
  });
});

describe('a Markdown text that nothing ties to a build', () => {
  test('is left alone', async () => {
    await client.open('README.md', undefined, 'markdown');
    expect(await client.findings('README.md')).toEqual([]);
    expect(client.published).toEqual([]);
    const position = { line: 0, character: 1 };
    for (const method of ['hover', 'completion', 'definition', 'formatting', 'foldingRange', 'documentSymbol'])
      expect(await ask(`textDocument/${method}`, { position, options: { tabSize: 2 } }, 'README.md')).toBeNull();
  });

  test('shows nothing any more once its ties are gone', async () => {
    await client.open(name, guide, 'markdown');
    expect(await codes()).not.toEqual([]);
    await client.put(name, 0, 'Plain words.', guide.length);
    expect(await codes()).toEqual([]);
  });
});

describe('a rename', () => {
  const renamed = async (of: string, text: string, newName: string, into = 1): Promise<(name: string) => string> => {
    const edit = await ask<WorkspaceEdit>('textDocument/rename', { position: client.at(of, text, into), newName }, of);
    return (name) => client.applied(name, edit);
  };

  test('of a part goes through the blocks of guides, whichever file it begins in', async () => {
    await client.open(name, guide, 'markdown');
    await client.open('desk.pcbuild.yaml');
    for (const of of [name, 'desk.pcbuild.yaml']) {
      const edited = await renamed(of, 'calder/c7 }', 'calder/c8');
      expect(edited(name)).toBe(guide.replace('calder/c7', 'calder/c8'));
      expect(edited('desk.pcbuild.yaml')).toContain('calder/c8');
    }
  });

  test('of a drive goes through the marks of guides', async () => {
    const build = 'build: Desk\nparts:\n  drives:\n    - { name: scratch, capacity: 2 TB }\n';
    const text =
      '---\nbuild: desk.pcbuild.yaml\n---\n<!-- fettle: drives.scratch.capacity -->2 TB<!-- /fettle --> scratch\n\n' +
      '1. <!-- fettle: step fit M.2 drive scratch -->Put it in.\n';
    client.files.set('ws/desk.pcbuild.yaml', build);
    client.files.set('ws/drives.md', text);
    await client.open('desk.pcbuild.yaml');
    await client.open('drives.md', text, 'markdown');
    const edited = await renamed('desk.pcbuild.yaml', 'scratch', 'store');
    expect(edited('drives.md')).toBe(
      text.replace('drives.scratch', 'drives.store').replace('drive scratch', 'drive store'),
    );
  });

  test('of a step in words of one’s own goes through the marks of guides, and may begin in one', async () => {
    const build = 'build: Desk\nparts:\n  drives:\n    - { name: scratch, capacity: 2 TB }\nsteps: [label the case]\n';
    const text =
      '---\nbuild: desk.pcbuild.yaml\n---\n1. <!-- fettle: step label the case -->Put it on.\n' +
      '2. <!-- fettle: step fit drive scratch -->Put it in.\n';
    client.files.set('ws/desk.pcbuild.yaml', build);
    client.files.set('ws/steps.md', text);
    await client.open('steps.md', text, 'markdown');
    expect(await codes('steps.md')).not.toContain('guide-step-unknown');
    for (const [of, from, to] of [
      ['steps.md', 'label the case', 'mark the case'],
      ['desk.pcbuild.yaml', 'label the case', 'mark the case'],
      ['steps.md', 'scratch', 'store'],
    ] as const) {
      await client.open(of);
      const edited = await renamed(of, from, to);
      expect(edited('steps.md')).toBe(text.replace(from, to));
      expect(edited('desk.pcbuild.yaml')).toBe(build.replace(from, to));
      const uses = await ask<Location[]>(
        'textDocument/references',
        { position: client.at(of, from, 1), context: { includeDeclaration: true } },
        of,
      );
      expect(uses.map(({ uri }) => uri).sort()).toEqual([client.uri('desk.pcbuild.yaml'), client.uri('steps.md')]);
    }
    const position = client.at('steps.md', 'scratch', 2);
    expect(await ask('textDocument/prepareRename', { position }, 'steps.md')).toMatchObject({
      placeholder: 'scratch',
      range: { start: client.at('steps.md', 'scratch') },
    });
    expect(await ask<Location>('textDocument/definition', { position }, 'steps.md')).toMatchObject({
      uri: client.uri('desk.pcbuild.yaml'),
      range: { start: client.at('desk.pcbuild.yaml', 'scratch') },
    });
  });
});
