/**
 * Who a patient is and how to reach them: each detail with its versions. A version says why it was
 * recorded: the detail has changed since, or what stood there was entered in error. Nothing is edited.
 */
import type { Field, InputOf } from '../calculations/describe.ts';

const name = <const N extends string>(of: N, about: string) =>
  ({ name: of, kind: 'text', minLength: 1, maxLength: 60, about }) as const;
const mayBeEmpty = <const N extends string>(of: N, minLength: number, maxLength: number, about: string) =>
  ({ name: of, kind: 'text', minLength, maxLength, optional: true, nullable: true, about }) as const;

/** Name and day of birth are needed; the rest may come later. */
export const newPatientFields = [
  name('givenName', 'Given name'),
  name('familyName', 'Family name'),
  { name: 'birthDay', kind: 'day', isBirth: true, about: 'Day of birth' },
  mayBeEmpty('phone', 3, 30, 'Telephone'),
  mayBeEmpty('email', 3, 254, 'Email'),
  mayBeEmpty('address', 3, 300, 'Address'),
  mayBeEmpty('patientNumber', 1, 40, 'Patient number'),
  mayBeEmpty('generalPractitioner', 1, 120, 'General practitioner'),
  mayBeEmpty('emergencyName', 1, 120, 'Emergency contact: name'),
  mayBeEmpty('emergencyPhone', 3, 30, 'Emergency contact: telephone'),
  mayBeEmpty('emergencyRelation', 1, 60, 'Emergency contact: relation'),
] as const satisfies readonly Field[];

export type NewPatient = InputOf<typeof newPatientFields>;
export type PatientDetail = (typeof newPatientFields)[number]['name'];
export type DetailValues = Readonly<Record<PatientDetail, string | null>>;

export const patientDetails = newPatientFields.map((field) => field.name) as [
  PatientDetail,
  ...PatientDetail[],
];

export const detailInWords = (detail: PatientDetail): string =>
  newPatientFields.find((field) => field.name === detail)?.about ?? detail;

export const reasonsForVersion = ['first', 'changed-since', 'entered-in-error'] as const;

export interface DetailVersion {
  readonly detail: PatientDetail;
  /** From 1, per patient and detail. */
  readonly version: number;
  /** null: nothing is known any more, or, where an error is only taken back, what stood before it. */
  readonly value: string | null;
  readonly because: (typeof reasonsForVersion)[number];
  readonly reason: string | null;
  /** Version that was entered in error. */
  readonly strikes: number | null;
  readonly recordedAt: number;
  readonly byName: string;
}

/** The newest version of one detail that was not entered in error; null when there is none. */
export const detailInForce = <V extends Pick<DetailVersion, 'version' | 'value' | 'because' | 'strikes'>>(
  versions: readonly V[],
): V | null => {
  const struck = new Set(versions.map((row) => row.strikes));
  const left = versions.filter(
    (row) => !struck.has(row.version) && !(row.because === 'entered-in-error' && row.value === null),
  );
  return left.reduce<V | null>(
    (newest, row) => (newest && newest.version > row.version ? newest : row),
    null,
  );
};

export const detailChangeFields = [
  {
    name: 'changes',
    kind: 'list',
    minItems: 1,
    maxItems: newPatientFields.length,
    of: {
      name: 'change',
      kind: 'record',
      fields: [
        { name: 'detail', kind: 'enum', values: patientDetails, about: 'Detail' },
        { name: 'value', kind: 'text', minLength: 1, maxLength: 300, nullable: true, about: 'New value' },
        {
          name: 'because',
          kind: 'enum',
          values: ['changed-since', 'entered-in-error'],
          about: 'Changed since, or entered in error',
        },
        { name: 'reason', kind: 'text', minLength: 1, maxLength: 300, nullable: true, about: 'Reason' },
        { name: 'seen', kind: 'integer', unit: '1', min: 0, max: 1_000_000, about: 'Version seen' },
      ],
    },
  },
] as const satisfies readonly Field[];

export type DetailChange = InputOf<typeof detailChangeFields>['changes'][number];
