'use client';
/** Two records of one person: merge, undo, and choose whose prescriptions stay in force. */
import { useRouter } from 'next/navigation';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/access.ts';
import type { Patient, PatientLine } from '../answers.ts';
import { SentFrame } from '../forms/form-frame.tsx';
import { keepPlan, mergeRecords, undoMerge } from '../forms/sent/record.ts';

export interface MergePanelProps {
  readonly patient: Patient;
  readonly patients: readonly PatientLine[];
}

const ChoosePlan = ({ patient }: { readonly patient: Patient }) => {
  const router = useRouter();
  const kept = [
    { value: patient.id, label: say('those-of-this-record') },
    ...patient.merges.map((merge) => ({
      value: merge.patientId,
      label: say('those-of-the-record-merged', { 'by-name': merge.byName, reason: merge.reason }),
    })),
  ];
  return (
    <SentFrame
      sent={keepPlan}
      about={{ patientId: patient.id }}
      choices={{ keptId: kept }}
      label={say('keep-these-prescriptions')}
      tone="plain"
      hints={{ keptId: say('one-stays-in-force') }}
      clearsTo={{}}
      onTaken={router.refresh}
    />
  );
};

export const MergePanel = ({ patient, patients }: MergePanelProps) => {
  const router = useRouter();
  const patientId = patient.id;
  if (patient.mergedInto) return null;
  const others = patients
    .filter(({ id }) => id !== patientId)
    .map(({ id, givenName, familyName, birthDay }) => ({
      value: id,
      label: say('born', { 'family-name': familyName, given: givenName, 'birth-day': dayInWords(birthDay) }),
    }));
  return (
    <section className="stack-close screen-only" id="merge">
      <h2>{say('two-records-of-one-person')}</h2>
      {patient.merges.length > 0 ? <ChoosePlan patient={patient} /> : null}
      {patient.merges.map((merge) => (
        <SentFrame
          key={merge.patientId}
          sent={undoMerge}
          about={{ patientId, otherId: merge.patientId }}
          label={say('undo-the-merge')}
          tone="plain"
          clearsTo={{}}
          onTaken={router.refresh}
        />
      ))}
      <SentFrame
        sent={mergeRecords}
        about={{ patientId }}
        choices={{ otherId: others }}
        label={say('merge')}
        tone="plain"
        clearsTo={{}}
        onTaken={router.refresh}
      />
    </section>
  );
};
