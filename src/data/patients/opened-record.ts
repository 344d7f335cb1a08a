/** What every page of a record begins with, read by one statement: who it is, what stops work, what is due. */
import type { Access } from '../access.ts';
import { invitationRows, ownSignIn } from '../accounts/invitations.ts';
import { newestSettings } from '../clinic/clinic-settings.ts';
import { markRows } from '../corrections/correction-index.ts';
import {
  acknowledgementRows,
  contactRows,
  pauseRows,
  resumptionRows,
  signRows,
} from '../danger/danger-record.ts';
import { readTogether, togetherOf } from '../database/read-together.ts';
import { consentRows } from '../episode/consents.ts';
import { episodeChangeRows, episodeRows } from '../episode/episodes.ts';
import { versionRows } from '../prescribing/prescriptions.ts';
import { programmeRows } from '../prescribing/programmes.ts';
import { screeningRows } from '../screening/screenings.ts';
import { itemsDueNow } from '../worklist/items-of-patient.ts';
import { baselineRowsOf } from './baselines.ts';
import { newestCareProfileRow } from './care-profiles.ts';
import { mergeRows, mergeRowsInto } from './merges.ts';
import { patientIdentityRows } from './people.ts';

const together = togetherOf([
  ...[
    patientIdentityRows,
    newestCareProfileRow,
    newestSettings,
    mergeRows,
    mergeRowsInto,
    signRows,
    pauseRows,
    acknowledgementRows,
    contactRows,
    resumptionRows,
    markRows,
    episodeRows,
    episodeChangeRows,
    consentRows,
    screeningRows,
    baselineRowsOf,
    versionRows,
    programmeRows,
    invitationRows,
    ownSignIn,
  ].map((query) => ({ query })),
  itemsDueNow,
]);

/** Does the work on what was read. */
export const onOpenedRecord = <T>(access: Access, patientId: string, work: () => Promise<T>): Promise<T> =>
  readTogether(access, patientId, together, work);
