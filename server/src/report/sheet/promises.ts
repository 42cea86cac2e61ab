// What the build promises, line by line, with what comes out of its parts and whether that is enough.
import { show } from '../../core/figures/sentence';
import type { Answer, Finding, Result } from '../../core/judge/finding';
import type { Fact, Group } from '../../core/parts/fact';
import type { Table as Fields } from '../../core/parts/field';
import { part, type Context } from './context';
import { lines, lowerFirst, oneLine, table, upperFirst, type Block, type PlaceKey, type Row } from './model';
import { textOf } from './parts';

/** One promise. */
export interface Promised {
  readonly place: PlaceKey;
  /** `scratch: sequential reading`. */
  readonly label: string;
  readonly limit: string;
  /** What comes out of the parts; empty where no figure does. */
  readonly workedOut: string;
  readonly verdict: 'holds' | 'falls short' | 'not decided' | 'not judged';
  readonly findings: readonly number[];
}

export function promisesBlock(promises: readonly Promised[]): Block {
  const rows = promises.map(
    ({ place, label, limit, workedOut, verdict, findings }): Row => ({
      place,
      tick: false,
      cells: [{ text: label }, { text: limit }, { text: workedOut }, { text: upperFirst(verdict), findings }],
    }),
  );
  const body =
    rows.length > 0
      ? table('Promises and what comes out', ['Promise', 'Promised', 'Worked out', 'Verdict'], rows)
      : lines({ text: 'The build promises nothing: only what it needs to work was judged.' });
  return { id: 'promises', heading: 'What it promises', level: 2, bodies: [body] };
}

/** Every promise that the build states, in the order of the fields. */
export function promisesOf(context: Context): readonly Promised[] {
  const answers: (readonly Result[])[] = [];
  for (const answer of context.judgement.answers) {
    if (answer.check.area === 'text') continue;
    const own = answer.check.on === 'build' ? keptResults(context, answer) : ofPromises(answer);
    if (own.length > 0) answers.push(own);
  }
  return part(context, 'each promise', answers, (own) => {
    const { expect } = own.build.file;
    const results = answers.flat();
    return stated(expect as unknown as Group<Fields>, '').map((one) => judged(own, results, one));
  });
}

/** What a check answers of promises stands while what it reads does: an answer that was carried over is not asked. */
const keptResults = ({ kept }: Context, answer: Answer): readonly Result[] =>
  kept.part(answer.check, nothing, () => ofPromises(answer), answer.roles);
const nothing: readonly string[] = [];

const ofPromises = ({ taken }: Answer): readonly Result[] =>
  taken.filter(({ outcome }) => outcome.subject.startsWith('expect.'));

interface Stated extends Pick<Promised, 'place' | 'label' | 'limit'> {
  readonly dimension: string | undefined;
}

type Node = Fact<unknown> | Group<Fields>;

const isFact = (node: Node): node is Fact<unknown> => 'type' in node && node.type === 'fact';

function stated(group: Group<Fields>, name: string): Stated[] {
  const rows: Stated[] = [];
  for (const key of keysOf(group)) {
    const node = group[key] as unknown as Node;
    const before = rows.at(-1);
    const joint = isFact(node) && node.node ? joints[key]?.(oneLine(node.text)) : undefined;
    if (joint !== undefined && before)
      rows[rows.length - 1] = {
        ...before,
        limit: `${before.limit} ${joint}`,
        dimension: key === 'at' ? before.dimension : undefined,
      };
    else if (!(key in joints) || joint === undefined) rows.push(...statedIn(node, name));
  }
  return rows;
}

/** The fields of a group; they stand on its prototype, and are read as they are asked for. */
const keysOf = (group: Group<Fields>): readonly string[] => Object.keys(Object.getPrototypeOf(group) as object);

/** Keys that say more of the promise before them. */
const joints: Readonly<Record<string, (text: string) => string>> = {
  at: (text) => `at ${text}`,
  years: (text) => `for ${text} ${text === '1' ? 'year' : 'years'}`,
};

function statedIn(node: Node, name: string): Stated[] {
  if (!isFact(node)) return node.$.stated ? stated(node, name) : [];
  if (!node.node) return [];
  const { value } = node;
  if (value instanceof Map)
    return [...(value as ReadonlyMap<string, Node>)].flatMap(([own, one]) =>
      wholes.has(node.key) ? [whole(one, own)] : statedIn(one, own),
    );
  if (Array.isArray(value)) return value.map((one: Node) => whole(one, 'display'));
  return [
    {
      place: node.path,
      label: named(name, node.field.what),
      limit: oneLine(node.text),
      dimension: node.field.type === 'quantity' ? node.field.dimension : undefined,
    },
  ];
}

/** Promises of several facts that are one promise together. */
const wholes: ReadonlySet<string> = new Set(['arrays']);

function whole(node: Node, name: string): Stated {
  const facts = isFact(node) ? [node] : keysOf(node).map((key) => node[key] as unknown as Fact<unknown>);
  const texts = facts.filter((fact) => fact.node).map((fact) => `${wordsBefore[fact.key] ?? ''}${textOf(fact)}`);
  return {
    place: isFact(node) ? node.path : node.$.path,
    label: upperFirst(oneLine(name)),
    limit: texts.join(', '),
    dimension: undefined,
  };
}

const wordsBefore: Readonly<Record<string, string>> = {
  port: 'on ',
  drives: 'of ',
  survives: 'drives that may fail: ',
  compression: 'compressed picture accepted: ',
  blanking: 'blanking ',
  sampling: 'colour sampled ',
};

function named(name: string, what: string): string {
  const words = what.replace(/\.$/, '');
  return name === '' ? words : `${oneLine(name)}: ${lowerFirst(words)}`;
}

const short: ReadonlySet<Finding['grade']> = new Set(['harm', 'stop', 'shortfall']);

/** What the checks of this promise said; how it is written is another matter. */
function judged({ places }: Context, all: readonly Result[], { dimension, ...own }: Stated): Promised {
  const results = all.filter(({ outcome: { subject } }) => isOf(subject, own.place));
  const worse = results.find(({ finding }) => finding && short.has(finding.grade));
  const open = results.find(({ outcome }) => outcome.truth.is === undefined);
  const held = results.find(({ outcome }) => outcome.truth.is === true && outcome.measure);
  const decisive = worse ?? open ?? held;
  const verdict = worse ? 'falls short' : open ? 'not decided' : held ? 'holds' : 'not judged';
  return { ...own, workedOut: workedOut(decisive, dimension), verdict, findings: places.findingsAt(own.place) };
}

const isOf = (subject: string, place: PlaceKey): boolean =>
  subject === place || subject.startsWith(`${place}:`) || subject.startsWith(`${place}.`);

/** A figure of the promise’s own kind by itself; any other with its name. */
function workedOut(result: Result | undefined, dimension: string | undefined): string {
  const measure = result?.outcome.measure;
  if (!measure) return '';
  const { figure, limit } = measure;
  const shown = show(figure, limit.unit ?? figure.unit);
  return dimension === figure.dimension ? shown : `${figure.label}: ${shown}`;
}
