// Places of the bench sheet: from a thing on it to its line in the build, then to where it is described; and from a
// line to what stands for it on the sheet.
import type { Build } from '../core/build/build';
import { pathsOfLine, placeAt, type PathPlace } from '../core/build/path-places';
import { nameOfPath } from '../core/parts/part-name';
import type { Doc } from '../core/parts/doc';
import { definition } from './definition';
import type { Location, View } from './shapes';

type BuildView = View & { readonly build: Build };

/** What stands between the name of a part file and a path in it. */
const inFile = '::';

interface Keyed {
  readonly doc: Doc;
  readonly path: string;
  /** The name of the file, where it is not the build itself. */
  readonly file?: string;
}

/** Where the thing of a key is used in the build; with `described`, where it is described. */
export function placeOfKey(view: BuildView, key: string, described: boolean): Location | undefined {
  const keyed = readKey(view.build, key);
  const own = keyed?.doc.parsed.root && placeAt(keyed.doc.parsed.root, keyed.path);
  if (keyed?.file !== undefined) {
    const inPart = own ? locate(view, keyed.doc, own) : startOf(view, keyed.doc);
    return described ? inPart : (useOf(view, keyed.file) ?? inPart);
  }
  if (!own) return undefined;
  const use = locate(view, view.doc, own);
  return described ? (describedAt(view, own) ?? use) : use;
}

function readKey(build: Build, key: string): Keyed | undefined {
  const at = key.indexOf(inFile);
  if (at < 0) return { doc: build.doc, path: key };
  const file = key.slice(0, at);
  const doc = filesOf(build).find(([name]) => name === file)?.[1];
  return doc && { doc, path: key.slice(at + inFile.length), file };
}

/** The files that a build rests on, by the names that keys give them. */
function filesOf(build: Build): readonly (readonly [string, Doc])[] {
  const used = build.all().flatMap(({ used }) => (used?.file ? [[used.name, used.file] as const] : []));
  const house = build.house.doc;
  return house ? [...used, [house.name, house]] : used;
}

const locate = ({ uriOf }: View, doc: Doc, { span }: PathPlace): Location => ({
  uri: uriOf(doc),
  range: doc.lines.rangeOf(span),
});

const startOf = ({ uriOf }: View, doc: Doc): Location => ({
  uri: uriOf(doc),
  range: doc.lines.rangeOf({ start: 0, end: 0 }),
});

/** Where the build names a part file. */
function useOf({ build, uriOf }: BuildView, file: string): Location | undefined {
  const used = build.all().find((placed) => placed.used?.name === file);
  return used && { uri: uriOf(build.doc), range: build.doc.lines.rangeOf(used.used!.span) };
}

/** The keys by which an entry names what it is about, the first that is there. */
const naming = ['use', 'part', 'slot', 'port', 'mount'];

/** Where what a place of the build names is described. */
function describedAt(view: BuildView, { node }: PathPlace): Location | undefined {
  const named =
    node.type === 'map'
      ? naming.flatMap((key) => node.get(key)?.value ?? [])
      : node.type === 'list'
        ? node.items.slice(0, 1)
        : [node];
  for (const { span } of named) {
    const found = definition(view, view.doc.lines.positionAt(span.start));
    if (found) return found;
  }
  return undefined;
}

export interface SheetPlaces {
  /** Keys of what begins on the line. */
  readonly on: string[];
  /** Keys of what the line lies in, the innermost first: for a sheet that has none of the others. */
  readonly around: string[];
}

/** The keys of a line of a file that a build rests on, or of its own text. */
export function placesOfLine({ build }: BuildView, doc: Doc, line: number): SheetPlaces {
  const paths = doc.parsed.root ? pathsOfLine(doc.parsed.root, doc.lines.lineSpan(line)) : { on: [], around: [] };
  if (doc === build.doc) return { on: [...paths.on], around: [...paths.around] };
  const name = filesOf(build).find(([, file]) => file === doc)?.[0] ?? nameOfPath(doc.name);
  const key = (path: string): string => name + inFile + path;
  const uses = build.all().filter(({ used }) => used?.file === doc);
  return { on: paths.on.map(key), around: [...paths.around.map(key), ...uses.map(({ path }) => path)] };
}
