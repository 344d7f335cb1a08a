/** What cannot be of a patient's details, each with how to put it right. */
import type { Refusal } from '../outcome.ts';
import { ageYears, type Day, daysBetween, isDay } from '../time/day.ts';
import {
  type DetailChange,
  type DetailValues,
  detailInWords,
  type NewPatient,
  newPatientFields,
  type PatientDetail,
  patientDetails,
} from './patient-details.ts';

const refusal = (detail: PatientDetail, code: Refusal['code'], reason: string): Refusal => ({
  field: `input.${detail}`,
  code,
  reason,
});

const oldestYears = 115;
const adultFromYears = 18;

/** Digits of the longest international number: ITU-T E.164. */
const mostDigits = 15;

const phoneRefusals = (detail: PatientDetail, value: string): readonly Refusal[] => {
  const digits = value.replace(/\D/g, '').length;
  return /^\+?[\d\s()/.-]+$/.test(value) && digits >= 5 && digits <= mostDigits
    ? []
    : [
        refusal(
          detail,
          'wrong-type',
          `Enter a telephone number of 5 to ${mostDigits} digits, such as 020 913 0100 or +44 20 913 0100.`,
        ),
      ];
};

const emailRefusals = (value: string): readonly Refusal[] =>
  /^[^\s@]+@[^\s@.]+(\.[^\s@.]+)+$/.test(value)
    ? []
    : [refusal('email', 'wrong-type', 'Enter an email address such as name@example.org, without spaces.')];

const birthRefusals = (value: string, today: Day, mayBeChild: boolean): readonly Refusal[] => {
  if (!isDay(value)) return [refusal('birthDay', 'wrong-type', 'Give the day of birth, a day that exists.')];
  if (daysBetween(value, today) < 0)
    return [refusal('birthDay', 'too-high', 'The day of birth is in the future.')];
  const age = ageYears(value, today);
  if (age < adultFromYears && !mayBeChild)
    return [refusal('birthDay', 'too-high', `Aged ${age}. Loadgate is for adults, 18 and over.`)];
  if (age > oldestYears)
    return [
      refusal(
        'birthDay',
        'too-low',
        `The day of birth is more than ${oldestYears} years ago; check the year.`,
      ),
    ];
  return [];
};

const textFields = newPatientFields.filter((field) => field.kind === 'text');

const valueRefusals = (
  detail: PatientDetail,
  value: string,
  today: Day,
  mayBeChild: boolean,
): readonly Refusal[] => {
  if (detail === 'birthDay') return birthRefusals(value, today, mayBeChild);
  const { minLength, maxLength } = textFields.find((field) => field.name === detail)!;
  if (value.trim().length < minLength)
    return [
      refusal(detail, 'missing', `Enter “${detailInWords(detail)}”, at least ${minLength} characters.`),
    ];
  if (value.length > maxLength)
    return [refusal(detail, 'too-long', `“${detailInWords(detail)}” has at most ${maxLength} characters.`)];
  if (detail === 'phone' || detail === 'emergencyPhone') return phoneRefusals(detail, value);
  return detail === 'email' ? emailRefusals(value) : [];
};

/** An emergency contact nobody can name is no contact. */
const contactRefusals = (values: Partial<DetailValues>): readonly Refusal[] =>
  (values.emergencyPhone || values.emergencyRelation) && !values.emergencyName
    ? [refusal('emergencyName', 'missing', 'Enter the name of the emergency contact as well.')]
    : [];

export const newPatientRefusals = (row: NewPatient, today: Day): readonly Refusal[] => [
  ...patientDetails.flatMap((detail) => {
    const value = row[detail];
    return typeof value === 'string' ? valueRefusals(detail, value, today, false) : [];
  }),
  ...contactRefusals(row),
];

/**
 * What stands in the way of changes to details, `after` being what would be in force. A corrected day of
 * birth may show that somebody is no adult: it is taken, and screening then closes every method.
 */
export const detailRefusals = (
  changes: readonly DetailChange[],
  after: DetailValues,
  today: Day,
): readonly Refusal[] => [
  ...changes.flatMap(({ detail, value, because, reason }) => [
    ...(value === null ? [] : valueRefusals(detail, value, today, true)),
    ...(because === 'entered-in-error' && !reason?.trim()
      ? [refusal(detail, 'missing', `Say why “${detailInWords(detail)}” was entered in error.`)]
      : []),
    ...(changes.filter((other) => other.detail === detail).length > 1
      ? [refusal(detail, 'inconsistent', `“${detailInWords(detail)}” is changed twice. Send it once.`)]
      : []),
  ]),
  ...(['givenName', 'familyName', 'birthDay'] as const)
    .filter((detail) => after[detail] === null)
    .map((detail) => refusal(detail, 'missing', `Enter the right “${detailInWords(detail)}”.`)),
  ...contactRefusals(after),
];
