/** The note about a flare, gathered from what the record holds of the last eight weeks. */
import { indexRecord } from '#core/decision/facts/record-index.ts';
import { flareCourse, flareNoteDays } from '#core/episode/documents/flare-course.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import { dayAt } from '#data/civil-time.ts';
import { type Decision, decisionsOf } from '#data/decision/decisions.ts';
import { eventsOf } from '#data/episode/care-events.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import type { FlareNotePaper } from '#papers/flare-note/flare-note-paper.ts';
import { handoverPaperFor } from './handover-paper.ts';

/** Mornings told one by one. */
const morningsTold = 14;

const medicineItems = ['arthritis-medicines', 'medicines'] as const;

const medicinesOf = async (access: Access, patientId: string): Promise<FlareNotePaper['medicines']> => {
  const screening = await newestScreening(access, patientId);
  return medicineItems.flatMap((id) => {
    const answer = screening?.answers.find(({ item }) => item === id);
    if (!screening || !answer) return [];
    return [{ answer, day: answer.askedOn ?? screening.day }];
  });
};

const eventsSince = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<FlareNotePaper['events']> =>
  (await eventsOf(access, patientId))
    // A course that was begun earlier and reached into these weeks is among them.
    .filter(({ day, lastDay }) => (lastDay ?? day) >= since && day <= access.day)
    .map(({ day, kind, joint, remark, medicine, lastDay, courseForm }) => ({
      day,
      kind,
      joint,
      remark,
      medicine,
      lastDay: lastDay ?? null,
      courseForm,
    }));

const easedIn = (rows: readonly Decision[]): FlareNotePaper['eased'] => {
  const found = new Map<string, FlareNotePaper['eased'][number] & { readonly on: ReadonlySet<Day> }>();
  for (const { joint, decision, day } of rows) {
    if (decision !== 'ease-back' && decision !== 'pause') continue;
    const before = found.get(`${joint} ${decision}`);
    const on = new Set([...(before?.on ?? []), day]);
    found.set(`${joint} ${decision}`, {
      joint,
      decision,
      first: before?.first ?? day,
      last: day,
      days: on.size,
      on,
    });
  }
  return [...found.values()]
    .map(({ on: _on, ...line }) => line)
    .toSorted((a, b) => a.first.localeCompare(b.first) || a.joint.localeCompare(b.joint));
};

const reliefIn = (mornings: PatientRecord['mornings']): FlareNotePaper['relief'] => {
  const count = (answer: boolean | null) =>
    mornings.filter(({ extraPainRelief }) => extraPainRelief === answer).length;
  return { more: count(true), usual: count(false), unanswered: count(null) };
};

const signedSince = async (
  access: Access,
  patientId: string,
  since: Day,
  zone: string,
): Promise<FlareNotePaper['signed']> =>
  (await prescriptionsOf(access, patientId)).flatMap(({ signedAt, dose }) => {
    const on = signedAt === null ? null : dayAt(signedAt, zone);
    return on !== null && on >= since ? [{ on, dose }] : [];
  });

export const flareNotePaperFor = async (access: Access, patient: Patient): Promise<FlareNotePaper> => {
  const { id, profile, patientNumber } = patient;
  const since = addDays(access.day, 1 - flareNoteDays);
  const record = await recordOf(access, id);
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const index = record && indexRecord(record);
  const mornings = (record?.mornings ?? []).filter(({ day }) => day >= since && day <= access.day);
  const toldFrom = addDays(access.day, 1 - morningsTold);
  const counts = (await measurementsOf(access, id)).findLast((row) => row.kind === 'joint-counts');
  const { clinic, patient: named, inForce, cautions } = await handoverPaperFor(access, patient);
  const episode = (await episodesOf(access, id)).at(-1);
  return {
    clinic,
    patient: { ...named, patientNumber },
    diagnoses: episode?.diagnoses ?? (profile ? [profile.diagnosis] : []),
    isInflammatory: profile?.inflammatoryArthritis ?? false,
    since,
    joints: (profile?.followedJoints ?? []).map((joint) => ({
      joint,
      flare: flareCourse(index?.morningsOf.get(joint) ?? [], access.day, access.now),
    })),
    mornings: mornings.filter(({ day }) => day >= toldFrom),
    jointCounts: counts ? { tender: counts.tender, swollen: counts.swollen, day: counts.day } : null,
    medicines: await medicinesOf(access, id),
    relief: reliefIn(mornings),
    events: await eventsSince(access, id, since),
    signs: (await planOf(access, patient)).signs
      .map(({ sign }) => ({ on: dayAt(sign.reportedAt, zone), joint: sign.joint, flags: sign.flags }))
      .filter(({ on }) => on >= since),
    signed: await signedSince(access, id, since, zone),
    eased: easedIn(await decisionsOf(access, id, since)),
    inForce,
    cautions,
  };
};
