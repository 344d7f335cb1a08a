/**
 * What a patient has consented to, and what depends on it. A consent is dated, answers one wording, and
 * may be refused or withdrawn at any time; nobody asked is not given.
 *
 * Exercises with a cuff end at once when their consent is refused or withdrawn; consenting again brings
 * none back. Without consent to treatment nothing is proposed or signed and every exercise rests, and
 * nothing ends: consenting again lifts that. Treatment not asked about yet is named and blocks nothing.
 */
import type { Dose } from '../prescribing/dose.ts';

export const consentKinds = [
  'treatment',
  'record-keeping',
  'occlusion-supervised',
  'occlusion-unsupervised',
  'remote-monitoring',
  'sharing',
  'export',
] as const;
export type ConsentKind = (typeof consentKinds)[number];

/** Whose words the patient answered: those proposed with this program, or the clinic's own. */
export const wordingSources = ['proposed', 'clinic'] as const;

/** A wording by whose it is and its number; the proposed words and each clinic's own count apart. */
export interface WordingId {
  readonly wordingSource: (typeof wordingSources)[number];
  readonly wordingVersion: number;
}

/**
 * The proposed words, which hold until the clinic writes its own; every page that shows them says that
 * the clinic has not looked at them yet. The number goes up whenever one of their sentences changes, in
 * any language.
 */
export const proposedWording: WordingId = { wordingSource: 'proposed', wordingVersion: 2 };

export const consentActs = ['given', 'refused', 'withdrawn'] as const;

export interface ConsentRow extends WordingId {
  readonly kind: ConsentKind;
  readonly act: (typeof consentActs)[number];
  readonly at: number;
  /** The patient on the own page, or a clinician who writes down what the patient said. */
  readonly by: string;
  readonly reason: string | null;
}

export const consentTitles: Readonly<Record<ConsentKind, string>> = {
  treatment: 'Assessment and treatment',
  'record-keeping': 'Keeping a record',
  'occlusion-supervised': 'Cuff work with a clinician present',
  'occlusion-unsupervised': 'Cuff work at home, alone',
  'remote-monitoring': 'Remote monitoring during the clinic’s monitoring hours',
  sharing: 'Telling others who treat the patient',
  export: 'Handing over the record as a file',
};

/** The newest word on a kind; rows come oldest first. */
export const lastWord = (rows: readonly ConsentRow[], kind: ConsentKind): ConsentRow | null =>
  rows.findLast((row) => row.kind === kind) ?? null;

export const isGiven = (rows: readonly ConsentRow[], kind: ConsentKind): boolean =>
  lastWord(rows, kind)?.act === 'given';

export type ConsentState = ConsentRow['act'] | 'not-asked';

export const consentState = (rows: readonly ConsentRow[], kind: ConsentKind): ConsentState =>
  lastWord(rows, kind)?.act ?? 'not-asked';

/** Consents a dose needs; work alone needs both, because it includes all that is done with somebody present. */
const neededFor = (
  dose: Pick<Dose, 'method'> & { readonly supervised?: boolean },
): readonly ConsentKind[] => {
  if (dose.method !== 'occlusion') return [];
  return dose.supervised === true
    ? ['occlusion-supervised']
    : ['occlusion-supervised', 'occlusion-unsupervised'];
};

export interface MissingConsent {
  readonly kind: ConsentKind;
  readonly text: string;
}

const stateWords: Readonly<Record<ConsentState, string>> = {
  'not-asked': 'Consent has not been asked for',
  given: 'Consent is given',
  refused: 'Consent was refused',
  withdrawn: 'Consent was withdrawn',
};

const missingKinds = (
  rows: readonly ConsentRow[],
  dose: Parameters<typeof neededFor>[0],
): readonly ConsentKind[] => {
  const treatment = lastWord(rows, 'treatment');
  const needed = neededFor(dose).filter((kind) => !isGiven(rows, kind));
  return treatment && treatment.act !== 'given' ? ['treatment', ...needed] : needed;
};

/** What is missing for a dose, each with the sentence that is shown. */
export const missingConsents = (
  rows: readonly ConsentRow[],
  dose: Parameters<typeof neededFor>[0],
): readonly MissingConsent[] =>
  missingKinds(rows, dose).map((kind) => ({
    kind,
    text: `${stateWords[consentState(rows, kind)]}: ${consentTitles[kind].toLowerCase()}.`,
  }));

/** True when refusing or withdrawing a kind ends this dose. */
export const hangsOn = (dose: Parameters<typeof neededFor>[0], kind: ConsentKind): boolean =>
  neededFor(dose).includes(kind);
