/**
 * The demo clinic: an invented clinic in an invented town. Its day stands still until somebody moves
 * it, so that the stories read the same on any machine. Imports nothing.
 */

/** A Monday morning at the clinic, after the patients' morning answers and before the first appointment. */
export const demoNow = '2026-04-20T08:30:00+01:00';

export const demoPassphrase = 'demo-clinic-demo';

/** The town is invented, the zone is real; the number is from a range kept free for fiction. */
export const demoClinic = {
  id: 'demo-clinic',
  name: 'Ardvellin Joint and Muscle Clinic',
  zone: 'Europe/Dublin',
  phone: '020 913 0140',
  emergencyNumber: '112',
  urgentNumber: '020 913 0166',
  monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '08:30', to: '18:30' }],
} as const;

/** A clinic of its own beside it: its people must never see anything of the first. */
export const otherClinic = {
  id: 'demo-other-clinic',
  name: 'Quay Street Physiotherapy, Tarrenport',
  zone: 'Europe/Lisbon',
  phone: '020 913 0290',
  emergencyNumber: '112',
  urgentNumber: null,
  monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu'], from: '09:00', to: '16:00' }],
} as const;

/** The reviewer signs in with a one-time code as well; the secret is public, like everything in the demo. */
export const reviewerCodeSecret = 'demo-reviewer-codes';
/** The same as an authenticator app takes it (base32, RFC 4648). */
export const reviewerTypedSecret = 'MRSW23ZNOJSXM2LFO5SXELLDN5SGK4Y';

export type DemoRole = 'clinician' | 'administrator' | 'reception' | 'patient';

export interface DemoSignIn {
  readonly email: string;
  readonly who: string;
  readonly role: DemoRole;
  /** What the sign-in is for, in a few words. */
  readonly story: string;
}

export const demoSignIns = [
  {
    email: 'clinician@demo.invalid',
    who: 'Nuala Derravane',
    role: 'clinician',
    story: 'physiotherapist who prescribes and signs',
  },
  {
    email: 'reviewer@demo.invalid',
    who: 'Piotr Zawilny',
    role: 'clinician',
    story: `clinician who reviews a week later; asks for a one-time code, secret ${reviewerTypedSecret}`,
  },
  {
    email: 'admin@demo.invalid',
    who: 'Imelda Coyrath',
    role: 'administrator',
    story: 'keeps the clinic’s settings',
  },
  {
    email: 'reception@demo.invalid',
    who: 'Odile Farrowmere',
    role: 'reception',
    story: 'keeps appointments, names and telephone numbers',
  },
  {
    email: 'other-clinic@demo.invalid',
    who: 'Sunniva Okkenby',
    role: 'clinician',
    story: 'physiotherapist of another clinic',
  },
  {
    email: 'patient-1@demo.invalid',
    who: 'Maeve Tarrowby',
    role: 'patient',
    story: 'steady progress over three months',
  },
  {
    email: 'patient-2@demo.invalid',
    who: 'Desmond Aklavi',
    role: 'patient',
    story: 'a flare, the way back, then a hold',
  },
  {
    email: 'patient-3@demo.invalid',
    who: 'Chidi Varrenholt',
    role: 'patient',
    story: 'answers go missing, then stop',
  },
  {
    email: 'patient-4@demo.invalid',
    who: 'Ingrid Solvarre',
    role: 'patient',
    story: 'occlusion cleared, watched twice, then at home',
  },
  {
    email: 'patient-5@demo.invalid',
    who: 'Bartholomew Quillane',
    role: 'patient',
    story: 'occlusion not cleared: diagnosed high blood pressure',
  },
  {
    email: 'patient-6@demo.invalid',
    who: 'Yewande Coldrick',
    role: 'patient',
    story: 'a warning sign this morning',
  },
  {
    email: 'patient-7@demo.invalid',
    who: 'Anselm Thistlewood',
    role: 'patient',
    story: 'kidney disease: nutrition refers',
  },
  {
    email: 'patient-8@demo.invalid',
    who: 'Philippa Norregate',
    role: 'patient',
    story: 'beyond her dumbbells',
  },
  {
    email: 'patient-9@demo.invalid',
    who: 'Leocadia Brandmere',
    role: 'patient',
    story: 'rheumatoid arthritis, a flare of several joints',
  },
  {
    email: 'patient-10@demo.invalid',
    who: 'Solveig Ashdrummond',
    role: 'patient',
    story: 'a first visit still to come',
  },
  {
    email: 'patient-11@demo.invalid',
    who: 'Thaddea Wrenfield',
    role: 'patient',
    story: 'phases after a new knee',
  },
  {
    email: 'patient-12@demo.invalid',
    who: 'Morwenna Pellgrave',
    role: 'patient',
    story: 'hand osteoarthritis, by holds',
  },
] as const satisfies readonly DemoSignIn[];
