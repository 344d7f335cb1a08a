/** Signing waits while two merged records of a person have no plan chosen, and goes on where it was chosen. */
import type { Access } from '#data/access.ts';
import { signingStopped } from '#data/patients/merges.ts';
import { Problem } from '../errors.ts';

export const signingStoppedText = {
  'plan-not-chosen':
    'Two records of this person are merged. Choose whose prescriptions stay in force, then sign.',
  'plan-elsewhere': 'The other record of this person was chosen for prescriptions. Prescribe and sign there.',
} as const;

export const requireSigning = async (access: Access, patientId: string): Promise<void> => {
  const stopped = await signingStopped(access, patientId);
  if (stopped) throw new Problem('conflict', signingStoppedText[stopped]);
};
