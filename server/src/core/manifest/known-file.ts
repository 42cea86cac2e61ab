// The fields of a file of known findings: those that stood when they were recorded, and who lets them stand until when.
import { readAmount } from '../quantity';
import { count, date, choice, form, group, list, named, text } from '../parts/field';
import { grades } from './house-file';

const markOf = (written: string): string | undefined => (/^[0-9a-f]{16}$/.test(written) ? written : undefined);

/** A file of known findings may name more files than anything is compared with; its size alone bounds it. */
const most = 20_000;

export const knownFinding = {
  finding: text('The check’s id.', 'cooler-too-tall', { refersTo: 'check' }),
  at: text('What is judged, as the finding names it.', 'parts.cooler'),
  block: count('In a guide: which of its fenced blocks, counted from one.', '1', { least: 1 }),
  grade: choice(grades, 'The grade it had.', { example: 'stop' }),
  past: form(
    'an amount with its unit',
    readAmount,
    'By how much it was broken, where a number decides; past that it counts as new.',
    '12 mm',
  ),
  says: text('What it said.', 'The cooler stands 172 mm tall; the case leaves 160 mm.'),
  by: text('Who lets it stand.', 'station workshop'),
  since: date('The day it was recorded.', '2026-11-25'),
  until: date('The day from which it counts again.', '2027-06-30'),
  mark: form(
    'sixteen hexadecimal digits',
    markOf,
    'By what it is known again when the part is called otherwise.',
    '0f3a9c10ab27d5e8',
  ),
} as const;

export const knownFile = {
  format: count('Version of this format.', '1', { least: 1 }),
  files: named(
    group(
      {
        build: text('What the build is called: where its file is moved, it is found by that.', 'Survey desk'),
        findings: list(group(knownFinding, 'One known finding.'), 'What is known in this file.', '[]', { most }),
      },
      'The findings of one file.',
    ),
    'The files, by their names below the workspace’s root.',
    '{ desk.pcbuild.yaml: { findings: [] } }',
    { most },
  ),
} as const;
