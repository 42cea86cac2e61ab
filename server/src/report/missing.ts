// The facts that a build waits for: where each belongs, where it is usually printed, what it would decide.
import { isExact, type Figure, type Missing } from '../core/figures/figure';
import { show } from '../core/figures/sentence';
import { compareRows, worstOf, type Finding } from '../core/judge/finding';
import { factKey, waiting, weightsOf } from '../core/judge/waiting';
import type { Grade } from '../core/manifest/house-file';
import type { Language } from '../core/words/language';
import { block, padded, safe } from './layout';
import type { FormatOptions, Section } from './section';
import { placeOfMissing } from './text';
import { missingJson } from './json';

export interface Wanted {
  readonly lack: Missing;
  /** The same fact under other names of one map, as of other slots: one look tells all. */
  readonly alike: readonly Missing[];
  /** The worst grade of what it could bring. */
  readonly atWorst: Grade;
  /** Checks that this fact alone leaves open, and those that wait for others too; as `id` and place. */
  readonly decides: readonly Finding[];
  readonly helps: readonly Finding[];
}

/** Missing facts, alike ones together: the one that decides most of the heaviest first. */
export function wantedOf({ judgement, build }: Pick<Section, 'judgement' | 'build'>): readonly Wanted[] {
  const looks = new Map<string, { readonly lacks: Missing[]; readonly own: Set<Finding> }>();
  for (const { lack, findings: own } of waiting(judgement.findings, build)) {
    const look = lookOf(lack);
    const has = looks.get(look) ?? { lacks: [], own: new Set<Finding>() };
    has.lacks.push(lack);
    for (const one of own) has.own.add(one);
    looks.set(look, has);
  }
  return [...looks.values()]
    .map(wantedFrom)
    .map((wanted) => ({ wanted, weights: weightsOf(wanted) }))
    .sort((a, b) => compareRows(a.weights, b.weights) || (factKey(a.wanted.lack) < factKey(b.wanted.lack) ? -1 : 1))
    .map(({ wanted }) => wanted);
}

/** The value at which a fact turns an answer that waits for it alone; undefined where it is no number on its own. */
function turnsAt({ uses }: Finding, lack: Missing): string | undefined {
  const [one, other] = uses;
  if (uses.length !== 2 || one?.type !== 'figure' || other?.type !== 'figure') return undefined;
  const isIt = (figure: Figure): boolean =>
    figure.inputs.length === 0 && figure.missing.some((each) => factKey(each) === factKey(lack));
  const limit = isIt(one) ? other : isIt(other) ? one : undefined;
  return limit && isExact(limit) && Number.isFinite(limit.lo) ? show(limit) : undefined;
}

function wantedFrom({
  lacks,
  own: set,
}: {
  readonly lacks: readonly Missing[];
  readonly own: ReadonlySet<Finding>;
}): Wanted {
  const own = [...set];
  const [lack, ...alike] = [...lacks].sort((a, b) => (factKey(a) < factKey(b) ? -1 : 1)) as [Missing, ...Missing[]];
  const keys = new Set(lacks.map(factKey));
  const decided = (finding: Finding): boolean => finding.missing.every((one) => keys.has(factKey(one)));
  return {
    lack,
    alike,
    atWorst: worstOf(own),
    decides: own.filter(decided),
    helps: own.filter((finding) => !decided(finding)),
  };
}

/** Maps whose names stand in one table or drawing of a handbook. */
const namedMaps: ReadonlySet<string> = new Set(['slots', 'headers', 'fan-places', 'radiator-places']);

/** What is found at one look: the same key under every name of a map, as `slots.*.takes-from`; else the fact itself. */
function lookOf(lack: Missing): string {
  const steps = lack.path.split('.');
  const key = steps.at(-1)!;
  return lack.fact?.path === lack.path && steps.length === 3 && namedMaps.has(steps[0]!)
    ? `${lack.doc.name}\n${steps[0]}.*.${key}`
    : factKey(lack);
}

const margin = 6;

export function missingText(section: Section, look: FormatOptions): string {
  const wanted = wantedOf(section);
  const title = safe(section.title ?? look.shown(section.doc));
  const { language } = look;
  const first = wanted.length > 1 ? language.words` Look up first: ${safe(language.plain(wanted[0]!.lack.what))}.` : '';
  const heading =
    wanted.length === 0
      ? language.words`${title}: every fact that a check asks for is stated.`
      : wanted.length === 1
        ? language.words`${title}: 1 fact is missing.`
        : language.words`${title}: ${wanted.length} facts are missing.` + first;
  const blocks = wanted.map((one, i) => wantedText(one, i + 1, look));
  return `${[heading, ...blocks, ...unaskedText(unaskedIn(section), language)].join('\n\n')}\n`;
}

/** Answers left open for which nobody is asked, with what is taken for granted; without it, a note is all at stake. */
interface Unasked {
  readonly id: string;
  readonly subject: string;
  readonly usual?: string;
}

const unaskedIn = ({ judgement }: Section): readonly Unasked[] =>
  judgement.answers.flatMap(({ check: { id }, taken }) =>
    taken.flatMap(({ outcome: { subject, truth, usual }, finding }) =>
      finding || truth.is !== undefined ? [] : [{ id, subject, ...(usual ? { usual: usual() } : {}) }],
    ),
  );

function unaskedText(all: readonly Unasked[], language: Language): string[] {
  const custom = all.flatMap(({ id, usual }) => (usual === undefined ? [] : [{ id, usual }]));
  const notes = [...new Set(all.flatMap(({ id, usual }) => (usual === undefined ? [id] : [])))].sort();
  return [
    ...(custom.length === 0
      ? []
      : [
          [
            ...block(
              language.word('Taken as usual in the trade, since no file states otherwise; nothing of it is proven:'),
              0,
            ),
            ...custom.flatMap(({ id, usual }) => block(`${language.plain(usual)} (${id})`, margin, '    -')),
          ].join('\n'),
        ]),
    ...(notes.length === 0
      ? []
      : [block(language.words`Left open, since a note is all it could bring: ${notes.join(', ')}.`, 0).join('\n')]),
  ];
}

function wantedText({ lack, alike, atWorst, decides, helps }: Wanted, number: number, look: FormatOptions): string {
  const { language } = look;
  const head = `${padded(`  ${number}.`, margin)}${safe(placeOfMissing(lack, look))}   ${safe(lack.path)}`;
  const lines = [
    ...factWords(lack, language),
    ...(alike.length > 0
      ? [language.words`At the same look: ${alike.map(({ what }) => language.plain(what)).join(', ')}.`]
      : []),
    atWorst === 'harm' ? language.word('Could bring harm.') : language.words`Could bring a ${atWorst}.`,
    ...(decides.length > 0 ? [language.words`Decides ${checksIn(decides, language, lack)}`] : []),
    ...(helps.length > 0 ? [language.words`Helps with ${checksIn(helps, language)}`] : []),
  ];
  return [head, ...lines.flatMap((line) => block(line, margin))].join('\n');
}

/** What is missing; then what such a fact is, how it is written and who states it, unless only a name is missing. */
function factWords({ fact, path, what: english }: Missing, language: Language): string[] {
  const what = language.plain(english);
  if (!fact) return [language.words`Not stated: ${what}.`];
  if (fact.path !== path) return [language.words`Not listed: ${what}.`];
  const { field, node, text } = fact;
  const isStated = node !== undefined && (text !== '' || node.type !== 'scalar');
  return [
    isStated ? language.words`Not told by what is written there: ${what}.` : language.words`Not stated: ${what}.`,
    language.word(field.what) + (field.example === '' ? '' : language.words` Written as \`${field.example}\`.`),
    ...(field.printed ? [language.words`Usually printed in: ${language.word(field.printed)}`] : []),
  ];
}

/** `2 checks in 3 places: card-too-long, card-too-tall (turns at 158 mm)`. */
function checksIn(findings: readonly Finding[], language: Language, lack?: Missing): string {
  const ids = [...new Set(findings.map((finding) => finding.id))].sort();
  const count = ids.length === 1 ? language.word('1 check') : language.words`${ids.length} checks`;
  const places = findings.length > ids.length ? language.words` in ${findings.length} places` : '';
  return `${count}${places}: ${ids.map(withTurn).join(', ')}`;

  function withTurn(id: string): string {
    const own = lack ? findings.filter((finding) => finding.id === id) : [];
    const turns = [...new Set(own.flatMap((finding) => turnsAt(finding, lack!) ?? []))];
    return turns.length > 0 ? language.words`${id} (turns at ${turns.join(', ')})` : id;
  }
}

export function missingReport(section: Section, look: FormatOptions): object {
  return {
    version: 1,
    file: look.shown(section.doc),
    ...(section.title === undefined ? {} : { name: section.title }),
    missing: wantedOf(section).map(({ lack, alike, atWorst, decides, helps }) => ({
      ...missingJson(lack, look),
      alike: alike.map((one) => missingJson(one, look)),
      ...(lack.fact
        ? {
            meaning: lack.fact.field.what,
            example: lack.fact.field.example,
            ...(lack.fact.field.printed ? { printed: lack.fact.field.printed } : {}),
          }
        : {}),
      atWorst,
      decides: decides.map(({ id, subject }) => ({ id, path: subject })),
      helps: helps.map(({ id, subject }) => ({ id, path: subject })),
    })),
    unasked: unaskedIn(section).map(({ id, subject, usual }) => ({ id, path: subject, usual: usual ?? null })),
  };
}
