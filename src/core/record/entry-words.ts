/** The words an entry may use for what is new, and for who typed it. */

/** What is asked before a session: anything new since the last one. */
export const newsKinds = [
  'medicine',
  'illness',
  'operation',
  'fall',
  'pregnancy',
  'heart',
  'clot',
  'skin',
  'pressure',
] as const;
export type News = (typeof newsKinds)[number];

/**
 * How the answers after a morning's pain were given. "partly": of more than two joints those that were quiet were
 * answered as yesterday by one press, and the rest was asked.
 */
export const morningVias = ['asked', 'as-yesterday', 'singly', 'partly'] as const;
export type MorningVia = (typeof morningVias)[number];

/** Whether a joint that is not followed is worse than usual on a morning. */
export const otherJointAnswers = ['worse', 'not-worse', 'not-answered'] as const;
export type OtherJoint = (typeof otherJointAnswers)[number];

/** Who typed an entry, where it was not the patient. */
export const enteredAs = [
  'relative',
  'friend',
  'paid-carer',
  'clinic-from-paper',
  'clinic-by-phone',
  /** By a clinician who stood beside the work. */
  'clinic-supervised',
] as const;
export type EnteredAs = (typeof enteredAs)[number];

/** Those who may say so on the patient's own phone, with the patient's leave. */
export const carers = ['relative', 'friend', 'paid-carer'] as const satisfies readonly EnteredAs[];
export type Carer = (typeof carers)[number];
