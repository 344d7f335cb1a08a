/**
 * Which columns hold words or a name about a patient, chosen one by one: these go when the person is erased. A house
 * test says of every other text column beside a patient what it holds, and fails on a new one until it is decided on.
 */

/** Of JSON either every text in it, or the texts under these names. */
type TextsIn = 'every' | readonly string[];

export interface WordsOfTable {
  readonly words?: readonly string[];
  readonly json?: Readonly<Record<string, TextsIn>>;
}

const reason: WordsOfTable = { words: ['reason'] };

export const wordsAboutPeople: Readonly<Record<string, WordsOfTable>> = {
  baseline: reason,
  care_event: { words: ['remark'] },
  care_limit: { words: ['author', 'remark'] },
  care_limit_lift: reason,
  care_profile: { words: ['diagnosis'] },
  clearance: reason,
  consent: reason,
  contact_attempt: { words: ['found', 'advised', 'referred_to'] },
  correction: reason,
  decision_response: reason,
  distance_finding: { words: ['found'] },
  emergency_access: reason,
  entry_conflict: { json: { payload: 'every' } },
  episode: { words: ['referrer'], json: { diagnoses: 'every', goals: 'every', contacts: 'every' } },
  episode_change: reason,
  goal_step: { words: ['goal', 'note'] },
  home_answers: { json: { answers: ['answer'] } },
  home_check: reason,
  import_batch: { words: ['source', 'file_digest'] },
  import_undo: reason,
  imported_row: { json: { value: ['exercise', 'text', 'place'] } },
  incident: { words: ['happened', 'done_at_once', 'would_prevent', 'told'] },
  incident_change: reason,
  letter_draft: {
    words: ['name', 'role', 'organisation', 'address', 'copies'],
    json: { own: 'every' },
  },
  letter_signature: { json: { words: 'every' } },
  letter_void: reason,
  measurement: { json: { value: ['activity', 'site', 'method'] } },
  message: { words: ['text'] },
  nutrition_advice: { words: ['words'] },
  patient_merge: reason,
  patient_message: { words: ['text'] },
  pause: reason,
  pause_owner: { words: ['remark'] },
  pause_resumption: reason,
  pre_visit: { json: { answers: ['note'] } },
  prescription_end: reason,
  protocol: { words: ['procedure', 'author', 'letter'] },
  protocol_phase: { words: ['name'] },
  protocol_step: { words: ['seen'] },
  record_file: { words: ['handed_to'] },
  retest_plan: reason,
  review_booking: { words: ['place'] },
  screening: { json: { answers: ['note'] } },
  supervised_session: { words: ['remote_reason', 'remark'] },
  visit: { words: ['whereabouts', 'call_back_phone'], json: { present: 'every' } },
  visit_note: { words: ['subjective', 'objective', 'assessment', 'plan', 'text'] },
  warning_sign: { words: ['remark'] },
  worklist_item_action: reason,
};

/** Rows of these are deleted: who the person is, what is signed in with, what is only worked out or half typed. */
export const goesWithPerson: readonly string[] = [
  'patient_identity',
  'patient_detail',
  'auth_user',
  'device',
  'invitation',
  'calendar_feed',
  'draft',
  'worklist_item',
  'worklist_standing',
  'worklist_strip',
];

/** Name of who did something, by the column with the account: it goes where the patient did it, and else stays. */
export const actorNames: Readonly<Record<string, string>> = {
  by_name: 'recorded_by',
  held_name: 'held_by',
  answered_name: 'answered_by',
  assignee_name: 'assignee',
  corrected_name: 'corrected_by',
  done_name: 'done_by',
  owner_name: 'owner_id',
  seen_name: 'seen_by',
  sent_name: 'sent_by',
  signed_name: 'signed_by',
  user_name: 'user_id',
  withdrawn_name: 'withdrawn_by',
};
