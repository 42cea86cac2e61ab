// Tests before the machine is handed over: each with its limit, what comes out of the parts, and room for what was
// measured.
import type { Fact } from '../../core/parts/fact';
import type { Context } from './context';
import { lines, oneLine, table, type Block, type PlaceKey, type Row, type SheetStep } from './model';
import { boxName } from './parts';
import type { Promised } from './promises';

interface Test {
  readonly place: PlaceKey;
  readonly what: string;
  readonly limit: string;
  readonly workedOut?: string;
}

export function testsBlock(context: Context, promises: readonly Promised[], steps: readonly SheetStep[]): Block {
  const { acceptance } = context.build.file;
  const tests = [...acceptanceTests(context), ...promiseTests(context, promises)];
  const rows = tests.map(
    ({ place, what, limit, workedOut }): Row => ({
      place,
      tick: true,
      cells: [{ text: what }, { text: limit }, { text: workedOut ?? '' }, 'write'],
    }),
  );
  const without = 'The build states no acceptance. The limits below are those of its promises.';
  return {
    id: 'tests',
    heading: 'Tests and their limits',
    level: 2,
    bodies: [
      { type: 'steps', steps },
      ...(acceptance.$.stated ? [] : [lines({ text: without, place: 'acceptance' })]),
      ...(rows.length > 0 ? [table('Tests', ['Test', 'Limit', 'Worked out', 'Measured'], rows)] : []),
    ],
  };
}

/** What the acceptance states, in its order. */
function acceptanceTests({ build }: Context): readonly Test[] {
  const { acceptance } = build.file;
  const { other, 'room-temperature': room } = acceptance;
  const tests: Test[] = [];
  const add = (fact: Fact<unknown>, what: string, limit: string): void => {
    if (fact.node) tests.push({ place: fact.path, what, limit });
  };
  const { passes, errors } = acceptance['memory-test'];
  if (acceptance['memory-test'].$.stated)
    tests.push({
      place: 'acceptance.memory-test',
      what: passes.node ? `Memory test, full passes: ${text(passes)}` : 'Memory test',
      limit: errors.node ? `errors at most ${text(errors)}` : 'no limit of errors stated',
    });
  tests.push(...stressTests(build));
  for (const one of acceptance['drive-tests'].value ?? [])
    tests.push({
      place: one.$.path,
      what: `${one.test.node ? text(one.test) : 'test'}, ${one.drive.node ? `drive ${text(one.drive)}` : 'each drive'}`,
      limit: one['failed-sectors'].node
        ? `reallocated, pending and uncorrectable sectors at most ${text(one['failed-sectors'])}`
        : 'no limit of failed sectors stated',
    });
  add(room, 'Room temperature', room.value === 'logged' ? 'written beside every other' : text(room));
  add(acceptance['wall-power'], 'Power from the wall, full load', `at most ${text(acceptance['wall-power'])}`);
  const { level, at } = acceptance.noise;
  add(level, 'Noise under load', `at most ${text(level)}${at.node ? ` at ${text(at)}` : ''}`);
  add(acceptance['processor-temperature'], 'Hottest processor', `at most ${text(acceptance['processor-temperature'])}`);
  for (const fact of other.value ?? []) tests.push({ place: fact.path, what: text(fact), limit: 'as it says' });
  return tests;
}

const text = (fact: Fact<unknown>): string => oneLine(fact.text);

function stressTests({ file, parts: { processor } }: Context['build']): readonly Test[] {
  const { lasts, throttling, margin, 'until-rise': rise } = file.acceptance['stress-test'];
  const tests: Test[] = [];
  const add = (fact: Fact<unknown>, what: string, limit: string): void => {
    if (fact.node) tests.push({ place: fact.path, what, limit });
  };
  const hottest = processor?.part.hottest;
  const limitOf = hottest?.node ? `the ${text(hottest)} of ${boxName(processor!)}` : 'its limit, which no file states';
  add(lasts, 'Stress test', `at least ${text(lasts)}`);
  add(rise, 'Stress test goes on', `until temperatures rise by less than ${text(rise)} in ten minutes`);
  add(throttling, 'Parts that slow themselves down', text(throttling));
  add(margin, 'Hottest processor', `at least ${text(margin)} below ${limitOf}`);
  return tests;
}

/** Promises that nobody can measure on the day: costs, wear, heat into a room. */
const unmeasured = /^expect\.(?:cost|running-cost|heat|drives\..*\.written-per-day)$/;

/** Promises that the acceptance has no line of its own for, to be measured by what was promised. */
function promiseTests({ build }: Context, promises: readonly Promised[]): readonly Test[] {
  const { acceptance } = build.file;
  const covered = new Set<PlaceKey>([
    ...(acceptance['wall-power'].node ? ['expect.power.wall'] : []),
    ...(acceptance.noise.level.node ? ['expect.noise.level'] : []),
    ...(acceptance['processor-temperature'].node ? ['expect.temperature.processor'] : []),
  ]);
  return promises
    .filter(({ place }) => !covered.has(place) && !unmeasured.test(place))
    .map(({ place, label, limit, workedOut }) => ({ place, what: label, limit: `promised: ${limit}`, workedOut }));
}
