/** The patient's own copy of the record: everything that was recorded and still counts, from its first day. */

import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { distanceOf } from '#core/assessment/measurements/at-distance.ts';
import { measurementForms } from '#core/assessment/measurements/measurement-fields.ts';
import { measureOf } from '#core/assessment/measures/registry.ts';
import { consentKinds } from '#core/episode/consent.ts';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import { type NotePart, noteParts } from '#core/episode/visit-note.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { adviceShownTo, adviceStepsOf } from '#data/assessment/nutrition.ts';
import { dayAt } from '#data/civil-time.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { eventsOf } from '#data/episode/care-events.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { outcomesUpTo } from '#data/episode/document-checks.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { limitsOf } from '#data/episode/limits-and-pre-approvals.ts';
import { notesOf } from '#data/episode/visit-notes.ts';
import { messagesOf } from '#data/messages/messages.ts';
import { patientMessagesOf } from '#data/messages/patient-messages.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { screeningsOf } from '#data/screening/screenings.ts';
import type { RecordPaper, RecordVersion, Written } from '#papers/record/record-paper.ts';

/** Before every entry. */
const firstDay = '0001-01-01';
/** More than anybody has written. */
const everyMessage = 100_000;

const versionsOf = async (
  access: Access,
  patientId: string,
  zone: string,
): Promise<readonly RecordVersion[]> =>
  (await prescriptionsOf(access, patientId)).flatMap(
    ({ id, dose, badDay, cautions, signedAt, signedName, endedAt }) =>
      signedAt === null
        ? []
        : [
            {
              id,
              dose,
              badDay,
              cautions,
              signedName: signedName ?? '',
              signedOn: dayAt(signedAt, zone),
              endedOn: endedAt === null ? null : dayAt(endedAt, zone),
            },
          ],
  );

const messagesIn = async (access: Access, patientId: string, zone: string): Promise<readonly Written[]> => {
  const fromClinic = (await messagesOf(access, patientId, everyMessage)).map((row) => ({
    at: row.sentAt,
    by: row.sentName,
    text: row.text,
  }));
  const fromPatient = (await patientMessagesOf(access, patientId, everyMessage)).map((row) => ({
    at: row.recordedAt,
    by: row.byName,
    text: row.text,
  }));
  return [...fromClinic, ...fromPatient]
    .toSorted((a, b) => a.at - b.at)
    .map(({ at, by, text }) => ({ on: dayAt(at, zone), by, text }));
};

const textOf = (note: Readonly<Record<NotePart, string | null>>): string =>
  noteParts.flatMap((name) => note[name] ?? []).join(' ');

const notesIn = async (access: Access, patientId: string): Promise<readonly Written[]> =>
  (await notesOf(access, patientId))
    .map((note) => ({ on: note.day, by: note.byName, text: textOf(note) }))
    .toReversed();

/** Every value of each thing measured, oldest first. */
const measuredOf = async (access: Access, patient: Patient): Promise<RecordPaper['measured']> => {
  const byTitle = new Map<string, OutcomeLine['readings'][number][]>();
  const kinds = measurementForms.map(({ kind }) => kind);
  const rows = (await measurementsOf(access, patient.id)).toSorted(
    (a, b) => kinds.indexOf(a.kind) - kinds.indexOf(b.kind),
  );
  for (const row of rows) {
    const measure = measureOf(row.kind);
    const where = ['side' in row ? row.side : '', 'limb' in row ? row.limb : ''].filter(Boolean).join(' ');
    const title = [measure.title, measure.subject?.(row) ?? '', where].filter(Boolean).join(', ');
    const reading = { text: measure.inWords(row), day: row.day, ...distanceOf(row) };
    byTitle.set(title, [...(byTitle.get(title) ?? []), reading]);
  }
  const tests = (await outcomesUpTo(access, patient, access.day)).filter(({ kind }) => kind === 'effusion');
  return [...[...byTitle].map(([title, readings]) => ({ title, readings })), ...tests];
};

const loggedOf = async (access: Access, patientId: string) => ({
  sessions: await sessionsOf(access, patientId, firstDay),
  mornings: await morningsOf(access, patientId, firstDay),
  decisions: (await decisionsOf(access, patientId, firstDay)).toSorted(
    (a, b) => a.evaluatedAt - b.evaluatedAt || a.joint.localeCompare(b.joint),
  ),
});

export const recordPaperFor = async (access: Access, patient: Patient): Promise<RecordPaper> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const { id, profile, givenName, familyName, birthDay, patientNumber, phone } = patient;
  const { name, zone, emergencyNumber } = clinic;
  const episodes = await episodesOf(access, id);
  const diagnoses = episodes.flatMap((episode) => episode.diagnoses);
  return {
    clinic: { name, phone: clinic.phone, emergencyNumber, urgentNumber: urgentNumberOf(clinic) },
    patient: { name: `${givenName} ${familyName}`, birthDay, patientNumber, phone },
    diagnoses: diagnoses.length > 0 ? [...new Set(diagnoses)] : profile ? [profile.diagnosis] : [],
    goals: episodes.flatMap((episode) => episode.goals),
    changes: episodes.flatMap((episode) => episode.changes),
    versions: await versionsOf(access, id, zone),
    baselines: await baselinesOf(access, id),
    ...(await loggedOf(access, id)),
    signs: (await planOf(access, patient)).signs.map(({ sign }) => ({
      on: dayAt(sign.reportedAt, zone),
      flags: sign.flags,
    })),
    measured: await measuredOf(access, patient),
    screenings: (await screeningsOf(access, id)).toReversed(),
    consents: (await consentsOf(access, id))
      .toSorted((a, b) => a.at - b.at || consentKinds.indexOf(a.kind) - consentKinds.indexOf(b.kind))
      .map(({ kind, act, at }) => ({ kind, act, on: dayAt(at, zone) })),
    limits: await limitsOf(access, id),
    events: await eventsOf(access, id),
    nutrition: (await adviceStepsOf(access, id))
      .map(({ advice, recordedAt, byName: by }) => ({ on: dayAt(recordedAt, zone), by, advice }))
      .toReversed(),
    isNutritionShown: (await adviceShownTo(access, patient)) !== null,
    notes: await notesIn(access, id),
    messages: await messagesIn(access, id, zone),
  };
};
