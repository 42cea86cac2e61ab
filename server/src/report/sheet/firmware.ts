// The firmware route on the sheet: which version there is, which is needed, and the way from the one to the other.
import type { Placed } from '../../core/build/build';
import { cautionWords } from '../../core/checks/page';
import { arriving, plannedUpdate, processorListed, startsAsItArrives } from '../../core/figures/firmware';
import type { Fact } from '../../core/parts/fact';
import { listed } from '../../core/text';
import { FIRMWARE_ROUTES, type RouteDetail, type RouteStep } from '../../core/trade/firmware-route';
import type { Context } from './context';
import { oneLine, upperFirst, type Block, type Body, type Line, type Row, type SheetStep } from './model';
import { boxName, textOf } from './parts';
import { cautionOf } from './step-cautions';

type Board = Placed<'board'>;

/** None for a build without a board. */
export function firmwareBlock(context: Context, updateStep: number | undefined): Block | undefined {
  const { board } = context.build.parts;
  if (!board) return undefined;
  return {
    id: 'firmware',
    heading: 'Firmware route',
    level: 2,
    bodies: [versionTable(context, board), ...routeBodies(context, updateStep)],
  };
}

function versionTable({ build, places }: Context, board: Board): Body {
  const update = plannedUpdate(build);
  const line = processorListed(build)?.line;
  const row = (what: string, fact: Fact<unknown> | undefined, why = 'not stated'): Row => ({
    tick: false,
    cells: [{ text: what }, { text: fact && fact.text !== '' ? oneLine(fact.text) : why }, 'write'],
    ...(fact ? { place: places.key(fact) } : {}),
  });
  return {
    type: 'table',
    caption: `Firmware versions of ${boxName(board)}`,
    columns: ['Version', 'By the build', 'Read at the bench'],
    rows: [
      row('That it arrives with', arriving(board)),
      row('That starts the processor', line?.since, build.parts.processor ? 'not stated' : 'no processor in the build'),
      row('That it is brought to', update?.to, 'no update is planned'),
    ],
  };
}

function routeBodies(context: Context, updateStep: number | undefined): readonly Body[] {
  const { build } = context;
  const update = plannedUpdate(build);
  const by = update?.by.value;
  if (!by) return [{ type: 'lines', lines: [withoutRoute(context)] }];
  const route = FIRMWARE_ROUTES[by];
  const steps = (from: number, of: readonly RouteStep[]): readonly SheetStep[] =>
    of.map((step, i) => routeStep(context, step, from + i));
  const where = updateStep === undefined ? 'Then:' : `At step ${updateStep} of the order of work:`;
  return [
    { type: 'lines', lines: [{ text: `Way: ${by}.`, place: context.places.key(update.by) }, { text: 'Beforehand:' }] },
    { type: 'steps', steps: steps(1, route.before) },
    ...(route.update.length > 0
      ? [
          { type: 'lines', lines: [{ text: where }] } as const,
          { type: 'steps', steps: steps(route.before.length + 1, route.update) } as const,
        ]
      : []),
  ];
}

/** What is to be done where no update is planned, or none that says how. */
function withoutRoute({ build, places }: Context): Line {
  const starts = startsAsItArrives(build);
  const findings = places.findingsAt('parts.board.firmware', 'bench.firmware-update');
  const place = 'parts.board.firmware';
  if (plannedUpdate(build))
    return {
      text: 'An update is planned and its way is not stated. Choose one before the work begins.',
      place,
      findings,
    };
  if (starts?.is === true)
    return {
      text: 'The version that it arrives with starts the processor. No update is needed for it.',
      place,
      findings,
    };
  if (starts?.is === false)
    return {
      text: 'The version that it arrives with does not start the processor. Plan an update first.',
      place,
      findings,
    };
  const lacks = starts ? listed([...new Set(starts.missing.map(({ what }) => what))].slice(0, 3), 'or') : '';
  return {
    text:
      'Whether the version that it arrives with starts the processor is not known. Find out before the work begins.' +
      (lacks === '' ? '' : ` No file states ${lacks}.`),
    place,
    findings,
  };
}

function routeStep({ build, places }: Context, { text, detail, writes }: RouteStep, number: number): SheetStep {
  const fact = detail && detailFact(build, detail);
  const stated = fact?.node !== undefined;
  const words = cautionWords('update-interrupted')!;
  const said = detail && stated ? `${upperFirst(detail)}: ${textOf(fact)}` : undefined;
  return {
    number,
    title: text,
    cautions: writes ? [cautionOf(words)] : [],
    things: said === undefined ? [] : [{ text: said, place: places.key(fact!) }],
    notes: [],
    reasons: [],
    findings: fact ? places.findingsAt(fact.path) : [],
    ...(detail && !stated ? { write: detail } : {}),
  };
}

/** What the build says of an instruction; where it says nothing, what the board’s own file says. */
function detailFact(build: Context['build'], detail: RouteDetail): Fact<unknown> {
  const { to, by, stick, cables, 'older-processor': donor, 'memory-profile': profile } = plannedUpdate(build)!;
  const firmware = by.value === 'stick without processor' ? build.parts.board?.part.firmware : undefined;
  const facts: Readonly<Record<RouteDetail, readonly (Fact<unknown> | undefined)[]>> = {
    version: [to],
    filesystem: [stick.filesystem],
    'file name': [stick['file-name'], firmware?.['update-file']],
    port: [stick.port, firmware?.['update-port']],
    cables: [cables, firmware?.['update-cables']],
    'older processor': [donor.model, donor.family],
    'memory profile': [profile],
  };
  const [own] = facts[detail];
  return facts[detail].find((fact) => fact?.node !== undefined) ?? own!;
}
