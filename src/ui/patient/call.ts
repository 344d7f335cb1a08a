/** One call of a patient's procedure, without a client library: the pages on the phone stay light. */
export type PatientCall =
  | 'preVisit.send'
  | 'consents.give'
  | 'consents.refuse'
  | 'consents.withdraw'
  | 'entries.keepMorning';

/** True when it was taken; false when it was not, or nobody answered. */
export const callPatient = async (path: PatientCall, input: unknown): Promise<boolean> => {
  try {
    const answer = await fetch(`/api/trpc/patient.${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(input),
    });
    return answer.ok;
  } catch {
    return false;
  }
};
