// A first build, as `fettle new` and the editor write it: texts that check without a finding, with comments that say
// how to go on.
import type { Language } from '../core/words/language';

/** New files by their path below the folder they are written into; the first is the build. */
export type NewFiles = ReadonlyMap<string, string>;

const ending = '.pcbuild.yaml';

/**
 * A build with the settings and the parts folder it needs where it lies in no workspace yet; undefined for a name
 * that can be no file’s.
 */
export function newBuild(given: string, isInWorkspace: boolean, language: Language): NewFiles | undefined {
  const name = given.endsWith(ending) ? given.slice(0, -ending.length) : given;
  if (!isBuildName(name)) return undefined;
  const file = `${name.replaceAll(' ', '-')}${ending}`;
  const build: [string, string] = [file, firstBuild(JSON.stringify(name), file, !isInWorkspace, language)];
  if (isInWorkspace) return new Map([build]);
  return new Map([
    build,
    ['fettle.yaml', firstHouse(language)],
    [`parts/${firstPartName}.part.yaml`, firstPart(language)],
  ]);
}

/** Where someone goes on in a first build: at the facts of its first part. */
export const startOf = (text: string): number => {
  const parts = text.indexOf('\nparts:');
  return text.indexOf('{ ', parts) + 2;
};

/** Whether a build may be called so: its file’s name is one on every platform, and no path. */
export const isBuildName = (name: string): boolean => /^[\p{L}\p{N}_][\p{L}\p{M}\p{N} _-]{0,79}$/u.test(name);

const firstPartName = 'example/tower';

const firstHouse = (language: Language): string => `# ${language.word(
  'House settings: they hold for every build in this folder and below it.',
)}
format: 1
parts: [parts]
`;

const firstPart = (language: Language): string => `# ${language.word(
  'A part file: what is true of this part in any build. Fill it in from the data sheet.',
)}
kind: cooler
maker: Example
model: Tower
source: { title: ${language.word('Data sheet of the cooler')} }
height: 158 mm
`;

const useLine = (language: Language): string =>
  `  # ${language.words`A part file of the parts folder by its path: ${`parts/${firstPartName}.part.yaml`}.`}
  cooler: { use: ${firstPartName} }
`;
const spelledLine = (language: Language): string =>
  `  # ${language.word('Facts of a part may stand here; in a part file under parts/ other builds can use them too.')}
  cooler: { height: 158 mm }
`;

/** What is to be run next on a build, each with what it tells, in two columns. */
function commandLines(file: string, language: Language): string {
  const lines = [
    [`fettle check ${file}`, language.word('what will not hold, why, and what would mend it')],
    [`fettle missing ${file}`, language.word('the facts that are still to be looked up')],
    [`fettle order ${file}`, language.word('the order of work')],
  ] as const;
  const widest = Math.max(...lines.map(([command]) => command.length));
  return lines.map(([command, told]) => `#   ${command.padEnd(widest)}    ${told}\n`).join('');
}

/** `build` is the build’s name as it is written; `hasPart`: whether the part file is written along with it. */
function firstBuild(build: string, file: string, hasPart: boolean, language: Language): string {
  const head = language.word(
    'A build: its parts, then where it will stand, what it must achieve and how it goes together.',
  );
  return `# ${head}
# ${language.word('Leave out what you do not know yet: Fettle says what it waits for.')}
${commandLines(file, language)}format: 1
build: ${build}

parts:
${hasPart ? useLine(language) : spelledLine(language)}  case: { cooler-height: 165 mm }
  # board: { use: maker/model, firmware: "1.08" }
  # processor: { socket: AM5, power: { sustained: 125 W } }
  # memory: [{ type: DDR5, capacity: 16 GB, count: 2, slots: [A2, B2] }]
  # drives: [{ name: system, bus: NVMe, slot: M2_1, capacity: 1 TB, boot: true }]
  # supply: { rating: 550 W }

# ${language.word('Where it will stand.')}
# place: { ambient: 25 °C, mains: { voltage: 230 V } }

# ${language.word('What it must achieve.')}
# expect: { drives: { system: { read: 3 GB/s } }, cost: 900 EUR }

# ${language.word('How it goes together.')}
# steps: [read handbooks, equalise, fit processor]
`;
}
