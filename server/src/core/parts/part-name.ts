// Names of part files: what a build writes after `use:`, and the paths that such a name stands for. Looking up and
// listing both go by these, so that what is offered is found.

const ending = '.part.yaml';

/** Two or more steps, none of them empty, hidden or dotted, without blanks or what a path might be led astray by. */
const shape = /^[^\\:\p{Cc}\s/.][^\\:\p{Cc}\s/]*(?:\/[^\\:\p{Cc}\s/.][^\\:\p{Cc}\s/]*)+$/u;

/** Whether a build may name a part so. */
export const isPartName = (name: string): boolean => shape.test(name);

/** The path of a part’s file in a parts folder; undefined where the name is none. */
export function partPath(folder: string, name: string): string | undefined {
  return isPartName(name) ? `${folder}/${name}${ending}` : undefined;
}

/** The name of the part whose file lies at a path, looked up in a parts folder; undefined where none would find it. */
export function partNameAt(folder: string, path: string): string | undefined {
  const name = path.slice(folder.length + 1, -ending.length);
  return partPath(folder, name) === path ? name : undefined;
}

/** Whether files in a folder can bear a part’s name; the folder by its path below the parts folder. */
export const mayHoldParts = (below: string): boolean => isPartName(`${below}/part`);

/** The name that a path to a part file stands for: `./parts/calder/c7.part.yaml` is `calder/c7`. */
export const nameOfPath = (path: string): string =>
  path
    .replaceAll('\\', '/')
    .replace(/\.ya?ml$/i, '')
    .replace(/\.part$/i, '')
    .replace(/^(?:\.{1,2}\/)+/, '')
    .replace(/^parts\//, '');
