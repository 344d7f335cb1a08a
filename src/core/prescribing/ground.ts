/** What a dose is proposed on: the patient as measured and screened, and the clinic's numbers. */
import type { ConsentRow } from '../care/consent.ts';
import type { HomeFacts } from '../care/home-gate.ts';
import type { ClinicSetting, SettingValues } from '../clinic-choice.ts';
import { defaultsOf } from '../clinic-choice.ts';
import type { Day } from '../day.ts';
import type { LowLoadRequest } from '../model/dose-wish.ts';
import type { Measurement } from '../model/measurement.ts';
import type { Limit } from '../model/record.ts';
import type { Clearance, MethodOutcome, Screening } from '../model/screening.ts';
import { occlusionSettings } from '../occlusion/choices.ts';
import type { Note, Outcome } from '../outcome.ts';
import { screeningSettings } from '../screening/choices.ts';
import { strengthSettings } from '../strength/choices.ts';
import { variationSettings } from '../variation/choices.ts';

export interface PrescribingContext {
  readonly today: Day;
  readonly ageYears: number;
  readonly formulaSex: 'female' | 'male' | null;
  readonly ownedLoadsKg: readonly number[];
  readonly screening: Screening | null;
  readonly clearances: readonly Clearance[];
  readonly outcomes: readonly MethodOutcome[];
  /** Oldest first. */
  readonly measurements: readonly Measurement[];
  readonly settings: SettingValues;
  /** Limits a surgeon, physician or clinician set; they bound every dose. */
  readonly limits: readonly Limit[];
  /** What the patient has agreed to, oldest first. */
  readonly consents: readonly ConsentRow[];
  /** Occlusion at home as recorded per limb. */
  readonly home: HomeFacts;
}

export interface Line {
  readonly text: string;
  readonly support: string;
}

/** A dose with its easier session and how both came about. */
export interface Dosed<D> {
  readonly dose: D;
  readonly badDay: D;
  readonly working: readonly Line[];
  readonly notes: readonly Note[];
}

export type DosedOutcome<D> = Outcome<Dosed<D>>;

/** The numbers a dose may use, for a page on which a clinic edits them. */
const dosingSettings: readonly ClinicSetting[] = [
  ...strengthSettings,
  ...variationSettings,
  ...occlusionSettings,
];

export const withDefaults = (own: SettingValues): SettingValues => ({
  ...defaultsOf(dosingSettings),
  ...defaultsOf(screeningSettings),
  ...own,
});

/** The newest repetitions to failure of an exercise and side. */
export const newestTest = (
  context: PrescribingContext,
  request: Pick<LowLoadRequest, 'exerciseId' | 'side'>,
) =>
  context.measurements
    .filter((row) => row.kind === 'repetitions-to-failure')
    .filter((row) => row.exerciseId === request.exerciseId && row.side === request.side)
    .at(-1);
