// `fettle swap`: the parts of the folder in one place of a build, ranked by what the whole build would then be.
import { languageOf } from '../core/words/names';
import type { Command } from 'commander';
import type { Build, Placed } from '../core/build/build';
import { bestSwaps } from '../core/judge/swaps';
import { toJson } from '../report/json';
import { swapReport, swapText } from '../report/swap';
import { PartIndex } from '../session/part-index';
import { openBuild, reportTroubles } from './one-build';
import { onDay, readCount, textOrJson } from './options';
import { refusal, type Status, type World } from './world';

interface Options {
  readonly format: 'text' | 'json';
  readonly on?: string;
  readonly most: number;
}

export function addSwap(program: Command, world: World, end: (status: Status) => void): void {
  program
    .command('swap')
    .summary('rank the parts that could stand in one place of a build')
    .description(
      'Puts every part of the parts folders that is of the right kind into one place of the build, one ' +
        'after the other, and ranks them by what the whole build would then be.',
    )
    .argument('<build>', 'a file whose name ends in .pcbuild.yaml')
    .argument('<place>', 'the place, as findings name it: cooler, drives.scratch, fans[0]')
    .addOption(textOrJson())
    .option('--most <count>', 'how many to list', readCount, 20)
    .addOption(onDay())
    .action(async (path: string, place: string, options: Options) => end(await swap(path, place, options, world)));
}

async function swap(path: string, place: string, options: Options, world: World): Promise<Status> {
  const opened = await openBuild(path, world, options.on);
  const placed = placeOf(opened.build, place);
  const index = new PartIndex(opened.loader.texts, { tell: (trouble) => void opened.troubles.push(trouble) });
  const candidates = await index.ofKind(opened.loaded, placed.kind);
  const others = candidates.filter((candidate) => candidate.name !== placed.used?.name);
  const ranked = bestSwaps(opened.build, opened.judgement, placed, others, options.most);
  const report = {
    build: opened.build,
    section: opened.section,
    placed,
    ranked,
    others: others.length,
    shown: opened.shown,
    language: languageOf(world.language(), opened.build),
  };
  world.out(options.format === 'json' ? `${toJson(swapReport(report))}\n` : swapText(report));
  return reportTroubles(opened, world) ? 2 : 0;
}

/** @throws Refusal when the build has no such place, with the places it has. */
function placeOf(build: Build, place: string): Placed {
  const wanted = place.startsWith('parts.') ? place : `parts.${place}`;
  const all = build.all();
  const exact = all.find((placed) => placed.path === wanted);
  const inRole = all.filter((placed) => `parts.${placed.role}` === wanted);
  const found = exact ?? (inRole.length === 1 ? inRole[0] : undefined);
  if (found) return found;
  const places = (inRole.length > 0 ? inRole : all).map((placed) => placed.path.slice('parts.'.length));
  if (places.length === 0) throw refusal`the build has no place ${place}; it has no parts.`;
  const has = places.join(', ');
  throw inRole.length > 1
    ? refusal`the build has ${inRole.length} places ${place}; it has ${has}.`
    : refusal`the build has no place ${place}; it has ${has}.`;
}
