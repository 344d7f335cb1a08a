/**
 * Moment of a calibrated band about a joint, from where the band is fixed.
 *
 * Plane geometry with the joint at the origin: M = |P × (A − P)| / length × force, P the fastening on
 * the limb, A the anchor. While the tension grows with the stretch the lever can shrink, so the moment
 * often peaks in mid-range. Straps that slide and joints that shift are not modelled.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer, refuse } from '#core/outcome.ts';
import { radians } from '../body/gravity.ts';
import {
  bandCitations,
  bandForce,
  calibrationFields,
  checkCalibration,
  elongationPercent,
  restLengthField,
} from './band.ts';

export const bandMomentRow = calculation({
  id: 'band-moment',
  title: 'Joint moment of a calibrated band',
  area: 'variation',
  input: [
    ...calibrationFields,
    restLengthField,
    {
      name: 'fasteningM',
      kind: 'number',
      unit: 'm',
      min: 0.01,
      max: 1.2,
      about: 'Joint to the fastening on the limb.',
    },
    {
      name: 'belowHorizontalDeg',
      kind: 'number',
      unit: 'deg',
      min: -180,
      max: 180,
      about: 'Limb below the forward horizontal; knee flexion when the thigh is level.',
    },
    {
      name: 'anchorForwardM',
      kind: 'number',
      unit: 'm',
      min: -5,
      max: 5,
      about: 'Behind the joint is negative.',
    },
    { name: 'anchorUpM', kind: 'number', unit: 'm', min: -5, max: 5, about: 'Below the joint is negative.' },
  ],
  result: units({ elongationPercent: '%', forceN: 'N', momentNm: 'N.m' }),
  citations: bandCitations,
  consistent: checkCalibration,
  calculate: (input) => {
    const angle = radians(input.belowHorizontalDeg);
    const forward = input.fasteningM * Math.cos(angle);
    const up = -input.fasteningM * Math.sin(angle);
    const lengthM = Math.hypot(input.anchorForwardM - forward, input.anchorUpM - up);
    const elongation = elongationPercent(input.restLengthM, lengthM);
    const forceN = bandForce(input, elongation);
    if (forceN === null) {
      return refuse(
        'belowHorizontalDeg',
        'outside-validity',
        `Here the band is stretched by ${elongation.toFixed(0)} %, outside its two calibrated points.`,
      );
    }
    const leverM = Math.abs(forward * input.anchorUpM - up * input.anchorForwardM) / lengthM;
    return answer({ elongationPercent: elongation, forceN, momentNm: leverM * forceN });
  },
  example: {
    firstElongationPercent: 30,
    firstForceN: 13.92,
    secondElongationPercent: 200,
    secondForceN: 29.8,
    restLengthM: 0.3,
    fasteningM: 0.36,
    belowHorizontalDeg: 60,
    anchorForwardM: -0.4,
    anchorUpM: -0.4,
  },
});
