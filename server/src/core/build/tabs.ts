// A text indented by tabs, mended.
import type { Edit } from '../text';

/** Indentation in spaces: two a tab, or four where lines indented by spaces stand beside. */
export function withoutTabs(text: string): { readonly title: string; readonly edits: readonly Edit[] }[] {
  const tabbed = [...text.matchAll(/^ *\t[ \t]*/gm)];
  return [2, 4].map((width) => ({
    title: `Indent by spaces, ${width} for each tab`,
    edits: tabbed.map(({ 0: blank, index: start }) => ({
      span: { start, end: start + blank.length },
      text: blank.replaceAll('\t', ' '.repeat(width)),
    })),
  }));
}
