'use client';
/** Signing the doses of one patient, one signature each. What was signed before one was refused is said. */
import { say } from '#messages/en/staff/worklist.ts';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';
import type { RowDose } from './row-dose.tsx';
import type { Done } from './row-state.ts';

export interface SignsDoses {
  readonly patientId: string;
  /** Instant at which the doses were read. */
  readonly readAt: number;
  readonly onDone: (done: Done) => void;
}

export const useSignDoses = ({ patientId, readAt, onDone }: SignsDoses) => {
  const id = `sign-${patientId}`;
  const submit = useSubmit('', id);
  const signOne = async ({ prescriptionId, step }: RowDose, replace: boolean) => {
    await client.clinician.prescriptions.sign.mutate({ patientId, prescriptionId, replace, readAt });
    onDone({
      id: prescriptionId,
      text: say('signed', { step }),
      note: say(replace ? 'signed-replacing' : 'signed-note'),
      undo: replace
        ? null
        : () => client.clinician.prescriptions.withdrawSignature.mutate({ patientId, prescriptionId }),
    });
  };
  const sign = (doses: readonly RowDose[], replace: boolean) =>
    submit.send([], async () => {
      for (const dose of doses) await signOne(dose, replace);
    });
  return { submit, sign, id };
};
