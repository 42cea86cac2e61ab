// Air that is only blown in, or only out.
import type { Build } from '../../build/build';
import type { Fact } from '../../parts/fact';
import { streams, type Stream } from '../../figures/air';
import { isOpenFrame } from '../../figures/case-heat';
import { number, total } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { all, any, atLeast, atMost, given, lacking, sure, type Truth } from '../../figures/truth';
import { check } from '../check';
import { at, outcome, putOn, type FixIdea } from '../kit';

type FlowDirection = 'in' | 'out';
const one = number(1, 'a fan');
/** Places where each way is usual come first. */
const usual: Readonly<Record<FlowDirection, readonly string[]>> = {
  in: ['front', 'bottom', 'side'],
  out: ['rear', 'top'],
};

export default check({
  id: 'airflow-one-way',
  area: 'cooling',
  grade: 'shortfall',
  what: 'Where a case has several fans, some blow air in and some blow it out.',
  why:
    'Fans that all blow one way push against each other through whatever gaps there are, and leave corners ' +
    'of the case without any draught.',
  source: 'common practice',
  limits: [
    'A single fan works against no other, so it holds.',
    'A case with a single place for fans may have them all blow out there: air comes in by its vents.',
    'An open frame is not judged.',
  ],
  remarks: ['Fans that all blow in, none of them at the rear or the top, are a note: the air leaves by what is open.'],
  examples: [
    {
      faulty: `
parts:
  case: { fan-places: { front: { fitted: 0 }, rear: { fitted: 0 } } }
# ^^^^
  fans:
    - { mount: front, flow: in }
    - { mount: rear, flow: in }
`,
      mended: `
parts:
  case: { fan-places: { front: { fitted: 0 }, rear: { fitted: 0 } } }
  fans:
    - { mount: front, flow: in }
    - { mount: rear, flow: out }
`,
    },
  ],
  test(build, report) {
    const { case: box } = build.parts;
    if (!box || isOpenFrame(build) || streams(build).length === 0) return;
    const blown = { in: blows(build, 'in'), out: blows(build, 'out') };
    const lackedWay: FlowDirection = blown.in.is === false ? 'in' : 'out';
    // Pressed into the case from one side, air leaves by whatever is open; only fans face to face stop each other.
    const onlyPressed = !streams(build).some((some) => some.way === 'in' && usual.out.includes(placeOf(some) ?? ''));
    // One fan works against no other, and none has no way at all: how much air that is, is judged as a flow.
    const alone = atMost(
      total(
        'fans that move air through the case',
        'count',
        streams(build).map((some) => some.count),
      ),
      one,
    );
    // A case with one place for fans has vents for the other way: there is no place to turn a fan round at.
    const places = box.part['fan-places'];
    const isOnlyPlace = (some: Stream): boolean =>
      places.value?.size === 1 && places.value.has(placeOf(some) ?? '') === true;
    const oneSided = lackedWay === 'in' && streams(build).every(isOnlyPlace) ? sure(true, places) : sure(false);
    const grounds = streams(build).flatMap((some) => [some.flow, mountOf(some)]);
    report(
      outcome(at(box), given(any(alone, oneSided, all(blown.in, blown.out)), ...grounds), {
        broken: () =>
          lackedWay === 'in'
            ? sentence`Every fan blows out of the case; let one at the front or the bottom blow in.`
            : onlyPressed
              ? sentence`Every fan blows into the case; the air has to find its way out by gaps, cards and supply.`
              : sentence`Every fan blows into the case, against each other; let the one at the rear or the top blow
                out.`,
        ...(lackedWay === 'out' && onlyPressed ? { grade: 'note' as const } : {}),
        fixes: () => (lackedWay === 'out' && onlyPressed ? [] : turns(build, lackedWay)),
      }),
    );
  },
});

const mountOf = ({ placed, place }: Stream): Fact<string> | undefined =>
  place === undefined ? (placed.at as { readonly mount?: Fact<string> }).mount : undefined;

const placeOf = (some: Stream): string | undefined => some.place ?? mountOf(some)?.value;

function blows(build: Build, way: FlowDirection): Truth {
  return any(
    sure(false),
    ...streams(build)
      .filter((some) => some.way === way || some.way === undefined)
      .map((some) => mayBlow(some, way)),
  );
}

function mayBlow(some: Stream, way: FlowDirection): Truth {
  return some.way === way ? atLeast(some.count, one) : all(atLeast(some.count, one), lacking([some.wayLacks]));
}

function* turns(build: Build, way: FlowDirection): Iterable<FixIdea | undefined> {
  const rank = (mount: string | undefined): number =>
    usual[way].includes(mount ?? '') ? usual[way].indexOf(mount!) : usual[way].length;
  const fans = [...build.parts.fans].sort((a, b) => rank(a.at.mount.value) - rank(b.at.mount.value));
  for (const fan of fans)
    yield putOn(
      fan,
      'flow',
      way,
      `Turn ${fan.at.mount.value ? `the fan at ${fan.at.mount.value}` : fan.label} so that it blows ${way}`,
    );
}
