/** Every form of descriptor fields that works before its page’s scripts have come. */
import { beginVisit, careForms, changeEpisode, openEpisode } from './care.ts';
import { followUpPause, pause, recordContact, reportSign, resumePause } from './danger.ts';
import { recordDistance } from './distance.ts';
import {
  cancelGroupHour,
  correctGroupHour,
  groupHourInError,
  joinGroup,
  leaveGroup,
  planGroupHour,
  planGroupHourAgain,
} from './groups.ts';
import { undoImport } from './imports.ts';
import { closeIncident, correctIncident, reopenIncident, writeIncident } from './incidents.ts';
import { beginLetter, changeLetter, signLetter, voidLetter, writeSummary } from './letters.ts';
import { addMachine, correctMachine } from './machines.ts';
import {
  askAtHome,
  goalState,
  newGoal,
  planRetest,
  recordEffusion,
  recordMeasurement,
  stopRetest,
} from './measurements.ts';
import { showAdvice, signNote } from './notes.ts';
import { approveStepsAhead, endPrescription } from './prescriptions.ts';
import { beginProtocol, confirmPhase, endProtocol, writePhase } from './protocol.ts';
import { addPatient, changeDetail, keepPlan, mergeRecords, setSite, undoMerge } from './record.ts';
import { bookReview, overrideDecision, setBaseline, writeMessage } from './review.ts';
import type { SentForm } from './sent-form.ts';
import { bringBackTemplate, renameTemplate, saveTemplate, withdrawTemplate } from './templates.ts';

export const sentForms: readonly SentForm[] = [
  addMachine,
  addPatient,
  approveStepsAhead,
  askAtHome,
  beginLetter,
  beginProtocol,
  beginVisit,
  bookReview,
  bringBackTemplate,
  cancelGroupHour,
  changeDetail,
  changeEpisode,
  changeLetter,
  closeIncident,
  confirmPhase,
  correctGroupHour,
  correctIncident,
  correctMachine,
  endPrescription,
  endProtocol,
  followUpPause,
  goalState,
  groupHourInError,
  joinGroup,
  keepPlan,
  leaveGroup,
  mergeRecords,
  newGoal,
  openEpisode,
  overrideDecision,
  pause,
  planGroupHour,
  planGroupHourAgain,
  planRetest,
  recordContact,
  recordDistance,
  recordEffusion,
  recordMeasurement,
  renameTemplate,
  reopenIncident,
  reportSign,
  resumePause,
  saveTemplate,
  setBaseline,
  setSite,
  showAdvice,
  signLetter,
  signNote,
  stopRetest,
  undoImport,
  undoMerge,
  voidLetter,
  withdrawTemplate,
  writeIncident,
  writeMessage,
  writePhase,
  writeSummary,
  ...Object.values(careForms),
];
