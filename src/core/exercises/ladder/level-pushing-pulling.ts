/** Figures of push-ups and lean-back rows for one person. */

import { footLengthShare } from '../body/body-lengths.ts';
import type { Anthropometry } from '../exercise.ts';
import { leanBackRowFit, leanBackRowShare } from '../statics/lean-back-row.ts';
import { pushUpShare } from '../statics/push-up.ts';
import { kneePushUpShare, pushUpMeasuredShare } from '../statics/push-up-measured.ts';
import { footDistanceFromArmLength, wallPushUpShare } from '../statics/wall-push-up.ts';
import { type Figures, loadMeasure, noMeasurement, noMoments, nothing, type Of } from './level-figures.ts';

export const pushUp = (setting: Of<'push-up'>, person: Anthropometry): Figures => {
  const { handHeightM, footHeightM } = setting;
  const knees = setting.support === 'knees';
  const measured = knees ? kneePushUpShare : pushUpMeasuredShare(handHeightM, footHeightM);
  const model = knees ? null : pushUpShare(person.statureCm / 100, handHeightM, footHeightM);
  const share = measured ?? model?.verticalShare ?? null;
  if (share === null)
    return { ...nothing, remark: 'This body cannot reach these heights with a straight body.' };
  const effectiveLoadKg = share * person.massKg;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg,
    effectiveLoadAbout: 'on both hands together',
    measuredShare: measured,
    modelError: measured === null || !model ? null : model.verticalShare - measured,
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark:
      measured === null
        ? `Model only, hands above the measured heights, where the model reads about 5 points low: part of the step ` +
          `to a measured rung is that error. ${noMeasurement} ${noMoments}`
        : knees
          ? `Measured share; the model does not hold on the knees. ${noMoments}`
          : `Measured share, on a straight line between measured heights; the model stands beside it. ${noMoments}`,
  };
};

export const wallPushUp = (setting: Of<'wall-push-up'>, person: Anthropometry): Figures => {
  const statureM = person.statureCm / 100;
  const back = setting.footLengthsBack * footLengthShare * statureM;
  const footDistanceM = footDistanceFromArmLength(person.sex, statureM, back);
  const push = { sex: person.sex, statureM, footDistanceM } as const;
  const straight = wallPushUpShare({ ...push, elbows: 'straight' });
  const bent = wallPushUpShare({ ...push, elbows: 'bent' });
  if (!straight || !bent)
    return { ...nothing, remark: 'The feet are outside the distances the model can span.' };
  const effectiveLoadKg = straight.share * person.massKg;
  return {
    ...nothing,
    shareOfBodyMass: straight.share,
    effectiveLoadKg,
    effectiveLoadAbout: 'on both hands together',
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark:
      `Ball of the foot ${footDistanceM.toFixed(2)} m from the wall, arms straight; with bent elbows the share ` +
      `is ${bent.share.toFixed(2)}. ${noMeasurement} ${noMoments}`,
  };
};

export const leanBackRow = (setting: Of<'lean-back-row'>, person: Anthropometry): Figures => {
  const share = leanBackRowShare(setting.fromVerticalDeg);
  if (share === null) return { ...nothing, remark: 'Body angle outside the measured 30 to 75°: no figure.' };
  const effectiveLoadKg = share * person.massKg;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg,
    effectiveLoadAbout: 'on both hands together',
    measuredShare: share,
    modelError: leanBackRowFit(setting.fromVerticalDeg) - share,
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark: `Measured share, straight arms, on a straight line between measured angles. ${noMoments}`,
  };
};
