/** Proof that somebody looked at what very values would have decided: made with the preview, asked for when they are saved. */
import { createHmac } from 'node:crypto';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Access } from '#data/access.ts';
import { Problem } from '../errors.ts';
import { isOfDecisions } from './every-setting.ts';

const sorted = (values: SettingValues) =>
  Object.entries(values).sort(([one], [other]) => (one < other ? -1 : 1));

/** Of these values beside all others as they stand, for this person and this day. */
export const lookedAt = (
  { auditKey, clinicId, actorId, day }: Access,
  values: SettingValues,
  inForce: SettingValues,
): string =>
  createHmac('sha256', auditKey)
    .update(JSON.stringify(['settings-looked-at', clinicId, actorId, day, sorted(values), sorted(inForce)]))
    .digest('hex');

/** A number that decides is not changed for a whole clinic unseen; others have nothing to look at. */
export const requireLookedAt = (
  access: Access,
  values: SettingValues,
  inForce: SettingValues,
  looked: string | undefined,
): void => {
  if (!Object.keys(values).some(isOfDecisions) || looked === lookedAt(access, values, inForce)) return;
  throw new Problem(
    'conflict',
    'Nothing was saved: what exactly these values would have changed was not looked at, or a setting changed since. Look at it again, then save.',
  );
};
