// Which findings of a judgement are known: matched with what was recorded, as two states of a file are matched.
import type { Build } from '../core/build/build';
import { lackOf, type KnownFinding } from '../core/build/known-findings';
import type { Accepted, Finding, Judgement, KnownBy } from '../core/judge/finding';
import { grades } from '../core/manifest/house-file';
import { fingerprints } from './fingerprint';
import { amountsOf, growth } from './growth';
import { matchFindings } from './match';

/**
 * The judgement with what is known of it: such a finding is accepted by the record that speaks of it, unless it is
 * worse than that, the record’s day is past, it could hurt someone, or it says that something was not read.
 */
export function withKnown(
  judgement: Judgement,
  build: Build | undefined,
  records: readonly KnownFinding[],
  today: string,
): Judgement {
  const counting = records.filter((record) => lackOf(record) === undefined);
  if (counting.length === 0) return judgement;
  const prints = fingerprints(judgement.findings, build);
  const found = judgement.findings.map((finding) => ({
    finding,
    id: finding.id,
    subject: finding.subject,
    text: finding.said.text,
    fingerprint: prints.get(finding)!,
  }));
  const { pairs, gone } = matchFindings(counting, found);
  const by = new Map(pairs.map(([record, { finding }]) => [finding, knownBy(record, finding, today)]));
  return {
    ...judgement,
    findings: judgement.findings.map((finding) => marked(finding, by.get(finding))),
    ...(gone.length > 0 ? { cleared: gone } : {}),
  };
}

function marked(finding: Finding, known: KnownBy | undefined): Finding {
  if (!known || finding.grade === 'harm' || finding.check.unread || finding.accepted) return finding;
  return known.state === 'counts' ? { ...finding, known, accepted: asAccepted(known.record!) } : { ...finding, known };
}

const knownBy = (record: KnownFinding, finding: Finding, today: string): KnownBy => ({
  state: stateOf(record, finding, today),
  by: record.by,
  until: record.until,
  record,
});

function stateOf(record: KnownFinding, { grade, measure }: Finding, today: string): KnownBy['state'] {
  const isWorse = grades.indexOf(grade) < grades.indexOf(record.grade);
  const isGrown = grade === record.grade && growth(record.past, amountsOf(measure)) > 0;
  if (isWorse || isGrown) return 'worse';
  return record.until <= today ? 'past' : 'counts';
}

function asAccepted({ by, until, stated, doc }: KnownFinding): Accepted {
  const since = stated.since.value;
  const atMost = stated.past.text;
  return {
    because: `It stood ${since === undefined ? 'before' : `when findings were recorded on ${since}`}, in ${doc.name}.`,
    ...(atMost ? { atMost } : {}),
    until,
    by,
  };
}
