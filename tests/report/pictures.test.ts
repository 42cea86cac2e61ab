// The pictures of the bench sheet against the figures that they stand for: over every sample, with facts taken away.
import { describe, expect, it } from 'vitest';
import { Build } from '../../server/src/core/build/build';
import { displayLinks } from '../../server/src/core/figures/display-links';
import { copyWith, type Figure } from '../../server/src/core/figures/figure';
import { airAtCooler, driveTemperature, heatSteps } from '../../server/src/core/figures/heat-steps';
import { processorTemperature } from '../../server/src/core/figures/heat';
import { linkRows } from '../../server/src/core/figures/link-rows';
import { wallPower } from '../../server/src/core/figures/mains';
import { partDraws, sustainedDraw } from '../../server/src/core/figures/power';
import { powerFlows, supplyLoss } from '../../server/src/core/figures/power-flows';
import { rooms, type Room } from '../../server/src/core/figures/rooms';
import { show } from '../../server/src/core/figures/sentence';
import { judgeBuild } from '../../server/src/core/judge/judge';
import { Doc } from '../../server/src/core/parts/doc';
import { pictures } from '../../server/src/report/sheet/pictures/index';
import type { Picture, PictureId } from '../../server/src/report/sheet/pictures/picture';
import { bench } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { ofClass, readXml, type Element } from '../support/xml';

const samples = readSamples();
const drawn = new Map(samples.builds.map((build) => [build, pictures(build, judgeBuild(build).findings)]));
const named = samples.builds.map((build) => [build.doc.name, build] as const);

function pictureOf(build: Build, id: PictureId): Picture {
  const found = (drawn.get(build) ?? pictures(build, [])).find((one) => one.id === id);
  if (!found) throw new Error(`${build.doc.name} has no picture of ${id}`);
  return found;
}

/** What stands for a figure; one of which nothing is known but that it is not below nothing is not known. */
const three = (one: Figure): string =>
  one.lo === 0 && one.hi === Infinity && one.dimension !== 'temperature' ? 'not known' : show(one, one.unit, 3);
const isBounded = ({ lo, hi }: Figure): boolean => Number.isFinite(lo) && Number.isFinite(hi);

/** Whether some line begins with a label and has a value behind it. */
const says = (words: readonly string[], label: string, value: string): boolean =>
  words.some((line) => line.startsWith(label) && line.slice(label.length).includes(value));

it('draws two cards of one entry together, and holds each against its own slot and cables', () => {
  const text = [
    'parts:',
    '  supply: { power: 1000 W }',
    '  graphics:',
    '    - model: G1',
    '      count: 2',
    '      connectors: { 8-pin: 1 }',
    '      power: { sustained: 200 W, peaks: [{ power: 400 W, lasts: 1 ms }] }',
    '',
  ].join('\n');
  const { words } = pictureOf(bench([{ name: 'a.pcbuild.yaml', text }]).build!, 'power');
  expect(words).toContain('2 × G1: 400 W, peak 800 W for 1 ms');
  // Source: PCI Express Card Electromechanical Specification: 10 to 75 W from a slot by its width, which is not stated
  // here; 150 W through 8-pin.
  expect(words.find((line) => line.startsWith('slot and cables of G1'))).toBe(
    'slot and cables of G1: 200 W of 160 to 225 W',
  );
});

describe.each(named)('the numbers of %s', (_, build) => {
  it('of power are those of the figures', () => {
    const { words } = pictureOf(build, 'power');
    for (const [placed, draw] of partDraws(build)) {
      const many = placed.at as { count?: { value?: number } };
      const count = many.count?.value ?? 1;
      expect(says(words, `${count > 1 ? `${count} × ` : ''}${placed.label}: `, three(draw)), placed.path).toBe(true);
    }
    expect(says(words, 'from the wall: ', three(wallPower(build)!))).toBe(true);
    expect(says(words, 'out of the supply: ', three(sustainedDraw(build)))).toBe(true);
    expect(says(words, 'heat of the supply: ', three(supplyLoss(build)!))).toBe(true);
  });

  it('of power add up', () => {
    const flows = powerFlows(build);
    const [wall, loss, all] = [wallPower(build)!, supplyLoss(build)!, sustainedDraw(build)];
    for (const end of ['lo', 'hi'] as const) {
      const sum = (figures: readonly Figure[]): number => figures.reduce((total, one) => total + one[end], 0);
      for (const { draw, parts } of flows) expect(draw[end]).toBeCloseTo(sum(parts.map((part) => part.draw)), 9);
      expect(sum(flows.map(({ draw }) => draw))).toBeCloseTo(all[end], 9);
      if (isBounded(wall)) expect(all[end] + loss[end]).toBeCloseTo(wall[end], 9);
    }
  });

  it('of lanes are those of the figures', () => {
    const { words } = pictureOf(build, 'lanes');
    for (const { placed, at, reached } of linkRows(build)) {
      const value = reached.hi <= 0 ? 'no link' : three(reached).split(' ')[0]!;
      expect(says(words, `${placed.label} in ${at ?? 'no slot named'}`, value), placed.path).toBe(true);
    }
  });

  it('of clearance are those of the figures', () => {
    const { words } = pictureOf(build, 'clearance');
    for (const { placed, need, room, gap } of rooms(build)) {
      const left = gap.hi < 0 ? `${three(copyWith(gap, { lo: -gap.hi, hi: -gap.lo }))} too much` : `${three(gap)} left`;
      expect(says(words, placed.label, three(need)), placed.path).toBe(true);
      expect(says(words, placed.label, three(room)), placed.path).toBe(true);
      if (isBounded(gap)) expect(says(words, placed.label, left), `${placed.path}: ${left}`).toBe(true);
    }
  });

  it('of heat are those of the figures, and the steps lead to the temperature of the processor', () => {
    const { words } = pictureOf(build, 'heat');
    const { processor, cooler, drives } = build.parts;
    const last = processorTemperature(build, processor!, cooler!);
    expect(says(words, processor!.label, three(last))).toBe(true);
    for (const drive of drives) expect(says(words, drive.label, three(driveTemperature(build, drive)))).toBe(true);
    const steps = heatSteps(build, processor!, cooler!);
    for (const end of ['lo', 'hi'] as const) {
      expect(steps.at(-1)!.reached[end]).toBeCloseTo(last[end], 9);
      const sum = steps.reduce((total, { rise }) => total + rise[end], airAtCooler(build, cooler!)[end]);
      expect(sum).toBeCloseTo(last[end], 9);
    }
  });

  it('of displays are those of the figures', () => {
    if (displayLinks(build).length === 0) return;
    const { words } = pictureOf(build, 'displays');
    for (const { needed, squeezed, carried, output } of displayLinks(build)) {
      const [need, through] = squeezed ? [squeezed.needed, squeezed.carried] : [needed, carried];
      const label = output ? `output ${output.name}` : '';
      if (isBounded(through)) expect(says(words, label, `carries ${three(through)}`)).toBe(true);
      if (need) expect(says(words, label, `needs ${three(need)}`)).toBe(true);
    }
  });
});

/** How high a ribbon begins: from the first point of its outline to the last. */
function startOf({ attributes }: Element): { readonly x: number; readonly height: number } {
  const [, x, top] = /^M(\S+) (\S+?)C/.exec(attributes.d!)!;
  const bottom = /(\S+)Z$/.exec(attributes.d!)![1]!;
  return { x: Number(x), height: Number(bottom) - Number(top) };
}

describe('what is drawn', () => {
  it.each(named.filter(([, build]) => isBounded(wallPower(build)!)))(
    'of power in %s flows in and out alike',
    (_, build) => {
      const svg = readXml(pictureOf(build, 'power').svg);
      // The outer ribbon of each flow: the pale one where it is a range, the solid one else.
      const ribbons = [...ofClass(svg, 'p-band'), ...ofClass(svg, 'p-flow')]
        .filter(({ name }) => name === 'path')
        .map(startOf);
      const starts = [...new Set(ribbons.map(({ x }) => x))].sort((a, b) => a - b);
      const exact = [...partDraws(build).values(), wallPower(build)!].every(({ lo, hi }) => lo === hi);
      if (!exact) return;
      const widthAt = (x: number): number =>
        ribbons.filter((one) => one.x === x).reduce((sum, one) => sum + one.height, 0);
      // What is too thin to be seen is drawn a little wider.
      expect(widthAt(starts[1]!)).toBeCloseTo(widthAt(starts[0]!), 0);
    },
  );

  const margin = ({ kind, gap, need, room }: Room): boolean =>
    kind !== 'memory height' && isBounded(need) && isBounded(room) && gap.lo > 0;

  it.each(named)('of clearance in %s is to scale', (_, build) => {
    const svg = readXml(pictureOf(build, 'clearance').svg);
    const scale = Number(svg.attributes['data-scale']);
    const lengths = ofClass(svg, 'p-margin').map(({ attributes: { x1, x2, y1, y2 } }) =>
      Math.abs(Number(x2) - Number(x1) + Number(y2) - Number(y1)),
    );
    const expected = rooms(build)
      .filter(margin)
      .map(({ gap }) => gap.lo * scale);
    const up = (a: number, b: number): number => a - b;
    expect(lengths.length).toBe(expected.length);
    lengths.sort(up).forEach((length, i) => expect(Math.abs(length - expected.sort(up)[i]!)).toBeLessThan(0.11));
  });

  it('of heat has one scale: the limits stand where their degrees are', () => {
    const build = samples.builds.find(({ doc }) => doc.name.startsWith('survey-desk'))!;
    const svg = readXml(pictureOf(build, 'heat').svg);
    const ticks = ofClass(svg, 'p-rule').map(({ attributes }) => Number(attributes.x1));
    const degrees = ofClass(svg, 'p-faint')
      .map(({ children }) => Number.parseFloat(String(children[0])))
      .filter(Number.isFinite);
    const at = (celsius: number): number =>
      ticks[0]! + ((celsius - degrees[0]!) / (degrees.at(-1)! - degrees[0]!)) * (ticks.at(-1)! - ticks[0]!);
    const limits = ofClass(svg, 'p-limit')
      .filter(({ name }) => name === 'line')
      .map(({ attributes }) => Number(attributes.x1));
    const { processor, drives } = build.parts;
    const hottest = [processor!.part.hottest, ...drives.map(({ part }) => part.hottest)].map(({ value }) => value!.lo);
    hottest.forEach((celsius, i) => expect(limits[i]).toBeCloseTo(at(celsius), 0));
  });
});

/** The build again, with one line taken out of a part file or of itself. */
function without(name: string, file: string, fact: RegExp): Build {
  const build = samples.builds.find(({ doc }) => doc.name.startsWith(name))!;
  const from = samples.docs.get(file)!;
  const text = from.text.replace(fact, '');
  expect(text).not.toBe(from.text);
  const doc = new Doc(file, from.kind, text);
  return new Build(doc.kind === 'build' ? doc : build.doc, findIn(samples.docs, doc), samples.house, build.today);
}

const dashed = (picture: Picture): number => ofClass(readXml(picture.svg), 'p-open').length;

describe('a fact that is taken away', () => {
  it.each([
    ['power', 'flood-gauge', 'parts/calder/c7-310t.part.yaml', /^power: .*$/m, 'sustained power of calder/c7-310t'],
    ['power', 'flood-gauge', 'parts/holm/s450-sfx.part.yaml', /^rating: .*$/m, 'rating of holm/s450-sfx'],
    ['lanes', 'flood-gauge', 'parts/lumen/steady-500g.part.yaml', /^link: .*$/m, 'link of system'],
    ['lanes', 'flood-gauge', 'flood-gauge.pcbuild.yaml', /slot: M2_1, /, 'slot of system'],
    ['clearance', 'flood-gauge', 'parts/boreas/low-48.part.yaml', /^height: .*$/m, 'height of boreas/low-48'],
    ['clearance', 'flood-gauge', 'parts/tarn/nook.part.yaml', /^supply-depth: .*$/m, 'room for a supply in tarn/nook'],
    ['clearance', 'survey-desk', 'parts/orrery/g70.part.yaml', /^length: .*$/m, 'length of orrery/g70'],
    ['heat', 'flood-gauge', 'parts/calder/c7-310t.part.yaml', /^die-to-lid: .*$/m, 'resistance from die to lid'],
    ['heat', 'flood-gauge', 'flood-gauge.pcbuild.yaml', /^ {2}ambient: .*$/m, 'room temperature'],
    ['displays', 'flood-gauge', 'parts/pharos/p24.part.yaml', /^ {2}HDMI: .*$/m, 'inputs of pharos/p24'],
  ] as const)('is drawn dashed and named: %s of %s without a line of %s', (id, name, file, fact, what) => {
    const build = without(name, file, fact);
    const before = pictureOf(samples.builds.find(({ doc }) => doc.name.startsWith(name))!, id);
    const after = pictureOf(build, id);
    expect(dashed(after)).toBeGreaterThan(dashed(before));
    expect(after.words.join('\n')).toMatch(/not stated: /);
    expect(after.words.join('\n')).toContain(what);
    expect(after.svg).toContain('not stated');
  });
});
