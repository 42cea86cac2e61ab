// What `fettle new` writes: texts that check without a finding, with comments that say how to go on.

export const firstPartName = 'example/tower';

export const firstHouse = `# House settings: they hold for every build in this folder and below it.
format: 1
parts: [parts]
`;

export const firstPart = `# A part file: what is true of this part in any build. Fill it in from the data sheet.
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
export const firstBuild = (build: string, file: string, hasPart: boolean): string => `# A build: its parts, then where \
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
