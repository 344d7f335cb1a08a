/** Care around the dose: episodes, consents, answers before a visit, supervised sessions, visits. */
import { sql } from 'drizzle-orm';
import { consentActs, consentKinds, wordingSources } from '#core/episode/consent.ts';
import { breakKinds, type Contact, episodeStates } from '#core/episode/episode.ts';
import { medicineActs } from '#core/episode/event-effects.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import { mostFollowedJoints } from '#core/record/followed-joints.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { careEvent } from './clinical.ts';
import { decision } from './decisions.ts';
import { dayShape, kit, words } from './kit.ts';
import { owned } from './owned.ts';
import { clinic, patient } from './people.ts';

const most = sql.raw(String(mostFollowedJoints));
export const episode = kit.appendOnly(
  'episode',
  {
    ...owned(),
    diagnoses: kit.json<readonly string[]>('diagnoses'),
    joints: kit.json<readonly string[]>('joints'),
    followedJoints: kit.json<readonly string[]>('followed_joints'),
    goals: kit.json<readonly string[]>('goals'),
    referrer: kit.textOrNull('referrer'),
    contacts: kit.json<readonly Contact[]>('contacts'),
  },
  (t) => [
    kit.index('episode_by_patient').on(t.patientId, t.recordedAt),
    kit.check('episode_followed', sql`json_array_length(${t.followedJoints}) BETWEEN 1 AND ${most}`),
    kit.check('episode_diagnoses', sql`json_array_length(${t.diagnoses}) > 0`),
  ],
);

export interface ClosedItem {
  readonly key: string;
  readonly kind: string;
  readonly since: number;
}

/** What an episode became, and when; the newest row counts. */
export const episodeChange = kit.appendOnly(
  'episode_change',
  {
    ...owned(),
    episodeId: kit.id('episode_id').references(() => episode.id),
    state: kit.word('state', episodeStates),
    on: kit.day('on_day'),
    reason: kit.text('reason'),
    breakKind: kit.wordOrNull('break_kind', breakKinds),
    expectedBack: kit.dayOrNull('expected_back'),
    /** Worklist items that ended with it. */
    closedItems: kit.json<readonly ClosedItem[]>('closed_items'),
  },
  (t) => [
    kit.index('episode_change_by_patient').on(t.patientId, t.recordedAt),
    kit.index('episode_change_of_episode').on(t.episodeId),
    kit.check('episode_change_state', sql`${t.state} IN (${words(episodeStates)})`),
    kit.check('episode_change_reason', sql`length(trim(${t.reason})) > 0`),
    kit.check('episode_change_day', sql`${t.on} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('episode_change_break', sql`(${t.state} = 'on-break') = (${t.breakKind} IS NOT NULL)`),
  ],
);

/** The clinic's own wording of a consent, by version. */
export const consentWording = kit.appendOnly(
  'consent_wording',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    kind: kit.word('kind', consentKinds),
    version: kit.whole('version'),
    text: kit.text('text'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
  },
  (t) => [
    kit.unique('consent_wording_version').on(t.clinicId, t.kind, t.version),
    kit.check('consent_wording_kind', sql`${t.kind} IN (${words(consentKinds)})`),
    kit.check('consent_wording_text', sql`length(trim(${t.text})) BETWEEN 1 AND 4000`),
  ],
);

export const consent = kit.appendOnly(
  'consent',
  {
    ...owned(),
    kind: kit.word('kind', consentKinds),
    act: kit.word('act', consentActs),
    wordingSource: kit.word('wording_source', wordingSources),
    wordingVersion: kit.whole('wording_version'),
    /** Who said it: the patient on the own page, or a clinician who wrote it down. */
    recordedVia: kit.word('recorded_via', ['own-page', 'clinician']),
    reason: kit.textOrNull('reason'),
  },
  (t) => [
    kit.index('consent_by_patient').on(t.patientId, t.kind, t.recordedAt),
    kit.check('consent_kind', sql`${t.kind} IN (${words(consentKinds)})`),
    kit.check('consent_act', sql`${t.act} IN (${words(consentActs)})`),
    kit.check('consent_recorded_via', sql`${t.recordedVia} IN (${words(['own-page', 'clinician'])})`),
    kit.check('consent_wording_source', sql`${t.wordingSource} IN (${words(wordingSources)})`),
    kit.check('consent_wording_number', sql`${t.wordingVersion} >= 1`),
  ],
);

/** Questions the patient answered before a visit. It is no screening until a clinician confirms it. */
export const preVisit = kit.appendOnly(
  'pre_visit',
  {
    ...owned(),
    day: kit.day('day'),
    sheetVersion: kit.text('sheet_version'),
    answers: kit.json<readonly ScreeningItemAnswer[]>('answers'),
  },
  (t) => [
    kit.index('pre_visit_by_patient').on(t.patientId, t.recordedAt),
    kit.check('pre_visit_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** One supervised occlusion session, logged by the clinician who supervised it. */
export const supervisedSession = kit.appendOnly(
  'supervised_session',
  {
    ...owned(),
    limb: kit.word('limb', limbs),
    side: kit.word('side', sides),
    day: kit.day('day'),
    supervisedThroughout: kit.yes('supervised_throughout'),
    /** Why it was done at a distance, where it was. */
    remoteReason: kit.textOrNull('remote_reason'),
    remark: kit.textOrNull('remark'),
  },
  (t) => [
    kit.index('supervised_session_by_patient').on(t.patientId, t.limb, t.side, t.day),
    kit.check('supervised_session_limb', sql`${t.limb} IN (${words(limbs)})`),
    kit.check('supervised_session_side', sql`${t.side} IN (${words(sides)})`),
    kit.check('supervised_session_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** What a patient can do with a cuff alone, per limb; the newest row counts. */
export const homeCheck = kit.appendOnly(
  'home_check',
  {
    ...owned(),
    limb: kit.word('limb', limbs),
    side: kit.word('side', sides),
    day: kit.day('day'),
    releasesWithLeftHand: kit.yes('releases_with_left_hand'),
    releasesWithRightHand: kit.yes('releases_with_right_hand'),
    feelingIntact: kit.yes('feeling_intact'),
    knowsToRelease: kit.yes('knows_to_release'),
    wrapOpened: kit.yes('wrap_opened'),
    reason: kit.textOrNull('reason'),
  },
  (t) => [
    kit.index('home_check_by_patient').on(t.patientId, t.limb, t.side, t.recordedAt),
    kit.check('home_check_limb', sql`${t.limb} IN (${words(limbs)})`),
    kit.check('home_check_side', sql`${t.side} IN (${words(sides)})`),
    kit.check(
      'home_check_wrap',
      sql`${t.wrapOpened} = 0 OR (${t.reason} IS NOT NULL AND length(trim(${t.reason})) > 0)`,
    ),
  ],
);

/** Unfinished work of one person on one form of one patient. Overwritten as it grows and dropped when sent. */
export const draft = kit.table(
  'draft',
  {
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    userId: kit.id('user_id'),
    patientId: kit.id('patient_id').references(() => patient.id),
    form: kit.text('form'),
    typed: kit.json<Readonly<Record<string, string>>>('typed'),
    savedAt: kit.instant('saved_at'),
  },
  (t) => [
    kit.key({ columns: [t.clinicId, t.userId, t.patientId, t.form] }),
    kit.check('draft_size', sql`length(${t.typed}) <= 32768`),
  ],
);

/** Who takes over danger nobody has acknowledged; the newest row of a clinic counts. */
export const coveringClinician = kit.appendOnly(
  'covering_clinician',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    /** null = nobody. */
    userId: kit.idOrNull('user_id'),
    userName: kit.textOrNull('user_name'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
  },
  (t) => [
    kit.index('covering_clinician_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('covering_clinician_name', sql`(${t.userId} IS NULL) = (${t.userName} IS NULL)`),
  ],
);

/** A clinician's word on the short form of asking for warning signs; the newest row of a clinic counts. */
export const shortSignsApproval = kit.appendOnly(
  'short_signs_approval',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    act: kit.word('act', ['approved', 'withdrawn']),
    wording: kit.whole('wording'),
    recordedAt: kit.instant('recorded_at'),
    recordedBy: kit.id('recorded_by'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('short_signs_approval_by_clinic').on(t.clinicId, t.recordedAt),
    kit.check('short_signs_approval_act', sql`${t.act} IN ('approved', 'withdrawn')`),
    kit.check('short_signs_approval_wording', sql`${t.wording} >= 1`),
  ],
);

/** Who looks after a pause, and by when; the newest row of a decision counts. */
export const pauseOwner = kit.appendOnly(
  'pause_owner',
  {
    ...owned(),
    decisionId: kit.id('decision_id').references(() => decision.id),
    ownerId: kit.id('owner_id'),
    ownerName: kit.text('owner_name'),
    until: kit.day('until'),
    remark: kit.textOrNull('remark'),
  },
  (t) => [
    kit.index('pause_owner_by_patient').on(t.patientId, t.recordedAt),
    kit.index('pause_owner_of_decision').on(t.decisionId),
    kit.check('pause_owner_day', sql`${t.until} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** Which medicine an event speaks of, and whether it was started, stopped or changed; null = a dose was missed. */
export const medicineChange = kit.appendOnly(
  'medicine_change',
  {
    eventId: kit
      .id('event_id')
      .primaryKey()
      .references(() => careEvent.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    act: kit.wordOrNull('act', medicineActs),
    medicineClass: kit.text('medicine_class'),
  },
  (t) => [
    kit.index('medicine_change_by_patient').on(t.patientId),
    kit.check('medicine_change_act', sql`${t.act} IN (${words(medicineActs)})`),
  ],
);

/** A copy of the record given away as a file. The file itself is not kept; its digest tells it apart. */
export const recordFile = kit.appendOnly(
  'record_file',
  {
    ...owned(),
    handedTo: kit.text('handed_to'),
    rows: kit.whole('rows'),
    digest: kit.text('digest'),
  },
  (t) => [
    kit.index('record_file_by_patient').on(t.patientId, t.recordedAt),
    kit.check('record_file_handed_to', sql`length(trim(${t.handedTo})) > 0`),
  ],
);
