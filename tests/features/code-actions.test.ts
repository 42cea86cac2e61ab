// Code actions: proven fixes for the version asked about, swaps, accepting, explaining, and fixing all that is certain.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  codeActionSteps,
  fixAllKind,
  type ActionOptions,
  type CodeAction,
} from '../../server/src/features/code-actions';
import { diagnosticsOf } from '../../server/src/features/diagnostics';
import { placeAt } from '../../server/src/core/build/path-places';
import { Doc } from '../../server/src/core/parts/doc';
import { Lines } from '../../server/src/core/text';
import type { Diagnostic, Position } from '../../server/src/features/shapes';
import { editedFile, view } from '../support/view';
import { codeActions } from '../support/code-actions';

const desk = 'file:///ws/desk.pcbuild.yaml';
const parts = {
  'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\n',
  'parts/boreas/low-90.part.yaml': 'kind: cooler\nheight: 90 mm\n',
  'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
};

function actions(marked: string, options: Partial<ActionOptions> = {}): { all: CodeAction[]; text: string } {
  const { view: judged, position, text, candidates } = view(marked, parts);
  return { all: codeActions(judged, { start: position, end: position }, { candidates, ...options }), text };
}

const tall = 'parts:\n  cooler: { use: boreas/¦tower-155 }\n  case: { use: tarn/mid-3 }\n';

describe('fixes', () => {
  test('a swap proven against the whole build, for the version at hand', () => {
    const { all, text } = actions(tall);
    const swap = all.find(({ title }) => title.includes('boreas/low-90'));
    expect(swap?.kind).toBe('quickfix');
    expect(swap?.edit?.documentChanges[0]?.textDocument).toEqual({ uri: desk, version: 3 });
    expect(editedFile(text, swap?.edit, desk)).toBe(text.replace('tower-155', 'low-90'));
  });

  test('a text fix keeps everything else', () => {
    const { all, text } = actions('parts:\n  cooler: { hi¦eght: 158 mm }   # as measured\n');
    const [first] = all;
    expect(first?.isPreferred).toBe(true);
    expect(editedFile(text, first?.edit, desk)).toBe(text.replace('hieght', 'height'));
  });

  test('no fix of a safety text is preferred', () => {
    const caution =
      'caution: { word: N¦OTICE, hazard: H., consequence: You could get an electric shock., avoidance: A. }';
    const { all } = actions(`steps:\n  - equalise\n  - { do: fit supply, ${caution} }\n`);
    const raise = all.find(({ title }) => title.startsWith('Write CAUTION'));
    expect(raise).toBeDefined();
    expect(raise!.isPreferred).toBeUndefined();
  });

  test('no fix that somebody is paid for is preferred', () => {
    const old =
      'firmware: { arriving: "1.¦00", versions: ["1.00", "1.10"] }, processors: [{ family: Q5, since: "1.10" }]';
    const { all } = actions(`parts:\n  board: { ${old} }\n  processor: { family: Q5 }\n`);
    const service = all.find(({ title }) => title === 'Plan the update to 1.10 by a service');
    expect(service).toBeDefined();
    expect(service?.isPreferred).toBeUndefined();
  });

  test('none is offered away from a finding, or of a kind that is not asked for', () => {
    expect(actions('bu¦ild: Desk\nparts:\n  cooler: { hieght: 158 mm }\n', { only: ['quickfix'] }).all).toEqual([]);
    expect(actions(tall, { only: ['refactor'] }).all).toEqual([]);
  });

  const three = `parts:
  processor: { socket: AM5 }
  memory: [{ slots: [A2] }]
  drives: [{ name: scratch }, { name: archive }]
acceptan¦ce:
  room-temperature: logged
`;

  test.each([
    ['with the data that the client gives back', (shown: Diagnostic): Diagnostic => shown],
    ['by the whole message where the client keeps no data', ({ data: _, ...rest }: Diagnostic): Diagnostic => rest],
  ])('each names the one diagnostic it belongs to, %s', (_, kept) => {
    const { view: judged, position, candidates } = view(three);
    const shown = diagnosticsOf(judged, { from: 'note', related: false })
      .filter(({ code }) => code === 'acceptance-missing')
      .map(kept);
    expect(new Set(shown.map(({ range }) => JSON.stringify(range))).size).toBe(1);
    const all = codeActions(judged, { start: position, end: position }, { candidates, diagnostics: shown });
    const fixes = all.filter(({ title }) => title.startsWith('Add '));
    expect(fixes.map(({ title, diagnostics }) => [title, diagnostics?.map(({ message }) => message)])).toEqual(
      ['a memory test', 'a stress test', 'a test of the drives'].map((what) => [
        `Add ${what}`,
        [`The acceptance leaves out ${what}; add it.`],
      ]),
    );
    expect(all.filter(({ title }) => title.startsWith('Accept')).map(({ diagnostics }) => diagnostics)).toEqual(
      shown.map((one) => [one]),
    );
  });
});

describe('a fix that is preferred', () => {
  const preferred = (marked: string): string[] =>
    actions(marked).all.flatMap(({ isPreferred, title }) => (isPreferred ? [title] : []));

  test.each([
    ['buys another part', tall],
    ['takes a name for another', 'parts:\n  cooler: { use: boreas/tow¦er-156 }\n'],
    [
      'lowers a promise',
      'parts:\n  drives: [{ name: a, shape: 2.5 in, capacity: 1 TB }]\nexpect: { drives: { a: { capa¦city: 2 TB } } }\n',
    ],
    ['is about what could hurt', 'bench:\n  strap: { worn: true, clipped-to: pai¦nted case }\n'],
    [
      'takes out what was weighed',
      'accept:\n  - { finding: cooler-too-tall, at: parts.cooler, because: It i¦s so., until: 2020-01-01 }\n',
    ],
  ])('never %s', (_, marked) => expect(preferred(marked)).toEqual([]));

  test('tells what it costs beside what it changes', () => {
    const priced = {
      'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\nprice: 60 EUR\n',
      'parts/boreas/low-90.part.yaml': 'kind: cooler\nheight: 90 mm\nprice: 45 EUR\n',
      'parts/tarn/mid-3.part.yaml': 'kind: case\ncooler-height: 150 mm\n',
    };
    const { view: judged, position, candidates } = view(tall, priced);
    const all = codeActions(judged, { start: position, end: position }, { candidates });
    expect(all.map(({ title }) => title)).toContain('Use boreas/low-90 as cooler; −15 EUR');
  });

  test('names no part of another purpose', () => {
    const cables = {
      'parts/tether/a-dp.part.yaml': 'kind: cable\nconnector: display\nadapter: false\n',
      'parts/tether/b-sata.part.yaml': 'kind: cable\nconnector: SATA power\nadapter: false\n',
      'parts/tether/old.part.yaml':
        'kind: cable\nconnector: SATA power\nfrom: peripheral 4-pin\nadapter: true\nmoulded: true\n',
    };
    const { view: judged, position, candidates } = view('parts:\n  cables: [{ use: tether/o¦ld }]\n', cables);
    const all = codeActions(judged, { start: position, end: position }, { candidates });
    expect(all.map(({ title }) => title)).toContain('Use tether/b-sata as cable');
    expect(all.filter(({ title }) => title.includes('a-dp'))).toEqual([]);
  });
});

describe('one change that mends two findings', () => {
  test('is offered once, for both', () => {
    const { view: judged, candidates } = view(
      'parts:\n  cooler: { use: boreas/tower-155 }\n  case: { use: tarn/mid-3 }\n',
      {
        ...parts,
        'parts/boreas/tower-155.part.yaml': 'kind: cooler\nheight: 155 mm\nsockets: [AM5]\n',
        'parts/boreas/low-90.part.yaml': 'kind: cooler\nheight: 90 mm\nsockets: [AM5]\n',
      },
    );
    const whole = judged.doc.lines.rangeOf({ start: 0, end: judged.doc.text.length });
    const all = codeActions(judged, whole, { candidates, only: ['quickfix'] });
    const edits = all.flatMap(({ edit }) => (edit ? [JSON.stringify(edit)] : []));
    expect(new Set(edits).size).toBe(edits.length);
  });
});

describe('accepting', () => {
  const accept = (marked: string): { action: CodeAction | undefined; text: string } => {
    const { all, text } = actions(marked);
    return { action: all.find(({ title }) => title.startsWith('Accept')), text };
  };

  test('adds an item whose reason is left to a person', () => {
    const { action, text } = accept(tall);
    const after = editedFile(text, action?.edit, desk);
    expect(after).toBe(
      `${text}accept:\n  - finding: cooler-too-tall\n    at: parts.cooler\n    at-most: 5 mm\n    because: ""\n`,
    );
  });

  test('puts the cursor between the quotes of the reason, where the client can', () => {
    const { all, text } = actions(tall, { selects: true });
    const accept = all.find(({ title }) => title.startsWith('Accept'))!;
    const [uri, at] = accept.command!.arguments as [string, Position];
    expect([accept.command!.command, uri]).toEqual(['fettle.writeAt', desk]);
    const after = editedFile(text, accept.edit, desk);
    const offset = new Lines(after).offsetAt(at);
    expect(after.slice(offset - 'because: "'.length, offset + 1)).toBe('because: ""');
    expect(actions(tall).all.find(({ title }) => title.startsWith('Accept'))!.command).toBeUndefined();
  });

  test('weighs one anew that got worse, without the old reason', () => {
    const old = 'accept:\n  - { finding: cooler-too-tall, at: parts.cooler, at-most: 3 mm, because: It is so. }\n';
    const { action, text } = accept(tall + old);
    const after = editedFile(text, action?.edit, desk);
    expect(after).toBe(text.replace('3 mm', '5 mm').replace('It is so.', '""'));
  });

  test('adds to a list that is there', () => {
    const { action, text } = accept(`${tall}accept:\n  - finding: other\n    at: parts.case\n    because: It is so.\n`);
    const after = editedFile(text, action?.edit, desk);
    expect(after).toMatch(/because: It is so\.\n  - .*finding: cooler-too-tall/);
  });

  test('an accepted finding is offered nothing any more', () => {
    const { all } = actions(`${tall}accept: [{ finding: cooler-too-tall, at: parts.cooler, because: It is so. }]\n`);
    expect(all.filter(({ title }) => title.includes('cooler-too-tall'))).toEqual([]);
  });
});

describe('keys to be filled in', () => {
  const bare = 'parts:\n  cooler: { use: boreas/¦bare-1 }\n  case: { use: tarn/mid-3 }\n';
  const others = { ...parts, 'parts/boreas/bare-1.part.yaml': 'kind: cooler\n' };
  const part = 'file:///ws/parts/boreas/bare-1.part.yaml';

  function filling(options: Partial<ActionOptions> = {}): {
    readonly found: CodeAction[];
    readonly hints: Diagnostic[];
  } {
    const { view: judged, position, candidates } = view(bare, others);
    const hints = diagnosticsOf(judged, { from: 'unknown', related: true }).filter(
      ({ code }) => code === 'fact-not-stated',
    );
    const all = codeActions(judged, { start: position, end: position }, { candidates, diagnostics: hints, ...options });
    return { found: all.filter(({ title }) => title.endsWith('to be filled in')), hints };
  }

  test('go into the part’s own file, each for the hint it answers', () => {
    const { found, hints } = filling();
    const [single] = found;
    const [, key] = /^Add `(\S+):` to parts\/boreas\/bare-1\.part\.yaml, to be filled in$/.exec(single!.title)!;
    expect(single?.edit?.documentChanges.map(({ textDocument }) => textDocument)).toEqual([
      { uri: part, version: null },
    ]);
    expect(editedFile('kind: cooler\n', single?.edit, part)).toMatch(new RegExp(`^kind: cooler\n${key}: {2}# \\S`));
    const hint = hints.filter(({ message }) => message.startsWith('Not stated of boreas/bare-1: '));
    expect(hint).toHaveLength(1);
    expect(single?.diagnostics).toEqual(hint);
    expect(found.every(({ isPreferred }) => !isPreferred)).toBe(true);
  });

  test('are two actions at most: the one that decides most, and all of them as one change', () => {
    const { found, hints } = filling();
    const [hint] = hints.filter(({ message }) => message.startsWith('Not stated of boreas/bare-1: '));
    const keys = hint!.data!.facts!;
    expect(keys.length).toBeGreaterThan(2);
    expect(found.map(({ title }) => title)).toEqual([
      `Add \`${keys[0]}:\` to parts/boreas/bare-1.part.yaml, to be filled in`,
      `Add all ${keys.length} missing keys to parts/boreas/bare-1.part.yaml, to be filled in`,
    ]);
    const text = editedFile('kind: cooler\n', found[1]?.edit, part);
    const { root, problems } = new Doc('bare-1.part.yaml', 'part', text).parsed;
    expect(problems).toEqual([]);
    expect(text.startsWith('kind: cooler\n')).toBe(true);
    for (const key of keys) expect(root && placeAt(root, key), `${key} in ${text}`).toBeDefined();
  });

  test('of several files go into each, as one change', () => {
    const two = 'parts:\n  cooler: { use: boreas/bare-1 }\n  case: { use: tarn/bare-2 }\n';
    const files = { ...others, 'parts/tarn/bare-2.part.yaml': 'kind: case\n' };
    const { view: judged, candidates } = view(two, files);
    const range = { start: { line: 1, character: 0 }, end: { line: 2, character: 30 } };
    const found = codeActions(judged, range, { candidates }).filter(({ title }) => title.endsWith('to be filled in'));
    expect(found).toHaveLength(2);
    expect(found[1]?.title).toMatch(/^Add \d+ missing keys to 3 files, to be filled in$/);
    expect(new Set(found[1]?.edit?.documentChanges.map(({ textDocument }) => textDocument.uri))).toEqual(
      new Set([part, 'file:///ws/parts/tarn/bare-2.part.yaml', desk]),
    );
  });

  test('are not offered where the hints are not shown, nor away from them', () => {
    expect(filling({ from: 'note' }).found).toEqual([]);
    const { view: judged, candidates } = view(bare, others);
    const away = { line: 2, character: 3 };
    expect(
      codeActions(judged, { start: away, end: away }, { candidates }).filter(({ title }) =>
        title.includes('`height:`'),
      ),
    ).toEqual([]);
  });
});

test('explaining is offered only to a client that can show the page', () => {
  expect(actions(tall).all.some(({ command }) => command)).toBe(false);
  expect(actions(tall, { explains: true }).all.find(({ command }) => command)?.command).toMatchObject({
    command: 'fettle.explain',
    arguments: ['cooler-too-tall'],
  });
});

describe('fixing all that is certain', () => {
  function fixedAll(text: string): string {
    const { all } = actions(`¦${text}`, { only: [fixAllKind] });
    expect(all.length).toBeLessThanOrEqual(1);
    return editedFile(text, all[0]?.edit, desk);
  }

  test('mends keys and units with one reading, and nothing else', () => {
    const faulty = 'parts:\n  cooler: { hieght: 158 mm, mas: 900 g }  # measured\n  case: { cooler-hieght: 165 mm }\n';
    expect(fixedAll(faulty)).toBe(
      faulty.replace('hieght: 158', 'height: 158').replace('mas:', 'mass:').replace('cooler-hieght', 'cooler-height'),
    );
  });

  test('two slips of one key are not both mended into it', () => {
    const after = fixedAll('parts:\n  cooler: { hieght: 158 mm, heigth: 150 mm }\n');
    expect(after.match(/\bheight\b/g)?.length ?? 0).toBeLessThanOrEqual(1);
  });

  test('leaves a sound text alone, and changes nothing the second time', () => {
    expect(actions('¦build: Desk\n', { only: ['source.fixAll'] }).all).toEqual([]);
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            'hieght: 158 mm',
            'height: 158mm',
            'mass: 1,2 kg',
            'mas: 900 g',
            'draw: { peek: 3 W }',
            'fans: 2',
            'zzz: 1',
          ),
          { maxLength: 5 },
        ),
        (keys) => {
          const text = `parts:\n  cooler:\n${keys.map((key) => `    ${key}\n`).join('')}`;
          const once = fixedAll(text);
          expect(fixedAll(once)).toBe(once);
        },
      ),
      { numRuns: 40 },
    );
  });

  test('is left out where nobody waits for it', () => {
    expect(
      actions('¦parts:\n  cooler: { hieght: 158 mm }\n', { automatic: true }).all.filter(
        ({ kind }) => kind === fixAllKind,
      ),
    ).toEqual([]);
  });
});

describe('over many findings', () => {
  const faults = 30;
  const lines = Array.from({ length: faults }, (_, i) => `    - { name: d${i}, cpacity: 1 TB }\n`).join('');
  const { view: judged, candidates } = view(
    `parts:\n  cooler: { height: 158 mm }\n  case: { cooler-height: 155 mm }\n  drives:\n${lines}`,
  );
  const whole = judged.doc.lines.rangeOf({ start: 0, end: judged.doc.text.length });
  const proven = (all: readonly CodeAction[]) => all.filter(({ title, edit }) => edit && !title.startsWith('Accept'));

  test('the worst come first, then those nearest to the start of the range', () => {
    const accepted = codeActions(judged, whole, { candidates, only: ['quickfix'] }).filter(({ title }) =>
      title.startsWith('Accept'),
    );
    expect(accepted[0]!.title).toContain('cooler-too-tall');
    const away = judged.doc.text.indexOf('name: d7');
    const [first] = proven(
      codeActions(judged, judged.doc.lines.rangeOf({ start: away, end: judged.doc.text.length }), {
        candidates,
        only: ['quickfix'],
      }),
    );
    expect(first!.edit!.documentChanges[0]!.edits[0]!.range.start.line).toBe(judged.doc.lines.positionAt(away).line);
  });

  test('proving ends once the time for it is spent; what costs little stays, and what is asked for by name', () => {
    const all = (left: number, only?: string[]) =>
      codeActions(judged, whole, { candidates, explains: true, ...(only ? { only } : {}), isSpent: () => left-- <= 0 });
    const kinds = (found: readonly CodeAction[]) => [
      found.filter(({ title }) => title.startsWith('Accept')).length,
      found.some(({ command }) => command !== undefined),
      found.some(({ kind }) => kind === fixAllKind),
    ];
    const counts = [0, 12, 1_000].map((left) => proven(all(left, ['quickfix'])).length);
    expect(counts[0]).toBeLessThan(counts[1]!);
    expect(counts[1]).toBeLessThan(counts[2]!);
    expect(kinds(all(0))).toEqual([20, true, false]);
    expect(kinds(all(1_000))).toEqual([20, true, true]);
    expect(all(0, [fixAllKind]).map(({ kind }) => kind)).toEqual([fixAllKind]);
  });

  test('it stands still after each finding, so that it can be given up', () => {
    const steps = codeActionSteps(judged, whole, { candidates, only: ['quickfix'] });
    let count = 0;
    while (!steps.next().done) count++;
    expect(count).toBeGreaterThanOrEqual(20);
  });
});
