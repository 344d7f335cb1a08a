/** A reading that cannot be noted is not given. */
import type { Access } from '#data/access.ts';
import { isAuditFailing } from '#data/audit/audit.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from './errors.ts';

/** Nothing of a record is shown while it cannot be noted who looked; also for calls that only work something out of it. */
export const requireNoted = ({ store }: Access): void => {
  if (isAuditFailing(store)) throw new Problem('not-recorded', refusalText('not-recorded'));
};
