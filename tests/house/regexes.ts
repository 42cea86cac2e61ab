// Every regular expression of the sources: as literals, and as built while modules load.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseAst } from 'vitest/node';

export interface Expression {
  readonly pattern: string;
  readonly flags: string;
  readonly where: string;
}

const root = join(__dirname, '../..');

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return sources(path);
    return entry.name.endsWith('.ts') && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

function literals(path: string): Expression[] {
  const text = readFileSync(join(root, path), 'utf8');
  const found: Expression[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    const { regex, start } = node as { regex?: Expression; start?: number };
    if (regex) found.push({ ...regex, where: `${path}:${text.slice(0, start).split('\n').length}` });
    else Object.values(node).forEach(visit);
  };
  visit(parseAst(text, { lang: 'ts' }, path));
  return found;
}

/** Loads the modules that build expressions, and keeps what they build. */
async function built(path: string): Promise<Expression[]> {
  const found: Expression[] = [];
  const Plain = globalThis.RegExp;
  globalThis.RegExp = new Proxy(Plain, {
    construct(target, [pattern, flags = '']: [string, string?]) {
      found.push({ pattern, flags, where: path });
      return new target(pattern, flags);
    },
  });
  try {
    await import(join(root, path));
  } finally {
    globalThis.RegExp = Plain;
  }
  return found;
}

export const builders = (): string[] =>
  [...sources('server/src'), ...sources('client/src')].filter((path) =>
    readFileSync(join(root, path), 'utf8').includes('RegExp('),
  );

/** Each expression once. */
export async function expressions(): Promise<Expression[]> {
  const all = [...sources('server/src'), ...sources('client/src')].flatMap(literals);
  for (const path of builders()) all.push(...(await built(path)));
  return [...new Map(all.map((one) => [`/${one.pattern}/${one.flags}`, one])).values()];
}
