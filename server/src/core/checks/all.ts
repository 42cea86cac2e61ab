// All checks. Generated from the folders beside this file by `npm run generate`; do not edit.
import type { Check } from './check';
import socketDiffers from './board/socket-differs';
import coolerTooTall from './cooling/cooler-too-tall';
import supplyOverloaded from './power/supply-overloaded';
import driveSlowerThanPromised from './storage/drive-slower-than-promised';
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
  socketDiffers,
  coolerTooTall,
  supplyOverloaded,
  driveSlowerThanPromised,
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
