/** Every calculation of the variation ladders, for the registry. */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import { variationDoseRow } from '#core/prescribing/variation/variation-dose-row.ts';
import { bodyCentreRow } from '../body/body-centre.ts';
import { movedMassRow } from '../body/moved-mass.ts';
import { bandCalibrationRow, bandForceRow, bandPointRow } from './band.ts';
import { bandMomentRow } from './band-moment.ts';
import { bridgeRow } from './bridge.ts';
import { curlRow } from './curl.ts';
import { heelRaiseRow } from './heel-raise.ts';
import { kneeExtensionRow } from './knee-extension.ts';
import { kneeExtensionNormRow } from './knee-extension-norms.ts';
import { leanBackRowRow } from './lean-back-row.ts';
import { limbLiftRow } from './limb-lift.ts';
import { modelAgainstMeasuredRow } from './model-against-measured.ts';
import { pushUpRow } from './push-up.ts';
import { sitToStandRow } from './sit-to-stand.ts';
import { wallPushUpRow } from './wall-push-up.ts';

export const variationRows: readonly AnyCalculation[] = [
  pushUpRow,
  wallPushUpRow,
  leanBackRowRow,
  movedMassRow,
  sitToStandRow,
  bridgeRow,
  heelRaiseRow,
  limbLiftRow,
  kneeExtensionRow,
  kneeExtensionNormRow,
  curlRow,
  bandPointRow,
  bandCalibrationRow,
  bandForceRow,
  bandMomentRow,
  bodyCentreRow,
  modelAgainstMeasuredRow,
  variationDoseRow,
];
