// House settings: what `fettle.yaml` says, and the house’s defaults where it says nothing.
import type { Doc } from '../parts/doc';
import type { Fact, Group } from '../parts/fact';
import { readGroup } from '../parts/facts';
import { grades, houseFile, margins, type Grade } from '../manifest/house-file';
import type { Dimension, Quantity, UnitName } from '../quantity';

export type MarginName = keyof typeof margins;

/** The margins of a house that sets none; each is printed with the word “default” wherever it enters a sum. */
const defaultMargins: Record<MarginName, number> = {
  'supply-headroom': 20,
  'processor-temperature': 5,
  'room-rise': 15,
  clearance: 0,
  'hanging-card': 1000,
  'fact-age': 365 * 86_400,
  'price-age': 90 * 86_400,
};

export class WorkspaceConfig {
  readonly file: Group<typeof houseFile> | undefined;
  private readonly grades: ReadonlyMap<string, Grade | 'off'>;

  constructor(readonly doc?: Doc) {
    const root = doc?.parsed.root;
    if (doc && root?.type === 'map')
      this.file = readGroup(houseFile, '', [{ doc, map: root, path: '', span: root.span }]);
    this.grades = new Map(
      [...(this.file?.grades.value ?? [])].flatMap(([id, { value }]) => (value === undefined ? [] : [[id, value]])),
    );
  }

  get folders(): readonly string[] {
    const stated = this.file?.parts.value?.flatMap((fact) => (fact.value === undefined ? [] : [fact.value]));
    return stated ?? ['parts'];
  }

  /** The files of known findings that it names, whether they can be read or not. */
  get knownFiles(): readonly string[] {
    return this.file?.known.value?.flatMap((fact) => (fact.value === undefined ? [] : [fact.value])) ?? [];
  }

  /** A margin: the fact that states it, or the default in the base unit of its dimension. */
  margin(name: MarginName): { fact: Fact<Quantity> } | { standard: number; dimension: Dimension; unit: UnitName } {
    const fact = this.file?.margins[name];
    const { dimension, unit } = margins[name];
    return fact?.value ? { fact } : { standard: defaultMargins[name], dimension, unit };
  }

  /** The checks that the settings speak of, with the grade that each is given. */
  get regraded(): Iterable<readonly [string, Grade | 'off']> {
    return this.grades;
  }

  /**
   * The grade that this house gives a finding of a check, which is of grade `own` elsewhere; what is firm is never
   * made lighter by a setting.
   */
  grade(id: string, own: Grade, isFirm = own === 'harm'): Grade | 'off' {
    const set = this.grades.get(id) ?? own;
    return isFirm && (set === 'off' || !atLeastAsBad(set, own)) ? own : set;
  }
}

/** Whether one grade is at least as bad as another. */
export function atLeastAsBad(grade: Grade, limit: Grade): boolean {
  return grades.indexOf(grade) <= grades.indexOf(limit);
}
