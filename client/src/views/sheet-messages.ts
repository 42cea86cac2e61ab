// What the editor and the bench sheet’s panel say to each other, and whether a message has its shape.

export interface BlockPut {
  readonly id: string;
  readonly html: string;
}

export interface SheetShown {
  readonly type: 'sheet';
  /** The build’s address: boxes that were ticked belong to it. */
  readonly uri: string;
  /** All blocks in their order. */
  readonly order: readonly string[];
  /** Those that are new or changed at least. */
  readonly blocks: readonly BlockPut[];
  /** Whether it is the last good sheet of a text that cannot be read now. */
  readonly old: boolean;
}

/** The cursor’s line: keys of what begins on it, and of what it lies in. */
export interface Lit {
  readonly type: 'lit';
  readonly on: readonly string[];
  readonly around: readonly string[];
}

/** There is no sheet to show, and why. */
export interface NoSheet {
  readonly type: 'none';
  readonly why: string;
}

export type ToPanel = SheetShown | Lit | NoSheet;

/** `ready`: the panel shows nothing yet. `go`: to where the thing of a key stands. */
export type FromPanel = { readonly type: 'ready' } | { readonly type: 'go'; readonly place: string };

/** What a panel keeps over a reload of the window. */
export interface PanelState {
  readonly uri: string;
  /** Boxes that are ticked, by the address of their build. */
  readonly ticked: Readonly<Record<string, readonly string[]>>;
}

const longestKey = 4000;

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const isText = (value: unknown): value is string => typeof value === 'string';
const isTexts = (value: unknown): value is string[] => Array.isArray(value) && value.every(isText);
const isBlock = (value: unknown): value is BlockPut => isObject(value) && isText(value.id) && isText(value.html);

export function isToPanel(value: unknown): value is ToPanel {
  if (!isObject(value)) return false;
  switch (value.type) {
    case 'sheet':
      return (
        isText(value.uri) &&
        isTexts(value.order) &&
        Array.isArray(value.blocks) &&
        value.blocks.every(isBlock) &&
        typeof value.old === 'boolean'
      );
    case 'lit':
      return isTexts(value.on) && isTexts(value.around);
    case 'none':
      return isText(value.why);
    default:
      return false;
  }
}

export function isFromPanel(value: unknown): value is FromPanel {
  if (!isObject(value)) return false;
  if (value.type === 'ready') return true;
  return value.type === 'go' && isText(value.place) && value.place.length <= longestKey;
}

export function isPanelState(value: unknown): value is PanelState {
  return isObject(value) && isText(value.uri) && isObject(value.ticked) && Object.values(value.ticked).every(isTexts);
}
