// Figures of the UPS: what it delivers, for how long, and how long it takes to change over.
import type { Build, Placed } from '../build/build';
import {
  backupAtMostS,
  BACKUP_POWER_FACTOR,
  BATTERY_GIVES_PERCENT,
  HOLD_UP_MS,
  STANDBY_TRANSFER_MS,
  USUAL_HOLD_UP_MS,
} from '../trade/mains';
import { between, copyWith, decidedBy, derive, figure, known, missing, readCount, type Figure } from './figure';
import { allowed } from './guard';

const msPerS = 1000;

/** What the UPS delivers, in watts: as stated, else its VA by their power factor. */
export function backupRating(build: Build): Figure {
  const { rating, apparent, 'power-factor': factor } = build.file.place.mains.backup;
  if (rating.value || !apparent.value) return figure(rating, 'rating of the UPS');
  const label = 'power factor of the UPS';
  const share =
    factor.value === undefined
      ? copyWith(
          between(BACKUP_POWER_FACTOR.low, BACKUP_POWER_FACTOR.high, 'count', label, { source: 'common practice' }),
          { missing: [missing(factor, label)] },
        )
      : readCount(factor.value, label, factor);
  return derive(
    'rating of the UPS',
    'power',
    [figure(apparent, 'apparent power of the UPS'), share],
    'apparent power × power factor',
    (va, of) => va * of,
    { unit: 'W' },
  );
}

/**
 * How long the UPS carries the machine: from what a battery gives when loaded hard, old or cold, to all that it
 * holds.
 */
export function batteryTime(build: Build, wall: Figure): Figure {
  const { energy, efficiency } = build.file.place.mains.backup;
  const { low, high } = BATTERY_GIVES_PERCENT;
  const given = between(low, high, 'percent', 'share that the battery gives', {
    unit: '%',
    source: 'common practice: half when loaded hard, old or cold',
  });
  const inputs = [figure(energy, 'energy of the UPS'), figure(efficiency, 'efficiency of the UPS'), given, wall];
  return derive(
    'time on battery',
    'time',
    inputs,
    'energy × efficiency × share given ÷ power from the wall',
    allowed((joules, percent, share, watts) => (backupAtMostS(joules, percent, watts) * share) / 100),
    { unit: 'min' },
  );
}

/** The longest that a UPS beside the mains usually takes to change over. */
export const usualTransfer = known(STANDBY_TRANSFER_MS / msPerS, 'time', 'usual time of a change-over', {
  unit: 'ms',
  source: 'common practice',
});

/** How long the UPS takes to change over; nothing where it works online. */
export function transferTime(build: Build): Figure {
  const { kind, 'transfer-time': stated } = build.file.place.mains.backup;
  const label = 'transfer time of the UPS';
  if (stated.value) return figure(stated, label);
  if (kind.value === 'online')
    return decidedBy(known(0, 'time', label, { unit: 'ms', source: 'one that works online never changes over' }), kind);
  return copyWith(figure(stated, label), {
    lo: 0,
    hi: kind.value === undefined ? Infinity : STANDBY_TRANSFER_MS / msPerS,
    unit: 'ms',
    source: 'common practice',
  });
}

/** How long the supply bridges: as stated, else at least what the guide that it follows asks, or what is usual. */
export function holdUp({ part, label }: Placed<'supply'>): Figure {
  const { 'hold-up': stated, standard } = part;
  const read = figure(stated, `hold-up of ${label}`);
  if (stated.value) return read;
  const ofGuide = HOLD_UP_MS[standard.value ?? ''];
  return decidedBy(
    copyWith(read, {
      lo: (ofGuide ?? USUAL_HOLD_UP_MS) / msPerS,
      unit: 'ms',
      source: ofGuide === undefined ? 'common practice' : 'design guide of the supply',
    }),
    standard,
  );
}
