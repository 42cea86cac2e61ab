// The facts that a build waits for: where each belongs, where it is usually printed, what it would decide.
import type { Missing } from '../core/figures/figure';
import type { Finding } from '../core/judge/finding';
import { block, padded, safe } from './layout';
import type { Look, Section } from './section';
import { placeOfMissing, plural } from './text';
import { missingJson } from './json';

export interface Wanted {
  readonly lack: Missing;
  /** Checks that this fact alone leaves open, and those that wait for others too; as `id` and place. */
  readonly decides: readonly Finding[];
  readonly helps: readonly Finding[];
}

/** Missing facts, the one that decides most first. */
export function wantedOf(findings: readonly Finding[]): readonly Wanted[] {
  const found = new Map<string, { lack: Missing; decides: Finding[]; helps: Finding[] }>();
  for (const finding of findings) for (const lack of finding.missing) {
    const key = `${lack.doc.name}\n${lack.path}`;
    const wanted = found.get(key) ?? { lack, decides: [], helps: [] };
    found.set(key, wanted);
    (finding.missing.length === 1 ? wanted.decides : wanted.helps).push(finding);
  }
  return [...found].sort(([a, one], [b, other]) =>
    other.decides.length - one.decides.length || other.helps.length - one.helps.length || (a < b ? -1 : 1)).map(([, wanted]) => wanted);
}

const margin = 6;

export function missingText(section: Section, look: Look): string {
  const wanted = wantedOf(section.judgement.findings);
  const title = safe(section.title ?? look.shown(section.doc));
  if (wanted.length === 0) return `${title}: every fact that a check asks for is stated.\n`;
  const blocks = wanted.map((one, i) => wantedText(one, i + 1, look));
  return [`${title}: ${plural(wanted.length, 'fact is', 'facts are')} missing.`, ...blocks].join('\n\n') + '\n';
}

function wantedText({ lack, decides, helps }: Wanted, number: number, look: Look): string {
  const { field } = lack.fact ?? {};
  const head = `${padded(`  ${number}.`, margin)}${safe(placeOfMissing(lack, look))}   ${safe(lack.path)}`;
  const ids = (findings: readonly Finding[]): string => [...new Set(findings.map((finding) => finding.id))].sort().join(', ');
  return [
    head,
    ...(field ? block(`${field.what} Written as ${field.example}.`, margin) : block(lack.what, margin)),
    ...(field?.printed ? block(`Usually printed in: ${lowerFirst(field.printed)}`, margin) : []),
    ...(decides.length > 0 ? block(`Decides ${plural(decides.length, 'check', 'checks')}: ${ids(decides)}`, margin) : []),
    ...(helps.length > 0 ? block(`Helps with ${plural(helps.length, 'check', 'checks')}: ${ids(helps)}`, margin) : []),
  ].join('\n');
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export function missingReport(section: Section, look: Look): object {
  return {
    version: 1, file: look.shown(section.doc), ...(section.title === undefined ? {} : { name: section.title }),
    missing: wantedOf(section.judgement.findings).map(({ lack, decides, helps }) => ({
      ...missingJson(lack, look),
      ...(lack.fact ? { meaning: lack.fact.field.what, example: lack.fact.field.example, ...(lack.fact.field.printed ? { printed: lack.fact.field.printed } : {}) } : {}),
      decides: decides.map(({ id, place }) => ({ id, path: place.path })), helps: helps.map(({ id, place }) => ({ id, path: place.path })),
    })),
  };
}
