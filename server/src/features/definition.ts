// Definition: from a name to where the thing that it stands for has it: a part file, a line of one or of the build, a
// finding, the page on a check.
import { thingsNamed } from '../core/build/named-things';
import { referenceAt } from '../core/build/references';
import { checks } from '../core/checks/all';
import { placeAt } from '../core/build/path-places';
import { emptyRange, pageAddress, type Location, type Position, type View } from './shapes';
import { subjectAt } from './subject';

/**
 * Where the thing named at a place is described; where the place itself gives the name, that place. Undefined where
 * nothing is named, or nothing has that name. `pages`: the scheme under which the client opens pages on checks.
 */
export function definition(view: View, position: Position, pages?: string): Location | undefined {
  const { doc, build } = view;
  const offset = doc.lines.offsetAt(position);
  const reference = referenceAt(doc, offset);
  if (!reference) return ownPlace(view, offset);
  const { to, name, fact } = reference;
  if (to.includes('finding')) return placeOfFinding(view, name);
  if (to.includes('check')) return pageOf(name, pages);
  const places = thingsNamed(build ?? doc, to, name).flatMap(({ place }) => place ?? []);
  const place = places.find((one) => one.doc !== doc || one.span.start !== fact.node.span.start);
  return place && { uri: view.uriOf(place.doc), range: place.doc.lines.rangeOf(place.span) };
}

/** A name where it is given is its own definition: an editor then shows what uses it. */
function ownPlace(view: View, offset: number): Location | undefined {
  const subject = subjectAt(view, offset);
  return subject?.at && !subject.isOwnStep
    ? { uri: view.uriOf(view.doc), range: view.doc.lines.rangeOf(subject.at) }
    : undefined;
}

function pageOf(id: string, pages: string | undefined): Location | undefined {
  return pages && checks.some((check) => check.id === id)
    ? { uri: pageAddress(pages, id), range: emptyRange }
    : undefined;
}

/** The place of a finding, as an acceptance names it; where nothing is found there any more, what stands there. */
function placeOfFinding({ doc, judgement, uriOf }: View, path: string): Location | undefined {
  const found = judgement.findings.find(({ subject, underline }) => subject === path && underline.doc === doc);
  const place = found || !doc.parsed.root ? undefined : placeAt(doc.parsed.root, path);
  const span = found?.underline.span ?? (place?.rest === '' ? place.span : undefined);
  return span && { uri: uriOf(doc), range: doc.lines.rangeOf(span) };
}
