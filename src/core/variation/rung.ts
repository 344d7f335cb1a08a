/** One exercise as a rung for one person: its share, effective load, moments and the figure it is ordered by. */
import type { Anthropometry, Exercise, Rung, RungMeasure } from '../catalogue/exercise.ts';
import type { Setting } from '../catalogue/setting.ts';
import { footLengthShare } from './body-lengths.ts';
import { bridgeLoad } from './bridge.ts';
import { relativeHipMoment, relativeKneeMoment } from './chair-height.ts';
import { heelRaise } from './heel-raise.ts';
import { leanBackRowFit, leanBackRowShare } from './lean-back-row.ts';
import { jointOfLever, limbLiftMoment } from './limb-lift.ts';
import { movedMassShare } from './moved-mass.ts';
import { pushUpShare } from './push-up.ts';
import { kneePushUpShare, pushUpMeasuredShare } from './push-up-measured.ts';
import { footDistanceFromArmLength, wallPushUpShare } from './wall-push-up.ts';

type Figures = Omit<Rung, 'exerciseId'>;
type Of<K extends Setting['kind']> = Extract<Setting, { kind: K }>;

const nothing: Figures = {
  shareOfBodyMass: null,
  effectiveLoadKg: null,
  moments: [],
  measuredShare: null,
  modelError: null,
  measure: null,
  remark: 'No figure can be computed from body measures.',
};

const noMeasurement = 'No measurement found to compare the model with.';

const loadMeasure = (value: number, about: string): RungMeasure => ({
  kind: 'effective-load',
  value,
  unit: 'kg',
  about,
});
const momentMeasure = (value: number, about: string): RungMeasure => ({
  kind: 'joint-moment',
  value,
  unit: 'N.m',
  about,
});

const pushUp = (setting: Of<'push-up'>, person: Anthropometry): Figures => {
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
    measuredShare: measured,
    modelError: measured === null || !model ? null : model.verticalShare - measured,
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark:
      measured === null
        ? `Model only, hands above the measured heights, where the model reads about 5 points low: part of the step ` +
          `to a measured rung is that error. ${noMeasurement}`
        : knees
          ? 'Measured share; the model does not hold on the knees.'
          : 'Measured share, on a straight line between measured heights; the model stands beside it.',
  };
};

const wallPushUp = (setting: Of<'wall-push-up'>, person: Anthropometry): Figures => {
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
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark:
      `Ball of the foot ${footDistanceM.toFixed(2)} m from the wall, arms straight; with bent elbows the share ` +
      `is ${bent.share.toFixed(2)}. ${noMeasurement}`,
  };
};

const sitToStand = (setting: Of<'sit-to-stand'>, person: Anthropometry): Figures => {
  const knee = relativeKneeMoment(setting.seatHeightM);
  const hip = relativeHipMoment(setting.seatHeightM);
  const share = movedMassShare('squat-two-legs', person.sex) / 2;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg: share * person.massKg,
    measure:
      knee === null
        ? null
        : { kind: 'relative-moment', value: knee, unit: '1', about: 'knee moment against a 64 cm seat' },
    remark:
      knee === null || hip === null
        ? 'Seat outside the measured heights of 43 to 64 cm: no figure.'
        : `Peak moment against a 64 cm seat: knee × ${knee.toFixed(2)}, hip × ${hip.toFixed(2)}, on a straight ` +
          'line between two measured heights. The mass moved per leg is the same on every seat.',
  };
};

const movedMass = (setting: Of<'moved-mass'>, person: Anthropometry): Figures => {
  const perLimb = setting.movement === 'squat-one-leg' ? 1 : 2;
  const share = movedMassShare(setting.movement, person.sex) / perLimb;
  const effectiveLoadKg = share * person.massKg + setting.addedKg / perLimb;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg,
    measure: loadMeasure(effectiveLoadKg, 'mass moved per working limb'),
    remark: `Mass that travels, per working limb. ${noMeasurement}`,
  };
};

const bridge = (setting: Of<'bridge'>, person: Anthropometry): Figures => {
  const { sex, massKg } = person;
  const load = bridgeLoad({ ...setting, sex, massKg, statureM: person.statureCm / 100 });
  if (!load) return nothing;
  const share = setting.legs === 'two' ? load.footForceShare / 2 : load.footForceShare;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg: share * massKg,
    moments: [{ joint: 'hip', newtonMetres: load.hipMomentNm }],
    measure: momentMeasure(load.hipMomentNm, 'hip-extension moment per working leg'),
    remark: `Share under one working foot. ${noMeasurement}`,
  };
};

const heel = (setting: Of<'heel-raise'>, person: Anthropometry): Figures => {
  const { effectiveLoadKg, ankleMomentNm } = heelRaise({
    ...setting,
    massKg: person.massKg,
    statureM: person.statureCm / 100,
  });
  return {
    ...nothing,
    shareOfBodyMass: effectiveLoadKg / person.massKg,
    effectiveLoadKg,
    moments: [{ joint: 'ankle', newtonMetres: ankleMomentNm }],
    measure: loadMeasure(effectiveLoadKg, 'load per working leg'),
    remark: `Weight shared evenly between working legs. ${noMeasurement}`,
  };
};

const limbLift = (setting: Of<'limb-lift'>, person: Anthropometry): Figures => {
  const { sex, massKg } = person;
  const joint = jointOfLever[setting.lever];
  const newtonMetres = limbLiftMoment({ ...setting, sex, massKg, statureM: person.statureCm / 100 });
  return {
    ...nothing,
    moments: [{ joint, newtonMetres }],
    measure: momentMeasure(newtonMetres, `${joint} moment per limb`),
    remark: `Largest moment of gravity without any weight added in the dose. ${noMeasurement}`,
  };
};

const leanBackRow = (setting: Of<'lean-back-row'>, person: Anthropometry): Figures => {
  const share = leanBackRowShare(setting.fromVerticalDeg);
  if (share === null) return { ...nothing, remark: 'Body angle outside the measured 30 to 75°: no figure.' };
  const effectiveLoadKg = share * person.massKg;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg,
    measuredShare: share,
    modelError: leanBackRowFit(setting.fromVerticalDeg) - share,
    measure: loadMeasure(effectiveLoadKg, 'load on both hands together'),
    remark: 'Measured share, straight arms, on a straight line between measured angles.',
  };
};

const figures = (setting: Setting, person: Anthropometry): Figures => {
  switch (setting.kind) {
    case 'push-up':
      return pushUp(setting, person);
    case 'wall-push-up':
      return wallPushUp(setting, person);
    case 'sit-to-stand':
      return sitToStand(setting, person);
    case 'moved-mass':
      return movedMass(setting, person);
    case 'bridge':
      return bridge(setting, person);
    case 'heel-raise':
      return heel(setting, person);
    case 'limb-lift':
      return limbLift(setting, person);
    case 'lean-back-row':
      return leanBackRow(setting, person);
  }
};

export const rungOf = (exercise: Exercise, person: Anthropometry): Rung => ({
  exerciseId: exercise.id,
  ...(exercise.setting ? figures(exercise.setting, person) : nothing),
});
