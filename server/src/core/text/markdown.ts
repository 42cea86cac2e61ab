// Text from a file as Markdown shows it: the one place that escapes for Markdown, GitHub's kind included.
import { visible } from './escape';

/** Prose that is shown as it stands: no emphasis, link, address, entity, HTML or table. */
export function markdownText(text: string): string {
  return visible(text)
    .replace(/[\\`*_[\]<>&~|$@]/g, '\\$&')
    .replace(/:(?=\/\/)/g, '\\:')
    .replace(/(www)\.|\.(?=\p{L})/giu, '$1\\.');
}

/** Stands between two characters and is not seen. As an entity, since text that cannot be seen is otherwise refused. */
const between = '&#8203;';

/** What may be the start of a commit’s id. */
const isRevision = /^[0-9a-f]{7,64}$/i;

/**
 * The same in which a forge finds nobody to notify and nothing to refer to. These are looked for in what is shown,
 * where an escape is gone: something stands inside each. Source: GitHub Docs, “Autolinked references and URLs”; GitLab
 * Docs, “GitLab Flavored Markdown”, references.
 */
export function markdownQuiet(text: string): string {
  return markdownText(text)
    .replace(/[@#!$&~%^](?=\\?[\p{L}\p{N}_"])/gu, `$&${between}`)
    .replace(/\\\[(?=\\?[a-z_])/gi, `$&${between}`)
    .replace(/\b(G[HL]-)(?=\d)/gi, `$1${between}`)
    .replace(/[\p{L}\p{N}]{7,}/gu, (word) =>
      isRevision.test(word) ? word.replace(/....(?=.)/g, `$&${between}`) : word,
    )
    .replace(/\\:(?=\/\/)/g, `:${between}`)
    .replace(/www(?=\\\.)/gi, `$&${between}`);
}

/** A line of escaped prose: what begins a list, heading or rule only at the start of a line is escaped only there. */
export function markdownLine(escaped: string): string {
  return escaped
    .trimStart()
    .replace(/^[-+=#]/, '\\$&')
    .replace(/^(\d+)([.)])/, '$1\\$2');
}

/** A code span whose fence is longer than any run of backticks in it. */
export function markdownCode(text: string): string {
  const shown = visible(text);
  if (shown.trim() === '') return markdownText(`"${shown}"`);
  const fence = '`'.repeat(longestRun(shown) + 1);
  const pad = shown.startsWith('`') || shown.endsWith('`') ? ' ' : '';
  return fence + pad + shown + pad + fence;
}

/** A fenced block of lines. */
export function markdownFence(text: string, language: string): string {
  const fence = '`'.repeat(Math.max(3, longestRun(text) + 1));
  const lines = text.replace(/^\n|\n$/g, '').split(/\r\n|\r|\n/);
  return `${fence}${language}\n${lines.map(visible).join('\n')}\n${fence}`;
}

const longestRun = (text: string): number => Math.max(0, ...(text.match(/`+/g) ?? []).map((run) => run.length));
