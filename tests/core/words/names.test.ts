// Names that files give stay as they are in German, though they spell words of ours.
import { expect, it } from 'vitest';
import { fettle } from '../../support/command';
import { readSamples } from '../../support/samples';

const samples = Object.fromEntries([...readSamples().docs].map(([name, { text }]) => [name, text]));
const file = 'survey-desk.pcbuild.yaml';

/** The sample with its fast drive called otherwise, as the command prints it. */
async function printed(name: string, ...words: string[]): Promise<readonly string[]> {
  const text = samples[file]!.replaceAll('scratch', name);
  const { out } = await fettle({ ...samples, [file]: text }, '--language', 'de', ...words);
  return out.split('\n');
}

const nobodys = 'Qxqx';

// What stands beside a name and is the very same word is taken for the name, too: a drive called Drive is none of these.
it.each(['Acceptance', 'fan', 'Cooler or fan'])('a drive that is called %s', async (name) => {
  for (const words of [
    ['sheet', file, '--markdown'],
    ['check', file, '--format', 'comment', '--from', 'unknown'],
  ]) {
    const lines = new Set(await printed(name, ...words));
    const expected = (await printed(nobodys, ...words)).filter((line) => line.includes(nobodys));
    expect(expected.length).toBeGreaterThan(3);
    expect(expected.map((line) => line.replaceAll(nobodys, name)).filter((line) => !lines.has(line))).toEqual([]);
  }
});
