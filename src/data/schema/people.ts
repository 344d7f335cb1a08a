/** Clinics, the people who sign in, and patients. Every row knows its clinic. */

import { sql } from 'drizzle-orm';
import { errorGroups } from '#core/assessment/change/error-group.ts';
import { clinicDetails } from '#core/clinic/clinic-details.ts';
import type { MonitoringHours } from '#core/episode/monitoring-hours.ts';
import { patientDetails, reasonsForVersion } from '#core/record/patient-details.ts';
import { dayShape, kit, words } from './kit.ts';

const mergeActs = ['merged', 'undone', 'plan-chosen'] as const;

export const roles = ['clinician', 'administrator', 'reception', 'patient'] as const;

export const clinic = kit.table('clinic', {
  id: kit.id('id').primaryKey(),
  name: kit.text('name'),
  /** IANA zone; rules worklist and adherence. */
  zone: kit.text('zone'),
  phone: kit.text('phone'),
  emergencyNumber: kit.text('emergency_number'),
  /** What patients ring when nobody answers at the clinic; null until the clinic has entered it. */
  urgentNumber: kit.textOrNull('urgent_number'),
  /** When somebody looks at what patients send. */
  monitoringHours: kit.json<MonitoringHours>('monitoring_hours'),
  createdAt: kit.instant('created_at'),
});

/** Each change of what the clinic says of itself, with what stood before; the row above holds what stands now. */
export const clinicDetailChange = kit.appendOnly(
  'clinic_detail_change',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    detail: kit.word('detail', clinicDetails),
    /** Hours are kept as JSON. */
    before: kit.textOrNull('before'),
    after: kit.text('after'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('clinic_detail_change_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('clinic_detail_change_detail', sql`${t.detail} IN (${words(clinicDetails)})`),
  ],
);

export const patient = kit.table(
  'patient',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    createdAt: kit.instant('created_at'),
  },
  (t) => [kit.index('patient_by_clinic').on(t.clinicId, t.id)],
);

/** What lists and searches read of the person: the details in force, written with their versions below. */
export const patientIdentity = kit.table(
  'patient_identity',
  {
    patientId: kit
      .id('patient_id')
      .primaryKey()
      .references(() => patient.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    givenName: kit.text('given_name'),
    familyName: kit.text('family_name'),
    birthDay: kit.day('birth_day'),
    phone: kit.textOrNull('phone'),
    email: kit.textOrNull('email'),
    patientNumber: kit.textOrNull('patient_number'),
  },
  (t) => [
    kit.index('identity_by_clinic_name').on(t.clinicId, t.familyName, t.givenName),
    kit.check('identity_birth_day', sql`${t.birthDay} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** Versions of each detail of the person; `strikes` names the version that was entered in error. */
export const patientDetail = kit.appendOnly(
  'patient_detail',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    detail: kit.word('detail', patientDetails),
    version: kit.whole('version'),
    value: kit.textOrNull('value'),
    because: kit.word('because', reasonsForVersion),
    reason: kit.textOrNull('reason'),
    strikes: kit.wholeOrNull('strikes'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('patient_detail_version').on(t.patientId, t.detail, t.version),
    kit.check('patient_detail_detail', sql`${t.detail} IN (${words(patientDetails)})`),
    kit.check('patient_detail_because', sql`${t.because} IN (${words(reasonsForVersion)})`),
    kit.check(
      'patient_detail_error',
      sql`(${t.because} = 'entered-in-error') = (${t.strikes} IS NOT NULL) AND (${t.strikes} IS NULL OR (${t.strikes} < ${t.version} AND ${t.reason} IS NOT NULL))`,
    ),
  ],
);

// Erasing a person deletes the identity first; then the versions may go as well.
kit.keptWhile(
  patientDetail,
  'EXISTS (SELECT 1 FROM patient_identity WHERE patient_identity.patient_id = OLD.patient_id)',
);

/**
 * Two records of one person: `patientId` is marked merged into `intoId`, which is the one shown. Nothing is
 * copied; undoing it is a row, and so is the choice of the record whose prescriptions stay in force.
 */
export const patientMerge = kit.appendOnly(
  'patient_merge',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    intoId: kit.id('into_id').references(() => patient.id),
    version: kit.whole('version'),
    act: kit.word('act', mergeActs),
    /** Record whose prescriptions stay in force. */
    keptId: kit.idOrNull('kept_id').references(() => patient.id),
    reason: kit.text('reason'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('patient_merge_version').on(t.patientId, t.version),
    kit.index('patient_merge_by_clinic').on(t.clinicId, t.patientId),
    // In the order in which they are read, so that the index by clinic alone is never the better one.
    kit.index('patient_merge_by_shown').on(t.clinicId, t.intoId, t.patientId, t.version),
    kit.check('patient_merge_act', sql`${t.act} IN (${words(mergeActs)})`),
    kit.check('patient_merge_two', sql`${t.patientId} <> ${t.intoId}`),
    kit.check('patient_merge_kept', sql`(${t.act} = 'plan-chosen') = (${t.keptId} IS NOT NULL)`),
    kit.check('patient_merge_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

/** What is known of the person for dosing. Append-only: the newest version counts. */
export const careProfile = kit.appendOnly(
  'care_profile',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    version: kit.whole('version'),
    /** In the clinician's words. */
    diagnosis: kit.text('diagnosis'),
    inflammatoryArthritis: kit.yes('inflammatory_arthritis'),
    /** Joints asked about every morning. */
    followedJoints: kit.json<readonly string[]>('followed_joints'),
    /** Followed joints on which swelling cannot be seen or felt, such as a hip. */
    swellingNotAsked: kit.json<readonly string[]>('swelling_not_asked'),
    /** Each morning asks how tired the patient is. */
    asksFatigue: kit.yes('asks_fatigue').default(false),
    /** Whose error of measuring holds; null = nobody has said. */
    errorGroup: kit.wordOrNull('error_group', errorGroups),
    ownedLoadsKg: kit.json<readonly number[]>('owned_loads_kg'),
    /** Things at home, in the catalogue's words. */
    ownedEquipment: kit.json<readonly string[]>('owned_equipment'),
    /** Coefficient set of the formulas that ask for a sex; null = not recorded. */
    formulaSex: kit.wordOrNull('formula_sex', ['female', 'male']),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
  },
  (t) => [
    kit.unique('care_profile_version').on(t.patientId, t.version),
    kit.check(
      'care_profile_error_group',
      sql`${t.errorGroup} IS NULL OR ${t.errorGroup} IN (${words(errorGroups)})`,
    ),
    kit.check(
      'care_profile_sex',
      sql`${t.formulaSex} IS NULL OR ${t.formulaSex} IN (${words(['female', 'male'])})`,
    ),
  ],
);

export const authUser = kit.table(
  'auth_user',
  {
    id: kit.id('id').primaryKey(),
    name: kit.text('name'),
    email: kit.text('email'),
    emailVerified: kit.yes('email_verified').default(false),
    image: kit.textOrNull('image'),
    createdAt: kit.moment('created_at'),
    updatedAt: kit.moment('updated_at'),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    role: kit.word('role', roles),
    /** The record a patient sign-in belongs to; null for staff. */
    patientId: kit.idOrNull('patient_id').references(() => patient.id),
    /** May do what an administrator does beside the own role; for a clinician who also runs the clinic. */
    administers: kit.yes('administers').default(false),
    twoFactorEnabled: kit.yes('two_factor_enabled').default(false),
    /** Signs in no more; everything recorded stays. */
    deactivatedAt: kit.momentOrNull('deactivated_at'),
    /** Until when a handed-over passphrase may be used; null = the person has chosen an own one. */
    startingUntil: kit.momentOrNull('starting_until'),
  },
  (t) => [
    kit.unique('auth_user_email').on(t.email),
    kit.check('auth_user_role', sql`${t.role} IN (${words(roles)})`),
    kit.check('auth_user_patient', sql`(${t.role} = 'patient') = (${t.patientId} IS NOT NULL)`),
  ],
);

export const authSession = kit.table(
  'auth_session',
  {
    id: kit.id('id').primaryKey(),
    token: kit.text('token'),
    userId: kit.id('user_id').references(() => authUser.id, { onDelete: 'cascade' }),
    expiresAt: kit.moment('expires_at'),
    createdAt: kit.moment('created_at'),
    updatedAt: kit.moment('updated_at'),
    ipAddress: kit.textOrNull('ip_address'),
    userAgent: kit.textOrNull('user_agent'),
    /** When the person last gave passphrase or PIN again within this session. */
    provedAt: kit.momentOrNull('proved_at'),
    /** The enrolled phone it was opened on; null for a passphrase. */
    deviceId: kit.idOrNull('device_id'),
    /** The passkey it was opened with. */
    passkeyId: kit.idOrNull('passkey_id'),
  },
  (t) => [kit.unique('auth_session_token').on(t.token), kit.index('auth_session_user').on(t.userId)],
);

export const authAccount = kit.table(
  'auth_account',
  {
    id: kit.id('id').primaryKey(),
    accountId: kit.text('account_id'),
    providerId: kit.text('provider_id'),
    userId: kit.id('user_id').references(() => authUser.id, { onDelete: 'cascade' }),
    accessToken: kit.textOrNull('access_token'),
    refreshToken: kit.textOrNull('refresh_token'),
    idToken: kit.textOrNull('id_token'),
    accessTokenExpiresAt: kit.momentOrNull('access_token_expires_at'),
    refreshTokenExpiresAt: kit.momentOrNull('refresh_token_expires_at'),
    scope: kit.textOrNull('scope'),
    /** Salted hash made by the sign-in library; never a password. */
    password: kit.textOrNull('password'),
    createdAt: kit.moment('created_at'),
    updatedAt: kit.moment('updated_at'),
  },
  (t) => [kit.index('auth_account_user').on(t.userId)],
);

export const authVerification = kit.table('auth_verification', {
  id: kit.id('id').primaryKey(),
  identifier: kit.text('identifier'),
  value: kit.text('value'),
  expiresAt: kit.moment('expires_at'),
  createdAt: kit.moment('created_at'),
  updatedAt: kit.moment('updated_at'),
});
