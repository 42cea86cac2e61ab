// Records what a run finds as known: keeps what still stands, makes it smaller where it got better, drops what is
// found no more, and takes in what is open where a name and a day are given. Harm never.
import type { KnownFinding } from '../core/build/known-findings';
import type { Build } from '../core/build/build';
import { atLeastAsBad } from '../core/build/workspace-config';
import { weighedValue } from '../core/figures/measure';
import type { Finding, Judgement } from '../core/judge/finding';
import type { Grade } from '../core/manifest/house-file';
import { compareTexts } from '../core/text';
import { fingerprints } from './fingerprint';

/** One finding as it is written down. */
export interface Recorded {
  readonly file: string;
  readonly title: string | undefined;
  readonly block: number | undefined;
  readonly id: string;
  readonly subject: string;
  readonly grade: Grade;
  readonly past: string;
  readonly text: string;
  readonly by: string;
  readonly since: string;
  readonly until: string;
  readonly fingerprint: string;
}

/** Who lets stand what comes new, and until when; absent: nothing new is taken in. */
export interface Answering {
  readonly by: string;
  readonly until: string;
}

/** One judged file, or one fenced block of a guide. */
export interface JudgedFile {
  readonly file: string;
  readonly block: number | undefined;
  readonly build: Build | undefined;
  readonly judgement: Judgement;
}

export class Recording {
  readonly counts = { taken: 0, kept: 0, dropped: 0, open: 0 };
  private readonly all: Recorded[] = [];
  private readonly spokenFor = new Set<string>();
  private readonly seen = new Set<string>();
  private readonly own: ReadonlySet<string>;

  /** `before`: what the file said so far. */
  constructor(
    private readonly before: readonly KnownFinding[],
    private readonly answering: Answering | undefined,
    private readonly from: Grade,
    private readonly today: string,
  ) {
    this.own = new Set(before.map(keyOf));
  }

  /** Takes a judged file in; its judgement with what is known by this record. */
  take(judged: JudgedFile): Judgement {
    const { judgement, build, file } = judged;
    this.seen.add(file);
    const prints = fingerprints(judgement.findings, build);
    const findings = judgement.findings.map((finding) => this.finding(finding, judged, prints.get(finding)!));
    for (const key of (judgement.cleared ?? []).map(keyOf)) {
      if (!this.own.has(key) || this.spokenFor.has(key)) continue;
      this.spokenFor.add(key);
      this.counts.dropped++;
    }
    return { ...judgement, findings };
  }

  private finding(finding: Finding, { file, block, build }: JudgedFile, fingerprint: string): Finding {
    const { known, grade, accepted, check, measure } = finding;
    const record = known?.record && this.own.has(keyOf(known.record)) ? known.record : undefined;
    if (grade === 'harm' || check.unread || (accepted && !record)) return finding;
    const isOpen = known?.state !== 'counts';
    const isAsked = atLeastAsBad(grade, this.from);
    if (isOpen && !(this.answering && isAsked)) {
      if (isAsked) this.counts.open++;
      return finding;
    }
    if (record) this.spokenFor.add(keyOf(record));
    this.counts[isOpen ? 'taken' : 'kept']++;
    const { by, until } = isOpen ? this.answering! : record!;
    const since = isOpen ? this.today : (record!.stated.since.value ?? this.today);
    const title = build?.file.build.value;
    const past = measure ? String(weighedValue(measure)) : '';
    const text = finding.said.text;
    this.all.push({
      ...{ file, title, block, id: finding.id, subject: finding.subject, grade, past, text },
      ...{ by, since, until, fingerprint },
    });
    return {
      ...finding,
      known: { state: 'counts', by, until },
      accepted: { because: 'It is recorded as known.', by, until },
    };
  }

  /** All that is known now; `isGone` tells of a file that was not judged whether it is there no more. */
  records(isGone: (file: string) => boolean): readonly Recorded[] {
    const left = this.before.filter((record) => !this.spokenFor.has(keyOf(record)));
    const kept = left.filter((record) => this.seen.has(record.file) || !isGone(record.file));
    this.counts.dropped += left.length - kept.length;
    return [...this.all, ...kept.map(asRecorded)].sort(
      (a, b) =>
        compareTexts(a.file, b.file) ||
        (a.block ?? 0) - (b.block ?? 0) ||
        compareTexts(a.id, b.id) ||
        compareTexts(a.subject, b.subject) ||
        compareTexts(a.fingerprint, b.fingerprint),
    );
  }
}

/** A record by what it says: its file may be read more than once. */
const keyOf = ({ doc, file, block, id, subject, fingerprint, text }: KnownFinding): string =>
  [doc.name, file, block, id, subject, fingerprint, text].join('\n');

function asRecorded(record: KnownFinding): Recorded {
  const { file, title, block, id, subject, grade, text, by, until, fingerprint, stated } = record;
  const since = stated.since.value ?? '';
  return { file, title, block, id, subject, grade, past: stated.past.text, text, by, since, until, fingerprint };
}
