// What to have at hand before the work begins: parts, papers, tools, small things, power cables.
import type { Placed } from '../../core/build/build';
import { boxed } from '../../core/figures/box-contents';
import { needs } from '../../core/figures/boxes';
import { connectorsBrought, connectorsWanted } from '../../core/figures/cables';
import { dataCables } from '../../core/figures/drive-places';
import { total, type Figure } from '../../core/figures/figure';
import { howMany } from '../../core/figures/power';
import { show } from '../../core/figures/sentence';
import { atLeast, type Truth } from '../../core/figures/truth';
import { DUST_TOOLS, GLASS_TOOLS, NOISE_TOOLS, STEP_TOOLS } from '../../core/trade/bench-tools';
import { CONNECTOR_KINDS } from '../../core/trade/connectors';
import type { StepKind } from '../../core/trade/steps';
import type { Context } from './context';
import { oneLine, upperFirst, type Block, type Body, type Row } from './model';
import { benchName, countOf, handbookOf, roleName, whereTo } from './parts';

/** `kinds`: the steps of the work, for the tools that they ask for. */
export function atHandBlock(context: Context, kinds: readonly StepKind[]): Block {
  const bodies: readonly (Body | undefined)[] = [
    partsTable(context),
    smallTable(context),
    powerTable(context),
    { type: 'ticks', title: 'Tools and means', items: tools(context, kinds).map((text) => ({ text })) },
    papers(context),
  ];
  return { id: 'at-hand', heading: 'Have at hand', level: 2, bodies: bodies.flatMap((body) => body ?? []) };
}

function partsTable({ build, places }: Context): Body {
  return {
    type: 'table',
    caption: 'Parts',
    columns: ['Part', 'On its box', 'How many', 'Goes to'],
    rows: build.all().map((placed) => ({
      place: placed.path,
      tick: true,
      cells: [
        { text: upperFirst(roleName(placed)) },
        { text: benchName(placed), findings: places.findingsAt(placed.path) },
        { text: String(countOf(placed)) },
        { text: whereTo(placed) },
      ],
    })),
  };
}

const enough = ({ is }: Truth): string => (is === true ? 'Enough' : is === false ? 'Too few' : 'Not known');

function smallTable(context: Context): Body | undefined {
  const { build, places } = context;
  const rows: Row[] = needs(build).map(({ thing, for: placed, needed, held, truth }) =>
    countRow(
      `${upperFirst(thing)}s`,
      needed,
      held,
      enough(truth),
      placed.path,
      places.findingsAt(`${placed.path}.${thing}`),
    ),
  );
  const drives = build.parts.drives.filter(({ at }) => at.port.node);
  const cables = dataCables(build);
  if (drives.length > 0) {
    const wanted = total(
      'drives on a port',
      'count',
      drives.map((drive) => howMany(drive)),
    );
    rows.push(countRow('Data cables for drives', wanted, cables, enough(atLeast(cables, wanted)), 'parts.drives', []));
  }
  for (const item of boxItems(context)) rows.push(item);
  for (const fixing of build.parts.fixings)
    rows.push({
      place: fixing.path,
      tick: true,
      cells: [
        { text: benchName(fixing as Placed) },
        { text: '' },
        { text: `${countOf(fixing as Placed)} bought` },
        { text: '' },
      ],
    });
  return rows.length === 0
    ? undefined
    : { type: 'table', caption: 'Small things', columns: ['Thing', 'Needed', 'In the boxes', 'Enough'], rows };
}

function countRow(
  what: string,
  needed: Figure,
  held: Figure,
  verdict: string,
  place: string,
  findings: readonly number[],
): Row {
  return {
    place,
    tick: true,
    cells: [{ text: what }, { text: show(needed) }, { text: show(held) }, { text: verdict, findings }],
  };
}

/** What lies in a box and is looked for when it is needed. */
function boxItems({ build }: Context): readonly Row[] {
  const { board, cooler, drives } = build.parts;
  const items: Row[] = [];
  const add = (what: string, { path }: Placed, held: Figure, needed: string, verdict: string): void => {
    const rest = [needed, show(held), verdict].map((text) => ({ text }));
    items.push({ place: path, tick: true, cells: [{ text: what }, ...rest] });
  };
  const addOne = (what: string, placed: Placed, held: Figure): void =>
    add(what, placed, held, '1', held.lo >= 1 ? 'Enough' : 'Not known');
  if (board) {
    const shield = boxed(board as Placed, 'I/O shield');
    if (shield.hi > 0) addOne('I/O shield of the board', board as Placed, shield);
    const screws = boxed(board as Placed, 'M.2 screw');
    const most = drives
      .filter(({ part }) => part.shape.value === 'M.2')
      .reduce((sum, drive) => sum + countOf(drive as Placed), 0);
    const verdict = screws.lo >= most ? 'Enough' : 'See the slots’ own fixing';
    if (most > 0 && screws.lo > 0) add('M.2 screws', board as Placed, screws, `at most ${most}`, verdict);
  }
  if (cooler) {
    const kit = boxed(cooler as Placed, 'mounting kit');
    if (kit.lo > 0) addOne('Mounting kit of the cooler', cooler as Placed, kit);
  }
  return items;
}

function powerTable({ build, places }: Context): Body | undefined {
  const rows: Row[] = CONNECTOR_KINDS.flatMap((kind) => {
    const [wanted, brought] = [connectorsWanted(build, kind), connectorsBrought(build, kind)];
    const findings = places.findingsAt('parts.supply.cables');
    return wanted.lo > 0
      ? [countRow(kind, wanted, brought, enough(atLeast(brought, wanted)), 'parts.supply', findings)]
      : [];
  });
  for (const cable of build.parts.cables)
    rows.push({
      place: cable.path,
      tick: true,
      cells: [
        { text: benchName(cable as Placed), findings: places.findingsAt(cable.path) },
        { text: String(countOf(cable as Placed)) },
        { text: 'bought beside' },
        { text: whereTo(cable as Placed) },
      ],
    });
  return rows.length === 0
    ? undefined
    : { type: 'table', caption: 'Cables', columns: ['Connector or cable', 'Needed', 'There', 'Enough'], rows };
}

/** Each tool once, in the order in which the work asks for it. */
function tools({ build }: Context, kinds: readonly StepKind[]): readonly string[] {
  const { acceptance, bench, expect, place } = build.file;
  const noise = acceptance.noise.$.stated || expect.noise.$.stated;
  const surface = bench.surface.text;
  return [
    ...new Set([
      ...(surface === '' ? ['Dissipative mat to lay the board on'] : [`Surface for the board: ${oneLine(surface)}`]),
      ...kinds.flatMap((kind) => STEP_TOOLS[kind] ?? []),
      ...(build.parts.case?.part['glass-panel'].value === true ? GLASS_TOOLS : []),
      ...(DUST_TOOLS[bench['dust-removal'].text] ? [DUST_TOOLS[bench['dust-removal'].text]!] : []),
      ...(noise ? NOISE_TOOLS : []),
      ...(place.humidity.node ? ['Hygrometer'] : []),
    ]),
  ];
}

/** The documents that the parts’ facts were read from: as a rule their handbooks. */
function papers({ build }: Context): Body | undefined {
  const titles = [...new Set(build.all().flatMap((placed) => handbookOf(placed) ?? []))];
  return titles.length === 0
    ? undefined
    : { type: 'ticks', title: 'Handbooks and data sheets', items: titles.map((text) => ({ text })), small: true };
}
