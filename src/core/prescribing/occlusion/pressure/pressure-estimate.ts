/**
 * Estimates of limb occlusion pressure. An estimate, never a measurement, and no dose is taken from it.
 * For one person the published formulas spread from about 130 to about 290 mmHg depending on cuff
 * width, so each row is refused outside its own cuff and limb. Only the 18 cm thigh regression was
 * seen with its coefficients and its error; the other two give no error and say so.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { needed } from '#core/calculations/needed-inputs.ts';
import { answer, type Note, type Outcome, refuse } from '#core/outcome.ts';
import {
  diastolicBelowSystolic,
  diastolicField,
  systolicField,
} from '#core/screening/blood-pressure-fields.ts';

const estimateEquations = ['graham', 'thigh-18cm', 'tissue-padding'] as const;

/** 65.290 + 1.110 circumference + 0.178 systolic + 1.153 age − 7.984 sex (1 male, 2 female). */
const thighRegression = {
  intercept: 65.29,
  circumference: 1.11,
  systolic: 0.178,
  age: 1.153,
  sex: -7.984,
  sexCode: { male: 1, female: 2 },
  cuffWidthCm: 18,
  standardErrorMmhg: 15.289,
  fittedAge: { mean: 23.23, standardDeviation: 5.24 },
} as const;

const tissuePadding = { addMmhg: 10, circumferenceCm: { low: 20, high: 75 } } as const;

interface Estimate {
  readonly pressureMmhg: number;
  readonly errorMmhg?: number;
}

interface EstimateInput {
  readonly systolicMmhg: number;
  readonly diastolicMmhg?: number;
  readonly limb: 'arm' | 'leg';
  readonly circumferenceCm?: number;
  readonly cuffWidthCm?: number;
  readonly ageYears?: number;
  readonly sex?: 'female' | 'male';
  readonly paddingCoefficient?: number;
}

const estimateOnly: Note = {
  code: 'estimate-only',
  text: 'An estimate, not a measured limb occlusion pressure; measure before a cuff pressure is prescribed.',
};
const noError: Note = { code: 'error-not-known', text: 'No error was published or seen for this equation.' };
const fromMemory: Note = {
  code: 'from-memory',
  text: 'This formula was remembered, not seen in the paper; check it against the paper.',
};

const graham = (input: EstimateInput): Outcome<Estimate> => {
  const given = needed(input, ['diastolicMmhg', 'circumferenceCm', 'cuffWidthCm'], 'the equation uses it');
  if (!given.ok) return given;
  const { systolicMmhg, diastolicMmhg, circumferenceCm, cuffWidthCm } = given.result;
  const pressureMmhg = ((systolicMmhg - diastolicMmhg) * circumferenceCm) / (3 * cuffWidthCm) + diastolicMmhg;
  const narrow: Note = {
    code: 'narrow-cuff',
    text: 'The limb is more than three times as far around as the cuff is wide; the equation was fitted on wide cuffs.',
  };
  const notes = [estimateOnly, noError, fromMemory];
  return answer({ pressureMmhg }, circumferenceCm > 3 * cuffWidthCm ? [...notes, narrow] : notes);
};

const outsideFit = (ageYears: number): readonly Note[] => {
  const { mean, standardDeviation } = thighRegression.fittedAge;
  return Math.abs(ageYears - mean) > 2 * standardDeviation
    ? [
        {
          code: 'outside-fit',
          text: `Fitted on people of ${mean} ± ${standardDeviation} years; at ${ageYears} the age term alone moves the estimate by ${Math.round(Math.abs(ageYears - mean) * thighRegression.age)} mmHg. Do not use it.`,
        },
      ]
    : [];
};

const thigh18 = (input: EstimateInput): Outcome<Estimate> => {
  if (input.limb !== 'leg')
    return refuse('limb', 'outside-validity', 'Fitted on the thigh; there is no arm form.');
  if (input.cuffWidthCm !== undefined && input.cuffWidthCm !== thighRegression.cuffWidthCm) {
    return refuse('cuffWidthCm', 'outside-validity', 'Fitted with an 18 cm cuff only.');
  }
  const given = needed(input, ['circumferenceCm', 'ageYears', 'sex'], 'the regression uses it');
  if (!given.ok) return given;
  const { systolicMmhg, circumferenceCm, ageYears, sex } = given.result;
  const pressureMmhg =
    thighRegression.intercept +
    thighRegression.circumference * circumferenceCm +
    thighRegression.systolic * systolicMmhg +
    thighRegression.age * ageYears +
    thighRegression.sex * thighRegression.sexCode[sex];
  const youngAdults: Note = {
    code: 'young-adults',
    text: 'From 51 young adults; it explained 40 % of the differences between them.',
  };
  return answer({ pressureMmhg, errorMmhg: 1.96 * thighRegression.standardErrorMmhg }, [
    estimateOnly,
    youngAdults,
    ...outsideFit(ageYears),
  ]);
};

const padding = (input: EstimateInput): Outcome<Estimate> => {
  const given = needed(
    input,
    ['paddingCoefficient'],
    'type it from the published table for this circumference',
  );
  if (!given.ok) return given;
  const { systolicMmhg, paddingCoefficient, circumferenceCm } = given.result;
  const { low, high } = tissuePadding.circumferenceCm;
  if (circumferenceCm !== undefined && (circumferenceCm < low || circumferenceCm > high)) {
    return refuse(
      'circumferenceCm',
      'outside-validity',
      `The coefficients are for limbs of ${low} to ${high} cm.`,
    );
  }
  const tableNotSeen: Note = {
    code: 'coefficient-yours',
    text: 'The table of coefficients was not seen; the coefficient is the one you gave. Fitted with surgical cuffs under anaesthesia.',
  };
  return answer({ pressureMmhg: (systolicMmhg + tissuePadding.addMmhg) / paddingCoefficient }, [
    estimateOnly,
    noError,
    tableNotSeen,
  ]);
};

const equations = { graham, 'thigh-18cm': thigh18, 'tissue-padding': padding } as const;

export const limbOcclusionPressureEstimate = calculation({
  id: 'limb-occlusion-pressure-estimate',
  title: 'Estimate of limb occlusion pressure',
  area: 'occlusion',
  input: [
    { name: 'equation', kind: 'enum', values: estimateEquations },
    systolicField,
    { ...diastolicField, optional: true },
    { name: 'limb', kind: 'enum', values: ['arm', 'leg'] },
    { name: 'circumferenceCm', kind: 'number', unit: 'cm', min: 10, max: 120, optional: true },
    { name: 'cuffWidthCm', kind: 'number', unit: 'cm', min: 2, max: 30, optional: true },
    { name: 'ageYears', kind: 'number', unit: 'a', min: 18, max: 120, optional: true },
    {
      name: 'sex',
      kind: 'enum',
      values: ['female', 'male'],
      optional: true,
      about: "The formula's coefficient.",
    },
    {
      name: 'paddingCoefficient',
      kind: 'number',
      unit: '1',
      min: 0.5,
      max: 1,
      optional: true,
      about: 'From the published table; its values lie between about 0.7 and 0.9 (from memory).',
    },
  ],
  result: [
    { name: 'pressureMmhg', unit: 'mm[Hg]', about: 'estimate, unrounded' },
    {
      name: 'errorMmhg',
      unit: 'mm[Hg]',
      about: '1.96 × standard error of the estimate; absent where none is known',
    },
  ],
  citations: [
    { source: 'occlusion-formula-1993', locator: 'formula', mark: 'memory' },
    {
      source: 'thigh-regression-2019',
      locator: 'regression with coefficients and standard error',
      mark: 'seen',
    },
    {
      source: 'tissue-padding-2006',
      locator: 'abstract: formula and range; table of coefficients not seen',
      mark: 'seen',
    },
  ],
  consistent: diastolicBelowSystolic,
  calculate: ({ equation, ...input }): Outcome<Estimate> => equations[equation](input),
  example: {
    equation: 'thigh-18cm',
    systolicMmhg: 120,
    limb: 'leg',
    circumferenceCm: 55,
    cuffWidthCm: 18,
    ageYears: 23,
    sex: 'male',
  },
});
