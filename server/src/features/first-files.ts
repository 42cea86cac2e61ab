// A first build, as `fettle new` and the editor write it: texts that check without a finding, with comments that say
// how to go on.

/** New files by their path below the folder they are written into; the first is the build. */
export type NewFiles = ReadonlyMap<string, string>;

const ending = '.pcbuild.yaml';

/**
 * A build with the settings and the parts folder it needs where it lies in no workspace yet; undefined for a name
 * that can be no file’s.
 */
export function newBuild(given: string, isInWorkspace: boolean): NewFiles | undefined {
  const name = given.endsWith(ending) ? given.slice(0, -ending.length) : given;
  if (!isFileName(name)) return undefined;
  const file = `${name.replaceAll(' ', '-')}${ending}`;
  const build: [string, string] = [file, firstBuild(JSON.stringify(name), file, !isInWorkspace)];
  if (isInWorkspace) return new Map([build]);
  return new Map([build, ['fettle.yaml', firstHouse], [`parts/${firstPartName}.part.yaml`, firstPart]]);
}

/** Where someone goes on in a first build: at the facts of its first part. */
export const startOf = (text: string): number => {
  const parts = text.indexOf('\nparts:');
  return text.indexOf('{ ', parts) + 2;
};

/** A name that is a file’s on every platform, and no path. */
const isFileName = (name: string): boolean => /^[\p{L}\p{N}_][\p{L}\p{M}\p{N} _-]{0,79}$/u.test(name);

const firstPartName = 'example/tower';

const firstHouse = `# House settings: they hold for every build in this folder and below it.
format: 1
parts: [parts]
`;

const firstPart = `# A part file: what is true of this part in any build. Fill it in from the data sheet.
kind: cooler
maker: Example
model: Tower
source: { title: Data sheet of the cooler }
height: 158 mm
`;

const useLine = `  # A part file of the parts folder by its path: parts/${firstPartName}.part.yaml.
  cooler: { use: ${firstPartName} }
`;
const spelledLine = `  # Facts of a part may stand here; in a part file under parts/ other builds can use them too.
  cooler: { height: 158 mm }
`;

/** `build` is the build’s name as it is written; `hasPart`: whether the part file is written along with it. */
const firstBuild = (build: string, file: string, hasPart: boolean): string => `# A build: its parts, then where \
it will stand, what it must achieve and how it goes together.
# Leave out what you do not know yet: Fettle says what it waits for.
#   fettle check ${file}      what will not hold, why, and what would mend it
#   fettle missing ${file}    the facts that are still to be looked up
#   fettle order ${file}      the order of work
format: 1
build: ${build}

parts:
${hasPart ? useLine : spelledLine}  case: { cooler-height: 165 mm }
  # board: { use: maker/model, firmware: "1.08" }
  # processor: { socket: AM5, power: { sustained: 125 W } }
  # memory: [{ type: DDR5, capacity: 16 GB, count: 2, slots: [A2, B2] }]
  # drives: [{ name: system, bus: NVMe, slot: M2_1, capacity: 1 TB, boot: true }]
  # supply: { rating: 550 W }

# Where it will stand.
# place: { ambient: 25 °C, mains: { voltage: 230 V } }

# What it must achieve.
# expect: { drives: { system: { read: 3 GB/s } }, cost: 900 EUR }

# How it goes together.
# steps: [read handbooks, equalise, fit processor]
`;
