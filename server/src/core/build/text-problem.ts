// What is wrong with a file’s text by itself, whoever finds it.
import type { ScalarProblemCode } from '../parts/scalar';
import type { Edit, Span } from '../text';
import type { ProblemCode } from '../yaml';

export type TroubleCode = ScalarProblemCode | ProblemCode | OwnTrouble;
type OwnTrouble = 'unknown-key' | 'kind-unknown' | 'of-another-tool' | 'sheet-pasted';

/** One thing that is wrong with a file's text by itself. */
export interface TextProblem {
  readonly code: TroubleCode;
  readonly message: string;
  readonly span: Span;
  readonly path: string;
  /** Changes that mend it, each with its title; one only where there is one reading. */
  readonly mends: readonly { readonly title: string; readonly edits: readonly Edit[] }[];
}
