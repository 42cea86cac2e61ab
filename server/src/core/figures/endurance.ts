// Figures of endurance: how long what a drive states lasts at what is written to it a day.
import type { Build } from '../build/build';
import { enduranceYears } from '../trade/storage';
import { derive, figure, type Figure } from './figure';
import { allowed } from './guard';
import type { Drive } from './storage';

const gigabytes = 1e9;
const terabytes = 1e12;

/** What a build says is written to a drive a day; undefined where it does not say so. */
export function writtenPerDay(build: Build, drive: Drive): Figure | undefined {
  const promise = build.file.expect.drives.value?.get(drive.at.name.value ?? '');
  const perDay = promise?.['written-per-day'];
  return perDay?.node && figure(perDay, `data written a day to ${drive.label}`);
}

/** The years after which the endurance that a drive states is used up. */
export const yearsOfUse = (drive: Drive, perDay: Figure): Figure =>
  derive(
    `years of use of ${drive.label}`,
    'count',
    [figure(drive.part.endurance, `endurance of ${drive.label}`), perDay],
    'endurance ÷ (a day × 365)',
    allowed((endurance, day) => enduranceYears(endurance / terabytes, day / gigabytes)),
  );
