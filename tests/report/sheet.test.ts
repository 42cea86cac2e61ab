// The bench sheet as data: what stands on it, in which order, and what changes with what.
import { describe, expect, it } from 'vitest';
import { cautionWords } from '../../server/src/core/checks/page';
import { workOrder } from '../../server/src/core/figures/work-order';
import { weaker } from '../../server/src/core/trade/caution-words';
import { FIRMWARE_ROUTES, UPDATE_ROUTES } from '../../server/src/core/trade/firmware-route';
import { FIRST_PICTURE, NO_START } from '../../server/src/core/trade/first-start';
import { STEP_KINDS } from '../../server/src/core/trade/steps';
import { sheetPage } from '../../server/src/report/sheet/html';
import { sheetMarkdown } from '../../server/src/report/sheet/markdown';
import type { Body, Sheet } from '../../server/src/report/sheet/model';
import { readSamples } from '../support/samples';
import { sheetFor, sheetOfText, stepsOf, withText } from '../support/sheets';

const { builds } = readSamples();
const named = (name: string) => builds.find(({ doc }) => doc.name === `${name}.pcbuild.yaml`)!;
const block = (sheet: Sheet, id: string) => sheet.blocks.find((one) => one.id === id)!;
const table = (bodies: readonly Body[]) =>
  bodies.find((body) => body.type === 'table') as Extract<Body, { type: 'table' }>;
const wordsIn = (sentence: string): number => sentence.trim().split(/\s+/).length;

describe.each(builds.map((build) => [build.doc.name, build] as const))('the sheet of %s', (_, build) => {
  const sheet = sheetFor(build);

  it('has its parts in the order of the work', () => {
    const ids = sheet.blocks.map(({ id }) => id);
    const wanted = [
      'promises',
      'findings',
      'at-hand',
      'firmware',
      'work',
      'first-start',
      'tests',
      'hand-over',
      'unchecked',
    ];
    expect(ids.filter((id) => wanted.includes(id))).toEqual(wanted);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('holds every step that the parts give, counted through', () => {
    const steps = stepsOf(sheet);
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    const titles = steps.map(({ title }) => title.toLowerCase());
    for (const kind of STEP_KINDS) {
      const wanted = workOrder(build).filter(({ step }) => step === kind).length;
      expect(titles.filter((title) => title === kind.toLowerCase()).length, kind).toBeGreaterThanOrEqual(wanted);
    }
  });

  it('says every caution of the parts in full before or at its step, in no weaker word', () => {
    const steps = stepsOf(sheet);
    for (const { step, cautions } of workOrder(build)) {
      const at = steps.findIndex(({ title }) => title.toLowerCase() === step.toLowerCase());
      for (const id of cautions) {
        const { word } = cautionWords(id)!;
        const before = steps.slice(0, at + 1).flatMap((one) => one.cautions);
        const full = before.some((one) => one.sentences.length >= 3 && !weaker(one.word, word as 'NOTICE'));
        expect(full, `${id} before ${step}`).toBe(true);
      }
    }
  });

  it('numbers its findings from the worst, each in full at the end with its working', () => {
    const short = block(sheet, 'findings').bodies.flatMap((body) => (body.type === 'table' ? body.rows : []));
    const full = sheet.blocks.flatMap(({ bodies }) =>
      bodies.flatMap((body) => (body.type === 'finding' ? [body.finding] : [])),
    );
    expect(full.map(({ number }) => number)).toEqual(full.map((_, i) => i + 1));
    expect(short.map(({ cells }) => (cells[2] as { text: string }).text)).toEqual(
      full.slice(0, short.length).map(({ text }) => text),
    );
    expect(full.filter(({ working }) => working.length > 0).length).toBeGreaterThan(full.length / 2);
  });

  it('is the same for the same text, and does not move with the lines above', () => {
    expect(sheetFor(withText(build, build.doc.text))).toEqual(sheet);
    expect(sheetFor(withText(build, `# one more line\n\n${build.doc.text}`))).toEqual(sheet);
  });
});

describe('instructions', () => {
  const routes = UPDATE_ROUTES.flatMap((route) => [...FIRMWARE_ROUTES[route].before, ...FIRMWARE_ROUTES[route].update]);

  it('are sentences of at most 20 words, one at a time', () => {
    const sentences = [...routes.map(({ text }) => text), ...NO_START, ...FIRST_PICTURE.split(/(?<=\.) /)];
    for (const sentence of sentences) {
      expect(wordsIn(sentence), sentence).toBeLessThanOrEqual(20);
      expect(sentence.match(/[.!?](?:\s|$)/g), sentence).toHaveLength(1);
      expect(sentence, 'two instructions').not.toMatch(/,? and (?:start|pull|put|press|equalise|open|choose|copy)\b/);
    }
  });

  it('keep their length on the sheet, whatever the build says beside them', () => {
    for (const build of builds)
      for (const { title, cautions } of stepsOf(sheetFor(build), 'firmware')) {
        expect(wordsIn(title)).toBeLessThanOrEqual(20);
        for (const sentence of cautions.flatMap((one) => one.sentences))
          expect(wordsIn(sentence)).toBeLessThanOrEqual(20);
      }
  });
});

describe('what to have at hand', () => {
  it('counts every M.2 drive of an entry against the screws in the board’s box', () => {
    const screwsFor = (count: number) =>
      block(
        sheetOfText(
          [
            'parts:',
            '  board: { in-the-box: [M.2 screw x2] }',
            `  drives: [{ shape: M.2, count: ${count} }, { shape: M.2 }, { shape: 2.5 in }]`,
          ].join('\n'),
        ),
        'at-hand',
      )
        .bodies.flatMap((body) => (body.type === 'table' ? body.rows : []))
        .map(({ cells }) => cells.map((cell) => (cell === 'write' ? '' : cell.text)))
        .find(([what]) => what === 'M.2 screws');
    expect(screwsFor(1)).toEqual(['M.2 screws', 'at most 2', '2', 'Enough']);
    expect(screwsFor(2)).toEqual(['M.2 screws', 'at most 3', '2', 'See the slots’ own fixing']);
  });
});

describe('the firmware route', () => {
  const parts = { 'a/b': 'kind: board\nfirmware: { versions: ["1", "2"], update-port: FLASH, update-file: B.CAP }\n' };
  const route = (by: string) =>
    sheetOfText(
      `parts:\n  board: { use: a/b, firmware: "1" }\nbench: { firmware-update: { to: "2", by: ${by} } }\n`,
      parts,
    );

  it.each(UPDATE_ROUTES)('warns by %s before the board is written, never after', (by) => {
    const steps = stepsOf(route(by), 'firmware');
    const writing = FIRMWARE_ROUTES[by].update.filter(({ writes }) => writes);
    expect(steps.filter(({ cautions }) => cautions.length > 0).map(({ title }) => title)).toEqual(
      writing.map(({ text }) => text),
    );
    const [caution] = steps.flatMap((step) => step.cautions);
    if (writing.length > 0) {
      const words = cautionWords('update-interrupted')!.sentences;
      expect(caution?.sentences.join(' ')).toBe(words.join(' '));
    }
  });

  it('takes from the board’s file what the build leaves out, and leaves a blank for what nobody states', () => {
    const steps = stepsOf(route('stick without processor'), 'firmware');
    const of = (start: string) => steps.find(({ title }) => title.startsWith(start))!;
    expect(of('Put the stick').things).toMatchObject([{ text: 'Port: FLASH', place: 'a/b::firmware.update-port' }]);
    expect(of('Give the file').things).toMatchObject([{ text: 'File name: B.CAP' }]);
    expect(of('Format the stick').write).toBe('filesystem');
  });

  it('tells what starts as it arrives from what needs an update that nobody planned, and from what nobody knows', () => {
    const said = (name: string) => JSON.stringify(block(sheetFor(named(name)), 'firmware').bodies);
    expect(said('flood-gauge')).toContain('No update is needed');
    expect(said('survey-desk')).toContain('Plan an update first.');
    expect(
      JSON.stringify(block(sheetOfText('parts: { board: { use: a/b }, processor: {} }\n', parts), 'firmware')),
    ).toContain('is not known');
  });
});

describe('the order of work', () => {
  it('is the build’s own where that is whole and sound', () => {
    const sheet = sheetFor(named('flood-gauge'));
    expect(block(sheet, 'work').bodies).toMatchObject([
      { lines: [{ text: expect.stringContaining('own order') }, {}] },
    ]);
    const at = stepsOf(sheet).find(({ title }) => title === 'Fit cooler')!;
    expect(at).toMatchObject({ place: 'steps.12', notes: ['Each screw a turn at a time, crosswise.'] });
    expect(at.reasons.join(' ')).toContain('After apply paste: nothing can be spread once the cooler sits.');
  });

  it('prints the build’s caution once, with what ours says beyond it and whose word counts', () => {
    const [caution, ...more] = stepsOf(sheetFor(named('flood-gauge'))).find(
      ({ title }) => title === 'Fit supply',
    )!.cautions;
    expect(more).toEqual([]);
    expect(caution!.word).toBe('DANGER');
    expect(caution!.sentences).toContain(
      'Unplug its cable before the case is opened, and replace a faulty supply whole.',
    );
    expect(caution!.sentences.at(-1)).toBe('Defer to the supply maker and a qualified repairer.');
  });

  it('loses no step that the build alone lists, nor a caution that stands by itself', () => {
    const sheet = sheetOfText(
      [
        'parts: { board: {}, processor: {}, supply: { rating: 450 W }, case: {} }',
        'steps:',
        '  - fit processor',
        '  - Photograph the socket for the file',
        '  - caution: { word: WARNING, hazard: Hot glue., consequence: It burns., avoidance: Wait., for: close case }',
        '  - close case',
        '',
      ].join('\n'),
    );
    const titles = stepsOf(sheet).map(({ title }) => title);
    expect(titles.indexOf('Photograph the socket for the file')).toBe(titles.indexOf('Fit processor') + 1);
    expect(
      stepsOf(sheet)
        .find(({ title }) => title === 'Close case')!
        .cautions.map(({ sentences }) => sentences[0]),
    ).toContain('Hot glue.');
  });

  it('warns before what the build alone lists, as before any work of its kind', () => {
    const cell = stepsOf(sheetFor(named('sonar-lab'))).find(({ title }) => title === 'Change coin cell')!;
    expect(cell.cautions.map(({ word }) => word)).toEqual(['WARNING']);
    expect(cell.notes).toContain('Listed by the build; its parts do not ask for it.');
  });

  it('prints no words of the build that would do harm', () => {
    const sheet = sheetFor(named('sonar-lab'));
    const { notes } = stepsOf(sheet).find(({ title }) => title === 'Fit processor')!;
    expect(notes).toEqual(['The build’s own words for it would do harm, and are left out: see finding 7.']);
    expect(JSON.stringify(stepsOf(sheet))).not.toContain('both thumbs');
  });

  it('never prints a weaker word in place of ours', () => {
    const sheet = sheetOfText(
      [
        'parts: { board: {}, supply: { rating: 450 W }, case: {} }',
        'steps:',
        '  - do: fit supply',
        '    caution:',
        '      word: NOTICE',
        '      hazard: Inside a power supply parts stay at up to 400 V after it is unplugged.',
        '      consequence: It could ruin something.',
        '      avoidance: Never open a supply.',
        '',
      ].join('\n'),
    );
    const words = stepsOf(sheet)
      .find(({ title }) => title === 'Fit supply')!
      .cautions.map(({ word }) => word);
    expect(words).toContain('DANGER');
  });
});

describe('tests and promises', () => {
  it('gives each promise what comes out and a verdict', () => {
    const rows = table(block(sheetFor(named('survey-desk')), 'promises').bodies).rows;
    const of = (label: string) => rows.find(({ cells }) => cells[0].text === label)!.cells.slice(1);
    expect(of('Most power from the wall under full load')).toMatchObject([
      { text: '450 W' },
      { text: '481.1 W' },
      { text: 'Falls short', findings: [12] },
    ]);
    expect(of('Bandwidth over all channels')).toMatchObject([
      { text: '80 GB/s' },
      { text: '96 GB/s' },
      { text: 'Holds' },
    ]);
  });

  it('never says that something holds which is undecided', () => {
    const rows = table(block(sheetFor(named('gallery-wall')), 'promises').bodies).rows;
    const speed = rows.find(({ place }) => place === 'expect.memory.speed')!;
    expect(speed.cells[3]).toMatchObject({ text: 'Not decided' });
  });

  it('has a limit and a blank for every test', () => {
    for (const build of builds) {
      const tests = block(sheetFor(build), 'tests').bodies.find((body) => body.type === 'table');
      for (const { cells } of tests?.type === 'table' ? tests.rows : []) {
        expect((cells[1] as { text: string }).text).not.toBe('');
        expect(cells[3]).toBe('write');
      }
    }
  });

  it('changes nothing but the head when the purpose changes', () => {
    const build = named('flood-gauge');
    const before = sheetFor(build);
    const after = sheetFor(withText(build, build.doc.text.replace('Log the tide gauges', 'Log the tides')));
    expect(after.blocks).toEqual(before.blocks);
    expect(after.purpose).not.toBe(before.purpose);
  });
});

describe('what a person must look at', () => {
  it('names every fact that an answer waits for, with a blank', () => {
    for (const build of builds) {
      const sheet = sheetFor(build);
      const items = block(sheet, 'unchecked').bodies.flatMap((body) => (body.type === 'ticks' ? body.items : []));
      if (sheet.verdict.includes(' 0 answers wait')) expect(items.filter(({ write }) => write)).toEqual([]);
      else expect(items.filter(({ write, detail }) => write || detail).length).toBeGreaterThan(0);
    }
  });

  it('leaves out what another check looks at', () => {
    const said = JSON.stringify(block(sheetFor(named('survey-desk')), 'unchecked'));
    expect(said).toContain('What the cable between them is certified for is not seen.');
    expect(said).not.toMatch(/judged by “[a-z]+-/);
  });
});

describe('any text', () => {
  it.each([
    '',
    'parts:',
    'parts: []',
    'steps: x',
    '- a',
    '[[[',
    'build: { a: b }\npurpose: [x]\n',
    'expect: { drives: [1], displays: { a: b }, memory: 3 }\n',
    'acceptance: 3\nhand-over: []\nbench: { firmware-update: yes }\nparts: { board: {} }\n',
    'parts: { board: {}, board: {}, memory: {}, drives: { slot: [x] } }\n',
    'steps:\n  - {}\n  - caution: {}\n  - do: hand over\n  - 3\n  - [a]\nparts: { board: {} }\n',
  ])('gives a sheet: %j', (text) => {
    const sheet = sheetOfText(text);
    expect(sheet.title).toBe('a.pcbuild.yaml');
    expect(sheetPage(sheet, { paper: 'letter' })).toContain('</html>');
    expect(sheetMarkdown(sheet)).toContain('## Order of work');
  });

  it('prints no more than a bounded number of findings, and counts the rest', () => {
    const names = Array.from({ length: 150 }, (_, i) => `d${i}`);
    const drives = names.map(
      (name) => `    - { name: ${name}, bus: SATA, port: SATA_1, bay: 3.5 in, capacity: 1 TB }\n`,
    );
    const promises = names.map((name) => `    ${name}: { read: 9 GB/s, capacity: 2 TB }\n`);
    const sheet = sheetOfText(
      `parts:\n  board: {}\n  drives:\n${drives.join('')}expect:\n  drives:\n${promises.join('')}`,
    );
    expect(sheet.blocks.filter(({ id }) => id.startsWith('finding:'))).toHaveLength(100);
    expect(JSON.stringify(block(sheet, 'working').bodies)).toMatch(/\d+ more, listed by fettle check\./);
    expect(table(block(sheet, 'findings').bodies).rows).toHaveLength(200);
  });
});
