// Lights of fans and coolers against the header they plug into: volts and pins.
import type { Build, Placed } from '../../build/build';
import { missing, type Missing } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { agree, all, fits, lacking, sure, type Truth } from '../../figures/truth';
import type { board } from '../../parts/board';
import type { Group } from '../../parts/fact';
import { check } from '../check';
import { aspectOf, at, outcome, putOn } from '../kit';

type Lit = Placed<'fans'> | Placed<'cooler'>;
type Header = Group<(typeof board)['headers']['of']['fields']>;

export default check({
  id: 'light-header-differs',
  area: 'cooling',
  grade: 'harm',
  what: 'Lights plug into a header of their own voltage and number of pins.',
  why: 'Lights for 5 V burn out on 12 V within a second; lights for 12 V stay dark on 5 V.',
  source: 'common practice: 3 pins carry 5 V and set each light by itself, 4 pins carry 12 V and set all alike',
  remarks: ['Lights for 12 V on a header of 5 V are a shortfall: they stay dark.'],
  caution: 'light-voltage',
  examples: [
    {
      faulty: `
parts:
  board: { headers: { RGB_1: { kind: RGB, voltage: 12 V, pins: 4 }, RGB_2: { kind: RGB, voltage: 5 V, pins: 3 } } }
  fans: [{ lights: { voltage: 5 V, pins: 3 }, light-header: RGB_1 }]
#                                                           ^^^^^
`,
      mended: `
parts:
  board: { headers: { RGB_1: { kind: RGB, voltage: 12 V, pins: 4 }, RGB_2: { kind: RGB, voltage: 5 V, pins: 3 } } }
  fans: [{ lights: { voltage: 5 V, pins: 3 }, light-header: RGB_2 }]
`,
    },
  ],
  test(build, report) {
    const { board, fans, cooler } = build.parts;
    if (!board) return;
    for (const lit of [...fans, ...(cooler ? [cooler] : [])] as readonly Lit[]) {
      const named = lit.at['light-header'];
      if (named.value === undefined) continue;
      const header = board.part.headers.value?.get(named.value);
      const lights = lightsOf(lit);
      const truth = header
        ? all(sameVolts(lit, header, named.value), samePins(lit, header, named.value))
        : lacking([missing(board.part.headers, `header ${named.value} of ${board.label}`)], named);
      report(
        outcome(aspectOf(at(lit, named), 'lights'), truth, {
          broken: () =>
            lights.voltage.value && header!.voltage.value
              ? sentence`The lights of ${lit.label} take ${lights.voltage} by ${lights.pins} pins; ${named} gives
                  ${header!.voltage} by ${header!.pins}. Plug them into a header of the same voltage and pins.`
              : sentence`The lights of ${lit.label} have ${lights.pins} pins; ${named} has ${header!.pins} and another
                  voltage. Plug them into a header of the same pins.`,
          ...(staysDark(lit, header) ? { grade: 'shortfall' as const } : {}),
          fixes: () =>
            matching(build, lit).map((name) => putOn(lit, 'light-header', name, `Plug the lights into ${name}`)),
        }),
      );
    }
  },
});

const lightsOf = ({ part }: Lit) => ('lights' in part ? part.lights : part.fans.lights);

/** What 3 and 4 pins carry, where nobody states the volts. Source: common practice. */
const voltsOfPins: ReadonlyMap<number, number> = new Map([
  [3, 5],
  [4, 12],
]);

type Ends = Pick<Header, 'voltage' | 'pins'>;

const voltsOf = ({ voltage, pins }: Ends): number | undefined =>
  voltage.value?.lo ?? (pins.value === undefined ? undefined : voltsOfPins.get(pins.value));

function sameVolts(lit: Lit, header: Header, name: string): Truth {
  const ends = [lightsOf(lit), header];
  const volts = ends.map(voltsOf);
  const lacks: Missing[] = ends.flatMap((end, i) =>
    volts[i] === undefined ? [missing(end.voltage, `voltage of ${i === 0 ? `the lights of ${lit.label}` : name}`)] : [],
  );
  const uses = ends.flatMap(({ voltage, pins }) => [voltage, pins]);
  return lacks.length > 0 ? lacking(lacks, ...uses) : sure(volts[0] === volts[1], ...uses);
}

function samePins(lit: Lit, header: Header, name: string): Truth {
  const { pins } = lightsOf(lit);
  const isLight = fits(header.kind, `kind of ${name}`, (kind) => kind === 'RGB');
  return all(
    isLight,
    agree(pins, `pins of the lights of ${lit.label}`, header.pins, `pins of ${name}`, (a, b) => a === b),
  );
}

/** Lights for 12 V on 5 V: nothing burns. */
function staysDark(lit: Lit, header: Header | undefined): boolean {
  const [own, given] = [voltsOf(lightsOf(lit)), header && voltsOf(header)];
  return own !== undefined && given !== undefined && given <= own;
}

function matching({ parts: { board } }: Build, lit: Lit): string[] {
  const own = lightsOf(lit);
  return [...(board?.part.headers.value ?? [])]
    .filter(([, header]) => header.kind.value === 'RGB' && header.pins.value === own.pins.value)
    .map(([name]) => name);
}
