/**
 * What came from elsewhere: past days that another system or a person wrote down. It is no answer given here, so no
 * rule reads it; it is shown as imported wherever it shows.
 */
import type { Joint, Side } from '../exercises/joints.ts';
import type { Day } from '../time/day.ts';

export const importFormats = ['csv', 'fhir'] as const;
export type ImportFormat = (typeof importFormats)[number];

export const importedKinds = ['session', 'morning', 'measurement', 'condition'] as const;
export type ImportedKind = (typeof importedKinds)[number];

/** One exercise of a day. */
export interface ImportedSession {
  readonly exercise: string | null;
  readonly joint: Joint | null;
  readonly sets: number | null;
  readonly repetitions: number | null;
  readonly loadKg: number | null;
  readonly painBefore: number | null;
  readonly painDuring: number | null;
  readonly painAfter: number | null;
}

/** The answers of one morning about one joint. */
export interface ImportedMorning {
  readonly joint: Joint;
  readonly pain: number | null;
  readonly stiffnessMinutes: number | null;
  readonly fatigue: number | null;
}

export type ImportedMeasurement =
  | { readonly what: 'body-mass'; readonly massKg: number }
  | { readonly what: 'stature'; readonly statureCm: number }
  | { readonly what: 'blood-pressure'; readonly systolicMmhg: number; readonly diastolicMmhg: number }
  /** `place` in the words of the file. */
  | { readonly what: 'pain'; readonly pain: number; readonly place: string | null }
  | { readonly what: 'grip'; readonly side: Side; readonly forceKg: number };

/** As the other clinic wrote it; nobody here has looked at it. */
interface ImportedCondition {
  readonly text: string;
}

export type ImportedValue = ImportedSession | ImportedMorning | ImportedMeasurement | ImportedCondition;

/** One thing of a day, before it has a place in the record. */
export interface ImportedThing {
  readonly kind: ImportedKind;
  readonly day: Day | null;
  readonly value: ImportedValue;
}
