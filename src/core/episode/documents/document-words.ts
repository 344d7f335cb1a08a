/** What a paper is made of, and the words both papers share. */
import type { Dose } from '#core/prescribing/dose.ts';

export interface DocumentPart {
  readonly title: string;
  readonly lines: readonly string[];
  /** What no row of the record says: advice given in the clinic's name, for a clinician to read first. */
  readonly advice?: readonly string[];
}

export interface CareDocument {
  /** Who writes, line by line. */
  readonly from: readonly string[];
  /** Of whom it speaks. */
  readonly about: string;
  readonly title: string;
  readonly parts: readonly DocumentPart[];
  /** Stands over the advice of each part. */
  readonly adviceTitle: string;
  /** Stands before the line to sign on. */
  readonly signature: string;
}

export const adviceOf = ({ parts }: CareDocument): readonly string[] =>
  parts.flatMap(({ advice = [] }) => advice);

/** How a dose is said; the screens have the words. */
export interface DoseWords {
  readonly title: (dose: Dose) => string;
  readonly dose: (dose: Dose) => string;
}

export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
