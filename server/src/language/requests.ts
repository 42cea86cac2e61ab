// The shapes of Fettle’s own requests and options: all that a client shares with the server.
import type { HintKind } from '../features/inlay-hints';
import type { Location, Position } from '../features/shapes';
import type { SheetPlaces } from '../features/sheet-places';
import type { Paper } from '../report/sheet/style';
import type { Grade } from '../core/manifest/house-file';
import type { Listed } from '../host/host';

/** What a client may say of itself in `initializationOptions`. */
export interface ClientOptions {
  /** It runs `fettle.explain` itself, so actions may offer it. */
  readonly explains?: boolean;
  /** It opens pages on checks under this scheme: `fettle-check:/cooler-too-tall.md`. */
  readonly pages?: string;
  /**
   * The title of its command that shows the whole working of the finding at the cursor. It is named, not linked to:
   * editors follow only well-known schemes out of a hover that they do not trust.
   */
  readonly workings?: string;
  /** It runs `fettle.writeAt` itself: the cursor goes to a place of a file once an edit is made. */
  readonly writesAt?: boolean;
  /** Its command that asks for completion once more: run after a key is taken over whose values are listed. */
  readonly suggest?: string;
  /** It polls `workspace/diagnostic`, and says with `fettle/checkWorkspace` when that is to answer for all files. */
  readonly wholeOnRequest?: boolean;
  /** It answers `fettle/readFile`, `fettle/listFolder` and `fettle/findPath` for addresses other than `file:`. */
  readonly files?: boolean;
  /** It sends Markdown too: what lays texts out is to be registered for our own languages alone. */
  readonly guides?: boolean;
  /** It runs `fettle.showFindings` and `fettle.showUses`, to which lenses lead. */
  readonly lenses?: boolean;
  /** It shows findings above a hover where they are underlined; a hover there does not say them once more. */
  readonly showsFindings?: boolean;
  /** It shows hints above what is worse at the same place. */
  readonly hintsAbove?: boolean;
  /** The language of messages, as `de`; without it, the one of `locale`. */
  readonly language?: string;
  /** Settings as under `fettle`, of a client that does not answer `workspace/configuration`. */
  readonly settings?: object;
}

/** What is shown behind values. */
export type HintSettings = Readonly<Record<HintKind, boolean>>;

export interface Settings {
  /** The lightest grade that is shown. */
  readonly from: Grade;
  readonly hints: HintSettings;
  /** Milliseconds without a key after which what is being written is judged too. */
  readonly pause: number;
}

/** Answers to a request that the client sends. */
export interface ToServer {
  'fettle/explain': { params: { readonly check: string }; result: { readonly markdown: string } | null };
  /** The whole working of a finding: of the check, about the subject, and which of several such. */
  'fettle/working': {
    params: { readonly uri: string; readonly check: string; readonly subject: string; readonly ordinal: number };
    result: { readonly markdown: string } | null;
  };
  /**
   * A new file: a build, or a part of a kind, by the name that people give it. `near`: an open file or a folder, which
   * says where. The client writes the files, none over another, and puts the cursor into the first.
   */
  'fettle/new': {
    params: { readonly near: string; readonly what: string; readonly name: string };
    result:
      | {
          readonly files: readonly { readonly uri: string; readonly text: string }[];
          readonly at: { readonly line: number; readonly character: number };
        }
      | { readonly problem: string };
  };
  /**
   * A part file drafted from the text of a data sheet; `name`: the file it came from. Where kind or variant is not
   * plain: what may be meant. `name` of the answer is what maker and model come to.
   */
  'fettle/draftPart': {
    params: { readonly text: string; readonly name: string; readonly kind?: string; readonly variant?: string };
    result:
      | { readonly text: string; readonly facts: number; readonly unread: number; readonly name?: string }
      | { readonly kinds: readonly string[] }
      | { readonly variants: readonly string[] };
  };
  /** Where a part of that name belongs. */
  'fettle/partPlace': {
    params: { readonly near: string; readonly name: string };
    result: { readonly uri: string } | { readonly problem: string };
  };
  /** The kinds of part, in the order in which people choose. */
  'fettle/kinds': { params: null; result: readonly string[] };
  'fettle/checkWorkspace': { params: null; result: WorkspaceChecked };
  /**
   * The bench sheet of a build. `have`: the sheet that is shown, so that only what changed is sent. `picturesFirst`:
   * where pictures changed, they may come before the rest is made.
   */
  'fettle/sheet': {
    params: OfDocument & { readonly have?: string; readonly picturesFirst?: boolean };
    result: SheetAnswer | null;
  };
  /** How sheets look; colours are properties that whoever shows one gives. */
  'fettle/sheetStyle': { params: null; result: { readonly css: string } };
  /** Where the thing of a key (`data-place`) stands in the build; with `definition`, where it is described. */
  'fettle/sheetPlace': {
    params: OfDocument & { readonly place: string; readonly definition?: boolean };
    result: Location | null;
  };
  /** The keys of a line, in a build or in a file that `build` rests on. */
  'fettle/sheetPlaces': {
    params: OfDocument & { readonly position: Position; readonly build?: string };
    result: SheetPlaces;
  };
  /** The sheet as a file of its own. */
  'fettle/sheetFile': {
    params: OfDocument & { readonly form: 'html' | 'markdown'; readonly paper?: Paper };
    result: { readonly text: string } | null;
  };
}

interface OfDocument {
  readonly textDocument: { readonly uri: string };
}

export interface SheetAnswer {
  /** Names this sheet among those of the build. */
  readonly id: string;
  /** The version of the text it was made from; null for a text on disk. */
  readonly version: number | null;
  readonly title: string;
  /** Whether it is the last good one, since the text cannot be read now or a name in it is only begun. */
  readonly old: boolean;
  /** All blocks in their order. */
  readonly order: readonly string[];
  /** Those that are new or changed; all of them where `whole`. */
  readonly blocks: readonly { readonly id: string; readonly html: string }[];
  readonly whole: boolean;
  /** Whether its pictures alone are of this text yet: the rest is there for whoever asks again. */
  readonly more: boolean;
}

/** `fettle/sheetChanged`, which the server sends once after each sheet it was asked for: it is to be asked for anew. */
export interface SheetChanged {
  readonly uri: string;
}

/** `fettle/cursor`, which a client may send: where the cursor went without a change; null for out of the file. */
export interface CursorWent {
  readonly uri: string;
  readonly position: { readonly line: number; readonly character: number } | null;
}

export interface WorkspaceChecked {
  readonly files: number;
  /** How many files have this grade as their worst. */
  readonly worst: Readonly<Partial<Record<Grade, number>>>;
  readonly troubles: readonly string[];
}

/** Requests that the server sends for files which only the client can reach; null for what is not there. */
export interface ToClient {
  'fettle/findPath': {
    params: { readonly uri: string };
    /** What is there, and the folder of the workspace that bounds it. */
    result: { readonly kind: 'file' | 'folder'; readonly bound: string } | null;
  };
  'fettle/readFile': {
    params: { readonly uri: string; readonly mostBytes: number };
    result: { readonly base64: string } | Refused | null;
  };
  'fettle/listFolder': { params: { readonly uri: string }; result: readonly Listed[] | Refused | null };
}

/** Why a client does not open what is there: it is no regular file, it lies behind a link, it is too large. */
export interface Refused {
  readonly refused: 'no-file' | 'link' | 'large';
}
