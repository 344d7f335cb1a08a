/** What a dose is proposed on: the patient as measured and screened, and the clinic's numbers. */

import type { Measurement } from '../assessment/measurements/measurement.ts';
import type { ConsentRow } from '../episode/consent.ts';
import type { HomeFacts } from '../episode/home-eligibility.ts';
import type { Note, Outcome } from '../outcome.ts';
import type { Limit } from '../record/limit.ts';
import type { Clearance, MethodOutcome, Screening } from '../screening/screening.ts';
import { screeningSettings } from '../screening/settings.ts';
import type { ClinicSetting, SettingValues } from '../sources/clinic-setting.ts';
import { defaultsOf } from '../sources/clinic-setting.ts';
import type { Day } from '../time/day.ts';
import type { Dose } from './dose.ts';
import type { LowLoadRequest } from './dose-request.ts';
import type { LoadsByPlace } from './loads-at-place.ts';
import { strengthSettings } from './low-load/settings.ts';
import { occlusionSettings } from './occlusion/settings.ts';
import { variationSettings } from './variation/settings.ts';

export interface PrescribingContext extends LoadsByPlace {
  readonly today: Day;
  readonly ageYears: number;
  readonly formulaSex: 'female' | 'male' | null;
  readonly screening: Screening | null;
  readonly clearances: readonly Clearance[];
  readonly outcomes: readonly MethodOutcome[];
  /** Oldest first. */
  readonly measurements: readonly Measurement[];
  readonly settings: SettingValues;
  /** Limits a surgeon, physician or clinician set; they bound every dose. */
  readonly limits: readonly Limit[];
  /** What the patient has answered to each consent, oldest first. */
  readonly consents: readonly ConsentRow[];
  /** Occlusion at home as recorded per limb. */
  readonly home: HomeFacts;
  /** Doses signed and in force. */
  readonly inForce: readonly Dose[];
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
  context: Pick<PrescribingContext, 'measurements'>,
  request: Pick<LowLoadRequest, 'exerciseId' | 'side'>,
) =>
  context.measurements
    .filter((row) => row.kind === 'repetitions-to-failure')
    .filter((row) => row.exerciseId === request.exerciseId && row.side === request.side)
    .at(-1);
