/** The answers of a morning, joint by joint. */
import type { Observation, ObservationComponent } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { loinc } from '../codes/loinc.ts';
import { amended, category, type Said } from './answers.ts';
import { amount, bodySite, idOf, own, subjectOf, withLoinc, writerOf } from './parts.ts';

type Rows = PersonRecord['rows'];

const morningOf = (record: PersonRecord, row: Rows['morning_joint'][number], said: Said): Observation[] => {
  const component: ObservationComponent[] = [
    ...(row.stiffnessMinutes === null
      ? []
      : [{ code: own('morning.stiffness'), valueQuantity: amount(row.stiffnessMinutes, 'min') }]),
    ...(row.swelling === null
      ? []
      : [
          {
            code: own(
              'morning.swelling',
              row.swellingQuestion === 'more-than-usual' ? 'More swollen than usual' : 'How swollen',
            ),
            valueString: row.swelling,
          },
        ]),
    ...(row.flare === null ? [] : [{ code: own('morning.flare'), valueBoolean: row.flare }]),
  ];
  return [
    {
      resourceType: 'Observation',
      id: idOf(said.id, said.joint, 'morning'),
      status: said.isWrong ? 'entered-in-error' : 'final',
      ...category('survey'),
      code: withLoinc(loinc.pain, own('pain.morning')),
      subject: subjectOf(record),
      effectiveDateTime: said.at,
      performer: [writerOf(record, said.by)],
      ...(row.pain === null ? {} : { valueQuantity: amount(row.pain, '{score}') }),
      ...bodySite(row.joint),
      ...(component.length > 0 ? { component } : {}),
    },
  ];
};

export const morningObservations = (record: PersonRecord): readonly Observation[] => {
  const old = amended(record.rows.morning);
  return record.rows.morning.flatMap((row) => {
    const isWrong = old.has(row.entryId);
    const head = { id: row.id, session: null, at: row.day, by: row.enteredBy, isWrong };
    const tired: Observation[] =
      row.fatigue === null
        ? []
        : [
            {
              resourceType: 'Observation',
              id: idOf(row.id, 'fatigue'),
              status: isWrong ? 'entered-in-error' : 'final',
              ...category('survey'),
              code: own('morning.fatigue'),
              subject: subjectOf(record),
              effectiveDateTime: row.day,
              performer: [writerOf(record, row.enteredBy)],
              valueQuantity: amount(row.fatigue, '{score}'),
            },
          ];
    return [
      ...record.rows.morning_joint
        .filter(({ morningId }) => morningId === row.id)
        .flatMap((joint) => morningOf(record, joint, { ...head, joint: joint.joint })),
      ...tired,
    ];
  });
};
