/** One exercise as a level for one person: its share, effective load, moments and the figure it is ordered by. */

import { movedMassShare } from '../body/moved-mass.ts';
import type { Anthropometry, Exercise, Level } from '../exercise.ts';
import type { Setting } from '../setting.ts';
import { bridgeLoad } from '../statics/bridge.ts';
import { relativeHipMoment, relativeKneeMoment } from '../statics/chair-height.ts';
import { heelRaise } from '../statics/heel-raise.ts';
import { jointOfLever, limbLiftMoment } from '../statics/limb-lift.ts';
import { sitToStand } from '../statics/sit-to-stand.ts';
import {
  type Figures,
  loadMeasure,
  momentMeasure,
  noMeasurement,
  noMoments,
  nothing,
  type Of,
} from './level-figures.ts';
import { leanBackRow, pushUp, wallPushUp } from './level-pushing-pulling.ts';

const noSeatRatio = 'Seat outside the measured heights of 43 to 64 cm: no ratio.';

const seatRemark = (seatHeightM: number, hipPlusKneeNm: number): string => {
  const knee = relativeKneeMoment(seatHeightM);
  const hip = relativeHipMoment(seatHeightM);
  const ratios =
    knee === null || hip === null
      ? noSeatRatio
      : `Peak moment against a 64 cm seat: knee × ${knee.toFixed(2)}, hip × ${hip.toFixed(2)}, on a straight line ` +
        'between two measured heights, whatever the stature.';
  return (
    `${ratios} The mass moved per leg is the same on every seat. Hip and knee together by statics: ` +
    `${hipPlusKneeNm.toFixed(0)} N·m per leg, which rises too little as the seat falls; for comparison only.`
  );
};

const sitToStandFigures = ({ seatHeightM }: Of<'sit-to-stand'>, person: Anthropometry): Figures => {
  const statics = sitToStand(person.sex, person.massKg, person.statureCm / 100, seatHeightM);
  if (!statics) return { ...nothing, remark: 'This seat is too high to sit on at this stature.' };
  const knee = relativeKneeMoment(seatHeightM);
  const share = movedMassShare('squat-two-legs', person.sex) / 2;
  return {
    ...nothing,
    shareOfBodyMass: share,
    effectiveLoadKg: share * person.massKg,
    effectiveLoadAbout: 'mass moved per leg',
    measure:
      knee === null
        ? null
        : { kind: 'relative-moment', value: knee, unit: '1', about: 'knee moment against a 64 cm seat' },
    remark: seatRemark(seatHeightM, statics.hipPlusKneeNm),
  };
};

const movedMass = (setting: Of<'moved-mass'>, person: Anthropometry): Figures => {
  const perLimb = setting.movement === 'squat-one-leg' ? 1 : 2;
  const share = movedMassShare(setting.movement, person.sex) / perLimb;
  const effectiveLoadKg = share * person.massKg + setting.addedKg / perLimb;
  return {
    ...nothing,
    shareOfBodyMass: effectiveLoadKg / person.massKg,
    effectiveLoadKg,
    effectiveLoadAbout: 'mass moved per working limb',
    measure: loadMeasure(effectiveLoadKg, 'mass moved per working limb'),
    remark: `Mass that travels, per working limb. ${noMeasurement} ${noMoments}`,
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
    effectiveLoadAbout: 'under one working foot',
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
    effectiveLoadAbout: 'per working leg',
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

const figures = (setting: Setting, person: Anthropometry): Figures => {
  switch (setting.kind) {
    case 'push-up':
      return pushUp(setting, person);
    case 'wall-push-up':
      return wallPushUp(setting, person);
    case 'sit-to-stand':
      return sitToStandFigures(setting, person);
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

export const levelOf = (exercise: Exercise, person: Anthropometry): Level => ({
  exerciseId: exercise.id,
  ...(exercise.setting ? figures(exercise.setting, person) : nothing),
});
