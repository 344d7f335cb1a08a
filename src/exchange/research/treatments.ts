/**
 * What becomes of every column of the record in an export for research. A column is told in some form only where a
 * file of it says so; a new one has no treatment until somebody has decided on it, and a test fails until then.
 */

import { recordColumns } from '#data/patients/record-tables.ts';
import { csvLines } from '../csv/cells.ts';

/** Told in some form. */
const told = ['kept', 'banded', 'shifted'] as const;

/** Left out, and why. */
export const droppedFor = {
  named: 'names, numbers and addresses of the person or of others',
  staff: 'who of the clinic did it',
  words: 'free text',
  link: 'ids that lead from row to row: rows of one person put together tell that person apart',
  upkeep: 'how the record is kept, nothing of the person',
  fingerprint: 'exact instants, figures and rare answers that tell somebody apart',
} as const;

export type Treatment = (typeof told)[number] | keyof typeof droppedFor;

type Columns = Partial<Readonly<Record<Treatment, string>>>;

/** Columns that mean the same in every table, by their names. */
const everywhere: Columns = {
  link: 'id entryId sessionId decisionId prescriptionId itemId episodeId protocolId letterId homeQuestionsId',
  staff: 'recordedBy byName signedBy signedName endedBy enteredBy answeredBy answeredName',
  words: 'reason remark',
  upkeep: 'version digest format zone clockDoubtful enteredAs signsAsked signSlips sheetVersion',
  fingerprint: 'recordedAt sentAt arrivedAt signedAt endedAt',
};

const ofTable: Readonly<Record<string, Columns>> = {
  baseline: {
    fingerprint:
      'joint usualPain usualPainTop acceptablePainLimit usualStiffnessMinutes usualSwelling usualEffusion usualFatigue morningSpread setOn dueForReview provisional tightenedFrom riseAcknowledged',
  },
  care_event: { fingerprint: 'day kind joint lastDay courseForm' },
  care_limit: {
    words: 'author',
    fingerprint: 'joint kind limitKg movement fromDegrees toDegrees fromDay toDay',
  },
  care_limit_lift: { staff: 'liftedBy', link: 'limitId', fingerprint: 'liftedOn liftedAt' },
  care_profile: {
    kept: 'inflammatoryArthritis errorGroup formulaSex',
    banded: 'followedJoints',
    words: 'diagnosis',
    fingerprint: 'swellingNotAsked asksFatigue ownedLoadsKg ownedEquipment',
  },
  care_team: { staff: 'userId', fingerprint: 'belongs' },
  clearance: { fingerprint: 'day method limb side findings' },
  consent: { upkeep: 'wordingSource wordingVersion recordedVia', fingerprint: 'kind act' },
  contact_attempt: {
    words: 'found advised referredTo',
    link: 'signIds decisionIds',
    fingerprint: 'reached nextAt',
  },
  correction: {
    staff: 'correctedBy correctedName',
    link: 'subjectId replacedById',
    upkeep: 'waits',
    fingerprint: 'subject joint enteredAt firstSaidAt correctedAt',
  },
  decision: {
    kept: 'cause decision',
    banded: 'day',
    link: 'morningId settingsId',
    upkeep: 'engineVersion',
    fingerprint: 'joint evaluatedAt facts largestStep today contact reasons',
  },
  decision_response: { fingerprint: 'kind decision until answeredAt' },
  distance_finding: { words: 'found', link: 'visitId', fingerprint: 'joint part by' },
  dose_handed_over: { fingerprint: 'handedAt' },
  effusion_test: { fingerprint: 'joint day grade' },
  emergency_access: { staff: 'userId userName', fingerprint: 'beganAt until' },
  entry_conflict: { words: 'payload' },
  episode: { named: 'referrer contacts', words: 'diagnoses goals', fingerprint: 'joints followedJoints' },
  episode_change: { fingerprint: 'state on breakKind expectedBack closedItems' },
  goal_step: { words: 'goal note', fingerprint: 'state byDay' },
  group_member: { link: 'hourId', fingerprint: 'belongs' },
  home_answers: { words: 'answers', fingerprint: 'day' },
  home_check: {
    fingerprint:
      'limb side day releasesWithLeftHand releasesWithRightHand feelingIntact knowsToRelease wrapOpened',
  },
  home_questions: { link: 'questionnaireId', fingerprint: 'fromDay everyDays' },
  home_questions_end: {},
  import_batch: { words: 'source', upkeep: 'fileDigest how rows leftOut' },
  import_undo: { link: 'batchId' },
  imported_row: { link: 'batchId', upkeep: 'place kind', fingerprint: 'day value' },
  letter_draft: {
    named: 'name role organisation address copies',
    words: 'own',
    link: 'noteIds',
    upkeep: 'language',
    fingerprint: 'toPatient',
  },
  letter_signature: { staff: 'role registration', words: 'words', fingerprint: 'day' },
  letter_void: { fingerprint: 'day' },
  measurement: {
    kept: 'kind',
    banded: 'day figure',
    link: 'homeAnswersId visitId',
    fingerprint: 'value confirmed',
  },
  medicine_change: { link: 'eventId', fingerprint: 'act medicineClass' },
  message: { staff: 'sentBy sentName', words: 'text' },
  morning: {
    banded: 'day',
    link: 'amends',
    upkeep: 'via',
    fingerprint: 'redFlags extraPainRelief answeredAt fatigue fatigueState otherJoint late',
  },
  morning_joint: {
    kept: 'flare',
    banded: 'pain stiffnessMinutes',
    link: 'morningId',
    fingerprint: 'joint stiffnessState swelling swellingState swellingQuestion',
  },
  nutrition_advice: { words: 'words', fingerprint: 'act proteinLowG proteinHighG meals surplusKcal' },
  patient_detail: { named: 'detail value', upkeep: 'because strikes' },
  patient_identity: { banded: 'birthDay', named: 'givenName familyName phone email patientNumber' },
  patient_merge: { link: 'intoId keptId', fingerprint: 'act' },
  patient_message: { words: 'text' },
  patient_site: { link: 'siteId' },
  pause: { link: 'signId', fingerprint: 'cause joint until' },
  pause_owner: { staff: 'ownerId ownerName', fingerprint: 'until' },
  pause_resumption: { link: 'pauseId' },
  plan_seen: { staff: 'seenBy seenName', link: 'correctionId', fingerprint: 'seenAt' },
  pre_approval: { fingerprint: 'steps days signedDay' },
  pre_approval_end: { link: 'preApprovalId' },
  pre_visit: { words: 'answers', fingerprint: 'day' },
  prescription: {
    kept: 'method',
    upkeep: 'cautionWording',
    fingerprint: 'exerciseId dose badDay joints cautions working origin',
  },
  prescription_end: {},
  programme: { fingerprint: 'fromDay items' },
  proposal: {
    link: 'preApprovalId becameId',
    fingerprint: 'madeAt decision kind effect contact worklist dose badDay cautions changes changeForPatient',
  },
  protocol: { words: 'procedure author letter', fingerprint: 'joint on' },
  protocol_phase: {
    words: 'name',
    fingerprint:
      'place from weightBearing bearKg movement fromDegrees toDegrees limitKg lowLoad variation occlusion recordedOn',
  },
  protocol_step: { words: 'seen', fingerprint: 'place on' },
  record_file: { named: 'handedTo', fingerprint: 'rows' },
  retest_plan: { fingerprint: 'measure setOn dueOn everyDays' },
  review_booking: { words: 'place', fingerprint: 'day time' },
  screening: { words: 'answers', fingerprint: 'day' },
  session_joint: {
    banded: 'painBefore painDuring painAfter',
    fingerprint: 'joint painTwoHoursState muscleBurn cuffDiscomfort gaveWay gaveWayUnanswered',
  },
  set_log: { banded: 'loadKg', fingerprint: 'setNumber repetitions reserve stopReason easier' },
  signature: {},
  signature_withdrawal: { staff: 'withdrawnBy withdrawnName', fingerprint: 'withdrawnAt' },
  supervised_session: { words: 'remoteReason', fingerprint: 'limb side day supervisedThroughout' },
  training_session: {
    kept: 'kind',
    shifted: 'day',
    link: 'amends',
    fingerprint:
      'redFlags extraPainRelief beganAt didExtra didExtraUnanswered news otherJointWorse reportedNew stoppedByFlag limbChecks',
  },
  two_hours: { link: 'amends', fingerprint: 'day redFlags extraPainRelief joint pain' },
  visit: {
    staff: 'heldBy heldName',
    named: 'whereabouts callBackPhone',
    words: 'present',
    fingerprint: 'day place',
  },
  visit_note: { words: 'subjective objective assessment plan text', fingerprint: 'day contact' },
  warning_sign: { fingerprint: 'source flags joint urgency' },
  worklist_item_action: {
    staff: 'assignee assigneeName doneBy doneName',
    fingerprint: 'itemKey itemSince act until doneAt',
  },
  decision_settings: { fingerprint: 'settings' },
};

const named = (columns: Columns): readonly (readonly [string, Treatment])[] =>
  (Object.entries(columns) as [Treatment, string][]).flatMap(([treatment, names]) =>
    names.split(' ').map((column) => [column, treatment] as const),
  );

/** What is declared of a table’s columns. One that is missing nobody has decided on; one too many the record lost. */
export const treatmentsOf = (table: string): ReadonlyMap<string, Treatment> => {
  const own = ofTable[table];
  const has = new Set((recordColumns[table] ?? []).map(({ name }) => name));
  return new Map(own ? [...named(everywhere).filter(([column]) => has.has(column)), ...named(own)] : []);
};

const why = (treatment: Treatment): string =>
  treatment in droppedFor ? `left out: ${droppedFor[treatment as keyof typeof droppedFor]}` : treatment;

/** Of every column of the record what became of it, for whoever reads the files. */
export const treatmentTable = (): string =>
  csvLines([
    ['table of the record', 'column', 'in these files'],
    ...Object.keys(ofTable).flatMap((table) =>
      [...treatmentsOf(table)].map(([column, treatment]) => [table, column, why(treatment)]),
    ),
  ]);
