// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.
import type { Check } from './check';
import boardPowerShort from './board/board-power-short';
import firmwareArrivingUnstated from './board/firmware-arriving-unstated';
import firmwareDropsProcessor from './board/firmware-drops-processor';
import firmwareFactOld from './board/firmware-fact-old';
import firmwareRouteIncomplete from './board/firmware-route-incomplete';
import firmwareTargetTooOld from './board/firmware-target-too-old';
import firmwareTargetUnknown from './board/firmware-target-unknown';
import firmwareTooOldForProcessor from './board/firmware-too-old-for-processor';
import noPicture from './board/no-picture';
import processorNotListed from './board/processor-not-listed';
import socketDiffers from './board/socket-differs';
import updateRisky from './board/update-risky';
import boardTooBig from './case/board-too-big';
import standoffMissing from './case/standoff-missing';
import standoffTooLow from './case/standoff-too-low';
import standoffUnderBareBoard from './case/standoff-under-bare-board';
import coolerTooTall from './cooling/cooler-too-tall';
import excursionBeyondSupply from './power/excursion-beyond-supply';
import leadFromAnotherSupply from './power/lead-from-another-supply';
import powerLeadsShort from './power/power-leads-short';
import supplyHeadroomThin from './power/supply-headroom-thin';
import supplyOverloaded from './power/supply-overloaded';
import arrayCapacityShort from './storage/array-capacity-short';
import baysShort from './storage/bays-short';
import bootDriveNotBootable from './storage/boot-drive-not-bootable';
import capacityShort from './storage/capacity-short';
import dataLeadsShort from './storage/data-leads-short';
import driveBusNotCarried from './storage/drive-bus-not-carried';
import driveInSlowSlot from './storage/drive-in-slow-slot';
import drivePowerShort from './storage/drive-power-short';
import driveSlowerThanPromised from './storage/drive-slower-than-promised';
import driveThreadWrong from './storage/drive-thread-wrong';
import eightfoldSlip from './storage/eightfold-slip';
import enduranceShort from './storage/endurance-short';
import m2KeyDiffers from './storage/m2-key-differs';
import m2LengthUnsupported from './storage/m2-length-unsupported';
import m2ScrewMissing from './storage/m2-screw-missing';
import m2TooThick from './storage/m2-too-thick';
import portsShort from './storage/ports-short';
import screwTooDeep from './storage/screw-too-deep';
import slotTakesLanes from './storage/slot-takes-lanes';
import slotTakesPorts from './storage/slot-takes-ports';
import acceptedButGone from './text/accepted-but-gone';
import acceptedHarmWithoutName from './text/accepted-harm-without-name';
import acceptedOutOfDate from './text/accepted-out-of-date';
import acceptedWithoutReason from './text/accepted-without-reason';
import aliasOrMergeUsed from './text/alias-or-merge-used';
import choiceUnknown from './text/choice-unknown';
import formatNewer from './text/format-newer';
import keyTwice from './text/key-twice';
import limitsReached from './text/limits-reached';
import nameTwice from './text/name-twice';
import numberOdd from './text/number-odd';
import overrideNeedless from './text/override-needless';
import partKindWrongHere from './text/part-kind-wrong-here';
import partNotFound from './text/part-not-found';
import placeTwice from './text/place-twice';
import placeUnknown from './text/place-unknown';
import promiseUncheckable from './text/promise-uncheckable';
import severalDocuments from './text/several-documents';
import unitLookAlike from './text/unit-look-alike';
import unitMissing from './text/unit-missing';
import unitOfOtherDimension from './text/unit-of-other-dimension';
import unknownKey from './text/unknown-key';
import wrongKindOfValue from './text/wrong-kind-of-value';
import yaml11AskedFor from './text/yaml-1.1-asked-for';
import yamlSyntax from './text/yaml-syntax';

export const checks: readonly Check[] = [
  boardPowerShort,
  firmwareArrivingUnstated,
  firmwareDropsProcessor,
  firmwareFactOld,
  firmwareRouteIncomplete,
  firmwareTargetTooOld,
  firmwareTargetUnknown,
  firmwareTooOldForProcessor,
  noPicture,
  processorNotListed,
  socketDiffers,
  updateRisky,
  boardTooBig,
  standoffMissing,
  standoffTooLow,
  standoffUnderBareBoard,
  coolerTooTall,
  excursionBeyondSupply,
  leadFromAnotherSupply,
  powerLeadsShort,
  supplyHeadroomThin,
  supplyOverloaded,
  arrayCapacityShort,
  baysShort,
  bootDriveNotBootable,
  capacityShort,
  dataLeadsShort,
  driveBusNotCarried,
  driveInSlowSlot,
  drivePowerShort,
  driveSlowerThanPromised,
  driveThreadWrong,
  eightfoldSlip,
  enduranceShort,
  m2KeyDiffers,
  m2LengthUnsupported,
  m2ScrewMissing,
  m2TooThick,
  portsShort,
  screwTooDeep,
  slotTakesLanes,
  slotTakesPorts,
  acceptedButGone,
  acceptedHarmWithoutName,
  acceptedOutOfDate,
  acceptedWithoutReason,
  aliasOrMergeUsed,
  choiceUnknown,
  formatNewer,
  keyTwice,
  limitsReached,
  nameTwice,
  numberOdd,
  overrideNeedless,
  partKindWrongHere,
  partNotFound,
  placeTwice,
  placeUnknown,
  promiseUncheckable,
  severalDocuments,
  unitLookAlike,
  unitMissing,
  unitOfOtherDimension,
  unknownKey,
  wrongKindOfValue,
  yaml11AskedFor,
  yamlSyntax,
];
