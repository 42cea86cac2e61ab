// Fingerprints of findings: by check and by what is judged, so that a finding keeps its own through moved lines,
// reordered keys, other layout, and other names of parts and drives.
import type { Build, Placed } from '../core/build/build';
import type { Finding } from '../core/judge/finding';
import { compareTexts } from '../core/text';

/** Keys that say where a part goes: with its role they tell which it is, whatever it is called. */
const placeKeys = ['slot', 'port', 'bay', 'header', 'mount'] as const;

/**
 * The fingerprints of one file’s findings: 16 hexadecimal digits, no two alike. The same in another file means the
 * same thing there; a report over many files sets the file beside it.
 */
export function fingerprints(findings: readonly Finding[], build?: Build): ReadonlyMap<Finding, string> {
  const plain = build ? plainNames(build) : (subject: string): string => subject;
  const meant = findings.map((finding) => ({ finding, key: `${finding.id}\n${plain(finding.subject)}` }));
  // Several of one check about one thing are told apart by what they say.
  meant.sort((a, b) => compareTexts(a.key, b.key) || compareTexts(a.finding.said.text, b.finding.said.text));
  let nth = 0;
  return new Map(
    meant.map(({ finding, key }, i) => {
      nth = i > 0 && meant[i - 1]!.key === key ? nth + 1 : 0;
      return [finding, digest(nth === 0 ? key : `${key}\n${nth}`)];
    }),
  );
}

/** A fingerprint that no finding of another file has. */
export const fingerprintIn = (file: string, fingerprint: string): string => digest(`${file}\n${fingerprint}`);

/** A subject with what each part of the build is called replaced by what it is: its role and its place. */
export function plainNames(build: Build): (subject: string) => string {
  const tokens = identities(build);
  const paths = [...tokens.keys()].sort((a, b) => b.path.length - a.path.length);
  const called = [...tokens].flatMap(([placed, token]) =>
    [nameOf(placed), placed.used?.name].flatMap((name) => (name ? [{ name, token }] : [])),
  );
  called.sort((a, b) => b.name.length - a.name.length);
  return (subject) => {
    const own = paths.find(({ path }) => startsWith(subject, path));
    if (own) return tokens.get(own)! + withoutNames(subject.slice(own.path.length), called);
    return withoutNames(subject, called);
  };
}

/** Whether a path is a subject or leads to it. */
const startsWith = (subject: string, path: string): boolean =>
  subject.startsWith(path) && !/^[^.:\s[]/.test(subject.slice(path.length));

interface Called {
  readonly name: string;
  readonly token: string;
}

/** Names stand in a subject as whole words: `expect.drives.scratch.read`, `steps.fit scratch`. */
function withoutNames(subject: string, called: readonly Called[]): string {
  let text = subject;
  for (const { name, token } of called) {
    for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + 1)) {
      const [before, after] = [text[at - 1], text[at + name.length]];
      if (!ends(before) || !ends(after)) continue;
      text = text.slice(0, at) + token + text.slice(at + name.length);
      at += token.length;
    }
  }
  return text;
}

const ends = (character: string | undefined): boolean => character === undefined || /[.,:;’\s()[\]]/.test(character);

/** Each part by its role and where it goes; those that stand alike are counted in the order of the file. */
export function identities(build: Build): ReadonlyMap<Placed, string> {
  const seen = new Map<string, number>();
  const tokens = new Map<Placed, string>();
  for (const placed of build.all()) {
    const at = placed.at as unknown as Record<string, { readonly text?: string } | undefined>;
    const where = placeKeys.flatMap((key) => (at[key]?.text ? [`${key}=${at[key].text}`] : []))[0] ?? '';
    const key = `‹${placed.role} ${where}`;
    const nth = (seen.get(key) ?? 0) + 1;
    seen.set(key, nth);
    tokens.set(placed, `${key}#${nth}›`);
  }
  return tokens;
}

export const nameOf = ({ at }: Placed): string | undefined =>
  (at as { readonly name?: { readonly value?: string } }).name?.value;

/** Two FNV-1a sums of 32 bits side by side, over UTF-16 units; nothing here is secret. */
function digest(text: string): string {
  let a = 0x811c9dc5;
  let b = 0xc9dc5118;
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    a = Math.imul(a ^ unit, 0x01000193);
    b = Math.imul(b ^ (unit + i), 0x01000193) ^ (b >>> 15);
  }
  return hex(a) + hex(b);
}

const hex = (value: number): string => (value >>> 0).toString(16).padStart(8, '0');
