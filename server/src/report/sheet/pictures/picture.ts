// What a picture of the bench sheet is, and what each one is drawn from.
import type { Build } from '../../../core/build/build';
import type { Finding } from '../../../core/judge/finding';

export type PictureId = 'power' | 'lanes' | 'clearance' | 'heat' | 'displays';

export interface Picture {
  readonly id: PictureId;
  readonly title: string;
  /** The same facts as lines of text: the text alternative, and the form in Markdown. */
  readonly words: readonly string[];
  readonly svg: string;
}

/** Draws one picture; undefined where the build has nothing of what it shows. */
export type Drawer = (build: Build, findings: readonly Finding[]) => Picture | undefined;
