// Boxes that were ticked: kept by what they say, so that a box of a block that is put in anew is ticked again only
// where it still asks for the same.
import type { PanelState } from '../sheet-messages';

/** So many builds are remembered. */
const mostBuilds = 20;

export class Ticks {
  private ticked: ReadonlyMap<string, ReadonlySet<string>>;
  private uri: string;

  constructor(
    private readonly main: HTMLElement,
    before: PanelState | undefined,
    private readonly keep: (state: PanelState) => void,
  ) {
    this.uri = before?.uri ?? '';
    this.ticked = new Map(Object.entries(before?.ticked ?? {}).map(([uri, keys]) => [uri, new Set(keys)]));
    main.addEventListener('change', () => this.note());
  }

  /** Puts the ticks of a build back. */
  restore(uri: string): void {
    if (this.uri !== uri) {
      this.uri = uri;
      this.save();
    }
    const ticked = this.ticked.get(uri);
    if (!ticked) return;
    for (const [key, box] of this.boxes()) box.checked = ticked.has(key);
  }

  private note(): void {
    const now = [...this.boxes()].filter(([, box]) => box.checked).map(([key]) => key);
    const others = [...this.ticked].filter(([uri]) => uri !== this.uri).slice(-mostBuilds);
    this.ticked = new Map([...others, ...(now.length > 0 ? [[this.uri, new Set(now)] as const] : [])]);
    this.save();
  }

  private save(): void {
    const ticked = Object.fromEntries([...this.ticked].map(([uri, keys]) => [uri, [...keys]]));
    this.keep({ uri: this.uri, ticked });
  }

  /** Every box by what it says; of those that say the same, by which of them it is. */
  private boxes(): ReadonlyMap<string, HTMLInputElement> {
    const boxes = new Map<string, HTMLInputElement>();
    for (const box of this.main.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')) {
      const said = wordsOf(box);
      let key = said;
      for (let i = 2; boxes.has(key); i++) key = `${said} (${i})`;
      boxes.set(key, box);
    }
    return boxes;
  }
}

/** What is to be done, and to what; not how it is counted, nor by which numbers it is spoken of. */
function wordsOf(box: HTMLInputElement): string {
  const row = box.closest('tr, li') ?? box.parentElement!;
  const heard = row.matches('tr')
    ? row.querySelectorAll('td')
    : row.querySelectorAll('label > span:not(.number), .things');
  const block = box.closest('main > *')?.id ?? '';
  return [block, ...[...heard].map(plainWords)].join('\n');
}

function plainWords(one: Element): string {
  const numbers = [...one.querySelectorAll('.reference')].map(({ textContent }) => textContent ?? '');
  const words = numbers.reduce((text, number) => text.replace(number, ''), one.textContent ?? '');
  return words.replace(/\s+/g, ' ').trim();
}
