/**
 * On which mornings dark urine and muscle pain out of proportion are asked in a question of their own.
 *
 * Muscle breakdown shows one to three days after unaccustomed work, so it is asked on the three mornings
 * after the first session of a dose that is new or was raised. It does not say that other mornings are
 * free of it: the sign stands in every list of warning signs.
 */

import type { PrescriptionVersion, SessionRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';

export const morningsAsked = 3;

type Done = Pick<SessionRecord, 'day' | 'beganAt' | 'sets'>;
type Version = Pick<PrescriptionVersion, 'id' | 'origin'>;

/** A dose eased or gone back to is nothing new to the muscle. */
const isRaise = ({ origin }: Version): boolean => origin === 'clinician' || origin === 'progress';

/** Nobody has done this dose yet and it is new or raised. */
export const isNewDose = (version: Version, sessions: readonly Done[]): boolean =>
  isRaise(version) &&
  !sessions.some((session) => session.sets.some((set) => set.prescriptionId === version.id));

/** Last morning of asking after the sessions so far; null when none began a new dose lately. */
export const urineAskedUntil = (
  versions: readonly Version[],
  sessions: readonly Done[],
  today: Day,
): Day | null => {
  const raised = new Set(versions.filter(isRaise).map((version) => version.id));
  const seen = new Set<string>();
  let until: Day | null = null;
  for (const session of [...sessions].sort((a, b) => a.beganAt - b.beganAt)) {
    for (const { prescriptionId } of session.sets) {
      if (!raised.has(prescriptionId) || seen.has(prescriptionId)) continue;
      seen.add(prescriptionId);
      until = addDays(session.day, morningsAsked);
    }
  }
  return until !== null && until >= today ? until : null;
};
