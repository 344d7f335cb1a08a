/**
 * A first visit in one transaction: profile, the minimum of the screening, what was measured, and one
 * proposed exercise kept unsigned. Either all of it is kept or nothing. Signing is an act of its own.
 */

import { Problem, refusedWith } from '#api/errors.ts';
import { unknownItems } from '#api/inputs/screening-items.ts';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { measurementConsistent, unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import type { InputOf } from '#core/calculations/describe.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import type { firstVisitFields } from '#core/episode/visit-fields.ts';
import { exerciseById } from '#core/exercises/catalogue.ts';
import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Refusal } from '#core/outcome.ts';
import { prescriptionTemplates } from '#core/prescribing/templates.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf, recordMeasurement } from '#data/assessment/measurements.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { episodesOf, openEpisode } from '#data/episode/episodes.ts';
import { draftOf, dropDraft } from '#data/patients/drafts.ts';
import { type Patient, patientOf, saveProfile } from '#data/patients/people.ts';
import { addVersion, endPrescription } from '#data/prescribing/prescribing.ts';
import { prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { newestPreVisit } from '#data/screening/pre-visits.ts';
import { recordScreening, screeningsOf } from '#data/screening/screenings.ts';
import { withPatientWords } from '../caution-words.ts';
import { propose } from '../propose.ts';
import { inEnglish } from '../question-in-english.ts';

type FirstVisit = InputOf<typeof firstVisitFields>;

/** What the page shows: what to ask, where to begin, and what is on record beside each field. */
export const firstVisitPage = async (access: Access, patient: Patient) => ({
  items: minimumSet('low-load').map(inEnglish),
  templates: prescriptionTemplates.map((template) => ({
    ...template,
    exercise: exerciseById(template.request.exerciseId)?.title ?? template.request.exerciseId,
    limbsAtOnce: exerciseById(template.request.exerciseId)?.limbsAtOnce ?? 'one',
  })),
  profile: patient.profile,
  screening: (await screeningsOf(access, patient.id))[0] ?? null,
  preVisit: await newestPreVisit(access, patient.id),
  measurements: (await measurementsOf(access, patient.id)).filter(
    ({ kind }) => kind === 'blood-pressure' || kind === 'repetitions-to-failure',
  ),
  draft: await draftOf(access, patient.id, 'first-visit'),
});

const measured = ({ pressure, test, request }: FirstVisit, access: Access): readonly Measurement[] => [
  ...(pressure
    ? [{ kind: 'blood-pressure' as const, day: access.day, ...pressure, position: 'seated' as const }]
    : []),
  ...(test
    ? [
        {
          kind: 'repetitions-to-failure' as const,
          day: access.day,
          exerciseId: request.exerciseId,
          side: request.side,
          ...test,
        },
      ]
    : []),
];

const saveMeasured = async (
  access: Access,
  patientId: string,
  rows: readonly Measurement[],
  isConfirmed: boolean,
): Promise<void> => {
  const known = await measurementsOf(access, patientId);
  const questions = rows.flatMap((row) => unlikely(row, known));
  if (questions.length > 0 && !isConfirmed)
    throw new Problem('not-confirmed', questions.join(' '), { questions });
  for (const row of rows) await recordMeasurement(access, patientId, row, isConfirmed);
};

/** Opens an episode of care where none goes on, and begins it. */
const begun = async (access: Access, patientId: string, visit: FirstVisit): Promise<void> => {
  const episodes = await episodesOf(access, patientId);
  if (episodeStatusOn(episodes, access.day).state === 'in-care') return;
  const joints = visit.profile.followedJoints as readonly Joint[];
  const episodeId = await openEpisode(
    access,
    patientId,
    {
      diagnoses: [visit.profile.diagnosis],
      joints,
      followedJoints: joints,
      goals: visit.goal === null ? [] : [visit.goal],
      referrer: null,
      contacts: [],
    },
    'First visit.',
  );
  await applyEpisodeChange(access, patientId, episodeId, {
    to: 'active',
    on: access.day,
    reason: 'First visit.',
    breakKind: null,
    expectedBack: null,
  });
};

const refusalsOf = (visit: FirstVisit, rows: readonly Measurement[], access: Access): readonly Refusal[] => [
  ...unknownItems(visit.screening.answers),
  ...(visit.screening.sheetVersion === screeningSheetVersion
    ? []
    : [
        {
          field: 'input.screening',
          code: 'inconsistent' as const,
          reason: 'The questions have changed since you opened this page. Reload it.',
        },
      ]),
  ...rows.flatMap((row) => measurementConsistent(row, access.day)),
];

export interface SaveOptions {
  /** Unlikely values were confirmed. */
  readonly confirmed: boolean;
  /** The unsigned version this one takes the place of, when something was changed and proposed again. */
  readonly replaces: string | null;
}

/** The unsigned version a new one takes the place of ends; a signed one is never ended by the way. */
const endReplaced = async (access: Access, patientId: string, replaces: string | null): Promise<void> => {
  const waiting = unsigned(await prescriptionsOf(access, patientId)).find((row) => row.id === replaces);
  if (waiting)
    await endPrescription(access, patientId, waiting.id, 'Changed and proposed anew before signing.');
};

export const saveFirstVisit = (
  access: Access,
  patient: Patient,
  visit: FirstVisit,
  { confirmed, replaces }: SaveOptions,
) =>
  access.store.write(async () => {
    const rows = measured(visit, access);
    const refused = refusalsOf(visit, rows, access);
    if (refused.length > 0) throw refusedWith(refused);
    await begun(access, patient.id, visit);
    await saveProfile(access, patient.id, {
      ...visit.profile,
      followedJoints: visit.profile.followedJoints as readonly Joint[],
      ownedEquipment: visit.profile.ownedEquipment ?? patient.profile?.ownedEquipment ?? householdEquipment,
    });
    await recordScreening(access, patient.id, visit.screening);
    await saveMeasured(access, patient.id, rows, confirmed);
    await endReplaced(access, patient.id, replaces);
    const now = (await patientOf(access, patient.id)) ?? patient;
    const proposed = await propose(access, now, visit.request);
    const prescriptionId = await addVersion(access, patient.id, {
      ...proposed,
      working: [...proposed.working, ...proposed.notes].map((line) => line.text),
      origin: 'clinician',
    });
    await dropDraft(access, patient.id, 'first-visit');
    return { prescriptionId, ...withPatientWords(proposed) };
  });
