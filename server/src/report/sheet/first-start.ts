// The first start on the sheet: its steps, what the firmware must show, what to look for when nothing happens.
import { arriving, plannedUpdate } from '../../core/figures/firmware';
import { fanConnectors } from '../../core/figures/headers';
import { memoryCapacity } from '../../core/figures/memory';
import { show } from '../../core/figures/sentence';
import { FIRST_PICTURE, NO_START } from '../../core/trade/first-start';
import type { Context } from './context';
import { lines, oneLine, table, type Block, type Row, type SheetStep } from './model';
import { benchName, boxName, countOf, whereTo } from './parts';

export function firstStartBlock(context: Context, steps: readonly SheetStep[]): Block {
  return {
    id: 'first-start',
    heading: 'First start',
    level: 2,
    bodies: [
      { type: 'steps', steps },
      lines({ text: FIRST_PICTURE }),
      table('What the firmware must show', ['Shown', 'By the build', 'Read'], shown(context)),
      { type: 'ticks', title: 'If nothing happens', items: NO_START.map((text) => ({ text })), small: true },
    ],
  };
}

function shown({ build, places }: Context): readonly Row[] {
  const { board, processor, memory, drives } = build.parts;
  const rows: Row[] = [];
  const row = (what: string, text: string, place: string): void => {
    rows.push({ place, tick: true, cells: [{ text: what }, { text: oneLine(text) }, 'write'] });
  };
  if (board) {
    const update = plannedUpdate(build)?.to;
    const version = update?.node ? update : arriving(board);
    row('Firmware version', version.text === '' ? 'not stated' : version.text, places.key(version));
  }
  if (processor) row('Processor', boxName(processor), processor.path);
  if (memory.length > 0) row('Memory', show(memoryCapacity(build)), 'parts.memory');
  for (const kit of memory)
    row('Modules', `${countOf(kit)} × ${benchName(kit)}, ${whereTo(kit) || 'slots not stated'}`, kit.path);
  for (const drive of drives)
    row('Drive', `${benchName(drive)}, ${whereTo(drive, ['slot', 'port']) || 'place not stated'}`, drive.path);
  for (const { placed, pump, header } of fanConnectors(build)) {
    const where = header.text === '' ? 'header not stated' : `header ${header.text}`;
    row(pump ? 'Pump runs' : 'Fan turns', `${benchName(placed)}, ${where}`, placed.path);
  }
  return rows;
}
