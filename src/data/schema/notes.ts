/**
 * What clinicians write of a contact with a patient, and what the clinic writes down as an incident or plans as an hour
 * with a group. Append-only: what was wrong is marked so, or another entry stands in its place, and it stays.
 */
import { sql } from 'drizzle-orm';
import type { AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import { groupStates } from '#core/clinic/group-hour.ts';
import { incidentKinds, incidentStates } from '#core/clinic/incident.ts';
import { judgedBy, partsOfGuide } from '#core/episode/distance/guide.ts';
import { noteContacts } from '#core/episode/visit-note.ts';
import { episode } from './care.ts';
import { dayShape, kit, words } from './kit.ts';
import { owned } from './owned.ts';
import { clinic, patient } from './people.ts';
import { visit } from './visits.ts';

export const visitNote = kit.appendOnly(
  'visit_note',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    /** Open when it was written; null = none was. */
    episodeId: kit.idOrNull('episode_id').references(() => episode.id),
    day: kit.day('day'),
    contact: kit.word('contact', noteContacts),
    subjective: kit.textOrNull('subjective'),
    objective: kit.textOrNull('objective'),
    assessment: kit.textOrNull('assessment'),
    plan: kit.textOrNull('plan'),
    text: kit.textOrNull('text'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('visit_note_by_patient').on(t.patientId, t.day, t.recordedAt),
    kit.index('visit_note_of_episode').on(t.episodeId).where(sql`${t.episodeId} IS NOT NULL`),
    kit.check('visit_note_contact', sql`${t.contact} IN (${words(noteContacts)})`),
    kit.check('visit_note_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check(
      'visit_note_says_something',
      sql`coalesce(${t.subjective}, ${t.objective}, ${t.assessment}, ${t.plan}, ${t.text}) IS NOT NULL`,
    ),
  ],
);

/** What was found of a joint at a distance: what is entered anew for the same part stands in its place. */
export const distanceFinding = kit.appendOnly(
  'distance_finding',
  {
    ...owned(),
    visitId: kit.id('visit_id').references(() => visit.id),
    joint: kit.text('joint'),
    part: kit.word('part', partsOfGuide),
    by: kit.word('judged_by', judgedBy),
    found: kit.textOrNull('found'),
  },
  (t) => [
    kit.index('distance_finding_by_patient').on(t.patientId, t.recordedAt),
    kit.index('distance_finding_of').on(t.visitId),
    kit.check('distance_finding_part', sql`${t.part} IN (${words(partsOfGuide)})`),
    kit.check('distance_finding_by', sql`${t.by} IN (${words(judgedBy)})`),
    // Judged without a finding would read as nothing wrong.
    kit.check('distance_finding_says', sql`${t.by} = 'not-done' OR ${t.found} IS NOT NULL`),
  ],
);

/** What happened or nearly happened, about a patient or about nobody; each version a row. No rule reads it. */
export const incident = kit.appendOnly(
  'incident',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** null = no patient is named. */
    patientId: kit.idOrNull('patient_id').references(() => patient.id),
    /** The row of the first version; of that one its own. */
    incidentId: kit.id('incident_id').references((): AnySQLiteColumn => incident.id),
    version: kit.whole('version'),
    day: kit.day('day'),
    /** HH:MM; null = not known. */
    time: kit.textOrNull('time'),
    kind: kit.word('kind', incidentKinds),
    happened: kit.text('happened'),
    doneAtOnce: kit.textOrNull('done_at_once'),
    wouldPrevent: kit.textOrNull('would_prevent'),
    told: kit.textOrNull('told'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('incident_version').on(t.incidentId, t.version),
    kit.index('incident_by_clinic').on(t.clinicId, t.recordedAt),
    kit.index('incident_by_patient').on(t.patientId).where(sql`${t.patientId} IS NOT NULL`),
    kit.check('incident_kind', sql`${t.kind} IN (${words(incidentKinds)})`),
    kit.check('incident_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('incident_time', sql`${t.time} IS NULL OR ${t.time} GLOB '[0-2][0-9]:[0-5][0-9]'`),
    kit.check('incident_happened', sql`length(trim(${t.happened})) > 0`),
    kit.check('incident_first', sql`${t.version} > 0 AND (${t.version} = 1) = (${t.incidentId} = ${t.id})`),
  ],
);

/** Closed with a reason, or open again with one; the newest row counts. */
export const incidentChange = kit.appendOnly(
  'incident_change',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** As the incident named one when it was written. */
    patientId: kit.idOrNull('patient_id').references(() => patient.id),
    incidentId: kit.id('incident_id').references(() => incident.id),
    /** Counted within the incident, so that two people do not close it at once. */
    version: kit.whole('version'),
    state: kit.word('state', incidentStates),
    reason: kit.text('reason'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('incident_change_version').on(t.incidentId, t.version),
    kit.index('incident_change_by_clinic').on(t.clinicId, t.recordedAt),
    kit.index('incident_change_by_patient').on(t.patientId).where(sql`${t.patientId} IS NOT NULL`),
    kit.check('incident_change_state', sql`${t.state} IN (${words(incidentStates)})`),
    kit.check('incident_change_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

/** An hour with a group; each version a row. Who belongs to it stands in `group_member`. No rule reads it. */
export const groupHour = kit.appendOnly(
  'group_hour',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** The row of the first version; of that one its own. */
    hourId: kit.id('hour_id').references((): AnySQLiteColumn => groupHour.id),
    version: kit.whole('version'),
    name: kit.text('name'),
    place: kit.text('place'),
    day: kit.day('day'),
    /** HH:MM at the clinic. */
    time: kit.text('time'),
    minutes: kit.whole('minutes'),
    clinicianId: kit.id('clinician_id'),
    clinicianName: kit.text('clinician_name'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('group_hour_version').on(t.hourId, t.version),
    kit.index('group_hour_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('group_hour_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('group_hour_time', sql`${t.time} GLOB '[0-2][0-9]:[0-5][0-9]'`),
    kit.check('group_hour_minutes', sql`${t.minutes} BETWEEN 15 AND 180`),
    kit.check('group_hour_first', sql`${t.version} > 0 AND (${t.version} = 1) = (${t.hourId} = ${t.id})`),
  ],
);

/** Cancelled, entered in error, or planned again after either; the newest row counts. */
export const groupHourChange = kit.appendOnly(
  'group_hour_change',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    hourId: kit.id('hour_id').references(() => groupHour.id),
    /** Counted within the hour, so that two people do not change it at once. */
    version: kit.whole('version'),
    state: kit.word('state', groupStates),
    reason: kit.text('reason'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('group_hour_change_version').on(t.hourId, t.version),
    kit.index('group_hour_change_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('group_hour_change_state', sql`${t.state} IN (${words(groupStates)})`),
    kit.check('group_hour_change_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

/** Somebody joins a group hour, or leaves it; the newest row of each person counts. */
export const groupMember = kit.appendOnly(
  'group_member',
  {
    ...owned(),
    hourId: kit.id('hour_id').references(() => groupHour.id),
    belongs: kit.yes('belongs'),
  },
  (t) => [
    kit.index('group_member_of').on(t.hourId, t.recordedAt),
    kit.index('group_member_by_patient').on(t.patientId),
    kit.index('group_member_by_clinic').on(t.clinicId, t.recordedAt),
  ],
);
