/** How entries came about (Provenance) and who opened or wrote the record (AuditEvent). */
import type { AuditEvent, Provenance, Reference } from 'fhir/r4';
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import type { PersonRecord } from '../../person-record.ts';
import { systems } from '../names.ts';
import { clinicRef, idOf, instantOf, own, ownCoding, refTo, subjectOf, text, writerOf } from './parts.ts';

const agent = (code: 'author' | 'enterer' | 'verifier', who: Reference) => ({
  type: { coding: [{ system: systems.provenanceAgent, code }] },
  who,
});

const signatures = (record: PersonRecord): Provenance[] => {
  const versions = new Map(record.rows.prescription.map((row) => [row.id, row]));
  return record.rows.signature.map(({ prescriptionId, signedAt, signedBy }) => ({
    resourceType: 'Provenance',
    id: idOf('signed', prescriptionId),
    target: [refTo('ServiceRequest', prescriptionId)],
    recorded: instantOf(signedAt),
    activity: own('trail.signed'),
    agent: [
      agent('author', writerOf(record, versions.get(prescriptionId)?.recordedBy ?? signedBy)),
      agent('verifier', writerOf(record, signedBy)),
    ],
  }));
};

/** The resource an entry of each kind stands as; null = appointments are in no resource of this file. */
const resourceOf: Readonly<Record<CorrectionSubject, string | null>> = {
  measurement: 'Observation',
  screening: 'QuestionnaireResponse',
  event: 'Observation',
  limit: 'Flag',
  goal: 'Goal',
  baseline: 'Observation',
  'effusion-test': 'Observation',
  clearance: 'ClinicalImpression',
  'supervised-session': 'Procedure',
  'home-answers': 'QuestionnaireResponse',
  contact: 'Communication',
  note: 'ClinicalImpression',
  visit: null,
};

type Correction = PersonRecord['rows']['correction'][number];

const correctionOf = (record: PersonRecord, row: Correction, resource: string): Provenance => ({
  resourceType: 'Provenance',
  id: idOf(row.id),
  target: [refTo(resource, row.subjectId)],
  recorded: instantOf(row.correctedAt),
  reason: [text(row.reason)],
  activity: own('trail.corrected'),
  agent: [agent('author', writerOf(record, row.correctedBy))],
  ...(row.replacedById
    ? { entity: [{ role: 'revision' as const, what: refTo(resource, row.replacedById) }] }
    : {}),
});

const corrections = (record: PersonRecord): Provenance[] =>
  record.rows.correction.flatMap((row): Provenance[] => {
    const resource = resourceOf[row.subject];
    return resource === null ? [] : [correctionOf(record, row, resource)];
  });

type Session = PersonRecord['rows']['training_session'][number];

/** The row that all others in its place go back to. */
const firstOf = (record: PersonRecord, row: Session): Session => {
  const { training_session: sessions } = record.rows;
  const before = row.amends === null ? undefined : sessions.find(({ entryId }) => entryId === row.amends);
  return before ? firstOf(record, before) : row;
};

/** The patient said it, whoever typed it; of a supervised session the author is who stood beside it and entered it. */
const authorOf = (record: PersonRecord, row: Session): Reference =>
  row.enteredAs === 'clinic-supervised'
    ? writerOf(record, firstOf(record, row).enteredBy)
    : subjectOf(record);

/** Sessions typed by the clinic or by whoever helps the patient. */
const enteredFor = (record: PersonRecord): Provenance[] =>
  record.rows.training_session.flatMap((row) =>
    row.enteredAs === null
      ? []
      : [
          {
            resourceType: 'Provenance' as const,
            id: idOf('entered', row.id),
            target: [refTo('Procedure', row.id)],
            recorded: instantOf(row.arrivedAt),
            activity: own('trail.entered-for', row.enteredAs.replaceAll('-', ' ')),
            agent: [
              agent('author', authorOf(record, row)),
              agent('enterer', writerOf(record, row.enteredBy)),
            ],
          },
        ],
  );

export const provenances = (record: PersonRecord): readonly Provenance[] => [
  ...signatures(record),
  ...corrections(record),
  ...enteredFor(record),
];

const actionOf = (act: string): AuditEvent['action'] => (act === 'read' ? 'R' : act === 'write' ? 'C' : 'E');

/** Who, when and what kind of thing; never a value of the record, and nothing that is secret. */
export const auditEvents = (record: PersonRecord): readonly AuditEvent[] =>
  record.audited.map(({ sequence, at, actorId, act, subject }) => ({
    resourceType: 'AuditEvent',
    id: idOf('audit', `${sequence}`, record.patient.id),
    type: ownCoding(`audit.${act}`) ?? ownCoding('audit.other')!,
    action: actionOf(act),
    recorded: instantOf(at),
    outcome: act === 'refused' ? '4' : '0',
    agent: [{ who: writerOf(record, actorId), requestor: true }],
    source: { observer: clinicRef(record) },
    entity: [{ what: subjectOf(record), name: subject }],
  }));
