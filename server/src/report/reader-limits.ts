// What the readers of our formats take at most, each with where they publish it. What is over is cut by us, the worst
// kept, and the report says so: a reader cuts without a word.

interface ReaderLimit {
  readonly what: string;
  readonly most: number;
  readonly source: string;
}

const scanning = 'GitHub Docs, “SARIF results exceed one or more limits”';
const annotations = 'actions/toolkit, docs/problem-matchers.md, “Limitations”';

export const readerLimits = {
  annotationsOfKind: { what: 'annotations of a kind, of one step', most: 10, source: annotations },
  annotationsOfJob: { what: 'annotations of a job', most: 50, source: annotations },
  // 25,000 are refused; past these none is shown.
  sarifResults: { what: 'results of a SARIF run', most: 5_000, source: `${scanning}, results per run` },
  // The reader means them compressed; here they are counted as they are.
  sarifBytes: {
    what: 'bytes of a SARIF file',
    most: 10_000_000,
    source: 'GitHub Docs, “SARIF results file is too large”',
  },
  sarifLocations: { what: 'related places of a result', most: 100, source: `${scanning}, locations per result` },
  sarifFlowLocations: {
    what: 'steps of the working of a result',
    most: 1_000,
    source: `${scanning}, thread flow locations per result`,
  },
  junitBytes: {
    what: 'bytes of a file of JUnit XML',
    most: 30_000_000,
    source: 'GitLab Docs, “Unit test reports”, file requirements',
  },
  // 250,000 objects are read of one file; a case comes to some ten.
  junitCases: {
    what: 'cases of a file of JUnit XML',
    most: 20_000,
    source: 'GitLab, “XML exceeds permitted complexity: 250000 objects”',
  },
  qualityBytes: {
    what: 'bytes of a code quality report',
    most: 100_000_000,
    source: 'GitLab Docs, “Maximum artifacts size”, default',
  },
  commentCharacters: {
    what: 'characters of a comment',
    most: 65_536,
    source: 'GitHub REST API, “body is too long (maximum is 65536 characters)”',
  },
} as const satisfies Record<string, ReaderLimit>;
