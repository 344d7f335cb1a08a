/** Around a sign-in: second factors, enrolled phones, invitations, care teams, places and machines of the clinic. */
import { sql } from 'drizzle-orm';
import type { AnySQLiteColumn } from 'drizzle-orm/sqlite-core';
import { machineLoadings } from '#core/clinic/machine.ts';
import { machineKinds } from '#core/exercises/machine-kinds.ts';
import { kit, words } from './kit.ts';
import { authUser, clinic, patient } from './people.ts';

/** Shape fixed by the sign-in library; the secret and the recovery codes are encrypted by it. */
export const authTwoFactor = kit.table(
  'auth_two_factor',
  {
    id: kit.id('id').primaryKey(),
    userId: kit.id('user_id').references(() => authUser.id, { onDelete: 'cascade' }),
    secret: kit.text('secret'),
    backupCodes: kit.text('backup_codes'),
    verified: kit.yes('verified').default(true),
    failedVerificationCount: kit.whole('failed_verification_count').default(0),
    lockedUntil: kit.momentOrNull('locked_until'),
  },
  (t) => [kit.unique('auth_two_factor_user').on(t.userId)],
);

/** A key pair in somebody's own device; only its public half is here. The id is the device's own. */
export const passkey = kit.table(
  'passkey',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    userId: kit.id('user_id').references(() => authUser.id, { onDelete: 'cascade' }),
    name: kit.text('name'),
    /** COSE key, base64url. */
    publicKey: kit.text('public_key'),
    /** As devices count their uses; 0 = this one does not. */
    counter: kit.whole('counter'),
    madeAt: kit.instant('made_at'),
    lastUsedAt: kit.instantOrNull('last_used_at'),
  },
  (t) => [kit.index('passkey_by_user').on(t.userId)],
);

/** What the clinic hands to a patient: used once, or withdrawn, or run out. The code itself is not kept. */
export const invitation = kit.table(
  'invitation',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    codeDigest: kit.text('code_digest'),
    madeAt: kit.instant('made_at'),
    madeBy: kit.id('made_by'),
    expiresAt: kit.instant('expires_at'),
    usedAt: kit.instantOrNull('used_at'),
    withdrawnAt: kit.instantOrNull('withdrawn_at'),
  },
  (t) => [
    kit.unique('invitation_code').on(t.codeDigest),
    kit.index('invitation_by_patient').on(t.patientId, t.madeAt),
  ],
);

/** A patient's enrolled phone. Only digests of its secret and PIN are kept. */
export const device = kit.table(
  'device',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    userId: kit.id('user_id').references(() => authUser.id, { onDelete: 'cascade' }),
    secretDigest: kit.text('secret_digest'),
    /** null = enrolled, PIN not chosen yet. */
    pinHash: kit.textOrNull('pin_hash'),
    wrongAttempts: kit.whole('wrong_attempts').default(0),
    enrolledAt: kit.instant('enrolled_at'),
    lastUsedAt: kit.instantOrNull('last_used_at'),
    endedAt: kit.instantOrNull('ended_at'),
    endedBy: kit.wordOrNull('ended_by', ['patient', 'clinic']),
  },
  (t) => [
    kit.index('device_by_patient').on(t.patientId, t.enrolledAt),
    kit.check('device_attempts', sql`${t.wrongAttempts} BETWEEN 0 AND 5`),
    kit.check('device_ended', sql`(${t.endedAt} IS NULL) = (${t.endedBy} IS NULL)`),
  ],
);

/** Joining and leaving a patient's care team; the newest row of a person counts. */
export const careTeam = kit.appendOnly(
  'care_team',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    userId: kit.id('user_id'),
    belongs: kit.yes('belongs'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
  },
  (t) => [
    kit.index('care_team_by_patient').on(t.patientId, t.userId, t.recordedAt),
    kit.index('care_team_by_user').on(t.clinicId, t.userId, t.recordedAt),
  ],
);

/** A record opened from outside its care team: with a reason, for a few hours, shown to the team. */
export const emergencyAccess = kit.appendOnly(
  'emergency_access',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    userId: kit.id('user_id'),
    userName: kit.text('user_name'),
    reason: kit.text('reason'),
    beganAt: kit.instant('began_at'),
    until: kit.instant('until'),
  },
  (t) => [
    kit.index('emergency_access_by_patient').on(t.patientId, t.userId, t.until),
    kit.index('emergency_access_by_clinic').on(t.clinicId, t.beganAt),
    kit.check('emergency_access_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

export const site = kit.table(
  'site',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    name: kit.text('name'),
    address: kit.textOrNull('address'),
    openedAt: kit.instant('opened_at'),
    closedAt: kit.instantOrNull('closed_at'),
  },
  (t) => [kit.index('site_by_clinic').on(t.clinicId, t.name)],
);

/** Machines of the clinic; each version a row, a retired one too, since signed doses name them. */
export const clinicMachine = kit.appendOnly(
  'clinic_machine',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** The row of the first version; of that one its own. */
    machineId: kit.id('machine_id').references((): AnySQLiteColumn => clinicMachine.id),
    version: kit.whole('version'),
    name: kit.text('name'),
    kind: kit.word('kind', machineKinds),
    loading: kit.word('loading', machineLoadings),
    place: kit.text('place'),
    firstKg: kit.real('first_kg'),
    stepKg: kit.real('step_kg'),
    lastKg: kit.real('last_kg'),
    hasHalfStep: kit.yes('has_half_step'),
    isRetired: kit.yes('is_retired'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.unique('clinic_machine_version').on(t.machineId, t.version),
    kit.index('clinic_machine_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('clinic_machine_kind', sql`${t.kind} IN (${words(machineKinds)})`),
    kit.check('clinic_machine_loading', sql`${t.loading} IN (${words(machineLoadings)})`),
    kit.check(
      'clinic_machine_loads',
      sql`${t.stepKg} > 0 AND ${t.firstKg} > 0 AND ${t.firstKg} <= ${t.lastKg}`,
    ),
    kit.check(
      'clinic_machine_first',
      sql`${t.version} > 0 AND (${t.version} = 1) = (${t.machineId} = ${t.id})`,
    ),
  ],
);

/**
 * Wrong attempts at signing in, and codes used a moment ago, so that a restart forgives nobody. Whose
 * they are stands here only as a digest: an address tried may belong to nobody, so no clinic is known.
 */
export const signInAttempt = kit.table(
  'sign_in_attempt',
  {
    kind: kit.text('kind'),
    keyDigest: kit.text('key_digest'),
    wrong: kit.whole('wrong'),
    lastAt: kit.instant('last_at'),
  },
  (t) => [
    kit.key({ columns: [t.kind, t.keyDigest] }),
    kit.check('sign_in_attempt_wrong', sql`${t.wrong} > 0`),
  ],
);

/**
 * Which keys the rows were made with. The keys stand in files of their own; a file opened with another key,
 * or with none, would go on with rows that nobody can read or verify. A fingerprint gives nothing of its key away.
 */
export const keyFingerprint = kit.table('key_fingerprint', {
  name: kit.text('name').primaryKey(),
  fingerprint: kit.text('fingerprint'),
});
