/** Sessions as Procedures, with each set and each answer about a joint as an Observation that is part of one. */
import type { Observation, Procedure } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { amended, category, painOf, type Said, score } from './answers.ts';
import {
  amount,
  bodySite,
  idOf,
  instantOf,
  notes,
  own,
  refTo,
  struckOut,
  subjectOf,
  writerOf,
} from './parts.ts';

type Rows = PersonRecord['rows'];
type Session = Rows['training_session'][number];

const doubtful = 'The clock of the phone was doubtful; nobody has confirmed the time.';

/** A session that a warning sign ended before its first set was not done. */
const statusOf = (row: Session, sets: readonly unknown[]): Procedure['status'] => {
  if (!row.stoppedByFlag) return 'completed';
  return sets.length === 0 ? 'not-done' : 'stopped';
};

const procedureOf = (record: PersonRecord, row: Session, isWrong: boolean): Procedure => {
  const sets = record.rows.set_log.filter(({ sessionId }) => sessionId === row.id);
  const doses = [...new Set(sets.map(({ prescriptionId }) => prescriptionId))];
  return {
    resourceType: 'Procedure',
    id: idOf(row.id),
    ...(doses.length > 0 ? { basedOn: doses.map((id) => refTo('ServiceRequest', id)) } : {}),
    status: isWrong ? 'entered-in-error' : statusOf(row, sets),
    code: own(`session.${row.kind}`),
    subject: subjectOf(record),
    performedPeriod: { start: instantOf(row.beganAt), end: instantOf(row.endedAt) },
    recorder: writerOf(record, row.enteredBy),
    ...notes(row.clockDoubtful ? doubtful : null),
  };
};

const othersOf = (record: PersonRecord, row: Rows['session_joint'][number], said: Said): Observation[] => {
  const component = [
    ...(row.gaveWayUnanswered === true ? [] : [{ code: own('session.gave-way'), valueBoolean: row.gaveWay }]),
    ...score('session.muscle-burn', row.muscleBurn),
    ...score('session.cuff-discomfort', row.cuffDiscomfort),
  ];
  if (component.length === 0) return [];
  return [
    {
      resourceType: 'Observation',
      id: idOf(said.id, said.joint, 'joint'),
      partOf: [refTo('Procedure', row.sessionId)],
      status: said.isWrong ? 'entered-in-error' : 'final',
      ...category('survey'),
      code: own('session.gave-way'),
      subject: subjectOf(record),
      effectiveDateTime: said.at,
      performer: [writerOf(record, said.by)],
      component,
      ...bodySite(row.joint),
    },
  ];
};

const setOf = (
  record: PersonRecord,
  row: Rows['set_log'][number],
  session: Session,
  isWrong: boolean,
): Observation => ({
  resourceType: 'Observation',
  id: idOf(row.id),
  basedOn: [refTo('ServiceRequest', row.prescriptionId)],
  partOf: [refTo('Procedure', row.sessionId)],
  status: isWrong ? 'entered-in-error' : 'final',
  ...category('activity'),
  code: own('set'),
  subject: subjectOf(record),
  effectivePeriod: { start: instantOf(session.beganAt), end: instantOf(session.endedAt) },
  performer: [writerOf(record, session.enteredBy)],
  component: [
    { code: own('set.number'), valueInteger: row.setNumber },
    ...(row.repetitions === null
      ? []
      : [{ code: own('set.repetitions'), valueQuantity: amount(row.repetitions, '{rep}') }]),
    ...(row.loadKg === null ? [] : [{ code: own('set.load'), valueQuantity: amount(row.loadKg, 'kg') }]),
    ...(row.reserve === null
      ? []
      : [{ code: own('set.reserve'), valueQuantity: amount(row.reserve, '{rep}') }]),
    { code: own('set.stop-reason'), valueString: row.stopReason },
  ],
});

const ofSession = (record: PersonRecord, row: Session, isWrong: boolean): (Procedure | Observation)[] => {
  const { rows } = record;
  const said = (joint: string, at: number): Said => ({
    ...{ id: row.id, session: row.id, joint, at: instantOf(at), by: row.enteredBy, isWrong },
  });
  return [
    procedureOf(record, row, isWrong),
    ...rows.set_log
      .filter(({ sessionId }) => sessionId === row.id)
      .map((set) => setOf(record, set, row, isWrong)),
    ...rows.session_joint
      .filter(({ sessionId }) => sessionId === row.id)
      .flatMap((joint) => [
        ...painOf(record, said(joint.joint, row.beganAt), 'before', joint.painBefore),
        ...painOf(record, said(joint.joint, row.endedAt), 'during', joint.painDuring),
        ...painOf(record, said(joint.joint, row.endedAt), 'after', joint.painAfter),
        ...othersOf(record, joint, said(joint.joint, row.endedAt)),
      ]),
  ];
};

const twoHoursOf = (record: PersonRecord): Observation[] => {
  const old = amended(record.rows.two_hours);
  return record.rows.two_hours.flatMap((row) =>
    painOf(
      record,
      {
        id: row.id,
        session: row.sessionId,
        joint: row.joint,
        at: instantOf(row.sentAt),
        by: row.enteredBy,
        isWrong: old.has(row.entryId),
      },
      'two-hours',
      row.pain,
    ),
  );
};

/** Sessions with a cuff that a clinician supervised and wrote down. */
const supervised = (record: PersonRecord): Procedure[] => {
  const wrong = struckOut(record);
  return record.rows.supervised_session.map((row) => ({
    resourceType: 'Procedure',
    id: idOf(row.id),
    status: wrong.has(row.id) ? 'entered-in-error' : 'completed',
    code: own('supervised-session'),
    subject: subjectOf(record),
    performedDateTime: row.day,
    recorder: writerOf(record, row.recordedBy),
    bodySite: [{ text: `${row.side} ${row.limb}` }],
    ...notes(
      row.supervisedThroughout ? 'Supervised throughout.' : 'Not supervised throughout.',
      row.remoteReason,
      row.remark,
    ),
  }));
};

export const sessionResources = (record: PersonRecord): readonly (Procedure | Observation)[] => {
  const old = amended(record.rows.training_session);
  return [
    ...record.rows.training_session.flatMap((row) => ofSession(record, row, old.has(row.entryId))),
    ...twoHoursOf(record),
    ...supervised(record),
  ];
};
