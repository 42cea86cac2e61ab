// A guide: a Markdown text, what ties it to builds, and the build that its values and steps are held against.
import { Build, type FindPart } from '../build/build';
import type { WorkspaceConfig } from '../build/workspace-config';
import type { Figure } from '../figures/figure';
import { statedSteps } from '../figures/steps';
import { Doc, type SourceLocation } from '../parts/doc';
import { applyEdits, type Span } from '../text';
import { insertTopLevel, removeEntry, type Value } from '../yaml';
import type { FencedDoc } from './fenced';
import { figuresOf } from './names';
import { tiesOf, type MarkedStep, type Ties } from './ties';

/** A fenced block; of a fenced build, the build. */
export interface Block {
  readonly doc: FencedDoc;
  readonly build?: Build;
}

/** The guide’s steps as those of its build. */
interface StepsBuild {
  readonly build: Build;
  /** The marked steps that stand in it, by number. */
  readonly steps: readonly MarkedStep[];
}

export class Guide {
  private figuresRead?: ReadonlyMap<string, Figure>;
  private stepsRead?: StepsBuild | null;

  readonly blocks: readonly Block[];

  /** `named`: the build that the front matter names, where it is one that can be read. */
  constructor(
    readonly doc: Doc,
    private readonly find: FindPart,
    readonly house: WorkspaceConfig,
    private readonly today: string,
    readonly named?: Build,
  ) {
    this.blocks = tiesOf(doc).fences.map((block) =>
      block.kind === 'build' ? { doc: block, build: new Build(block, find, house, today) } : { doc: block },
    );
  }

  /** The guide with another text, beside the same build. */
  withText(doc: Doc): Guide {
    return new Guide(doc, this.find, this.house, this.today, this.named);
  }

  get ties(): Ties {
    return tiesOf(this.doc);
  }

  /** What the guide is about: the build that it names, else the first that stands in it. */
  get build(): Build | undefined {
    return this.ties.build ? this.named : this.blocks.find(({ build }) => build)?.build;
  }

  get figures(): ReadonlyMap<string, Figure> {
    return (this.figuresRead ??= this.build ? figuresOf(this.build) : new Map());
  }

  /** The build with the marked steps for its own; undefined where there is no build, or no marked step to speak of. */
  get stepsBuild(): StepsBuild | undefined {
    this.stepsRead ??= (this.build && withSteps(this.build, this.ties.steps)) ?? null;
    return this.stepsRead ?? undefined;
  }

  /**
   * The marked step that a place of the build with the guide’s steps stands for; the first for their list as a whole,
   * none for what the build itself says elsewhere.
   */
  stepAt({ doc, span }: SourceLocation): MarkedStep | undefined {
    const made = this.stepsBuild;
    if (!made || doc !== made.build.doc) return undefined;
    const within = (whole: Span | undefined): boolean =>
      whole !== undefined && whole.start <= span.start && span.end <= whole.end;
    const { root } = doc.parsed;
    const others = root?.type === 'map' ? root.entries.filter(({ key }) => key !== 'steps') : [];
    if (others.some(({ keySpan, value }) => within(keySpan) || within(value.span))) return undefined;
    const step = statedSteps(made.build).find(({ group }) => within(group.$.map?.span) || within(group.do.node?.span));
    return made.steps[step?.index ?? 0];
  }
}

function withSteps(build: Build, marked: readonly MarkedStep[]): StepsBuild | undefined {
  const steps = marked.filter(({ kind }) => kind !== undefined);
  if (steps.length === 0) return undefined;
  const { doc } = build;
  const bare = withoutSteps(doc);
  const value = steps.map(({ kind, part }): Value => (part === '' ? { do: kind! } : { do: kind!, part }));
  const edits = bare && insertTopLevel(bare.parsed, 'steps', value);
  return edits && { build: build.withText(new Doc(doc.name, 'build', applyEdits(bare.text, edits)), ['steps']), steps };
}

function withoutSteps(doc: Doc): Doc | undefined {
  const { root } = doc.parsed;
  if (root?.type !== 'map') return undefined;
  if (!root.get('steps')) return doc;
  const edits = removeEntry(doc.parsed, root, 'steps');
  return edits && new Doc(doc.name, 'build', applyEdits(doc.text, edits));
}
