// A UPS: how long it carries the machine at most, whether it can at all, and the shape of its voltage.
import type { Build, Placed } from '../../build/build';
import { figure } from '../../figures/figure';
import { backupRating, batteryTime, holdUp, transferTime, usualTransfer } from '../../figures/backup';
import { apparentPower } from '../../figures/circuit';
import { wallPower } from '../../figures/mains';
import { sentence } from '../../figures/sentence';
import { agree, atLeast, atMost, given, sure } from '../../figures/truth';
import { BACKUP_WAVE_WITH_ACTIVE_PFC } from '../../trade/mains';
import { check } from '../check';
import { atKey, change, outcome, swap, type Reporter } from '../kit';
import { timeText } from './power-kit';

export default check({
  id: 'backup-too-short',
  area: 'power',
  grade: 'shortfall',
  what:
    'The UPS delivers what the machine draws, for as long as promised, in a shape its supply takes, and changes over ' +
    'in time.',
  why:
    'A UPS that is too small switches off at once; one with stepped voltage may drop a supply with active ' +
    'power-factor correction at the change-over.',
  source:
    'energy over power, and half of it for a battery loaded hard, old or cold; wave shape and usual time of a ' +
    'change-over: common practice; hold-up: ATX Version 3 design guide, doc. 336521',
  limits: ['A battery gives half to all of its energy, so a promise holds by the half only.'],
  examples: [
    {
      faulty: `
place:
  mains: { backup: { energy: 100 Wh, efficiency: 90 %, rating: 900 W, wave: sine } }
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, power-factor: active, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { on-battery: 20 min }
#                     ^^^^^^
`,
      mended: `
place:
  mains: { backup: { energy: 100 Wh, efficiency: 90 %, rating: 900 W, wave: sine } }
parts:
  processor: { power: { sustained: 450 W } }
  supply: { rating: 900 W, power-factor: active, efficiency: [{ load: 50 %, percent: 90 % }] }
expect: { on-battery: 5 min }
`,
    },
  ],
  test(build, report) {
    const { backup } = build.file.place.mains;
    const promise = build.file.expect['on-battery'];
    const wall = wallPower(build);
    const { supply } = build.parts;
    if (!wall || !supply) return;
    if (!backup.$.stated) {
      if (promise.entry)
        report(
          outcome(atKey(build, promise), sure(false, promise), {
            broken: () => sentence`${promise} on battery are promised; the place names no UPS.`,
          }),
        );
      return;
    }
    if (promise.entry) {
      const lasts = batteryTime(build, wall);
      const wanted = figure(promise, 'time on battery that is promised');
      report(
        outcome(atKey(build, promise), atLeast(lasts, wanted), {
          broken: () => sentence`${wanted} on battery are promised; the UPS carries ${wall} for ${lasts}.`,
          fixes: () =>
            lasts.lo >= 60 ? [change(promise, timeText(lasts.lo), `Lower the promise to ${timeText(lasts.lo)}`)] : [],
        }),
      );
    }
    changeOver(build, supply, report);
    if (backup.apparent.entry) {
      const apparent = figure(backup.apparent, 'apparent power of the UPS');
      const machine = apparentPower(supply, wall);
      report(
        outcome(atKey(build, backup.apparent), atMost(machine, apparent), {
          broken: () => sentence`The machine takes ${machine} from the wall; the UPS delivers ${apparent}.`,
        }),
      );
    }
    const rating = backupRating(build);
    report(
      outcome(atKey(build, backup.rating), atMost(wall, rating), {
        broken: () => sentence`The machine draws ${wall} from the wall; the UPS delivers ${rating}.`,
      }),
    );
    const suits = agree(
      backup.wave,
      'wave of the UPS',
      supply.part['power-factor'],
      `power-factor correction of ${supply.label}`,
      (wave, factor) => factor !== 'active' || BACKUP_WAVE_WITH_ACTIVE_PFC[wave] === 'suits',
    );
    report(
      outcome(atKey(build, backup.wave), suits, {
        broken: () =>
          sentence`The UPS gives a ${backup.wave} wave; a supply with ${supply.part['power-factor']} power-factor
            correction may drop out on it: try it under load.`,
      }),
    );
  },
});

/** The gap while the UPS changes over, against what the supply bridges; asked where either is told. */
function changeOver(build: Build, supply: Placed<'supply'>, report: Reporter): void {
  const { 'transfer-time': transfer, kind } = build.file.place.mains.backup;
  const bridged = holdUp(supply);
  const place = atKey(build, transfer);
  if (transfer.entry ?? kind.entry) {
    const gap = transferTime(build);
    report(
      outcome(place, given(atMost(gap, bridged), kind), {
        broken: () => sentence`The UPS takes ${gap} to change over; the supply bridges ${bridged}.`,
        fixes: () => [swap(supply)],
      }),
    );
  } else
    report(
      outcome(place, atMost(usualTransfer, bridged), {
        grade: 'note',
        broken: () =>
          sentence`The supply bridges ${bridged}; a UPS that waits beside the mains may take ${usualTransfer} to change
            over. Look up its transfer time.`,
        fixes: () => [swap(supply)],
      }),
    );
}
