'use client';
/** Two records of one person: merge, undo, and choose whose prescriptions stay in force. */
import { useRouter } from 'next/navigation';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/access.ts';
import type { Patient, PatientLine } from '../answers.ts';
import { client } from '../client.ts';
import { FormFrame, type FormFrameProps } from '../forms/form-frame.tsx';

const reason = { name: 'reason', kind: 'text', minLength: 1, maxLength: 200, about: 'Reason' } as const;
const record = <const N extends string>(name: N, about: string) =>
  ({ name, kind: 'text', minLength: 1, maxLength: 64, about }) as const;

const mergeFields = [record('otherId', say('other-record-of-this-person')), reason] as const;
const keepFields = [record('keptId', say('prescriptions-that-stay')), reason] as const;

export interface MergePanelProps {
  readonly patient: Patient;
  readonly patients: readonly PatientLine[];
}

type Act = Pick<FormFrameProps, 'prefix' | 'fields' | 'choices' | 'label' | 'taken' | 'hints'> & {
  readonly send: (typed: Record<string, unknown>) => Promise<unknown>;
};

const ActForm = ({ send, ...props }: Act) => {
  const router = useRouter();
  return (
    <FormFrame
      {...props}
      clearsTo={{}}
      send={async (typed) => {
        await send(typed);
        router.refresh();
      }}
    />
  );
};

const ChoosePlan = ({ patient }: { readonly patient: Patient }) => {
  const kept = [
    { value: patient.id, label: say('those-of-this-record') },
    ...patient.merges.map((merge) => ({
      value: merge.patientId,
      label: say('those-of-the-record-merged', { 'by-name': merge.byName, reason: merge.reason }),
    })),
  ];
  return (
    <ActForm
      prefix="keep-"
      fields={keepFields}
      choices={{ keptId: kept }}
      label={say('keep-these-prescriptions')}
      taken={say('other-prescriptions-ended')}
      hints={{ keptId: say('one-stays-in-force') }}
      send={(typed) =>
        client.clinician.merges.choosePlan.mutate({
          patientId: patient.id,
          keptId: String(typed.keptId),
          reason: String(typed.reason),
        })
      }
    />
  );
};

export const MergePanel = ({ patient, patients }: MergePanelProps) => {
  const { merges: acts } = client.clinician;
  const patientId = patient.id;
  if (patient.mergedInto) return null;
  const others = patients
    .filter(({ id }) => id !== patientId)
    .map(({ id, givenName, familyName, birthDay }) => ({
      value: id,
      label: say('born', { 'family-name': familyName, given: givenName, 'birth-day': dayInWords(birthDay) }),
    }));
  return (
    <section className="stack-close" id="merge">
      <h2>{say('two-records-of-one-person')}</h2>
      {patient.merges.length > 0 ? <ChoosePlan patient={patient} /> : null}
      {patient.merges.map((merge) => (
        <ActForm
          key={merge.patientId}
          prefix={`undo-${merge.patientId}-`}
          fields={[reason]}
          label={say('undo-the-merge')}
          taken={say('undone')}
          send={(typed) =>
            acts.undo.mutate({ patientId, otherId: merge.patientId, reason: String(typed.reason) })
          }
        />
      ))}
      <ActForm
        prefix="merge-"
        fields={mergeFields}
        choices={{ otherId: others }}
        label={say('merge')}
        taken={say('merged')}
        send={({ otherId, reason: why }) =>
          acts.merge.mutate({ patientId, otherId: String(otherId), reason: String(why) })
        }
      />
    </section>
  );
};
