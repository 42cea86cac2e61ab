// What a picture of the bench sheet is, and what each one is drawn from.
import type { Build } from '../../../core/build/build';
import type { Finding } from '../../../core/judge/finding';
import type { Kept } from '../kept';
import type { Belongs } from './marks';

export type PictureId = 'power' | 'lanes' | 'clearance' | 'heat' | 'displays';

export interface Picture {
  readonly id: PictureId;
  readonly title: string;
  /** The same facts as lines of text: the text alternative, and the form in Markdown. */
  readonly words: readonly string[];
  readonly svg: string;
}

export interface Drawer {
  /** The checks of which it shows findings. */
  readonly belongs: Belongs;
  /** Draws one picture; undefined where the build has nothing of what it shows. */
  readonly draw: (build: Build, findings: readonly Finding[], kept: Kept) => Picture | undefined;
}
