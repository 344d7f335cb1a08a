/** What a patient answered about a joint, as Observations: by whom, when, and as part of which session. */
import type { Observation, ObservationComponent } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { loinc } from '../codes/loinc.ts';
import { systems } from '../names.ts';
import { amount, bodySite, idOf, own, refTo, subjectOf, withLoinc, writerOf } from './parts.ts';

export const category = (code: string) => ({
  category: [{ coding: [{ system: systems.observationCategory, code }] }],
});

/** Entries that a later one amends: they stay, and say that they no longer count. */
export const amended = (rows: readonly { readonly amends: string | null }[]): ReadonlySet<string> =>
  new Set(rows.flatMap(({ amends }) => (amends === null ? [] : [amends])));

export interface Said {
  readonly id: string;
  readonly session: string | null;
  readonly joint: string;
  readonly at: string;
  readonly by: string;
  readonly isWrong: boolean;
}

export const painOf = (
  record: PersonRecord,
  said: Said,
  moment: string,
  value: number | null,
): Observation[] =>
  value === null
    ? []
    : [
        {
          resourceType: 'Observation',
          id: idOf(said.id, said.joint, moment),
          ...(said.session ? { partOf: [refTo('Procedure', said.session)] } : {}),
          status: said.isWrong ? 'entered-in-error' : 'final',
          ...category('survey'),
          code: withLoinc(loinc.pain, own(`pain.${moment}`)),
          subject: subjectOf(record),
          effectiveDateTime: said.at,
          performer: [writerOf(record, said.by)],
          valueQuantity: amount(value, '{score}'),
          ...bodySite(said.joint),
        },
      ];

export const score = (code: string, value: number | null): ObservationComponent[] =>
  value === null ? [] : [{ code: own(code), valueQuantity: amount(value, '{score}') }];
