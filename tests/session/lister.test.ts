// Listing keeps to its limits, says which it reached, and lets others have their turn.
import { describe, expect, it } from 'vitest';
import type { Listed } from '../../server/src/host/host';
import { limits } from '../../server/src/host/limits';
import { MemoryHost } from '../support/memory-host';
import { readFolder } from '../../server/src/host/node-folder';
import { Lister } from '../../server/src/session/lister';
import { walk } from '../../server/src/session/walk';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fettle } from '../support/command';

/** A tree without end: every folder holds one more, and a number of photographs. */
class Endless extends MemoryHost {
  lists = 0;
  constructor(private readonly photographs: number) {
    super([['a.pcbuild.yaml', 'format: 1\n']]);
  }

  override list(_: string, folder: string): readonly Listed[] {
    this.lists++;
    const files = Array.from({ length: this.photographs }, (__, i) => ({ name: `${i}.jpg`, kind: 'file' as const }));
    const depth = folder.split('/').length;
    return [...files, ...(depth < 40 ? ['a', 'b'].map((name) => ({ name, kind: 'folder' as const })) : [])];
  }
}

describe('a tree without end', () => {
  it('is left once so many entries were seen, which is said, and the run failed', async () => {
    const host = new Endless(20_000);
    const { troubles } = await walk(host, ['.']);
    expect(troubles).toEqual([
      {
        path: '',
        trouble: 'There are more than 1 000 000 entries of folders; the rest is left out. Name fewer folders.',
      },
    ]);
    expect(host.lists).toBeLessThan(60);
    expect((await fettle(new Endless(20_000), 'check')).status).toBe(2);
  });

  it('lets others have their turn', async () => {
    let pauses = 0;
    const pause = async (): Promise<void> => void pauses++;
    const lister = new Lister(new Endless(20_000), pause);
    for await (const _ of lister.below('', '', { enters: () => true, followsLinks: true }));
    expect(pauses).toBeGreaterThan(5);
  });
});

it('a folder that holds too much is not looked into, and says so', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-full-'));
  const { folderEntries } = limits;
  try {
    for (let i = 0; i < 5; i++) writeFileSync(join(folder, `${i}.jpg`), '');
    Object.assign(limits, { folderEntries: 4 });
    expect(readFolder(folder, folder)).toEqual({
      trouble: 'holds more than 100 000 entries, so it is not looked into; split it.',
    });
    Object.assign(limits, { folderEntries: 5 });
    expect(readFolder(folder, folder)).toHaveLength(5);
  } finally {
    Object.assign(limits, { folderEntries });
    rmSync(folder, { recursive: true, force: true });
  }
});
