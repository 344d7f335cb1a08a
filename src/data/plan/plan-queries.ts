/** What a plan is read from. */
import { addDays } from '#core/time/day.ts';
import {
  acknowledgementRows,
  contactRows,
  pauseRows,
  resumptionRows,
  signRows,
} from '../danger/danger-record.ts';
import type { Asked } from '../database/read-together.ts';
import { candidateRows } from '../decision/candidate-decisions.ts';
import { decisionResponseRows } from '../decision/decision-responses.ts';
import { newestSessionDay } from '../entries/last-session.ts';
import { sessionRows } from '../entries/logs.ts';
import { newestCareProfileRow } from '../patients/care-profiles.ts';
import { patientIdentityRows } from '../patients/people.ts';
import { contextQueries } from '../prescribing/context-queries.ts';

/** Days back in which a session may still keep a test to failure waiting: the most a clinic can choose. */
export const restDays = 4;

export const planQueries: readonly Asked[] = [
  ...contextQueries,
  ...[
    patientIdentityRows,
    newestCareProfileRow,
    candidateRows,
    decisionResponseRows,
    signRows,
    pauseRows,
    acknowledgementRows,
    contactRows,
    resumptionRows,
    newestSessionDay,
  ].map((query) => ({ query })),
  { query: sessionRows, values: ({ day }) => ({ since: addDays(day, -restDays) }) },
];
