/** What a paper is made of, and the words both papers share. */
import type { DecisionWord } from '#core/decision/answers.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { jointInWords, listed } from '#core/review/plain-words.ts';

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

export const methodWords: Readonly<Record<Method, string>> = {
  variation: 'variation',
  'low-load': 'low load',
  occlusion: 'occlusion',
};

export const decisionWords: Readonly<Record<DecisionWord, string>> = {
  progress: 'progress',
  hold: 'hold',
  'ease-back': 'ease back',
  pause: 'pause',
};

export const endWords: Readonly<Record<string, string>> = {
  discharged: 'Discharged',
  transferred: 'Handed to others',
};

/** All of them: on paper nothing is cut short. */
export const all = (parts: readonly string[]): string => listed(parts, Number.POSITIVE_INFINITY);
export const jointsInWords = (joints: readonly Joint[]): string => all(joints.map(jointInWords));
export const sentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
