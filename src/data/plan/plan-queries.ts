/** What a plan is read from. */
import { addDays } from '#core/time/day.ts';
import { measurementRows } from '../assessment/measurements.ts';
import { newestSettings } from '../clinic/clinic-settings.ts';
import { markRows } from '../corrections/correction-index.ts';
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
import { eventRows } from '../episode/care-events.ts';
import { consentRows } from '../episode/consents.ts';
import { episodeChangeRows, episodeRows } from '../episode/episodes.ts';
import { homeCheckRows, supervisedOnRecord } from '../episode/home-eligibility.ts';
import { limitRows } from '../episode/limits-and-pre-approvals.ts';
import { protocolPhaseRows, protocolRows, protocolStepRows } from '../episode/protocols.ts';
import { mergeRows, mergeRowsInto } from '../patients/merges.ts';
import { newestCareProfileRow, patientIdentityRows } from '../patients/people.ts';
import { versionRows } from '../prescribing/prescriptions.ts';
import { clearanceRows, screeningRows } from '../screening/screenings.ts';

/** Days back in which a session may still keep a test to failure waiting: the most a clinic can choose. */
export const restDays = 4;

export const planQueries: readonly Asked[] = [
  ...[
    patientIdentityRows,
    newestCareProfileRow,
    newestSettings,
    versionRows,
    screeningRows,
    clearanceRows,
    measurementRows,
    markRows,
    episodeRows,
    episodeChangeRows,
    consentRows,
    eventRows,
    limitRows,
    protocolRows,
    protocolPhaseRows,
    protocolStepRows,
    supervisedOnRecord,
    homeCheckRows,
    candidateRows,
    decisionResponseRows,
    signRows,
    pauseRows,
    acknowledgementRows,
    contactRows,
    resumptionRows,
    newestSessionDay,
    mergeRows,
    mergeRowsInto,
  ].map((query) => ({ query })),
  { query: sessionRows, values: ({ day }) => ({ since: addDays(day, -restDays) }) },
];
