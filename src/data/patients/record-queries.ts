/** What a record is read from; `since` is the first day of its log. */
import { newestSettings } from '../clinic/clinic-settings.ts';
import { machineRows } from '../clinic/machines.ts';
import { markRows } from '../corrections/correction-index.ts';
import type { Asked } from '../database/read-together.ts';
import { morningRows, sessionRows } from '../entries/logs.ts';
import { eventRows } from '../episode/care-events.ts';
import { episodeChangeRows, episodeRows } from '../episode/episodes.ts';
import { limitRows } from '../episode/limits-and-pre-approvals.ts';
import { protocolPhaseRows, protocolRows, protocolStepRows } from '../episode/protocols.ts';
import { versionRows } from '../prescribing/prescriptions.ts';
import { programmeRows } from '../prescribing/programmes.ts';
import { baselineRowsOf } from './baselines.ts';
import { newestCareProfileRow } from './care-profiles.ts';
import { effusionRows } from './effusions.ts';
import { mergeRows, mergeRowsInto } from './merges.ts';
import { patientIdentityRows } from './people.ts';

/** Days of log the engine looks back over; longer than any window of its rules. */
export const engineWindowDays = 120;

export const recordQueries: readonly Asked[] = [
  patientIdentityRows,
  newestCareProfileRow,
  // The clinic says how late a morning may be answered.
  newestSettings,
  machineRows,
  episodeRows,
  episodeChangeRows,
  versionRows,
  sessionRows,
  morningRows,
  markRows,
  effusionRows,
  baselineRowsOf,
  programmeRows,
  eventRows,
  limitRows,
  protocolRows,
  protocolPhaseRows,
  protocolStepRows,
  mergeRows,
  mergeRowsInto,
].map((query) => ({ query }));
