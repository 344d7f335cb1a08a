/** Who is signed in. */
export interface Person {
  readonly userId: string;
  readonly name: string;
  readonly email: string;
  readonly clinicId: string;
  readonly role: 'clinician' | 'administrator' | 'patient';
  /** The own record of a patient; null for staff. */
  readonly patientId: string | null;
}
