/**
 * What a patient has agreed to, and what hangs on it. Agreement is dated, given to a wording, and may
 * be taken back at any time; nobody asked is not agreed. Taking back closes at once; agreeing again
 * opens nothing by itself, because what had hung on it was ended and has to be prescribed anew.
 */
import type { Dose } from '../prescribing/dose.ts';

export const consentKinds = [
  'occlusion-supervised',
  'occlusion-unsupervised',
  'remote-monitoring',
  'sharing',
  'export',
] as const;
export type ConsentKind = (typeof consentKinds)[number];

/**
 * Version number of a wording nobody in the clinic has written. Until it writes its own, the proposed
 * words stand, and every page that shows them says that the clinic has not yet looked at them.
 */
export const proposedWordingVersion = 0;

export interface ConsentRow {
  readonly kind: ConsentKind;
  readonly act: 'given' | 'withdrawn';
  readonly wordingVersion: number;
  readonly at: number;
  /** The patient on the own page, or a clinician who writes down what the patient said. */
  readonly by: string;
  readonly reason: string | null;
}

export const consentTitles: Readonly<Record<ConsentKind, string>> = {
  'occlusion-supervised': 'Occlusion work with a clinician present',
  'occlusion-unsupervised': 'Occlusion work at home, alone',
  'remote-monitoring': 'Remote monitoring during the clinic’s monitoring hours',
  sharing: 'Sharing with others who treat the patient',
  export: 'Handing the record on as a file',
};

/** The newest word on a kind; rows come oldest first. */
export const lastWord = (rows: readonly ConsentRow[], kind: ConsentKind): ConsentRow | null =>
  rows.findLast((row) => row.kind === kind) ?? null;

export const isGiven = (rows: readonly ConsentRow[], kind: ConsentKind): boolean =>
  lastWord(rows, kind)?.act === 'given';

/** Agreements a dose needs; work alone needs both, because it includes all that is done with somebody present. */
export const neededFor = (
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

/** What is missing for a dose, each with the sentence that is shown. */
export const missingConsents = (
  rows: readonly ConsentRow[],
  dose: Parameters<typeof neededFor>[0],
): readonly MissingConsent[] =>
  neededFor(dose)
    .filter((kind) => !isGiven(rows, kind))
    .map((kind) => ({
      kind,
      text:
        lastWord(rows, kind) === null
          ? `Consent has not been asked for: ${consentTitles[kind].toLowerCase()}.`
          : `Consent was withdrawn: ${consentTitles[kind].toLowerCase()}.`,
    }));

/** True when taking back a kind ends this dose. */
export const hangsOn = (dose: Parameters<typeof neededFor>[0], kind: ConsentKind): boolean =>
  neededFor(dose).includes(kind);
