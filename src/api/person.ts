/** Reception keeps appointments, names and numbers, and opens no record. */
export type Role = 'clinician' | 'administrator' | 'reception' | 'patient';

/** Who is signed in. */
export interface Person {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly clinicId: string;
  readonly role: Role;
  /** May do what an administrator does; true for the role itself and for a clinician who also runs the clinic. */
  readonly administers: boolean;
  /** The own record of a patient; null for staff. */
  readonly patientId: string | null;
  readonly sessionId: string;
  /** When passphrase or PIN was last given in this session, by the system clock. */
  readonly provedAt: number;
  /** What has to be set up before anything else may be done. */
  readonly setUp: 'done' | 'passphrase' | 'two-factor';
}
