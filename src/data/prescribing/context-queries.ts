/** What the context of prescribing is read from. */
import { measurementRows } from '../assessment/measurements.ts';
import { newestSettings } from '../clinic/clinic-settings.ts';
import { machineRows } from '../clinic/machines.ts';
import { markRows } from '../corrections/correction-index.ts';
import type { Asked } from '../database/read-together.ts';
import { eventRows } from '../episode/care-events.ts';
import { consentRows } from '../episode/consents.ts';
import { episodeChangeRows, episodeRows } from '../episode/episodes.ts';
import { homeCheckRows, supervisedOnRecord } from '../episode/home-eligibility.ts';
import { limitRows } from '../episode/limits-and-pre-approvals.ts';
import { protocolPhaseRows, protocolRows, protocolStepRows } from '../episode/protocols.ts';
import { mergeRows, mergeRowsInto } from '../patients/merges.ts';
import { clearanceRows, screeningRows } from '../screening/screenings.ts';
import { versionRows } from './prescriptions.ts';

export const contextQueries: readonly Asked[] = [
  newestSettings,
  machineRows,
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
  mergeRows,
  mergeRowsInto,
  supervisedOnRecord,
  homeCheckRows,
].map((query) => ({ query }));
