// Fans of a finished machine that stood still under load.
import type { Build } from '../../build/build';
import { copyWith, number, writtenAt, type Figure } from '../../figures/figure';
import { sentence } from '../../figures/sentence';
import { atLeast, given, sure } from '../../figures/truth';
import type { Fact } from '../../parts/fact';
import { check } from '../check';
import { atBuild, outcome, some } from '../kit';
import { undecided } from './built-kit';

export default check({
  id: 'built-fans-still',
  area: 'built',
  grade: 'shortfall',
  what: 'Under load at least as many fans turn as the build plugs into headers of the board.',
  why: 'A lead that is not plugged in, or caught in a blade, shows first in the temperatures.',
  source: 'Linux kernel, Documentation/hwmon: fan inputs',
  limits: ['Which input belongs to which header, no output tells; fans on hubs and splitters have none of their own.'],
  examples: [
    {
      faulty: `
build: Desk
#      ^^^^
parts:
  fans: [{ mount: rear, header: SYS_FAN_1 }]
`,
      instead: 'Switch off, unplug, and look at the fans’ leads.',
      beside: {
        'example.asbuilt.yaml':
          '\nfrom: [sensors under load]\nfans: [{ sensor: nct6799 fan1, speed: 0 rpm, read: load }]\n',
      },
    },
  ],
  test(build, report) {
    if (!build.machine) return;
    const logged = (build.machine?.fans.value ?? []).filter(({ read, speed }) => read.value === 'load' && speed.value);
    const headers = headersUsed(build);
    if (logged.length === 0 || headers.length === 0) return;
    const turning = logged.filter(({ speed }) => speed.value!.hi > 0);
    const found = counted(turning.length, logged[0]!.speed);
    const wanted = number(headers.length, 'headers that fans are plugged into');
    const speeds = logged.map(({ speed }) => speed);
    const target = atBuild(build, 'built.fans');
    const broken = () => sentence`No fan that the board measures turns under load; ${wanted}
      ${some(wanted, 'header has', 'headers have')} one. Look at their leads.`;
    if (turning.length === 0) return report(outcome(target, sure(false, ...speeds, wanted), { broken }));
    const enough = atLeast(found, wanted);
    report(
      outcome(target, enough.is ? given(enough, ...speeds) : undecided(...speeds), {
        broken,
        open: () => sentence`${found} of the fans that the board measures turn under load, and ${wanted}
          ${some(wanted, 'header has', 'headers have')} one; look which stands still.`,
      }),
    );
  },
});

const counted = (many: number, from: Fact<unknown>): Figure => {
  const place = writtenAt(from);
  const figure = number(many, 'fans that turn', 'counted in the machine');
  return place ? copyWith(figure, { from: place }) : figure;
};

/** Headers of the board that fans of the build name, each once. */
function headersUsed({ parts: { cooler, fans } }: Build): readonly string[] {
  const named = [cooler?.at.header.value, ...fans.map(({ at }) => at.header.value)];
  return [...new Set(named.filter((name): name is string => name !== undefined))];
}
