'use client';
/** One detail changed, or marked as entered in error. The version that was on the page goes with it. */
import { useRouter } from 'next/navigation';
import { detailInWords, patientDetails } from '#core/record/patient-details.ts';
import { say } from '#messages/en/staff/record.ts';
import type { PatientDetails } from '../answers.ts';
import type { Desk } from '../desk-calls.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { changeDetail, seenInText, textDetails } from '../forms/sent/record.ts';

/** Doses are worked out with the age: the front desk does not change a day of birth. */
const detailsFor = (desk: Desk) => (desk === 'clinician' ? patientDetails : textDetails);

export const PatientDetailForm = (props: {
  readonly patientId: string;
  readonly details: PatientDetails;
  readonly desk?: Desk;
}) => {
  const { patientId, details, desk = 'clinician' } = props;
  const router = useRouter();
  return (
    <SentFrame
      sent={changeDetail}
      about={{ patientId, desk, seen: seenInText(details) }}
      choices={{ detail: detailsFor(desk).map((value) => ({ value, label: detailInWords(value) })) }}
      label={say('detail.save')}
      clearsTo={{}}
      hints={{
        value: say('detail.value-hint'),
        birthDay: say('detail.value-hint'),
        reason: say('detail.reason-hint'),
      }}
      onTaken={router.refresh}
    />
  );
};
