// Texts and bytes that have brought readers of YAML down: too deep, too long, too often, too strange.

export interface Nasty {
  readonly name: string;
  readonly bytes: string | Uint8Array /** It is past a limit: that is to be said, and to count. */;
  readonly limit?: true;
}

const times = (count: number, make: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => make(i)).join('');
const spaces = (count: number): string => ' '.repeat(count);

const head = 'format: 1\nbuild: A\n';

export const corpus: readonly Nasty[] = [
  { name: 'nothing', bytes: '' },
  { name: 'blanks', bytes: ' \t\r\n'.repeat(10_000) },
  { name: 'flow lists, nested', bytes: '['.repeat(100_000), limit: true },
  { name: 'flow lists, nested and closed', bytes: '['.repeat(5_000) + ']'.repeat(5_000), limit: true },
  { name: 'flow maps, nested', bytes: '{a: '.repeat(50_000), limit: true },
  { name: 'flow maps and lists, nested', bytes: `parts: ${'[{a: '.repeat(3_000)}`, limit: true },
  { name: 'block maps, nested', bytes: times(900, (i) => `${spaces(i)}a:\n`), limit: true },
  { name: 'block lists, nested', bytes: '- '.repeat(20_000), limit: true },
  { name: 'explicit keys, nested', bytes: '? '.repeat(5_000), limit: true },
  { name: 'two megabytes of one word', bytes: `build: ${'x'.repeat(1_999_000)}\n` },
  { name: 'more than two megabytes', bytes: `build: ${'x'.repeat(2_000_100)}\n`, limit: true },
  { name: 'two megabytes of comments', bytes: times(80_000, () => '# 23 characters of text\n') },
  {
    name: 'two megabytes of a block text',
    bytes:
      'purpose: ' +
      `|\n${times(40_000, () => '  fifty characters of text, more or less, and so on\n').slice(0, 1_900_000)}`,
  },
  { name: 'two megabytes of short lines', bytes: times(180_000, (i) => `k${i}: v\n`), limit: true },
  { name: 'one huge key', bytes: `${'k'.repeat(500_000)}: v\n` },
  { name: 'one huge quoted key', bytes: `"${'k'.repeat(500_000)}": v\n` },
  { name: 'an unclosed quote, long', bytes: `a: "${'x\n'.repeat(100_000)}` },
  { name: '20,000 keys', bytes: head + times(20_000, (i) => `key${i}: ${i}\n`) },
  { name: '20,000 times one key', bytes: head + times(20_000, () => 'purpose: x\n') },
  { name: '20,000 keys of one flow map', bytes: `parts: { cooler: {${times(20_000, (i) => `k${i}: 1, `)}} }\n` },
  {
    name: '8,000 parts',
    bytes: `${head}parts:\n  drives:\n${times(8_000, (i) => `    - { name: d${i}, slot: M2_1 }\n`)}`,
  },
  {
    name: '3,000 fans of two kinds',
    bytes:
      `${head}parts:\n  ` +
      `fans:\n${times(3_000, (i) => `    - { use: boreas/f${i}, count: 2, mount: front, header: SYS_FAN_1 }\n`)}`,
  },
  {
    name: '5,000 accepted findings',
    bytes: `${head}accept:\n${times(5_000, (i) => `  - { finding: f${i}, at: parts.x, because: y }\n`)}`,
  },
  {
    name: '5,000 promises',
    bytes: `${head}expect:\n  drives:\n${times(5_000, (i) => `    d${i}: { read: 5 GB/s, capacity: 2 TB }\n`)}`,
  },
  {
    name: '600 slots of one board',
    bytes:
      `${head}parts:\n  board:\n    ` +
      `slots:\n${times(600, (i) => `      S${i}: { kind: M.2, key: M, carries: [PCIe 4 x4], takes-from: [S${i + 1}] }\n`)} ` +
      ` drives:\n${times(20, (i) => `    - { slot: S${i}, bus: PCIe 4 x4 }\n`)}`,
  },
  {
    name: '2,000 slots that take from each other, and 40 drives without places',
    bytes:
      `${head}parts:\n  board:\n    ` +
      `slots:\n${times(2_000, (i) => `      S${i}: { kind: M.2, key: M, sizes: [2280], carries: [PCIe 4 x4, SATA], from: chipset, ` + `takes-from: [S${(i + 1) % 2_000}] }\n`)} ` +
      ` drives:\n${times(40, (i) => `    - { name: d${i}, bus: PCIe 4 x4, shape: M.2 2280 }\n`)}`,
  },
  { name: '3,000 steps', bytes: `${head}steps:\n${times(3_000, (i) => `  - { do: fit board, note: n${i} }\n`)}` },
  { name: '100 aliases', bytes: `${head}place: &a { ambient: 31 °C }\n${times(100, (i) => `k${i}: *a\n`)}` },
  {
    name: '101 aliases',
    bytes: `${head}place: &a { ambient: 31 °C }\n${times(101, (i) => `k${i}: *a\n`)}`,
    limit: true,
  },
  {
    name: 'aliases of aliases, nine deep',
    bytes:
      'a0: &a0 [x, x, x, x, x, x, x, x, ' +
      `x]\n${times(9, (i) => `a${i + 1}: &a${i + 1} [*a${i}, *a${i}, *a${i}, *a${i}, *a${i}, *a${i}, *a${i}, *a${i}, *a${i}]\n`)}`,
    limit: true,
  },
  {
    name: 'merges of merges',
    bytes: `a0: &a0 { x: 1 }\n${times(90, (i) => `a${i + 1}: &a${i + 1} { <<: *a${i}, k${i}: 1 }\n`)}`,
  },
  { name: 'an alias inside its own anchor', bytes: 'a: &a [*a, { b: *a }]\n' },
  { name: 'an alias to nothing', bytes: `${head}place: *nowhere\n` },
  { name: 'thousands of anchors and tags', bytes: times(5_000, (i) => `k${i}: &a${i} !t${i} x\n`) },
  { name: 'many documents', bytes: '---\na: 1\n'.repeat(20_000) },
  { name: 'many directives', bytes: '%YAML 1.1\n%TAG ! tag:x,2000:\n'.repeat(5_000) },
  { name: 'many errors', bytes: ']}'.repeat(20_000) },
  { name: 'many errors, a line each', bytes: 'a: b: c\n\t- ]\n'.repeat(5_000) },
  { name: 'tabs', bytes: '\t'.repeat(100_000) },
  { name: 'a line of colons', bytes: ': '.repeat(50_000) },
  { name: 'zero bytes', bytes: 'build: \0\n' },
  { name: 'lone surrogates, escaped', bytes: `${head}purpose: "\\ud83c\\udf0a \\ud83c \\udf0a"\n` },
  { name: 'lone surrogates, as bytes', bytes: new Uint8Array([0x62, 0x3a, 0x20, 0xed, 0xa0, 0xbc, 0x0a]) },
  { name: 'three byte order marks', bytes: `\ufeff\ufeff\ufeff${head}` },
  { name: 'UTF-16', bytes: new Uint8Array(Buffer.from(`\ufeff${head}`, 'utf16le')) },
  {
    name: 'a picture',
    bytes: new Uint8Array([
      0x89,
      0x50,
      0x4e,
      0x47,
      0x0d,
      0x0a,
      0x1a,
      0x0a,
      0,
      0,
      0,
      13,
      ...Array.from({ length: 4_000 }, (_, i) => (i * 7_919) % 256),
    ]),
  },
  { name: 'lone carriage returns', bytes: `${head.replaceAll('\n', '\r')}${'a:\r'.repeat(2_000)}` },
  {
    name: 'controls, bidirectional and invisible signs',
    bytes: `${head}"\\u202e\\e[31m\\a\\u200b": "\\e]0;x\\a"\npurpose: "\u202e\u2066\u200b"\n`,
  },
  {
    name: 'names of objects',
    bytes:
      `${head}__proto__: { __proto__: 1 }\nconstructor: { prototype: x }\nparts: { __proto__: { use: ` +
      `__proto__/__proto__ }, toString: [] }\n`,
  },
  {
    name: 'numbers past all bounds',
    bytes:
      `${head}parts:\n  supply: { rating: ${'9'.repeat(400)} W }\n  cooler: { height: 1e309 mm, mass: 1e-320 ` +
      `g }\n  memory: [{ count: ${'9'.repeat(9)}, capacity: 64 GB }]\n  drives: [{ count: 999999999, ` +
      `capacity: 1e300 TB }]\n`,
  },
  {
    name: 'words that take long to compare',
    bytes: `${head}parts:\n  cooler:\n${times(3_000, (i) => `    ${'heigth'.repeat(15)}${i}: 1\n`)}`,
  },
  {
    name: 'a text that patterns may choke on',
    bytes:
      `${head}place: { ambient: "${'1 '.repeat(20_000)}C", humidity: "${'1,'.repeat(20_000)}", altitude: ` +
      `"${'-'.repeat(40_000)}1" }\nexpect: { displays: [{ mode: "${'1x'.repeat(20_000)}" }] }\n`,
  },
  {
    name: 'a box full of nothing',
    bytes: `${head}parts:\n  board: { in-the-box: [${times(5_000, () => `"${'x '.repeat(40)}", `)}] }\n`,
  },
];
