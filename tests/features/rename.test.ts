// References and rename of the names that a build gives to its parts.
import { describe, expect, test } from 'vitest';
import { prepareRename, references, rename } from '../../server/src/features/references';
import { editedFile, view } from '../support/view';

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
  const edit = rename(judged, position, name);
  return typeof edit === 'string' ? edit : editedFile(plain, edit, 'file:///ws/desk.pcbuild.yaml');
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

describe('rename', () => {
  test('changes the name and every use of it, and leaves all else as it stands', () => {
    const want = text.replace('¦', '').replace(/scratch\b/g, 'fast one');
    for (const nth of [0, 1, 2, 3, 4]) expect(renamed(asked(nth), 'fast one'), String(nth)).toBe(want);
  });

  test('is offered on names of parts alone', () => {
    const { view: judged, position } = view(text);
    expect(prepareRename(judged, position)).toMatchObject({ placeholder: 'scratch' });
    const other = view('parts:\n  drives: [{ name: a, slot: M2¦_1 }]\n');
    expect(prepareRename(other.view, other.position)).toBeUndefined();
  });

  test('says why where it cannot be', () => {
    expect(renamed(text, 'archive')).toBe('Another part is called archive already.');
    expect(renamed(text, ' ')).toBe('A name cannot be empty.');
    expect(renamed('bui¦ld: Desk\n', 'x')).toMatch(/^Only the names/);
  });
});
