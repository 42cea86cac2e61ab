// Findings as a code quality report, one entry a finding, as they come. Source: GitLab Docs, “Code Quality”, section
// on the report format.
import type { Grade } from '../core/manifest/house-file';
import { visible } from '../core/text';
import type { Language } from '../core/words/language';
import { fingerprintIn, fingerprints } from '../review/fingerprint';
import { findingLines } from './finding-text';
import { toJson } from './json';
import { Room, utf8Bytes } from './capped';
import { readerLimits } from './reader-limits';
import { keyOf, listed, type FormatOptions, type Section } from './section';

type Severity = 'info' | 'minor' | 'major' | 'critical' | 'blocker';

const severities: Record<Grade, Severity> = {
  harm: 'blocker',
  stop: 'critical',
  shortfall: 'major',
  note: 'minor',
  unknown: 'info',
};

interface Entry {
  readonly check: string;
  readonly severity: Severity;
  readonly text: string;
  readonly path: string;
  /** Counted from one. */
  readonly line: number;
  readonly fingerprint: string;
}

export class CodeQuality {
  private readonly room = new Room(readerLimits.qualityBytes.most - keptFree);
  private between = '\n';

  section(section: Section, look: FormatOptions): string {
    const { judgement, build, since } = section;
    const prints = fingerprints(since?.all ?? judgement.findings, build);
    const key = keyOf(section, look);
    return listed(section, { from: look.from, accepted: false })
      .map((finding) => {
        const { underline, id, grade } = finding;
        const entry = {
          check: id,
          severity: severities[grade],
          text: findingLines(finding, section.fixes, look.language).join(' '),
          path: look.shown(underline.doc),
          line: underline.doc.lines.positionAt(underline.span.start).line + 1,
          fingerprint: fingerprintIn(key, prints.get(finding)!),
        };
        return this.entry(entry, grade === 'harm' || grade === 'stop');
      })
      .join('');
  }

  /** What was not read, and what did not find room. */
  closing(
    troubles: readonly { readonly path: string; readonly trouble: string }[],
    notListed: number,
    language: Language,
  ): string {
    const own = (check: string, path: string, text: string): string =>
      this.entry(
        { check, severity: 'blocker', text, path, line: 1, fingerprint: fingerprintIn(path, `${check}\n${text}`) },
        true,
      );
    const unread = troubles.map(({ path, trouble }) => own('not-read', path === '' ? '.' : path, trouble));
    const cut = this.room.cut + notListed;
    const more = cut > 0 ? own('not-listed', '.', language.words`Findings that are not listed: ${cut}.`) : '';
    return `${unread.join('')}${more}\n]\n`;
  }

  private entry({ check, severity, text, path, line, fingerprint }: Entry, isBad: boolean): string {
    const json = toJson({
      description: visible(text),
      check_name: check,
      fingerprint,
      severity,
      location: { path, lines: { begin: line } },
    });
    if (check !== 'not-listed' && !this.room.takes(utf8Bytes(json) + 2, isBad)) return '';
    const before = this.between;
    this.between = ',\n';
    return before + json;
  }
}

/** For the entry that says what is not listed. */
const keptFree = 2_000;
