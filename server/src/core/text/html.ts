// Text from a file as HTML shows it: the one place that escapes for HTML, between tags and in quoted attributes alike.
import { visible } from './escape';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text that is shown as it stands; what cannot be seen is written as `\u{…}`. */
export const htmlText = (text: string): string =>
  visible(text).replace(/[&<>"']/g, (character) => entities[character]!);
