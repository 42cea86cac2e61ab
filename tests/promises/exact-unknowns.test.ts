// What an open answer names is what decides it: put in at the ends of what they may be, the named facts decide it, some
// one way and some the other, each of them matters, and no fact that it does not name decides it.
// FETTLE_EXACT=all asks after every fact of every build; else a share of them is drawn, always the same.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { judgeBuild } from '../../server/src/core/judge/judge';
import type { Doc } from '../../server/src/core/parts/doc';
import { bench } from '../support/bench';
import { findIn, readSamples } from '../support/samples';
import { follows, isExcused } from './support/excused-unknowns';
import { Chance, seenIn } from './support/fact-values';
import { Workspace } from './support/fact-workspace';
import { factPaths } from './support/taken-away';
import { casesOf, known, slotsOf, strangersOf, tried, type Case } from './support/unknown-cases';

const all = process.env.FETTLE_EXACT === 'all';
/** One in so many facts is taken away, and one in so many open answers tried. */
const share = all ? { facts: 1, cases: 1, tries: 120 } : { facts: 18, cases: 5, tries: 60 };

const sheets = readdirSync(join(__dirname, '../sheets'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, text: readFileSync(join(__dirname, '../sheets', name), 'utf8') }));
const worlds = [readSamples(), bench(sheets)];
const seen = seenIn(worlds.flatMap(({ docs }) => [...docs.values()]));
const builds = worlds.flatMap(({ docs, house }) =>
  [...docs.values()].filter(({ kind }) => kind === 'build').map((doc) => ({ doc, docs, house })),
);

/** Chance that depends on a text alone, so that what is drawn elsewhere moves nothing here. */
const chanceOf = (text: string): Chance =>
  new Chance([...text].reduce((sum, c) => (Math.imul(sum, 31) + c.charCodeAt(0)) | 0, 7));
const isDrawn = (text: string, oneIn: number): boolean => chanceOf(text).below(oneIn) === 0;

/** The open answers of a build, as it is and with one fact or a pair of facts taken away. */
function casesIn(workspace: Workspace, docs: ReadonlyMap<string, Doc>): Case[] {
  const files = [workspace.name, ...[...workspace.build.dependsOn].map((name) => `parts/${name}.part.yaml`)];
  const places = files.flatMap((file) => [...factPaths(docs.get(file)!)].map((path) => ({ file, path })));
  const drawn = places.filter(({ file, path }) => isDrawn(`${workspace.name} ${file} ${path.join('.')}`, share.facts));
  const cases = new Map(casesOf(workspace, 'nothing').map((one) => [known(one), one]));
  for (const [i, place] of drawn.entries()) {
    const other = i % 8 === 0 ? drawn[(i * 7 + 3) % drawn.length]! : place;
    const without = new Set([place, other]);
    const words = [...without].map(({ file, path }) => `${file}:${path.join('.')}`).join(' and ');
    // What stands later in a list goes first, so that the places of the others stay.
    const left = [...without].sort((a, b) => (a.path.join('.') < b.path.join('.') ? 1 : -1));
    for (const one of casesOf(
      left.reduce((rest, gone) => rest.with(gone, undefined), workspace),
      words,
    ))
      if (!cases.has(known(one))) cases.set(known(one), one);
  }
  return [...cases.values()].filter((one) => isDrawn(known(one), share.cases));
}

/** What is wrong with the facts that an open answer names; nothing for what is excused, with its reason. */
function wrongWith(one: Case): string[] {
  const chance = chanceOf(known(one));
  const slots = slotsOf(one, seen, chance);
  const names = one.missing.map(({ doc, path }) => `${doc.name}:${path}`);
  const may = (from: Parameters<typeof isExcused>[1]): boolean => isExcused(one.check.id, from);
  const said = (fault: string): string =>
    `${one.workspace.name}, without ${one.without}: ${one.key} [${names.join(', ')}] ${fault}`;
  if (slots.length === 0) return may('range') ? [] : [said('names nothing')];
  const { verdicts, needed, more } = tried(one, slots, chance, share.tries);
  const idle = names.filter((_, i) => !needed.has(i));
  const asks = [...more].filter(
    (paths) => paths !== 'a range' && !paths.split(', ').every((path) => follows(one, path)),
  );
  const isOneWay = !verdicts.has('broken') || !(verdicts.has('holds') || verdicts.has('gone'));
  const others = may('other') ? [] : strangersOf(one, seen, chance, all ? 40 : 6);
  return [
    ...(isOneWay && !may('one way') ? [said(`turns out ${[...verdicts].join(' or ')}, whatever stands there`)] : []),
    ...(idle.length > 0 && !may('idle') && !(isOneWay && may('one way'))
      ? [said(`does not turn on ${idle.join(', ')}`)]
      : []),
    ...(asks.length > 0 && !may('more') ? [said(`then asks for ${asks.join(' or ')}`)] : []),
    ...others.map((path) => said(`is decided by ${path}`)),
  ];
}

describe('an answer that is left open', () => {
  for (const { doc, docs, house } of builds) {
    it(`in ${doc.name} names the facts that decide it, and no others`, () => {
      const workspace = Workspace.of(docs, house, doc.name);
      expect(casesIn(workspace, docs).flatMap(wrongWith)).toEqual([]);
    }, 600_000);
  }

  it.each(builds)('is the same of trees as of texts: $doc.name', ({ doc, docs, house }) => {
    const workspace = Workspace.of(docs, house, doc.name);
    const lines = (build: typeof workspace.build): string[] =>
      judgeBuild(build, { throwOn: true }).findings.map(
        ({ id, subject, grade, said: { text } }) => `${grade} ${id} ${subject} ${text}`,
      );
    const asWritten = new (workspace.build.constructor as typeof import('../../server/src/core/build/build').Build)(
      doc,
      findIn(docs),
      house,
      workspace.build.today,
    );
    expect(lines(workspace.build).sort()).toEqual(lines(asWritten).sort());
  });
});
