/**
 * Two regressions for a 5 cm cuff, lying down, whose coefficients were remembered and not seen.
 *
 * Kept to show how far formulas lie apart, and so that a clinic can check them against the paper.
 * A later study holds that a 5 cm leg cuff cannot be estimated with precision. Not for dosing.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import {
  diastolicBelowSystolic,
  diastolicField,
  systolicField,
} from '#core/screening/blood-pressure-fields.ts';

const narrowCuffCoefficients = {
  arm: { systolic: 0.514, diastolic: 0.339, circumference: 1.461, constant: 17.236 },
  leg: { systolic: 0.912, diastolic: 0.734, circumference: 5.893, constant: -220.046 },
} as const;

/** Readings were capped here in a study with the same cuff, so nothing above was ever observed. */
const ceilingMmhg = 300;

const fromMemory: Note = {
  code: 'from-memory',
  text: 'Coefficients from memory, not seen: check them against the paper. An estimate for a 5 cm cuff lying down; not for dosing.',
};
const legImprecise: Note = {
  code: 'leg-not-precise',
  text: 'A later study of 170 people: a 5 cm leg cuff cannot be estimated with precision (limits of agreement −134 to +148 mmHg).',
};
const aboveCeiling: Note = {
  code: 'above-300-ceiling',
  text: 'Above 300 mmHg, where readings were capped: nothing there was observed.',
};

export const narrowCuffEstimate = calculation({
  id: 'limb-occlusion-pressure-5cm-from-memory',
  title: 'Estimate of limb occlusion pressure, 5 cm cuff, coefficients from memory',
  area: 'occlusion',
  input: [
    { name: 'limb', kind: 'enum', values: ['arm', 'leg'] },
    systolicField,
    diastolicField,
    { name: 'circumferenceCm', kind: 'number', unit: 'cm', min: 20, max: 90 },
  ],
  result: [{ name: 'pressureMmhg', unit: 'mm[Hg]', about: 'estimate, unrounded' }],
  citations: [
    { source: 'narrow-cuff-regression-2015', locator: 'field models; coefficients not seen', mark: 'memory' },
    { source: 'narrow-leg-cuff-2024', locator: 'abstract: limits of agreement', mark: 'seen' },
    { source: 'cuff-width-2012', locator: 'protocol: readings capped at 300 mmHg', mark: 'seen' },
  ],
  consistent: diastolicBelowSystolic,
  calculate: ({ limb, systolicMmhg, diastolicMmhg, circumferenceCm }): Outcome<{ pressureMmhg: number }> => {
    const c = narrowCuffCoefficients[limb];
    const pressureMmhg =
      c.systolic * systolicMmhg +
      c.diastolic * diastolicMmhg +
      c.circumference * circumferenceCm +
      c.constant;
    if (pressureMmhg <= diastolicMmhg) {
      return refuse(
        'circumferenceCm',
        'outside-validity',
        'The regression falls to the diastolic pressure or below here; it does not hold for so small a limb.',
      );
    }
    const notes = limb === 'leg' ? [fromMemory, legImprecise] : [fromMemory];
    return answer({ pressureMmhg }, pressureMmhg > ceilingMmhg ? [...notes, aboveCeiling] : notes);
  },
  example: { limb: 'arm', systolicMmhg: 120, diastolicMmhg: 75, circumferenceCm: 30 },
});
