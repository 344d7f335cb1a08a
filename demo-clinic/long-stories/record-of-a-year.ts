/** The record of a long story as it stands on a day. */
import { proposePainLimit } from '#core/decision/baseline/propose-pain-limit.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type { PlannedSession } from '#core/prescribing/programme/planned-session.ts';
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import type { LongStory } from './long-story.ts';

/** A Monday. */
export const firstDay = '2025-01-06';
/** As far back as the product reads. */
const windowDays = 120;

export interface Book {
  readonly sessions: readonly SessionRecord[];
  readonly mornings: readonly MorningRecord[];
  readonly baselines: readonly Baseline[];
  readonly versions: readonly PrescriptionVersion[];
  readonly planned: readonly PlannedSession[];
}

export const recordAt = (story: LongStory, book: Book, day: number): PatientRecord => {
  const since = addDays(firstDay, day - windowDays);
  return {
    patientId: story.id,
    followedJoints: [story.joint],
    inflammatoryArthritis: story.inflammatory,
    prescriptions: [...book.versions],
    sessions: book.sessions.filter((row) => row.day >= since),
    mornings: book.mornings.filter((row) => row.day >= since),
    effusions: [],
    baselines: [...book.baselines],
    planned: book.planned.filter((row) => row.day >= since),
    events: (story.events ?? []).map((event) => ({
      day: addDays(firstDay, event.day),
      kind: event.kind,
      joint: null,
    })),
    limits: [],
    ownedLoadsKg: story.ownedLoadsKg,
  };
};

/** What a clinician sets on a day. */
export const setOn = (story: LongStory, day: number): readonly Baseline[] =>
  story.setsBaseline
    .filter((row) => row.day === day)
    .map(({ usualPain, top, ceiling }) => ({
      joint: story.joint,
      usualPain,
      usualPainTop: top ?? usualPain,
      acceptablePainLimit: ceiling ?? proposePainLimit(usualPain, engineDefaults['ceiling-over-usual'])!,
      usualStiffnessMinutes: story.stiffness,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      usualFatigue: null,
      setOn: addDays(firstDay, day),
      setBy: 'clinician',
      dueForReview: false,
    }));

export const easierOf = (dose: LowLoadDose): LowLoadDose => {
  const { low } = dose.repetitions;
  return { ...dose, sets: 1, repetitions: { low, high: low }, reserve: 3 };
};
