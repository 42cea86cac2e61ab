// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.
import type { Check } from './check';
import boardPowerShort from './board/board-power-short';
import firmwareArrivingUnlisted from './board/firmware-arriving-unlisted';
import firmwareArrivingUnstated from './board/firmware-arriving-unstated';
import firmwareDowngrade from './board/firmware-downgrade';
import firmwareDropsProcessor from './board/firmware-drops-processor';
import firmwareFactOld from './board/firmware-fact-old';
import firmwareRouteIncomplete from './board/firmware-route-incomplete';
import firmwareTargetTooOld from './board/firmware-target-too-old';
import firmwareTargetUnknown from './board/firmware-target-unknown';
import firmwareTooOldForProcessor from './board/firmware-too-old-for-processor';
import noPicture from './board/no-picture';
import processorNotListed from './board/processor-not-listed';
import processorPressed from './board/processor-pressed';
import socketCoverEarly from './board/socket-cover-early';
import socketDiffers from './board/socket-differs';
import updateRisky from './board/update-risky';
import builtBoardDiffers from './built/built-board-differs';
import builtDisplayMode from './built/built-display-mode';
import builtDriveFailing from './built/built-drive-failing';
import builtDriveUsed from './built/built-drive-used';
import builtEccOff from './built/built-ecc-off';
import builtFansStill from './built/built-fans-still';
import builtFirmwareDiffers from './built/built-firmware-differs';
import builtLinkSlower from './built/built-link-slower';
import builtMemoryMisplaced from './built/built-memory-misplaced';
import builtMemoryShort from './built/built-memory-short';
import builtMemorySlower from './built/built-memory-slower';
import builtPartDiffers from './built/built-part-differs';
import builtPartElsewhere from './built/built-part-elsewhere';
import builtPartMissing from './built/built-part-missing';
import builtPartUnlisted from './built/built-part-unlisted';
import builtProcessorDiffers from './built/built-processor-differs';
import builtTooHot from './built/built-too-hot';
import builtUplinkSlower from './built/built-uplink-slower';
import boardTooBig from './case/board-too-big';
import cableTooShort from './case/cable-too-short';
import frontCableWithoutHeader from './case/front-cable-without-header';
import glassCare from './case/glass-care';
import looseMargin from './case/loose-margin';
import shieldMissing from './case/shield-missing';
import standoffMissing from './case/standoff-missing';
import standoffTooLow from './case/standoff-too-low';
import standoffUnderBareBoard from './case/standoff-under-bare-board';
import tooHeavyToLiftAlone from './case/too-heavy-to-lift-alone';
import airflowOneWay from './cooling/airflow-one-way';
import airflowShort from './cooling/airflow-short';
import coolerCapacityShort from './cooling/cooler-capacity-short';
import coolerOverMemory from './cooling/cooler-over-memory';
import coolerOverSlot from './cooling/cooler-over-slot';
import coolerSocketMissing from './cooling/cooler-socket-missing';
import coolerTooHeavy from './cooling/cooler-too-heavy';
import coolerTooTall from './cooling/cooler-too-tall';
import dewOnParts from './cooling/dew-on-parts';
import driveTooHigh from './cooling/drive-too-high';
import driveTooHot from './cooling/drive-too-hot';
import fanHolesDiffer from './cooling/fan-holes-differ';
import fanPinsDiffer from './cooling/fan-pins-differ';
import fanPlacesShort from './cooling/fan-places-short';
import fanTooThick from './cooling/fan-too-thick';
import filmLeft from './cooling/film-left';
import headerOverloaded from './cooling/header-overloaded';
import headersShort from './cooling/headers-short';
import inletTakenAsRoom from './cooling/inlet-taken-as-room';
import lightHeaderDiffers from './cooling/light-header-differs';
import metalPasteOnAluminium from './cooling/metal-paste-on-aluminium';
import pasteAmountOff from './cooling/paste-amount-off';
import pasteClaimImplausible from './cooling/paste-claim-implausible';
import pasteConducts from './cooling/paste-conducts';
import pasteDoseVague from './cooling/paste-dose-vague';
import pasteDoubled from './cooling/paste-doubled';
import pasteMissing from './cooling/paste-missing';
import pumpHighest from './cooling/pump-highest';
import radiatorPlaceCrowded from './cooling/radiator-place-crowded';
import radiatorPlaceUnsupported from './cooling/radiator-place-unsupported';
import radiatorTooLong from './cooling/radiator-too-long';
import radiatorTooThick from './cooling/radiator-too-thick';
import tubesShort from './cooling/tubes-short';
import boxLeavesShort from './costs/box-leaves-short';
import costOver from './costs/cost-over';
import currencyMixed from './costs/currency-mixed';
import noiseDistanceMissing from './costs/noise-distance-missing';
import noiseKindsMixed from './costs/noise-kinds-mixed';
import noiseOverPromise from './costs/noise-over-promise';
import priceOld from './costs/price-old';
import guideBuildMissing from './guide/guide-build-missing';
import guideCautionMissing from './guide/guide-caution-missing';
import guideFigureUnknown from './guide/guide-figure-unknown';
import guideMarkerLoose from './guide/guide-marker-loose';
import guideStepHarmful from './guide/guide-step-harmful';
import guideStepMissing from './guide/guide-step-missing';
import guideStepNeedless from './guide/guide-step-needless';
import guideStepOutOfOrder from './guide/guide-step-out-of-order';
import guideStepUnknown from './guide/guide-step-unknown';
import guideUnitMissing from './guide/guide-unit-missing';
import guideValueStale from './guide/guide-value-stale';
import bagAsMat from './handling/bag-as-mat';
import bagOpenEarly from './handling/bag-open-early';
import coinCellCautionMissing from './handling/coin-cell-caution-missing';
import contactsTouched from './handling/contacts-touched';
import cordlessStrap from './handling/cordless-strap';
import dryRoom from './handling/dry-room';
import hotPartTouched from './handling/hot-part-touched';
import insideBeforeUnplugging from './handling/inside-before-unplugging';
import leakTestMissing from './handling/leak-test-missing';
import noEqualisingStep from './handling/no-equalising-step';
import noResidualDischarge from './handling/no-residual-discharge';
import sharpEdgeCautionMissing from './handling/sharp-edge-caution-missing';
import strapOnPaint from './handling/strap-on-paint';
import strapResistanceTooHigh from './handling/strap-resistance-too-high';
import strapWhileEnergised from './handling/strap-while-energised';
import strapWithoutResistor from './handling/strap-without-resistor';
import surfaceUnsuited from './handling/surface-unsuited';
import vacuumAtBoard from './handling/vacuum-at-board';
import bandwidthShort from './memory/bandwidth-short';
import memoryCapacityShort from './memory/memory-capacity-short';
import memoryClassUnsupported from './memory/memory-class-unsupported';
import memoryErrorsUncorrected from './memory/memory-errors-uncorrected';
import memoryKitSplit from './memory/memory-kit-split';
import memoryKitsMixed from './memory/memory-kits-mixed';
import memoryOverLimit from './memory/memory-over-limit';
import memoryProfileNeeded from './memory/memory-profile-needed';
import memoryShapeDiffers from './memory/memory-shape-differs';
import memorySlotsMiscounted from './memory/memory-slots-miscounted';
import memorySlotsShort from './memory/memory-slots-short';
import memorySlotsWrong from './memory/memory-slots-wrong';
import memorySlowerThanPromised from './memory/memory-slower-than-promised';
import memorySpeedOverPopulation from './memory/memory-speed-over-population';
import memorySpeedOverProcessor from './memory/memory-speed-over-processor';
import memoryTypeDiffers from './memory/memory-type-differs';
import moduleTooLarge from './memory/module-too-large';
import adapterRisky from './power/adapter-risky';
import backupTooShort from './power/backup-too-short';
import bendTooTight from './power/bend-too-tight';
import cableFromAnotherSupply from './power/cable-from-another-supply';
import cableOverloaded from './power/cable-overloaded';
import circuitOverloaded from './power/circuit-overloaded';
import earthDefeated from './power/earth-defeated';
import excursionBeyondSupply from './power/excursion-beyond-supply';
import heatIntoRoom from './power/heat-into-room';
import powerCablesMissing from './power/power-cables-missing';
import runningCostOver from './power/running-cost-over';
import sixteenPinPowerLevel from './power/sixteen-pin-power-level';
import standbyRailOverloaded from './power/standby-rail-overloaded';
import stripsChained from './power/strips-chained';
import supplyHeadroomThin from './power/supply-headroom-thin';
import supplyNotRedundant from './power/supply-not-redundant';
import supplyOpened from './power/supply-opened';
import supplyOverloaded from './power/supply-overloaded';
import supplyShapeDiffers from './power/supply-shape-differs';
import supplyTooDeep from './power/supply-too-deep';
import supplyVoltageDiffers from './power/supply-voltage-differs';
import voltageDropHigh from './power/voltage-drop-high';
import wallPowerOver from './power/wall-power-over';
import bracketWrong from './slots/bracket-wrong';
import cardEdgeTooLong from './slots/card-edge-too-long';
import cardLanesFewer from './slots/card-lanes-fewer';
import cardSlotMissing from './slots/card-slot-missing';
import cardTooLong from './slots/card-too-long';
import cardTooTall from './slots/card-too-tall';
import cardTooThick from './slots/card-too-thick';
import cardUnsupported from './slots/card-unsupported';
import cardsOverlap from './slots/cards-overlap';
import displayAdapterWrong from './slots/display-adapter-wrong';
import displayModeBeyondLink from './slots/display-mode-beyond-link';
import displayOnBoard from './slots/display-on-board';
import displayPortsShort from './slots/display-ports-short';
import lanesOversubscribed from './slots/lanes-oversubscribed';
import linkGenerationLower from './slots/link-generation-lower';
import riserSlower from './slots/riser-slower';
import sharedOutputShort from './slots/shared-output-short';
import slotNotSplit from './slots/slot-not-split';
import slotOffWithProcessor from './slots/slot-off-with-processor';
import arrayCapacityShort from './storage/array-capacity-short';
import arrayDriveShingled from './storage/array-drive-shingled';
import arrayRebuildRisky from './storage/array-rebuild-risky';
import baysShort from './storage/bays-short';
import bootDriveNotBootable from './storage/boot-drive-not-bootable';
import capacityShort from './storage/capacity-short';
import dataCablesMissing from './storage/data-cables-missing';
import driveBusNotCarried from './storage/drive-bus-not-carried';
import driveInSlowSlot from './storage/drive-in-slow-slot';
import drivePowerShort from './storage/drive-power-short';
import driveSlowerThanPromised from './storage/drive-slower-than-promised';
import driveThreadWrong from './storage/drive-thread-wrong';
import eightfoldSlip from './storage/eightfold-slip';
import enduranceShort from './storage/endurance-short';
import m2HeatSinkWrong from './storage/m2-heat-sink-wrong';
import m2KeyDiffers from './storage/m2-key-differs';
import m2LengthUnsupported from './storage/m2-length-unsupported';
import m2ScrewMissing from './storage/m2-screw-missing';
import m2TooThick from './storage/m2-too-thick';
import partitionTableShort from './storage/partition-table-short';
import portsShort from './storage/ports-short';
import screwTooDeep from './storage/screw-too-deep';
import slotTakesLanes from './storage/slot-takes-lanes';
import slotTakesPorts from './storage/slot-takes-ports';
import acceptedButGone from './text/accepted-but-gone';
import acceptedButWorse from './text/accepted-but-worse';
import acceptedHarmWithoutName from './text/accepted-harm-without-name';
import acceptedOutOfDate from './text/accepted-out-of-date';
import acceptedWithoutReason from './text/accepted-without-reason';
import aliasOrMergeUsed from './text/alias-or-merge-used';
import boardNameUnknown from './text/board-name-unknown';
import checkUnknown from './text/check-unknown';
import choiceUnknown from './text/choice-unknown';
import formatNewer from './text/format-newer';
import keyTwice from './text/key-twice';
import knownOutOfDate from './text/known-out-of-date';
import knownWithoutEffect from './text/known-without-effect';
import limitsReached from './text/limits-reached';
import nameTwice from './text/name-twice';
import numberOdd from './text/number-odd';
import numberOutOfRange from './text/number-out-of-range';
import overrideNeedless from './text/override-needless';
import partFileOfAnotherTool from './text/part-file-of-another-tool';
import partKindWrongHere from './text/part-kind-wrong-here';
import partNotFound from './text/part-not-found';
import partsLeftOut from './text/parts-left-out';
import placeLeftOut from './text/place-left-out';
import placeTwice from './text/place-twice';
import placeUnknown from './text/place-unknown';
import promiseUncheckable from './text/promise-uncheckable';
import settingWithoutEffect from './text/setting-without-effect';
import severalDocuments from './text/several-documents';
import sheetLinesNotFacts from './text/sheet-lines-not-facts';
import stepOwnWords from './text/step-own-words';
import unitLookAlike from './text/unit-look-alike';
import unitMissing from './text/unit-missing';
import unitOfOtherDimension from './text/unit-of-other-dimension';
import unknownKey from './text/unknown-key';
import wrongKindOfValue from './text/wrong-kind-of-value';
import yaml11AskedFor from './text/yaml-1.1-asked-for';
import yamlSyntax from './text/yaml-syntax';
import acceptanceBeyondPromise from './work/acceptance-beyond-promise';
import acceptanceMissing from './work/acceptance-missing';
import acceptanceUnmeasurable from './work/acceptance-unmeasurable';
import buriedPartLate from './work/buried-part-late';
import cautionAfterStep from './work/caution-after-step';
import cautionIncomplete from './work/caution-incomplete';
import driveErrorsTolerated from './work/drive-errors-tolerated';
import handOverIncomplete from './work/hand-over-incomplete';
import memoryErrorsTolerated from './work/memory-errors-tolerated';
import noBenchStart from './work/no-bench-start';
import roomTemperatureUnlogged from './work/room-temperature-unlogged';
import shippedWithHeavyCard from './work/shipped-with-heavy-card';
import signalWordWrong from './work/signal-word-wrong';
import startWithoutFanOrEps from './work/start-without-fan-or-eps';
import stepAfterUnknown from './work/step-after-unknown';
import stepBeforeItsPrerequisite from './work/step-before-its-prerequisite';
import stepMissing from './work/step-missing';
import stepNeedless from './work/step-needless';
import stepPartUnknown from './work/step-part-unknown';
import stepsCircular from './work/steps-circular';
import stressTestShort from './work/stress-test-short';
import trainingWaitMissing from './work/training-wait-missing';
import usualStepMissing from './work/usual-step-missing';

export const checks: readonly Check[] = [
  boardPowerShort,
  firmwareArrivingUnlisted,
  firmwareArrivingUnstated,
  firmwareDowngrade,
  firmwareDropsProcessor,
  firmwareFactOld,
  firmwareRouteIncomplete,
  firmwareTargetTooOld,
  firmwareTargetUnknown,
  firmwareTooOldForProcessor,
  noPicture,
  processorNotListed,
  processorPressed,
  socketCoverEarly,
  socketDiffers,
  updateRisky,
  builtBoardDiffers,
  builtDisplayMode,
  builtDriveFailing,
  builtDriveUsed,
  builtEccOff,
  builtFansStill,
  builtFirmwareDiffers,
  builtLinkSlower,
  builtMemoryMisplaced,
  builtMemoryShort,
  builtMemorySlower,
  builtPartDiffers,
  builtPartElsewhere,
  builtPartMissing,
  builtPartUnlisted,
  builtProcessorDiffers,
  builtTooHot,
  builtUplinkSlower,
  boardTooBig,
  cableTooShort,
  frontCableWithoutHeader,
  glassCare,
  looseMargin,
  shieldMissing,
  standoffMissing,
  standoffTooLow,
  standoffUnderBareBoard,
  tooHeavyToLiftAlone,
  airflowOneWay,
  airflowShort,
  coolerCapacityShort,
  coolerOverMemory,
  coolerOverSlot,
  coolerSocketMissing,
  coolerTooHeavy,
  coolerTooTall,
  dewOnParts,
  driveTooHigh,
  driveTooHot,
  fanHolesDiffer,
  fanPinsDiffer,
  fanPlacesShort,
  fanTooThick,
  filmLeft,
  headerOverloaded,
  headersShort,
  inletTakenAsRoom,
  lightHeaderDiffers,
  metalPasteOnAluminium,
  pasteAmountOff,
  pasteClaimImplausible,
  pasteConducts,
  pasteDoseVague,
  pasteDoubled,
  pasteMissing,
  pumpHighest,
  radiatorPlaceCrowded,
  radiatorPlaceUnsupported,
  radiatorTooLong,
  radiatorTooThick,
  tubesShort,
  boxLeavesShort,
  costOver,
  currencyMixed,
  noiseDistanceMissing,
  noiseKindsMixed,
  noiseOverPromise,
  priceOld,
  guideBuildMissing,
  guideCautionMissing,
  guideFigureUnknown,
  guideMarkerLoose,
  guideStepHarmful,
  guideStepMissing,
  guideStepNeedless,
  guideStepOutOfOrder,
  guideStepUnknown,
  guideUnitMissing,
  guideValueStale,
  bagAsMat,
  bagOpenEarly,
  coinCellCautionMissing,
  contactsTouched,
  cordlessStrap,
  dryRoom,
  hotPartTouched,
  insideBeforeUnplugging,
  leakTestMissing,
  noEqualisingStep,
  noResidualDischarge,
  sharpEdgeCautionMissing,
  strapOnPaint,
  strapResistanceTooHigh,
  strapWhileEnergised,
  strapWithoutResistor,
  surfaceUnsuited,
  vacuumAtBoard,
  bandwidthShort,
  memoryCapacityShort,
  memoryClassUnsupported,
  memoryErrorsUncorrected,
  memoryKitSplit,
  memoryKitsMixed,
  memoryOverLimit,
  memoryProfileNeeded,
  memoryShapeDiffers,
  memorySlotsMiscounted,
  memorySlotsShort,
  memorySlotsWrong,
  memorySlowerThanPromised,
  memorySpeedOverPopulation,
  memorySpeedOverProcessor,
  memoryTypeDiffers,
  moduleTooLarge,
  adapterRisky,
  backupTooShort,
  bendTooTight,
  cableFromAnotherSupply,
  cableOverloaded,
  circuitOverloaded,
  earthDefeated,
  excursionBeyondSupply,
  heatIntoRoom,
  powerCablesMissing,
  runningCostOver,
  sixteenPinPowerLevel,
  standbyRailOverloaded,
  stripsChained,
  supplyHeadroomThin,
  supplyNotRedundant,
  supplyOpened,
  supplyOverloaded,
  supplyShapeDiffers,
  supplyTooDeep,
  supplyVoltageDiffers,
  voltageDropHigh,
  wallPowerOver,
  bracketWrong,
  cardEdgeTooLong,
  cardLanesFewer,
  cardSlotMissing,
  cardTooLong,
  cardTooTall,
  cardTooThick,
  cardUnsupported,
  cardsOverlap,
  displayAdapterWrong,
  displayModeBeyondLink,
  displayOnBoard,
  displayPortsShort,
  lanesOversubscribed,
  linkGenerationLower,
  riserSlower,
  sharedOutputShort,
  slotNotSplit,
  slotOffWithProcessor,
  arrayCapacityShort,
  arrayDriveShingled,
  arrayRebuildRisky,
  baysShort,
  bootDriveNotBootable,
  capacityShort,
  dataCablesMissing,
  driveBusNotCarried,
  driveInSlowSlot,
  drivePowerShort,
  driveSlowerThanPromised,
  driveThreadWrong,
  eightfoldSlip,
  enduranceShort,
  m2HeatSinkWrong,
  m2KeyDiffers,
  m2LengthUnsupported,
  m2ScrewMissing,
  m2TooThick,
  partitionTableShort,
  portsShort,
  screwTooDeep,
  slotTakesLanes,
  slotTakesPorts,
  acceptedButGone,
  acceptedButWorse,
  acceptedHarmWithoutName,
  acceptedOutOfDate,
  acceptedWithoutReason,
  aliasOrMergeUsed,
  boardNameUnknown,
  checkUnknown,
  choiceUnknown,
  formatNewer,
  keyTwice,
  knownOutOfDate,
  knownWithoutEffect,
  limitsReached,
  nameTwice,
  numberOdd,
  numberOutOfRange,
  overrideNeedless,
  partFileOfAnotherTool,
  partKindWrongHere,
  partNotFound,
  partsLeftOut,
  placeLeftOut,
  placeTwice,
  placeUnknown,
  promiseUncheckable,
  settingWithoutEffect,
  severalDocuments,
  sheetLinesNotFacts,
  stepOwnWords,
  unitLookAlike,
  unitMissing,
  unitOfOtherDimension,
  unknownKey,
  wrongKindOfValue,
  yaml11AskedFor,
  yamlSyntax,
  acceptanceBeyondPromise,
  acceptanceMissing,
  acceptanceUnmeasurable,
  buriedPartLate,
  cautionAfterStep,
  cautionIncomplete,
  driveErrorsTolerated,
  handOverIncomplete,
  memoryErrorsTolerated,
  noBenchStart,
  roomTemperatureUnlogged,
  shippedWithHeavyCard,
  signalWordWrong,
  startWithoutFanOrEps,
  stepAfterUnknown,
  stepBeforeItsPrerequisite,
  stepMissing,
  stepNeedless,
  stepPartUnknown,
  stepsCircular,
  stressTestShort,
  trainingWaitMissing,
  usualStepMissing,
];
