// Which fields a line of a sheet speaks of: by its label and heading, or by a label that is itself a name of something.
import type { Field } from '../parts/field';
import { kinds, type Kind } from '../parts/kinds';
import { POWER_CONNECTOR_WORDS } from '../trade/connector-words';
import { RAIL_WORDS } from '../trade/supply-sheet-words';
import { wordOf } from '../trade/vocabulary';
import { isElsewhere } from './clean';
import type { Line } from './columns';
import type { Indexes, LabelIndex, Match, Target } from './label-index';
import { isHeaderLabel } from './takers/board-ports';
import { isSlotLabel, listsSlots } from './takers/board-slots';
import { isCounted, thingsIn } from './takers/board-things';
import { isBoxLabel } from './takers/box';
import { isBayLabel } from './takers/bays';
import { placeOf } from './takers/case';
import { connectorLine, isOutputLabel } from './takers/connectors';
import { areRails, isCombined } from './takers/supply';
import { isLiquid } from './takers/processing';

/** Matches lines of sheets of one kind of part. */
export class Matcher {
  readonly index: LabelIndex;

  /** `whole` is all that the sheet says, in lower case. */
  constructor(
    readonly kind: Kind,
    whole: string,
    indexes: Indexes,
  ) {
    this.index = indexes.of(kind, kind === 'cooler' && !isLiquid(whole) ? ['pump', 'radiator'] : []);
  }

  /** Undefined where the line speaks of nothing that is known here. */
  match(line: Line): Match | undefined {
    if (isBoxLabel(line.label))
      return { isMost: false, isUnsure: false, marks: '', targets: [this.target('in-the-box')] };
    // What a drive may be written is told beside its warranty.
    if (this.kind === 'drive' && /^TBW$/i.test(line.label) && /^(?:warranty|garantie)$/i.test(line.heading))
      return this.index.match(line.label, '');
    const named = this.byName(line);
    if (named) return named.length === 0 ? undefined : { isMost: false, isUnsure: false, marks: '', targets: named };
    return this.index.match(line.label, line.heading) ?? this.ofHeading(line);
  }

  private target(key: string): Target {
    return { path: [key], field: (kinds[this.kind] as Record<string, Field>)[key]! };
  }

  /** Targets of a label that is a slot, a header, a place, a connector, a rail; an empty list where it is elsewhere. */
  private byName({ label, heading, text }: Line): readonly Target[] | undefined {
    if (isElsewhere(label, this.kind) || isElsewhere(heading, this.kind)) return [];
    switch (this.kind) {
      case 'board':
        return this.ofBoard(label, text, heading);
      case 'supply':
        if (areRails(label) || (wordOf(RAIL_WORDS, label) !== undefined && /\d ?V/.test(label)))
          return [this.target('rails')];
        if (isCombined(label, text)) return [this.target('combined')];
        return connectorLine(POWER_CONNECTOR_WORDS, label) ? [this.target('connectors')] : undefined;
      case 'case':
        return this.ofCase(label, heading, text);
      case 'graphics':
      case 'card':
        return isOutputLabel(label) || (/^interfaces?$/i.test(label) && /\bHDMI|display ?port/i.test(text))
          ? [this.target('outputs')]
          : undefined;
      case 'display':
        return isOutputLabel(label) ? [this.target('inputs')] : undefined;
      default:
        return undefined;
    }
  }

  private ofBoard(label: string, text: string, heading: string): readonly Target[] | undefined {
    if (isSlotLabel(label) && !isCounted(label)) return [this.target('slots')];
    if (isHeaderLabel(label)) return [this.target('headers')];
    if (isOutputLabel(label) && !/rear|back|usb/i.test(label)) return [this.target('display-outputs')];
    const things = new Set(thingsIn(label, text, heading).map(({ what }) => what));
    if (things.size === 0 && /\bS-?ATA/i.test(label) && /^\d{1,2}(?: ?x| ports?| anschl|$)/i.test(text))
      return [this.target('ports')];
    if (things.size === 0) return isCounted(label) ? [] : undefined;
    if (listsSlots(text)) things.add('slots');
    return [...things].flatMap((what) =>
      what === 'flashback' ? (this.index.match('BIOS Flashback', '')?.targets ?? []) : [this.target(what)],
    );
  }

  private ofCase(label: string, heading: string, text: string): readonly Target[] | undefined {
    if (isBayLabel(label)) return [this.target('bays')];
    if (placeOf(label) === undefined) return undefined;
    const said = `${label} ${heading}`;
    const sizes = text.match(/(?<!\d)\d{3}(?= ?mm|\b)/g) ?? [];
    if (sizes.length > 0 && sizes.every((one) => /^(?:240|280|360|420)$/.test(one)))
      return [this.target('radiator-places')];
    if (/pre-?installed|included|vorinstalliert|mitgeliefert|installment/i.test(heading)) {
      return this.index.match('Included fans', '')?.targets.filter(({ path }) => path.includes('fitted')) ?? [];
    }
    if (/radiator|liquid|water|wasser|flüssig/i.test(said)) return [this.target('radiator-places')];
    return /fan|cooling|lüfter|kühlung/i.test(said) ? [this.target('fan-places')] : [];
  }

  /** A line below a heading that is a list’s own label: the makers above their sockets. */
  private ofHeading({ label, heading }: Line): Match | undefined {
    if (this.kind !== 'cooler' || heading === '' || !/^\p{L}{2,12}(?: (?:socket|sockets|sockel))?$/iu.test(label))
      return undefined;
    const match = this.index.match(heading, '');
    const targets = match?.targets.filter(({ path }) => path.join() === 'sockets') ?? [];
    return match && targets.length > 0 ? { ...match, targets } : undefined;
  }
}
