// Symbols of a workspace: its builds, its parts, and the names that builds give to parts.
import { kindOfPart } from '../core/build/placed';
import { visible, type Span } from '../core/text';
import type { Node } from '../core/yaml';
import { symbolKinds } from './shapes';
import type { SymbolInformation } from './symbols';
import { namedParts, type Named } from './subject';

/** Whether the signs of a query stand in a name in their order, whatever their case; as editors expect it. */
export function matches(name: string, query: string): boolean {
  const wanted = [...query.toLowerCase()];
  let at = 0;
  for (const sign of name.toLowerCase()) if (sign === wanted[at]) at++;
  return at >= wanted.length;
}

/** The symbols of one file whose names answer a query. */
export function symbolsMatching(file: Named, query: string): SymbolInformation[] {
  const { doc, build, partName } = file;
  const make = (name: string, kind: number, span: Span, containerName: string): SymbolInformation => ({
    name: visible(name),
    kind,
    location: { uri: file.uriOf(doc), range: doc.lines.rangeOf(span) },
    containerName: visible(containerName),
  });
  const start = { start: 0, end: 0 };
  if (doc.kind === 'part') {
    const model = doc.topText('model');
    const name = partName ?? doc.name;
    const { span } = model ?? doc.topText('kind') ?? { span: start };
    const answers = matches(name, query) || (model !== undefined && matches(model.text, query));
    return answers ? [make(name, symbolKinds.object, span, kindOfPart(doc) ?? 'part')] : [];
  }
  if (!build) return [];
  const title = doc.topText('build');
  const called = title?.text ?? doc.name;
  const found = [called, doc.name].some((one) => matches(one, query))
    ? [make(called, symbolKinds.file, title?.span ?? start, doc.name)]
    : [];
  for (const { at, role } of namedParts(build)) {
    const { value, node } = (at as { name: { value?: string; node?: Node } }).name;
    if (value !== undefined && node && matches(value, query))
      found.push(make(value, symbolKinds.field, node.span, `${called} · ${role}`));
  }
  return found;
}
