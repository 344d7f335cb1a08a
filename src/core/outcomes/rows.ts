/** Every outcome calculation: function tests, symptoms, measurement error, joint indices. */
import type { AnyCalculation } from '../calculation.ts';
import { acceptableSymptomStateRow } from './acceptable-symptom-state.ts';
import { cdaiRow } from './cdai.ts';
import { chairStandChangeRow } from './chair-stand-change.ts';
import { chairStandHipStateRow } from './chair-stand-hip-state.ts';
import { chairStandNormRow } from './chair-stand-norm.ts';
import { das28Row } from './das28.ts';
import { fiveTimesSitToStandRow } from './five-times-sit-to-stand.ts';
import { gaitSpeedRow } from './gait-speed.ts';
import { gaitSpeedChangeRow } from './gait-speed-change.ts';
import { girthChangeRow } from './girth-change.ts';
import { gripStrengthRow } from './grip-strength.ts';
import { kneeEffusionChangeRow } from './knee-effusion-change.ts';
import { detectableChangeFromPairsRow, minimalDetectableChangeRow } from './minimal-detectable-change.ts';
import { minimalImprovementRow } from './minimal-improvement.ts';
import { painRatingChangeRow } from './pain-rating-change.ts';
import { patientChosenActivitiesChangeRow, patientChosenActivitiesRow } from './patient-chosen-activities.ts';
import { rapid3Row } from './rapid3.ts';
import { reliableChangeRow } from './reliable-change.ts';
import { rheumatoidFlareRow } from './rheumatoid-flare.ts';
import { sdaiRow } from './sdai.ts';
import { timedUpAndGoRow } from './timed-up-and-go.ts';
import { timedUpAndGoChangeRow } from './timed-up-and-go-change.ts';

export const outcomeRows: readonly AnyCalculation[] = [
  chairStandNormRow,
  chairStandChangeRow,
  chairStandHipStateRow,
  timedUpAndGoRow,
  timedUpAndGoChangeRow,
  gaitSpeedRow,
  gaitSpeedChangeRow,
  gripStrengthRow,
  girthChangeRow,
  fiveTimesSitToStandRow,
  patientChosenActivitiesRow,
  patientChosenActivitiesChangeRow,
  painRatingChangeRow,
  acceptableSymptomStateRow,
  minimalImprovementRow,
  kneeEffusionChangeRow,
  minimalDetectableChangeRow,
  detectableChangeFromPairsRow,
  reliableChangeRow,
  das28Row,
  cdaiRow,
  sdaiRow,
  rapid3Row,
  rheumatoidFlareRow,
];
