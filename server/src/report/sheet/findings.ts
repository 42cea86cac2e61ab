// Findings on the sheet: in short at its beginning, in full with their working at its end.
import type { RoleSet } from '../../core/build/reads';
import { cautionWords } from '../../core/checks/page';
import type { Finding } from '../../core/judge/finding';
import { workingOf, type Step } from '../../core/judge/working-steps';
import { visible } from '../../core/text';
import { mostInFull, part, type Context } from './context';
import {
  lines,
  oneLine,
  table,
  upperFirst,
  type Block,
  type Body,
  type Row,
  type SheetFinding,
  type WorkingRow,
} from './model';
import { cautionOf } from './step-cautions';

/** So many findings are listed in short; the rest are counted, and `fettle check` lists them. */
const mostShort = 200;

const restOf = (count: number, most: number): Body[] =>
  count > most ? [lines({ text: `${count - most} more, listed by fettle check.` })] : [];

/** Worst first, a line each. */
export function shortBlock({ findings, places }: Context): Block {
  const open = findings.filter(({ accepted }) => !accepted);
  const accepted = findings.length - open.length;
  const rows = open.slice(0, mostShort).map(
    ({ grade, said, subject }, i): Row => ({
      place: places.ofSubject(subject),
      tick: true,
      cells: [{ text: String(i + 1) }, { text: upperFirst(grade), grade }, { text: oneLine(said.text) }],
    }),
  );
  const shown =
    rows.length > 0
      ? table('Findings, worst first', ['Finding', 'Grade', 'What it is, and what to do'], rows)
      : lines({ text: 'Nothing that harms, stops, falls short or is worth a note.' });
  const more = accepted > 0 ? [lines({ text: `Accepted by the build, and listed at the end: ${accepted}.` })] : [];
  return {
    id: 'findings',
    heading: 'What was found',
    level: 2,
    bodies: [shown, ...restOf(open.length, mostShort), ...more],
  };
}

/** Each in full, in a block of its own: one that changes leaves the others as they are. */
export function fullBlocks(context: Context): readonly Block[] {
  const { findings, judgement, kept } = context;
  if (findings.length === 0) return [];
  const read = new Map(
    judgement.answers.flatMap((answer) => (answer.findings.length > 0 ? [[answer.check.id, answer.roles]] : [])),
  );
  return [
    kept.asBefore({
      id: 'working',
      heading: 'Findings in full',
      level: 2,
      bodies: restOf(findings.length, mostInFull),
    }),
    ...findings.slice(0, mostInFull).map((finding, i) => fullBlock(context, finding, i + 1, read.get(finding.id))),
  ];
}

/** `roles`: what the finding’s check read of the build; its working rests on nothing else. */
function fullBlock(context: Context, finding: Finding, number: number, roles: RoleSet | undefined): Block {
  const { id, subject, grade, said, accepted, check } = finding;
  const name = `finding:${id}:${subject}`;
  const make = (own: Context): Block => ({
    id: name,
    heading: `${number}. ${upperFirst(grade)}: ${id}`,
    level: 3,
    bodies: [{ type: 'finding', finding: inFull(own, finding, number) }],
  });
  // What is found in the text itself rests on no role.
  if (check.on !== 'build' || roles === undefined) return make(context);
  const mends = (context.fixes.get(finding) ?? []).map(
    ({ title, givesWay }) => `${givesWay ? 'gives way ' : ''}${title}`,
  );
  const told = [`${number} ${grade}`, said.text, accepted ? acceptedWords(accepted) : '', ...mends];
  return part(context, name, told, make, roles);
}

function inFull({ places, fixes }: Context, finding: Finding, number: number): SheetFinding {
  const { id, grade, subject, said, accepted } = finding;
  const caution = cautionWords(finding.caution);
  return {
    number,
    grade,
    id,
    subject: visible(subject),
    place: places.ofSubject(subject),
    text: oneLine(said.text),
    ...(accepted ? { accepted: acceptedWords(accepted) } : {}),
    ...(caution ? { caution: cautionOf(caution) } : {}),
    mends: (fixes.get(finding) ?? []).map(({ title, givesWay }) => (givesWay ? `Gives way: ${title}` : title)),
    working: cut(workingOf(finding).flatMap((step) => rowsOf(step, 0, places))),
  };
}

function acceptedWords({ because, until, atMost, by }: NonNullable<Finding['accepted']>): string {
  const upTo = atMost ? ` up to ${atMost}` : '';
  return oneLine(`Accepted${upTo} because: ${because}${by ? ` By ${by}.` : ''}${until ? ` Until ${until}.` : ''}`);
}

function rowsOf(step: Step, depth: number, places: Context['places']): readonly WorkingRow[] {
  const from = [
    step.formula && `= ${step.formula}`,
    step.repeated && 'as above',
    step.source,
    step.from && places.words(step.from) !== step.label && places.words(step.from),
  ];
  return [
    {
      depth,
      text: oneLine(step.label),
      value: oneLine(step.value),
      from: oneLine(from.filter(Boolean).join('; ')),
      ...(step.from ? { place: places.key(step.from) } : {}),
    },
    ...step.inputs.flatMap((input) => rowsOf(input, depth + 1, places)),
  ];
}

/** So many lines of one working are printed; the rest stands with `fettle check --working`. */
const mostRows = 40;

function cut(rows: readonly WorkingRow[]): readonly WorkingRow[] {
  if (rows.length <= mostRows) return rows;
  const rest = rows.length - mostRows + 1;
  return [
    ...rows.slice(0, mostRows - 1),
    { depth: 0, text: `${rest} more lines`, value: '', from: 'printed by fettle check with --working' },
  ];
}
