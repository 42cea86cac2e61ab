// A file of known findings as text: one fact a line, so that what comes and goes shows as lines.
import { printScalar } from '../core/yaml';
import type { Recorded } from '../review/recording';

const heading = `# Findings that stood when they were recorded. Written by: fettle check --record-known
format: 1
`;

export function knownFileText(records: readonly Recorded[]): string {
  if (records.length === 0) return `${heading}files: {}\n`;
  const files = [...new Set(records.map(({ file }) => file))];
  return `${heading}files:\n${files.map((file) => fileText(records.filter((one) => one.file === file))).join('')}`;
}

function fileText(records: readonly Recorded[]): string {
  const [{ file, title }] = records as readonly [Recorded, ...Recorded[]];
  const build = title === undefined ? '' : `    build: ${printScalar(title)}\n`;
  return `  ${printScalar(file)}:\n${build}    findings:\n${records.map(findingText).join('')}`;
}

/** What is not stated is left out. */
function findingText(record: Recorded): string {
  const { id, subject, block, grade, past, text, by, since, until, fingerprint } = record;
  const facts: readonly (readonly [string, string])[] = [
    ['finding', id],
    ['at', subject],
    ['block', block === undefined ? '' : String(block)],
    ['grade', grade],
    ['past', past],
    ['says', text],
    ['by', by],
    ['since', since],
    ['until', until],
    ['mark', fingerprint],
  ];
  const lines = facts
    .filter(([, value]) => value !== '')
    .map(([key, value]) => `${key}: ${isBare.has(key) ? value : printScalar(value)}`);
  return `      - ${lines.join('\n        ')}\n`;
}

/** What is a number or a day stays one. */
const isBare = new Set(['block', 'since', 'until']);
