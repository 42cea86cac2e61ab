// Steps in words of the writer’s own.
import type { Doc } from '../parts/doc';

/** Whether a text names a step that the build’s list has in words of its writer’s own. */
export function isOwnStep(doc: Doc, text: string): boolean {
  const steps = doc.topValue('steps');
  if (steps?.type !== 'list') return false;
  return steps.items.some((item) => {
    const does = item.type === 'map' ? item.get('do')?.value : item;
    return does?.type === 'scalar' && does.text.trim().toLowerCase() === text.trim().toLowerCase();
  });
}
