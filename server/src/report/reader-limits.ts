// What the readers of our formats take at most, each with where they publish it. What is over is cut by us, the worst
// kept, and the report says so: a reader cuts without a word.

interface ReaderLimit {
  readonly most: number;
  readonly source: string;
}

const scanning = 'GitHub Docs, “SARIF results exceed one or more limits”';
const unitTests = 'GitLab Docs, “Unit test reports”, file requirements';

export const readerLimits = {
  /** Annotations of a kind (error, warning, notice) of one step; with three kinds the 50 of a job are kept, too. */
  annotationsOfKind: { most: 10, source: 'actions/toolkit, docs/problem-matchers.md, “Limitations”' },
  annotationsOfJob: { most: 50, source: 'actions/toolkit, docs/problem-matchers.md, “Limitations”' },
  /** 25,000 are refused; past these the reader shows none. */
  sarifResults: { most: 5_000, source: `${scanning}, results per run` },
  /** Bytes; the reader means them compressed, and here they are counted as they are. */
  sarifBytes: { most: 10_000_000, source: 'GitHub Docs, “SARIF results file is too large”' },
  sarifLocations: { most: 100, source: `${scanning}, locations per result` },
  sarifFlowLocations: { most: 1_000, source: `${scanning}, thread flow locations per result` },
  sarifTags: { most: 10, source: `${scanning}, tags per rule` },
  junitBytes: { most: 30_000_000, source: unitTests },
  /** 250,000 objects are read of one file; a case comes to some ten. */
  junitCases: { most: 20_000, source: 'GitLab, “XML exceeds permitted complexity: 250000 objects”' },
  qualityBytes: { most: 100_000_000, source: 'GitLab Docs, “Maximum artifacts size”, default' },
  commentCharacters: { most: 65_536, source: 'GitHub REST API, “body is too long (maximum is 65536 characters)”' },
} as const satisfies Record<string, ReaderLimit>;
