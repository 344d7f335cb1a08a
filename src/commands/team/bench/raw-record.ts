/**
 * The rows of one patient read with nothing but the driver: the columns the record uses, statements
 * prepared once, rows as arrays, JSON left as text. What the data functions are measured against.
 */
import { answerFields } from '#core/record/morning-questions.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { answerColumnName } from '#data/schema/answer-columns.ts';
import type { Client } from './group/raw-rows.ts';

const mine = 'clinic_id = ? AND patient_id = ?';
const window = 't.clinic_id = ? AND t.patient_id = ? AND t.day >= ?';

const logs = [
  `SELECT t.id, t.entry_id, t.amends, t.began_at, t.arrived_at, t.day, t.kind, t.red_flags, t.extra_pain_relief,
   t.did_extra, t.did_extra_unanswered, t.reported_new, t.clock_doubtful FROM training_session t WHERE ${window} ORDER BY t.began_at`,
  `SELECT s.session_id, s.item_id, s.prescription_id, s.set_number, s.repetitions, s.load_kg, s.reserve, s.stop_reason, s.easier
   FROM training_session t JOIN set_log s ON s.patient_id = t.patient_id AND s.session_id = t.id WHERE ${window}`,
  `SELECT j.session_id, j.joint, j.pain_before_0_10, j.pain_during_0_10, j.pain_after_0_10, j.pain_two_hours_state,
   j.gave_way, j.gave_way_unanswered FROM training_session t JOIN session_joint j ON j.patient_id = t.patient_id AND j.session_id = t.id WHERE ${window}`,
  `SELECT j.session_id, j.joint, j.pain_0_10, j.arrived_at
   FROM training_session t JOIN two_hours j ON j.patient_id = t.patient_id AND j.session_id = t.id WHERE ${window}`,
  `SELECT t.id, t.entry_id, t.amends, t.day, t.zone, t.answered_at, t.arrived_at, t.red_flags, t.extra_pain_relief,
   t.fatigue_0_10, t.fatigue_state, t.clock_doubtful FROM morning t WHERE ${window} ORDER BY t.day, t.arrived_at`,
  `SELECT j.morning_id, j.joint, ${answerFields.map((field) => `j.${answerColumnName(field)}`).join(', ')} FROM morning t JOIN morning_joint j ON j.patient_id = t.patient_id AND j.morning_id = t.id WHERE ${window}`,
];

const current = [
  `SELECT given_name, family_name, birth_day, phone FROM patient_identity WHERE ${mine}`,
  `SELECT version, diagnosis, inflammatory_arthritis, followed_joints, owned_loads_kg, owned_equipment, formula_sex, swelling_not_asked
   FROM care_profile WHERE ${mine} ORDER BY version DESC LIMIT 1`,
  `SELECT p.id, p.item_id, p.version, p.dose, p.bad_day, p.joints, p.cautions, p.working, p.origin, p.decision_id,
   p.recorded_at, s.signed_at, s.signed_name, e.ended_at, e.reason FROM prescription p
   LEFT JOIN signature s ON s.prescription_id = p.id LEFT JOIN prescription_end e ON e.prescription_id = p.id
   WHERE p.clinic_id = ? AND p.patient_id = ? ORDER BY p.recorded_at, p.version`,
  `SELECT joint, day, grade FROM effusion_test WHERE ${mine} ORDER BY day, recorded_at`,
  `SELECT joint, usual_pain, usual_pain_top, acceptable_pain_limit, usual_stiffness_minutes, usual_swelling, usual_effusion,
   usual_fatigue, set_on, by_name, due_for_review FROM baseline WHERE ${mine} ORDER BY recorded_at`,
  `SELECT version, from_day, items FROM programme WHERE ${mine} ORDER BY version`,
  `SELECT day, kind, joint FROM care_event WHERE ${mine} ORDER BY day`,
  `SELECT l.id, l.joint, l.kind, l.limit_kg, l.movement, l.from_degrees, l.to_degrees, l.from_day, l.to_day,
   l.author, l.remark, f.lifted_on
   FROM care_limit l LEFT JOIN care_limit_lift f ON f.limit_id = l.id
   WHERE l.clinic_id = ? AND l.patient_id = ? ORDER BY l.from_day`,
];

const review = [
  `SELECT id, joint, session_id, morning_id, cause, evaluated_at, day, engine_version, decision,
   largest_step, today, contact, reasons FROM decision WHERE ${mine} AND day >= ? ORDER BY evaluated_at`,
];

const reviewCurrent = [
  `SELECT id, decision_id, kind, decision, reason, until, answered_at, answered_name
   FROM decision_response WHERE ${mine} ORDER BY answered_at DESC`,
  `SELECT id, item_id, prescription_id, decision_id, made_at, session_id, decision, kind, effect, contact, worklist,
   pre_approval_id, became_id, dose, bad_day, cautions, changes, change_for_patient
   FROM proposal WHERE ${mine} ORDER BY made_at DESC LIMIT 400`,
  `SELECT id, text, sent_at, sent_name FROM message WHERE ${mine} ORDER BY sent_at DESC`,
];

export interface RawReader {
  /** Reads everything and returns the number of rows. */
  readonly read: (access: Access, patientId: string, days: number) => number;
}

const reader = (client: Client, dated: readonly string[], undated: readonly string[]): RawReader => {
  const prepare = (sql: string) => client.prepare(sql).raw();
  const [withDay, without] = [dated.map(prepare), undated.map(prepare)];
  return {
    read: (access, patientId, days) => {
      const since: Day = addDays(access.day, -days);
      let rows = 0;
      for (const statement of withDay) rows += statement.all(access.clinicId, patientId, since).length;
      for (const statement of without) rows += statement.all(access.clinicId, patientId).length;
      return rows;
    },
  };
};

export const rawRecord = (client: Client): RawReader => reader(client, logs, current);

export const rawReview = (client: Client): RawReader =>
  reader(client, [...logs, ...review], [...current, ...reviewCurrent]);
