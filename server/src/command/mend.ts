// `fettle check --mend`: makes the fixes that nobody need look at, and says what is left and why.
import type { Finding } from '../core/judge/finding';
import { newIn } from '../core/judge/swaps';
import type { Language } from '../core/words/language';
import { leftBecause } from '../core/judge/unseen';
import type { Doc } from '../core/parts/doc';
import { applyEdits } from '../core/text';
import { fixAllEdits, onlyFix } from '../features/fix-all';
import type { Host } from '../host/host';
import { safe } from '../report/layout';
import { unifiedDiff } from '../report/unified';
import { Loader, type LoadedFile } from '../session/loader';
import { troubleAt, type RunTrouble } from '../session/run-trouble';
import { fileRef, heldByRun, type FileRef } from '../session/texts';
import type { Ours } from '../session/walk';
import { openOutput, tellTroubles } from './output';
import type { Status, World } from './world';

/** A file with the text it is to have. */
interface Mended {
  readonly place: FileRef;
  readonly before: string;
  readonly after: string;
}

/** Lines on what is left of one file; the others are counted. */
const mostLeftListed = 10;

export class Mend {
  readonly troubles: RunTrouble[] = [];
  private readonly loader: Loader;
  private readonly all: Mended[] = [];
  /** Something was not read, which no diff may hide. */
  private unread = false;

  constructor(
    private readonly host: Host,
    private readonly world: World,
    today: string,
  ) {
    this.loader = new Loader(() => today);
  }

  /** Works out the new texts of files: parts and settings first, since builds are judged with them as they will be. */
  async workOut(files: readonly Ours[]): Promise<void> {
    const rests = files.filter(({ kind }) => kind === 'part' || kind === 'house');
    const builds = files.filter(({ kind }) => kind === 'build');
    for (const { root, name } of [...rests, ...builds]) {
      await this.file(fileRef(this.host, root, name));
      this.loader.texts.evict(heldByRun);
    }
    const language = this.world.language();
    for (const { root, name, kind, named } of files)
      if (kind === 'guide' && named)
        this.say(this.host.shown(root, name), language.word('guides are mended in the editor only.'));
  }

  private async file(place: FileRef): Promise<void> {
    const loaded = await this.loader.load(place);
    if (!loaded) return void (this.unread = true);
    const edits = fixAllEdits(
      viewOf(loaded),
      (doc, finding, fix) => leftBecause(doc, finding, fix.edits) === undefined,
    );
    if (edits.length === 0) return this.tellLeft(loaded);
    const { text: before } = loaded.doc;
    const after = applyEdits(before, edits);
    this.loader.texts.open.set(place.path, { uri: '', version: 0, text: after });
    this.all.push({ place, before, after });
    const now = (await this.loader.load(place))!;
    this.tellMade(loaded, now);
    this.tellLeft(now);
  }

  private tellMade({ place, judgement }: LoadedFile, now: LoadedFile): void {
    const gone = newIn(judgement.findings, now.judgement.findings).filter(({ check }) => check.on === 'file');
    const ids = [...new Set(gone.map(({ id }) => id))].sort().join(', ');
    const language = this.world.language();
    const told =
      gone.length === 1
        ? language.words`1 place to mend: ${ids}.`
        : language.words`${gone.length} places to mend: ${ids}.`;
    this.say(this.shown(place), told);
  }

  /** What is left of a file though there are ideas for it; what no idea can mend is among its findings anyway. */
  private tellLeft({ place, doc, judgement }: LoadedFile): void {
    const language = this.world.language();
    const findings = judgement.findings.filter(({ accepted }) => !accepted);
    this.unread ||= findings.some(({ check }) => check.unread);
    const own = findings.flatMap((finding) => {
      const why = finding.check.on === 'file' ? whyLeft(doc, finding, language) : undefined;
      return why === undefined ? [] : [{ finding, why }];
    });
    for (const { finding, why } of own.slice(0, mostLeftListed)) {
      const { line } = doc.lines.positionAt(finding.underline.span.start);
      this.say(`${this.shown(place)}:${line + 1}`, language.words`left ${finding.id}: ${why}.`);
    }
    const rest = own.length - Math.min(own.length, mostLeftListed);
    if (rest > 0) this.say(this.shown(place), language.words`${rest} more are left for such reasons.`);
    const chosen = findings.filter(({ check, fixes }) => check.on === 'build' && fixes !== undefined).length;
    if (chosen === 0) return;
    const left = chosen === 1 ? language.word('1 finding is left') : language.words`${chosen} findings are left`;
    const choice = language.word('what mends such is a choice of parts, places or promises; fettle check lists it');
    this.say(this.shown(place), `${left}: ${choice}.`);
  }

  /** Writes each file whole or not at all; one that cannot be written is told, and keeps its text. */
  write(): void {
    for (const { place, before, after } of this.all) {
      const refused = this.world.rewrite(place.root, place.path, before, after);
      if (refused) this.troubles.push(troubleAt(this.shown(place), refused.trouble));
    }
    const written = this.all.length - this.troubles.length;
    if (written === 0) return;
    const language = this.world.language();
    const told = written === 1 ? language.word('wrote 1 file.') : language.words`wrote ${written} files.`;
    this.world.err(`fettle: ${told}\n`);
  }

  /** The changes as one diff, and whether there are any, or something was not read. */
  async shownAsDiff(write: (text: string) => void): Promise<boolean> {
    for (const { place, before, after } of this.all) {
      const { text, isEscaped } = await unifiedDiff(this.shown(place), before, after);
      write(text);
      if (isEscaped)
        this.say(
          this.shown(place),
          this.world.language().word('holds characters that cannot be seen; the diff shows them, and does not apply.'),
        );
    }
    return this.all.length > 0 || this.unread;
  }

  private shown({ root, name }: FileRef): string {
    return this.host.shown(root, name);
  }

  private say(path: string, what: string): void {
    this.world.err(`fettle: ${safe(`${path}: ${what}`)}\n`);
  }
}

/** Writes the changes as a diff, into a file where one is named. */
export async function showMended(
  mend: Mend,
  troubles: readonly RunTrouble[],
  path: string | undefined,
  world: World,
): Promise<Status> {
  const output = openOutput(world, path);
  try {
    const isAny = await mend.shownAsDiff(output.write);
    output.done();
    tellTroubles(troubles, world);
    if (troubles.length > 0) return 2;
    return isAny ? 1 : 0;
  } finally {
    output.drop();
  }
}

function viewOf({ doc, build, judgement }: LoadedFile): Parameters<typeof fixAllEdits>[0] {
  return { doc, judgement, ...(build ? { build } : {}), uriOf: (of: Doc) => of.name, versionOf: () => null };
}

/** Why a finding of a file’s own text stays, where there is any idea for it. */
function whyLeft(doc: Doc, finding: Finding, language: Language): string | undefined {
  const ideas = [...(finding.fixes?.() ?? [])].filter((idea) => idea !== undefined);
  if (ideas.length === 0) return undefined;
  if (ideas.length > 1) return language.words`it may be meant in ${ideas.length} ways`;
  const fix = onlyFix(doc, finding);
  const why = fix && leftBecause(doc, finding, fix.edits);
  return why === undefined
    ? language.word('with it would come a finding as bad, or it could not be tried')
    : language.plain(why);
}
