// References and rename of the names that a build gives to its parts.
import { describe, expect, test } from 'vitest';
import { highlights, referencesTo } from '../../server/src/features/references';
import { doubtful, prepareRename, refusal, renamedAt, renameEdits } from '../../server/src/features/rename';
import { english } from '../../server/src/core/words/languages';
import { subjectAt } from '../../server/src/features/subject';
import type { Location, Position, View } from '../../server/src/features/shapes';
import { applyEdits } from '../../server/src/core/text';
import { view } from '../support/view';

const text = `parts:
  drives:
    - { name: scr¦atch, slot: M2_1 }   # fast
    - { name: archive }
expect:
  drives: { scratch: { capacity: 2 TB } }
  arrays: { vault: { kind: mirror, drives: [scratch, archive] } }
steps:
  - { do: fit M.2 drive, part: scratch }
acceptance:
  drive-tests: [{ drive: scratch, test: read through }]
accept:
  - { finding: m2-screw-missing, at: parts.drives.scratch, because: A latch holds it. }
  - { finding: m2-screw-missing, at: parts.drives.scratch2, because: Another one. }
`;

function renamed(marked: string, name: string): string {
  const { view: judged, position, text: plain } = view(marked);
  const subject = renamedAt(judged, judged.doc.lines.offsetAt(position));
  if (!subject) return 'nothing to rename';
  const why = refusal(judged, subject, name, english());
  if (why !== undefined) return why;
  const edits = renameEdits(judged, subject, name);
  return edits ? applyEdits(plain, edits) : doubtful(judged, subject, english());
}

function references(judged: View, position: Position, declares: boolean): Location[] {
  const subject = subjectAt(judged, judged.doc.lines.offsetAt(position));
  return subject ? referencesTo(judged, subject, declares) : [];
}

/** The same text with the cursor in another place that has the name. */
const asked = (nth: number): string => {
  let seen = -1;
  return text.replace('¦', '').replace(/scratch\b(?!2)/g, (word) => (++seen === nth ? 'scr¦atch' : word));
};

describe('references', () => {
  test('are every use of a drive’s name, from its name and from each use alike', () => {
    for (const nth of [0, 1, 2, 3, 4]) {
      const { view: judged, position } = view(asked(nth));
      const lines = references(judged, position, true).map(({ range }) => range.start.line);
      expect(lines, String(nth)).toEqual([2, 5, 6, 8, 10]);
      expect(references(judged, position, false)).toHaveLength(4);
    }
  });

  test('of a place are all parts that name it', () => {
    const { view: judged, position } = view(
      'parts:\n  board: { headers: { A: {} } }\n  fans: [{ header: ¦A }, { header: A }]\n',
    );
    expect(references(judged, position, false)).toHaveLength(2);
    expect(references(judged, position, true)).toHaveLength(3);
  });
});

describe('highlights', () => {
  test('are the uses of a name in the file, and where it is given', () => {
    const { view: judged, position } = view(text);
    expect(highlights(judged, position).map(({ range, kind }) => [range.start.line, kind])).toEqual([
      [2, 3],
      [5, 2],
      [6, 2],
      [8, 2],
      [10, 2],
    ]);
    const twice = view('parts:\n  drives: [{ use: lumen/r¦apid-2t }, { use: lumen/rapid-2t }]\n');
    expect(highlights(twice.view, twice.position)).toHaveLength(2);
  });
});

describe('rename', () => {
  test('changes the name and every use of it, and leaves all else as it stands', () => {
    const want = text.replace('¦', '').replace(/scratch\b/g, 'fast one');
    for (const nth of [0, 1, 2, 3, 4]) expect(renamed(asked(nth), 'fast one'), String(nth)).toBe(want);
  });

  test('is offered on names that are given somewhere, and on no word of the format', () => {
    const placeholder = (marked: string): string | undefined => {
      const { view: judged, position } = view(marked);
      return prepareRename(judged, judged.doc.lines.offsetAt(position))?.placeholder;
    };
    expect(placeholder(text)).toBe('scratch');
    expect(placeholder('parts:\n  board: { use: norr¦vik/b7-forge }\n')).toBe('norrvik/b7-forge');
    expect(placeholder('parts:\n  board: { slots: { M2_1: {} } }\n  drives: [{ slot: M2¦_1 }]\n')).toBe('M2_1');
    expect(placeholder('steps: [fit board, label the ca¦se]\n')).toBe('label the case');
    expect(placeholder('parts:\n  drives: [{ name: a, slot: M2¦_1 }]\n')).toBeUndefined();
    expect(placeholder('steps: [fit bo¦ard]\n')).toBeUndefined();
    expect(placeholder('parts: { case: { bays: { 3.5¦ in: 2 } } }\n')).toBeUndefined();
    expect(placeholder('steps: [{ do: fit fans, part: fa¦ns }]\nparts: { fans: [{}] }\n')).toBeUndefined();
  });

  test('of what a build spells out follows where it is accepted, and leaves what has the same name elsewhere', () => {
    const marked =
      'parts:\n  board: { slots: { ¦A: {} }, headers: { A: {} } }\n  drives: [{ slot: A }]\n  fans: [{ header: A }]\n' +
      'accept: [{ finding: place-left-out, at: parts.board.slots.A }]\n';
    expect(renamed(marked, 'M2_1')).toBe(
      'parts:\n  board: { slots: { M2_1: {} }, headers: { A: {} } }\n  drives: [{ slot: M2_1 }]\n  fans: [{ header: A }]\n' +
        'accept: [{ finding: place-left-out, at: parts.board.slots.M2_1 }]\n',
    );
    expect(renamed(marked.replace('¦A: {}', '¦A: {}, B: {}'), 'B')).toBe('Another slot is called B already.');
  });

  test('says why where it cannot be', () => {
    expect(renamed(text, 'archive')).toBe('Another part is called archive already.');
    expect(renamed(text, ' ')).toBe('A name cannot be empty.');
    expect(renamed(text, 'two\nlines')).toBe('A name is one line of text.');
    expect(renamed('parts: { board: { use: nor¦rvik/b7-forge } }\n', '../b7')).toMatch(/^"..\/b7" is not the name/);
    expect(renamed('bui¦ld: Desk\n', 'x')).toBe('nothing to rename');
    const alias = 'parts:\n  drives: [{ name: &n scratch }]\nexpect: { drives: { scr¦atch: {} } }\n';
    expect(renamed(alias, 'x')).toMatch(/could mean two things/);
  });
});
