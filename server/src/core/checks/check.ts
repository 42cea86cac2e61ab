// What a check is: its identity, its documentation, its test. One file a check says all of this.
import type { Build } from '../build/build';
import type { FileReading } from '../build/inspect';
import type { KnownFinding } from '../build/known-findings';
import type { WorkspaceConfig } from '../build/workspace-config';
import type { Measure } from '../figures/measure';
import type { Grade } from '../manifest/house-file';
import type { Guide } from '../guide/guide';
import type { Outcome, Reporter } from './kit';

export const areas = {
  board: 'Processor, board, firmware',
  cooling: 'Thermal interface and cooling',
  storage: 'Storage and M.2',
  memory: 'Memory',
  slots: 'Slots, lanes, display',
  power: 'Power and mains',
  case: 'Case and mechanics',
  handling: 'Static, handling, safety',
  work: 'Order of work, start, acceptance, hand-over',
  costs: 'Noise, cost, ordering',
  text: 'The text itself',
  built: 'The machine as built',
  guide: 'Guides',
} as const;

export type Area = keyof typeof areas;

/** A faulty text that brings exactly this check’s finding, and the text its fix leads to. */
export interface Example {
  readonly faulty: string;
  /** Absent where no fix can be offered: then `instead` says what to do. */
  readonly mended?: string;
  readonly instead?: string;
  /** The file’s name, where it is no build. */
  readonly file?: string;
  /** Other files that the example needs, by name. */
  readonly beside?: Readonly<Record<string, string>>;
}

/** Where the judgement comes from: a published title with its number, or `common practice`. */
export type SourceNote = string;

interface CheckBase {
  /** Plain words, thing then fault; equals the file’s name. */
  readonly id: string;
  readonly area: Area;
  readonly grade: Grade;
  /** One sentence: what is judged. */
  readonly what: string;
  /** One or two sentences: what goes wrong otherwise. */
  readonly why: string;
  readonly source: SourceNote;
  /** What the check does not see, so that a person must look at it: a sentence each. */
  readonly limits?: readonly string[];
  /** Where it gives another grade, and what it leaves to other checks: a sentence each. */
  readonly remarks?: readonly string[];
  readonly examples: readonly [Example, ...Example[]];
  /** For checks of grade harm: the caution shown with the finding, by its id in `trade/cautions`. */
  readonly caution?: string;
  /**
   * Set where a finding means that a file, or something that stands in it, could not be read, so that nothing it says
   * is checked. No setting, option or acceptance makes such a finding lighter: a run with one never ends with status 0.
   */
  readonly unread?: true;
}

export interface BuildCheck extends CheckBase {
  readonly on: 'build';
  readonly test: (build: Build, report: Reporter) => void;
}

/** A check of one file’s own text, whichever of our files it is. */
export interface FileCheck extends CheckBase {
  readonly on: 'file';
  readonly test: (file: FileReading, report: Reporter) => void;
}

/** A finding as a check of accepted findings sees it. */
export interface FoundFinding {
  readonly id: string;
  readonly subject: string;
  readonly grade: Grade;
  readonly measure?: Measure;
}

/** A check of what the build accepts, held against what was found. */
export interface AcceptCheck extends CheckBase {
  readonly on: 'accept';
  readonly test: (build: Build, found: readonly FoundFinding[], report: Reporter) => void;
}

/** A check of the house settings, held against the checks that they speak of. */
export interface SettingsCheck extends CheckBase {
  readonly on: 'settings';
  readonly test: (settings: WorkspaceConfig, checkNamed: (id: string) => Check | undefined, report: Reporter) => void;
}

/** A check of a file of known findings; without a day none of them is held to be past its own. */
export interface KnownCheck extends CheckBase {
  readonly on: 'known';
  readonly test: (known: readonly KnownFinding[], today: string | undefined, report: Reporter) => void;
}

/** What a check of builds answers of a guide’s steps, taken for the steps of its build; by the check’s id. */
export type AskOfSteps = (id: string) => readonly Outcome[];

/** A check of a Markdown text that is tied to a build. */
export interface GuideCheck extends CheckBase {
  readonly on: 'guide';
  readonly test: (guide: Guide, report: Reporter, ask: AskOfSteps) => void;
}

export type Check = BuildCheck | FileCheck | AcceptCheck | SettingsCheck | KnownCheck | GuideCheck;

/** Whether settings may give a check no lighter grade: what could hurt someone, and what was not read. */
export const isFirm = ({ grade, unread }: Pick<Check, 'grade' | 'unread'>): boolean =>
  grade === 'harm' || unread === true;

export const check = (facts: Omit<BuildCheck, 'on'>): BuildCheck => ({ on: 'build', ...facts });
export const fileCheck = (facts: Omit<FileCheck, 'on'>): FileCheck => ({ on: 'file', ...facts });
export const settingsCheck = (facts: Omit<SettingsCheck, 'on'>): SettingsCheck => ({ on: 'settings', ...facts });
export const acceptCheck = (facts: Omit<AcceptCheck, 'on'>): AcceptCheck => ({ on: 'accept', ...facts });
export const knownCheck = (facts: Omit<KnownCheck, 'on'>): KnownCheck => ({ on: 'known', ...facts });
export const guideCheck = (facts: Omit<GuideCheck, 'on'>): GuideCheck => ({ on: 'guide', ...facts });
