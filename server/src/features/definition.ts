// Definition: from a name to where the thing that it stands for has it: a part file, a line of one, or of the build.
import { thingsNamed } from '../core/build/named-things';
import { referenceAt } from '../core/build/references';
import type { Location, Position, View } from './shapes';

/** Where the thing named at a place is described; undefined where nothing is named, or nothing has that name. */
export function definition(view: View, position: Position): Location | undefined {
  const { doc, build } = view;
  const reference = referenceAt(doc, doc.lines.offsetAt(position));
  if (!reference) return undefined;
  const { to, name, fact } = reference;
  if (to.includes('finding')) return placeOfFinding(view, name);
  const places = thingsNamed(build ?? doc, to, name).flatMap(({ place }) => place ?? []);
  const place = places.find((one) => one.doc !== doc || one.span.start !== fact.node.span.start);
  return place && { uri: view.uriOf(place.doc), range: place.doc.lines.rangeOf(place.span) };
}

/** The place of a finding, as an acceptance names it. */
function placeOfFinding({ doc, judgement, uriOf }: View, path: string): Location | undefined {
  const found = judgement.findings.find(({ subject, underline }) => subject === path && underline.doc === doc);
  return found && { uri: uriOf(doc), range: doc.lines.rangeOf(found.underline.span) };
}
