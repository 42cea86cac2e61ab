// Figures of the standby rail: what hangs on it while the machine is off, and what the supply delivers there.
import type { Build, Placed } from '../build/build';
import { isStandbyRail, STANDBY_LEAST_W } from '../trade/power';
import { between, copyWith, derive, figure, missing, times, total, type Figure } from './figure';
import { howMany } from './power';

/** What board and cards draw from it; undefined where no part states that it draws anything. */
export function standbyDraw(build: Build): Figure | undefined {
  const { board, graphics, cards } = build.parts;
  const onBoard = board?.part.draw.standby;
  const stated = [...graphics, ...cards].filter(({ part }) => part['standby-draw'].entry);
  if (!onBoard?.entry && stated.length === 0) return undefined;
  return total(
    'draw from the standby rail',
    'power',
    [
      ...(onBoard ? [figure(onBoard, `standby draw of ${board!.label}`)] : []),
      ...stated.map((card) => times(figure(card.part['standby-draw'], `standby draw of ${card.label}`), howMany(card))),
    ],
    { unit: 'W' },
  );
}

/** What the rail delivers, by the label; without it, what the design guide asks for at least. */
export function standbyLimit({ part: { rails }, label: of }: Placed<'supply'>): Figure {
  const label = `standby rail of ${of}`;
  const rail = [...(rails.value ?? [])].find(([name]) => isStandbyRail(name));
  if (rail)
    return derive(
      label,
      'power',
      [figure(rail[1].voltage, `voltage of rail ${rail[0]}`), figure(rail[1].current, `current of rail ${rail[0]}`)],
      'voltage × current',
      (volts, amps) => volts * amps,
      { unit: 'W' },
    );
  return copyWith(
    between(STANDBY_LEAST_W, Infinity, 'power', label, {
      unit: 'W',
      source: 'ATX12V Power Supply Design Guide 2.0, tables 4 and 6: 2 A at 5 V',
    }),
    { missing: [missing(rails, label)] },
  );
}
