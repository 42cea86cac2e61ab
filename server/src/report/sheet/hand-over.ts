// The hand-over record: parts as fitted, versions, what goes with the machine, date and names.
import { asBuiltBodies } from './as-built';
import type { Context } from './context';
import { lines, oneLine, table, upperFirst, type Block, type Body, type Line, type Row, type SheetStep } from './model';
import { benchName, countOf, roleName, whereTo } from './parts';

export function handOverBlock(context: Context, steps: readonly SheetStep[]): Block {
  return {
    id: 'hand-over',
    heading: 'Hand-over record',
    level: 2,
    bodies: [
      { type: 'steps', steps },
      table('Parts as fitted', ['Fitted', 'On its box', 'Where', 'Serial number'], fitted(context)),
      table('Versions and settings', ['What', 'As handed over'], versions(context)),
      ...asBuiltBodies(context.build),
      ...included(context),
      { type: 'write', labels: ['Date', 'Built by', 'Checked by', 'Handed to'] },
    ],
  };
}

function fitted({ build }: Context): readonly Row[] {
  return build
    .of(
      'board',
      'processor',
      'cooler',
      'memory',
      'drives',
      'graphics',
      'cards',
      'supply',
      'case',
      'fans',
      'radiators',
      'displays',
    )
    .map((placed): Row => {
      const count = countOf(placed);
      return {
        place: placed.path,
        tick: true,
        cells: [
          { text: upperFirst(roleName(placed)) },
          { text: `${count > 1 ? `${count} × ` : ''}${benchName(placed)}` },
          { text: whereTo(placed) },
          'write',
        ],
      };
    });
}

function versions({ build }: Context): readonly Row[] {
  const row = (what: string, place?: string): Row => ({
    tick: false,
    cells: [{ text: what }, 'write'],
    ...(place === undefined ? {} : { place }),
  });
  return [
    row('Firmware of the board', 'parts.board.firmware'),
    ...(build.parts.memory.length > 0 ? [row('Memory speed and profile', 'parts.memory')] : []),
    row('System and its version'),
    row('Settings that differ from the default'),
    row('Room temperature while measuring', 'acceptance.room-temperature'),
  ];
}

/** What the build says of the hand-over itself. */
function included({ build }: Context): readonly Body[] {
  const hand = build.file['hand-over'];
  const { includes, transport, cards, cooler } = hand;
  if (!hand.$.stated)
    return [lines({ text: 'The build does not say what goes with the machine.', place: 'hand-over' })];
  const way: Line[] = [
    ...(transport.node ? [{ text: `Travels: ${oneLine(transport.text)}`, place: transport.path }] : []),
    ...(cards.node ? [{ text: `Cards on the way: ${oneLine(cards.text)}`, place: cards.path }] : []),
    ...(cooler.node ? [{ text: `Cooler on the way: ${oneLine(cooler.text)}`, place: cooler.path }] : []),
  ];
  const items = (includes.value ?? []).map((one) => ({ text: upperFirst(oneLine(one.text)), place: one.path }));
  return [
    ...(items.length > 0 ? [{ type: 'ticks', title: 'Goes with the machine', items } as const] : []),
    ...(way.length > 0 ? [lines(...way)] : []),
  ];
}
