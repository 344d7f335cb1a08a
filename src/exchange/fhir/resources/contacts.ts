/** What was said and written: messages, attempts to speak, notes of contacts, clearances, events. */
import type { ClinicalImpression, Communication, Observation } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { systems } from '../names.ts';
import { bodySite, clinicRef, idOf, instantOf, notes, own, struckOut, subjectOf, writerOf } from './parts.ts';

export const communications = (record: PersonRecord): readonly Communication[] => {
  const wrong = struckOut(record);
  return [
    ...record.rows.message.map(
      ({ id, text, sentAt, sentBy }): Communication => ({
        resourceType: 'Communication',
        id: idOf(id),
        status: 'completed',
        category: [own('message')],
        subject: subjectOf(record),
        sent: instantOf(sentAt),
        recipient: [subjectOf(record)],
        sender: writerOf(record, sentBy),
        payload: [{ contentString: text }],
      }),
    ),
    ...record.rows.patient_message.map(
      ({ id, text, recordedAt }): Communication => ({
        resourceType: 'Communication',
        id: idOf(id),
        status: 'completed',
        category: [own('message')],
        subject: subjectOf(record),
        sent: instantOf(recordedAt),
        recipient: [clinicRef(record)],
        sender: subjectOf(record),
        payload: [{ contentString: text }],
      }),
    ),
    ...record.rows.contact_attempt.map(
      (row): Communication => ({
        resourceType: 'Communication',
        id: idOf(row.id),
        status: wrong.has(row.id) ? 'entered-in-error' : row.reached === 'nobody' ? 'not-done' : 'completed',
        category: [own('contact-attempt', `Reached: ${row.reached}`)],
        subject: subjectOf(record),
        sent: instantOf(row.recordedAt),
        sender: writerOf(record, row.recordedBy),
        ...notes(
          row.found ? `Found: ${row.found}` : null,
          row.advised ? `Advised: ${row.advised}` : null,
          row.referredTo ? `Referred to: ${row.referredTo}` : null,
        ),
      }),
    ),
  ];
};

export const impressions = (record: PersonRecord): readonly ClinicalImpression[] => {
  const wrong = struckOut(record);
  const head = (id: string, day: string) =>
    ({
      resourceType: 'ClinicalImpression',
      id: idOf(id),
      status: wrong.has(id) ? 'entered-in-error' : 'completed',
      subject: subjectOf(record),
      effectiveDateTime: day,
    }) as const;
  const said = (name: string, words: string | null) => (words ? `${name}: ${words}` : null);
  return [
    ...record.rows.visit_note.map((row) => ({
      ...head(row.id, row.day),
      code: own('visit-note', row.contact),
      date: instantOf(row.recordedAt),
      ...notes(
        said('Subjective', row.subjective),
        said('Objective', row.objective),
        said('Assessment', row.assessment),
        said('Plan', row.plan),
        row.text,
      ),
    })),
    ...record.rows.clearance.map((row) => ({
      ...head(row.id, row.day),
      code: own('clearance', [row.method, row.side, row.limb].filter(Boolean).join(' ')),
      date: instantOf(row.recordedAt),
      description: `Cleared by ${row.byName}: ${row.findings.join(', ')}`,
      summary: row.reason,
    })),
  ];
};

/** What happened and may blunt a score: a change of medicine, a fall, an illness. */
export const eventObservations = (record: PersonRecord): readonly Observation[] => {
  const wrong = struckOut(record);
  const medicines = new Map(record.rows.medicine_change.map((row) => [row.eventId, row]));
  return record.rows.care_event.map((row) => {
    const medicine = medicines.get(row.id);
    return {
      resourceType: 'Observation',
      id: idOf(row.id),
      status: wrong.has(row.id) ? 'entered-in-error' : 'final',
      category: [{ coding: [{ system: systems.observationCategory, code: 'survey' }] }],
      code: own(`event.${row.kind}`),
      subject: subjectOf(record),
      ...(row.lastDay && row.lastDay >= row.day
        ? { effectivePeriod: { start: row.day, end: row.lastDay } }
        : { effectiveDateTime: row.day }),
      issued: instantOf(row.recordedAt),
      performer: [writerOf(record, row.recordedBy)],
      ...(medicine ? { valueString: [medicine.medicineClass, medicine.act].filter(Boolean).join(', ') } : {}),
      ...bodySite(row.joint),
      ...notes(row.remark),
    };
  });
};
