// All code actions of a range at once, where no one else waits for a turn.
import { codeActionSteps } from '../../server/src/features/code-actions';

type Asked = Parameters<typeof codeActionSteps>;
type Action = ReturnType<typeof codeActionSteps> extends Iterator<unknown, (infer A)[]> ? A : never;

export function codeActions(...asked: Asked): Action[] {
  const steps = codeActionSteps(...asked);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}
