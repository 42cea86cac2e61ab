// The stable keys of things of a build, and which findings speak of each.
import type { Build } from '../../core/build/build';
import { statedSteps } from '../../core/figures/steps';
import type { Finding } from '../../core/judge/finding';
import type { Doc, StatedAt } from '../../core/parts/doc';
import { nameOfPath } from '../../core/parts/part-name';
import type { PlaceKey } from './model';

export class Places {
  private constructor(
    private readonly build: Build,
    private readonly names: ReadonlyMap<Doc, string>,
    private readonly found: Found,
    /** All that its answers depend on beside the build, as text. */
    readonly told: string,
  ) {}

  /** `findings`: those that bear numbers on the sheet, in their order from one. */
  static of(build: Build, findings: readonly Finding[]): Places {
    const names = new Map(build.all().flatMap(({ used }) => (used?.file ? [[used.file, used.name] as const] : [])));
    const own = new Places(build, names, new Found([]), '');
    const subjects = findings.map(({ subject }) => own.ofSubject(subject));
    const files = [...names].map(([{ name }, as]) => `${name}\n${as}`);
    return new Places(build, names, new Found(subjects), [...files, '', ...subjects].join('\n'));
  }

  /** The same for a part of the sheet that notes what is read of the build. */
  seenIn(build: Build): Places {
    return new Places(build, this.names, this.found, this.told);
  }

  /** A path in a file: the build’s own as it is, another file’s behind that file’s name. */
  key({ doc, path }: Pick<StatedAt, 'doc' | 'path'>): PlaceKey {
    return doc === this.build.doc ? path : `${this.nameOf(doc)}::${path}`;
  }

  /** The same in words: `draw.peak of orrery/g70`. */
  words({ doc, path }: Pick<StatedAt, 'doc' | 'path'>): string {
    return doc === this.build.doc ? path : `${path} of ${this.nameOf(doc)}`;
  }

  private nameOf(doc: Doc): string {
    return this.names.get(doc) ?? (doc.kind === 'part' ? nameOfPath(doc.name) : doc.name);
  }

  /** A finding’s subject: an aspect of a place is found at that place, a step by its number. */
  ofSubject(subject: string): PlaceKey {
    const steps = subject.startsWith('steps.') ? statedSteps(this.build) : [];
    const [step] = steps.filter(({ path }) => isWithin(subject, path)).sort((a, b) => b.path.length - a.path.length);
    if (step) return `steps.${step.index}${subject.slice(step.path.length)}`;
    const aspect = subject.indexOf(':');
    return aspect < 0 ? subject : subject.slice(0, aspect);
  }

  /** The numbers of the findings at some places, or below them. */
  findingsAt(...places: readonly PlaceKey[]): readonly number[] {
    const found = places.flatMap((place) => this.found.at(place) ?? []);
    return places.length > 1 && found.length > 1 ? [...new Set(found)].sort((a, b) => a - b) : found;
  }
}

/** Findings by the places that they speak of, and by all that those lie below; laid out once somebody asks. */
class Found {
  private numbers: Map<PlaceKey, number[]> | undefined;

  constructor(private readonly subjects: readonly PlaceKey[]) {}

  at(place: PlaceKey): readonly number[] | undefined {
    return (this.numbers ??= this.byPlace()).get(place);
  }

  private byPlace(): Map<PlaceKey, number[]> {
    const numbers = new Map<PlaceKey, number[]>();
    this.subjects.forEach((subject, i) => {
      for (const place of placesOver(subject)) {
        const known = numbers.get(place);
        if (known) known.push(i + 1);
        else numbers.set(place, [i + 1]);
      }
    });
    return numbers;
  }
}

/** A place and all that it lies below: `parts`, `parts.drives`, `parts.drives[1]`. */
function placesOver(place: PlaceKey): PlaceKey[] {
  const over = [place];
  for (let i = 0; i < place.length; i++) if (place[i] === '.' || place[i] === '[') over.push(place.slice(0, i));
  return over;
}

const isWithin = (subject: string, place: PlaceKey): boolean =>
  subject === place || subject.startsWith(`${place}.`) || subject.startsWith(`${place}[`);
