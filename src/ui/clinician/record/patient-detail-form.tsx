'use client';
/** One detail changed, or marked as entered in error. The version that was on the page goes with it. */
import { useRouter } from 'next/navigation';
import type { Field } from '#core/calculations/describe.ts';
import { detailChangeFields, detailInWords, patientDetails } from '#core/record/patient-details.ts';
import { say } from '#messages/en/staff/record.ts';
import type { PatientDetails } from '../answers.ts';
import { callsOf, type Desk } from '../desk-calls.ts';
import { FormFrame } from '../forms/form-frame.tsx';
import { refusedAt } from '../forms/submit-problems.ts';

const textDetails = patientDetails.filter((detail) => detail !== 'birthDay');

/** The version seen is known to the page and not asked; a day of birth is asked as a day, and all else as text. */
const fields: readonly Field[] = detailChangeFields[0].of.fields.flatMap((field): readonly Field[] => {
  if (field.name === 'seen') return [];
  if (field.name !== 'value') return [field];
  return [
    { ...field, onlyWhen: { field: 'detail', is: textDetails } },
    {
      name: 'birthDay',
      kind: 'day',
      isBirth: true,
      nullable: true,
      about: detailInWords('birthDay'),
      onlyWhen: { field: 'detail', is: ['birthDay'] },
    },
  ];
});

/** Doses are worked out with the age: the front desk does not change a day of birth. */
const detailsFor = (desk: Desk) => (desk === 'clinician' ? patientDetails : textDetails);

export const PatientDetailForm = (props: {
  readonly patientId: string;
  readonly details: PatientDetails;
  readonly desk?: Desk;
}) => {
  const { desk = 'clinician' } = props;
  const router = useRouter();
  return (
    <FormFrame
      prefix="detail-"
      fields={fields}
      choices={{ detail: detailsFor(desk).map((value) => ({ value, label: detailInWords(value) })) }}
      label={say('detail.save')}
      taken={say('detail.taken')}
      clearsTo={{}}
      hints={{
        value: say('detail.value-hint'),
        birthDay: say('detail.value-hint'),
        reason: say('detail.reason-hint'),
      }}
      send={async (typed) => {
        const seen = props.details.find(({ detail }) => detail === typed.detail)?.seen ?? 0;
        const { birthDay, value, ...change } = typed;
        const isBirth = change.detail === 'birthDay';
        const changes = [{ ...change, value: isBirth ? birthDay : value, seen }];
        await callsOf[desk].changeDetails
          .mutate({ patientId: props.patientId, changes })
          .catch((error: unknown) => {
            throw refusedAt(error, isBirth ? 'birthDay' : 'value');
          });
        router.refresh();
      }}
    />
  );
};
