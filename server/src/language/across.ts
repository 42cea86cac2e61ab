// What lies across files: which of a workspace’s files name a subject, and the change that renames it in all of them.
import { LSPErrorCodes, ResponseError, type WorkspaceEdit as ProtocolEdit } from 'vscode-languageserver/node';
import { FencedDoc } from '../core/guide/fenced';
import type { Span } from '../core/text';
import {
  fileAt,
  markEdits,
  marksNaming,
  namedByMark,
  referencesWithin,
  renameWithin,
  type EditsOfDoc,
} from '../features/guide-uses';
import { doubtful, refusal, renamedAt } from '../features/rename';
import { documentEdit, type Location, type Position, type TextDocumentEdit } from '../features/shapes';
import { subjectAt, type Named, type Subject } from '../features/subject';
import type { AddressedHost } from '../host/addressed';
import { staysBelow } from '../host/host';
import { kindOfFile } from '../core/parts/doc';
import { partNameAt, partPath } from '../core/parts/part-name';
import { partsFolders } from '../session/loader';
import type { AddressedFile } from '../session/session';
import { fileRef, type FileRef } from '../session/texts';
import { Turns } from '../session/turns';
import type { Asker, UseIndex } from '../session/use-index';
import { editForClient } from './client';
import type { Shared } from './findings';
import { cancelled } from './guard';

type Place = FileRef<AddressedHost>;

/** A file with what it names; of a fenced block, the guide around it. */
export type NamedFile = AddressedFile & Named & { readonly within?: AddressedFile & Named };

export interface NamedAt {
  readonly file: NamedFile;
  readonly offset: number;
  /** The name in a guide’s mark that stands for it. */
  readonly mark?: { readonly file: NamedFile; readonly at: Span };
}

/** A file and the workspace it lies in. */
export type Here = Pick<AddressedFile, 'place' | 'house'>;

export class Across {
  /** The move that the last rename asked for, for as long as the editor may still be about it. */
  private own?: { readonly oldUri: string; readonly newUri: string; readonly until: number };

  constructor(
    private readonly shared: Shared,
    readonly index: UseIndex,
    private readonly pause: () => Promise<void>,
  ) {}

  /**
   * Whether a move is part of a rename that was just answered: its edits came with it, and the editor asks once more
   * what the move brings.
   */
  isOwn({ oldUri, newUri }: { readonly oldUri: string; readonly newUri: string }): boolean {
    const { own } = this;
    const isSame = (a: string, b: string): boolean => this.shared.session.pathOf(a) === this.shared.session.pathOf(b);
    return !!own && performance.now() < own.until && isSame(own.oldUri, oldUri) && isSame(own.newUri, newUri);
  }

  /** Reads a file by its address; undefined for one that is none of ours or is not there. */
  async at(uri: string): Promise<(AddressedFile & Named) | undefined> {
    const place = await this.shared.session.placeOf(uri);
    return place && this.read(place);
  }

  /** The file that a position lies in: the fenced block there, or the file itself. */
  async fileAt(uri: string, position: Position): Promise<NamedFile | undefined> {
    const file = await this.at(uri);
    const found = file && fileAt(file, position);
    return found && (found === file ? file : { ...found, within: file! });
  }

  /** What is named at a position is named at an offset of a file: of a guide’s mark, where its build gives the name. */
  async namedAt(uri: string, position: Position): Promise<NamedAt | undefined> {
    const file = await this.fileAt(uri, position);
    if (!file) return undefined;
    const offset = file.doc.lines.offsetAt(position);
    const mark = file.guide && namedByMark(file.guide, offset);
    if (!mark) return { file, offset };
    const { doc, span } = mark.given;
    const named =
      doc instanceof FencedDoc
        ? await this.fileAt(uri, doc.lines.positionAt(span.start))
        : await this.read(fileRef(file.place.host, file.place.root, doc.name));
    return named && { file: named, offset: span.start, mark: { file, at: mark.at } };
  }

  /** Reads a file without judging it. */
  async read(place: Place): Promise<(AddressedFile & Named) | undefined> {
    const file = await this.shared.session.read(place);
    return file && { ...file, ...partNameOf(file) };
  }

  /** All places that name what is named at a position of a file. */
  async references(uri: string, position: Position, declares: boolean, asker: Asker): Promise<Location[] | null> {
    const named = await this.namedAt(uri, position);
    const subject = named && subjectAt(named.file, named.offset);
    return subject ? this.referencesTo(named.file, subject, declares, asker) : null;
  }

  async referencesTo(file: NamedFile, subject: Subject, declares: boolean, asker: Asker): Promise<Location[]> {
    const found: Location[] = [];
    const isFile = subject.kinds.includes('part file');
    if (declares && isFile) found.push(...(await this.fileOf(file, subject.name)));
    for await (const user of this.naming(file, subject, asker))
      found.push(...referencesWithin(user, subject, declares));
    for await (const guide of this.guidesTo(file, subject, asker)) found.push(...marksNaming(guide, subject));
    return found;
  }

  /** Where a part file begins. */
  private async fileOf(here: Here, part: string): Promise<Location[]> {
    const file = await this.partFile(here, part);
    return file ? [{ uri: file.uri, range: file.doc.lines.rangeOf({ start: 0, end: 0 }) }] : [];
  }

  /** The file of a part, from the first of the parts folders that has it. */
  async partFile({ place: { host, root }, house }: Here, part: string): Promise<(AddressedFile & Named) | undefined> {
    for (const folder of partsFolders(house)) {
      const path = partPath(folder, part);
      const file = path === undefined ? undefined : await this.read(fileRef(host, root, path));
      if (file) return file;
    }
    return undefined;
  }

  /** A file of ours by its path below the root of one at hand; undefined where it leads out or nothing is there. */
  async fileNamed({ place: { host, root } }: Here, name: string): Promise<(AddressedFile & Named) | undefined> {
    return staysBelow(name) && kindOfFile(name) ? this.read(fileRef(host, root, name)) : undefined;
  }

  /** The files that may name a subject, the one at hand first; each is read, and others have their turn. */
  async *naming(file: NamedFile, subject: Subject, asker: Asker): AsyncGenerator<AddressedFile & Named> {
    yield subject.part === undefined ? file : (file.within ?? file);
    const words = subject.part ?? (subject.isOwnStep ? subject.name : undefined);
    if (words === undefined) return;
    const seen = new Set([file.place.path]);
    const own =
      subject.part === undefined || subject.kinds.includes('part file')
        ? undefined
        : await this.partFile(file, subject.part);
    if (own && !seen.has(own.place.path)) yield own;
    if (own) seen.add(own.place.path);
    for await (const user of this.users(file, [words], asker)) if (!seen.has(user.place.path)) yield user;
  }

  /** The files that may name one of some parts. */
  async *users(here: Here, parts: readonly string[], asker: Asker): AsyncGenerator<AddressedFile & Named> {
    yield* this.readAll(await this.index.filesNaming(here.place, parts, asker), asker);
  }

  /** Reads files one after the other. Throws once nobody waits for them any more. */
  async *readAll(places: readonly Place[], asker: Asker): AsyncGenerator<AddressedFile & Named> {
    const turns = new Turns(this.pause, stretchMs);
    for (const [i, place] of places.entries()) {
      if (asker.stopped()) throw cancelled();
      const user = await this.read(place);
      if (user) yield user;
      if (!turns.isOver) continue;
      asker.told?.(i + 1, places.length);
      this.shared.session.evict();
      await turns.give();
    }
  }

  /** Edits of files that are not open must fit what lies on disk now; a client that watches them tells what changes. */
  readAnew(): void {
    if (this.shared.client.watches) return;
    this.shared.session.changedAnywhere();
    this.index.changedAnywhere();
  }

  /** The change that renames what is named at a position, everywhere. */
  async rename(uri: string, position: Position, newName: string, asker: Asker): Promise<ProtocolEdit | null> {
    this.readAnew();
    const { language } = this.shared;
    const named = await this.namedAt(uri, position);
    if (!named) return null;
    const { file } = named;
    const subject = renamedAt(file, named.offset);
    if (!subject) throw refused(language.word('Nothing that can be renamed is named here.'));
    const name = newName.trim();
    if (name === subject.name) return { changes: {} };
    const holder = subject.part !== undefined ? await this.partFile(file, subject.part) : undefined;
    const why = refusal(file, subject, name, language) ?? (holder && refusal(holder, subject, name, language));
    if (why !== undefined) throw refused(why);
    const move = subject.kinds.includes('part file') ? await this.moved(file, holder, name) : undefined;
    const edits = await this.edits(file, subject, name, asker);
    const { versionedEdits } = this.shared.client;
    if (!move) return editForClient({ documentChanges: edits }, versionedEdits);
    this.own = { ...move, until: performance.now() + ownMs };
    return { documentChanges: [...edits, move] };
  }

  /** The edits of all files that name a subject. Throws where one of them would not be safe: all of it, or nothing. */
  private async edits(file: NamedFile, subject: Subject, name: string, asker: Asker): Promise<TextDocumentEdit[]> {
    const changes = new Map<string, TextDocumentEdit>();
    const add = (user: AddressedFile & Named, found: readonly EditsOfDoc[] | undefined): void => {
      if (!found) throw refused(doubtful(user, subject, this.shared.language));
      for (const { doc, edits } of found) addEdit(changes, documentEdit(user, doc, edits));
    };
    for await (const user of this.naming(file, subject, asker)) add(user, renameWithin(user, subject, name));
    for await (const { guide, ...user } of this.guidesTo(file, subject, asker)) {
      const edits = markEdits(guide!, subject, name);
      add(user, edits && [{ doc: user.doc, edits }]);
    }
    if (asker.stopped()) throw cancelled();
    return [...changes.values()];
  }

  /** The guides whose marks may name what a build alone knows. */
  private async *guidesTo(file: NamedFile, subject: Subject, asker: Asker): AsyncGenerator<AddressedFile & Named> {
    if (subject.part !== undefined || !subject.kinds.includes('drive')) return;
    if (file.within?.guide?.build?.doc.name === file.doc.name) yield file.within;
    if (file.within) return;
    const places = (await this.index.filesOf(file.place)).filter(({ name }) => kindOfFile(name) === 'guide');
    for await (const user of this.readAll(places, asker)) if (user.guide?.build?.doc.name === file.doc.name) yield user;
  }

  /** The move of a part’s file to where another name looks for it. */
  private async moved(
    { house, place: { host, root } }: Here,
    holder: AddressedFile | undefined,
    name: string,
  ): Promise<{ kind: 'rename'; oldUri: string; newUri: string } | undefined> {
    // A part that is not there yet is named otherwise, and nothing is moved.
    if (!holder) return undefined;
    const { language } = this.shared;
    if (!this.shared.client.renamesFiles)
      throw refused(
        language.word('This editor does not move files when a name is changed. Move the part file itself.'),
      );
    const folder = partsFolders(house).find((one) => partNameAt(one, holder.place.name) !== undefined)!;
    const target = fileRef(host, root, partPath(folder, name)!);
    if (await this.partFile({ house, place: target }, name))
      throw refused(language.words`There is a part file of the name ${name} already.`);
    return { kind: 'rename', oldUri: holder.uri, newUri: host.uriOf(target.path) };
  }
}

/** Edits of one file are one edit, whichever of its blocks they are for. */
export function addEdit(changes: Map<string, TextDocumentEdit>, edit: TextDocumentEdit): void {
  if (edit.edits.length === 0) return;
  const before = changes.get(edit.textDocument.uri);
  changes.set(edit.textDocument.uri, before ? { ...before, edits: [...before.edits, ...edit.edits] } : edit);
}

const stretchMs = 12;
const ownMs = 10_000;

const refused = (why: string): ResponseError<void> => new ResponseError(LSPErrorCodes.RequestFailed, why);

function partNameOf({ doc, place, house }: AddressedFile): { partName?: string } {
  if (doc.kind !== 'part') return {};
  const name = partsFolders(house).flatMap((folder) => partNameAt(folder, place.name) ?? [])[0];
  return name === undefined ? {} : { partName: name };
}
