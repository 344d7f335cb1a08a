/** Every outcome calculation: those of the measures, further function tests, symptoms, measurement error, joint indices. */
import type { AnyCalculation } from '../calculations/calculation.ts';
import { acceptableSymptomStateRow } from './change/acceptable-symptom-state.ts';
import { changeBeforeArthroplastyRow } from './change/change-before-arthroplasty.ts';
import { kneeEffusionChangeRow } from './change/knee-effusion-change.ts';
import {
  detectableChangeFromPairsRow,
  minimalDetectableChangeRow,
} from './change/minimal-detectable-change.ts';
import { minimalImprovementRow } from './change/minimal-improvement.ts';
import { painRatingChangeRow } from './change/pain-rating-change.ts';
import { reliableChangeRow } from './change/reliable-change.ts';
import { responderRow } from './change/responder.ts';
import { changeFromReliabilityRow } from './change/test-reliability.ts';
import { cdaiRow } from './disease-activity/cdai.ts';
import { das28Row } from './disease-activity/das28.ts';
import { rapid3Row } from './disease-activity/rapid3.ts';
import { rheumatoidFlareRow } from './disease-activity/rheumatoid-flare.ts';
import { sdaiRow } from './disease-activity/sdai.ts';
import { chairStandHipStateRow } from './function-tests/chair-stand-hip-state.ts';
import { fiveTimesSitToStandRow } from './function-tests/five-times-sit-to-stand.ts';
import { gaitSpeedRow } from './function-tests/gait-speed.ts';
import { gaitSpeedChangeRow } from './function-tests/gait-speed-change.ts';
import { gaitSpeedDifferenceKneeRow } from './function-tests/gait-speed-difference-knee.ts';
import { measures } from './measures/registry.ts';

export const outcomeRows: readonly AnyCalculation[] = [
  ...measures.flatMap(({ calculations = [] }) => calculations),
  chairStandHipStateRow,
  gaitSpeedRow,
  gaitSpeedChangeRow,
  gaitSpeedDifferenceKneeRow,
  changeBeforeArthroplastyRow,
  changeFromReliabilityRow,
  responderRow,
  fiveTimesSitToStandRow,
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
