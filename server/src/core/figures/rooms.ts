// Figures of room: what goes into a case or under a cooler, the room there, and what is left between.
import type { Build, Placed } from '../build/build';
import { isLiquid } from './coolers';
import { decidedBy, derive, figure, type Figure } from './figure';
import { boardDepth, cardRoom } from './fit';
import { notNegative } from './guard';
import { memo } from './memo';
import { radiatorLength, radiators, thicknessWithFans, type Radiator } from './radiators';
import { atMost, type Truth } from './truth';

export type RoomKind =
  | 'cooler height'
  | 'memory height'
  | 'card length'
  | 'card height'
  | 'supply depth'
  | 'board depth'
  | 'radiator length'
  | 'radiator thickness';

export interface Room {
  readonly kind: RoomKind;
  readonly placed: Placed;
  readonly need: Figure;
  readonly room: Figure;
  /** What is left; negative where it is short. */
  readonly gap: Figure;
  /** Whether it stands clear of what limits it, so that the room does not count; absent where that is no question. */
  readonly clear?: Truth;
}

/** Every room of a build that something goes into, whether its size is stated or not. */
export const rooms = memo((build: Build): readonly Room[] => {
  const { case: box, board, supply } = build.parts;
  const all = [...overBoard(build), ...cardRooms(build)];
  if (box && supply)
    all.push(
      room(
        'supply depth',
        supply,
        figure(supply.part.depth, `depth of ${supply.label}`),
        figure(box.part['supply-depth'], `room for a supply in ${box.label}`),
      ),
    );
  if (box && board)
    all.push(
      room(
        'board depth',
        board,
        boardDepth(board),
        figure(box.part['board-depth'], `room for a board’s depth in ${box.label}`),
      ),
    );
  return [...all, ...radiators(build).flatMap(radiatorRooms)];
});

const room = (kind: RoomKind, placed: Placed, need: Figure, space: Figure, clear?: Truth): Room => ({
  kind,
  placed,
  need,
  room: space,
  gap: gapOf({ need, room: space }),
  ...(clear ? { clear } : {}),
});

/** What is left of a room; negative where it is short. */
export const gapOf = ({ need, room }: Pick<Room, 'need' | 'room'>): Figure =>
  derive(`room beside the ${need.label}`, 'length', [room, need], `${room.label} − ${need.label}`, (a, b) => a - b, {
    unit: 'mm',
  });

/** A room that a part takes up with one of its sides. */
export interface Clearance extends Room {
  readonly side: 'height' | 'length' | 'depth';
}

const sides: Readonly<Partial<Record<RoomKind, Clearance['side']>>> = {
  'cooler height': 'height',
  'memory height': 'height',
  'card length': 'length',
  'supply depth': 'depth',
};

/** The rooms that a part’s sheet and the case’s or the cooler’s state in one figure each. */
export const clearances = memo((build: Build): readonly Clearance[] =>
  rooms(build).flatMap((one) => {
    const side = sides[one.kind];
    return side ? [{ ...one, side }] : [];
  }),
);

function overBoard({ parts: { case: box, board, cooler, memory } }: Build): Room[] {
  const all: Room[] = [];
  if (!cooler) return all;
  if (box)
    all.push(
      room(
        'cooler height',
        cooler,
        figure(cooler.part.height, `height of ${cooler.label}`),
        figure(box.part['cooler-height'], `room for a cooler in ${box.label}`),
      ),
    );
  if (isLiquid(cooler)) return all;
  const reach = figure(cooler.part['overhang-memory'], `reach of ${cooler.label} towards the memory`);
  const clear =
    board && atMost(reach, figure(board.part['socket-to-memory'], `distance from socket to memory on ${board.label}`));
  for (const kit of memory)
    all.push(
      room(
        'memory height',
        kit,
        figure(kit.part.height, `height of ${kit.label}`),
        figure(cooler.part['memory-room'], `room for memory under ${cooler.label}`),
        clear,
      ),
    );
  return all;
}

function cardRooms(build: Build): Room[] {
  const { case: box, graphics, cards } = build.parts;
  if (!box) return [];
  return [...graphics, ...cards].flatMap((card) => {
    const length = room(
      'card length',
      card,
      figure(card.part.length, `length of ${card.label}`),
      cardLengthRoom(build)!,
    );
    // On a riser it stands with its face to the panel.
    if (card.at.riser.entry) return [length];
    return [length, room('card height', card, figure(card.part.height, `height of ${card.label}`), cardRoom(box))];
  });
}

/** Radiators at the front, which come between the fans there and a card. */
export const frontRadiators = memo((build: Build): readonly Radiator[] =>
  radiators(build).filter(({ mount }) => mount.value === 'front'),
);

/**
 * The room for a card’s length, stated with front fans in place, less the radiators that come between them and the
 * card; undefined without a case.
 */
export const cardLengthRoom = memo((build: Build): Figure | undefined => {
  const { case: box } = build.parts;
  if (!box) return undefined;
  const stated = figure(box.part['card-length'], `room for a card in ${box.label}`);
  const front = frontRadiators(build);
  if (front.length === 0) return stated;
  const left = derive(
    `${stated.label} behind the front radiator`,
    'length',
    [stated, ...front.map(({ facts, label }) => notNegative(figure(facts.thickness, `thickness of ${label}`)))],
    'room − thickness of the radiator',
    (all, ...thicknesses) => all - thicknesses.reduce((sum, one) => sum + one, 0),
    { unit: 'mm' },
  );
  return decidedBy(left, ...front.map(({ mount }) => mount));
});

function radiatorRooms(radiator: Radiator): Room[] {
  const { placed, place, mount } = radiator;
  if (!place) return [];
  const at = mount.value!;
  return [
    room('radiator length', placed, radiatorLength(radiator), figure(place.length, `length for a radiator at ${at}`)),
    room(
      'radiator thickness',
      placed,
      thicknessWithFans(radiator),
      figure(place.thickness, `depth for a radiator at ${at}`),
    ),
  ];
}
