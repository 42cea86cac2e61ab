// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.
import type { Check } from './check';
import socketDiffers from './board/socket-differs';
import coolerTooTall from './cooling/cooler-too-tall';
import supplyOverloaded from './power/supply-overloaded';
import driveSlowerThanPromised from './storage/drive-slower-than-promised';
import unknownKey from './text/unknown-key';

export const checks: readonly Check[] = [
  socketDiffers,
  coolerTooTall,
  supplyOverloaded,
  driveSlowerThanPromised,
  unknownKey,
];
