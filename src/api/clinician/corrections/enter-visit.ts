/** An appointment as it is begun, or put right: whose it is and its day stay. And a session somebody stood beside. */
import { refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { firstOcclusionRemote, visitRefusals } from '#core/episode/remote-visit.ts';
import { observedSessionFields, visitFields } from '#core/episode/visit-fields.ts';
import type { Refusal } from '#core/outcome.ts';
import { daysBetween, isDay } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { homeFactsOf, recordObservedSession } from '#data/episode/home-eligibility.ts';
import { beginVisit, visitNow, visitsOnRecord } from '#data/episode/visits.ts';
import type { Patient } from '#data/patients/people.ts';

interface VisitEntering {
  readonly access: Access;
  readonly patient: Patient;
  readonly instead: { readonly id: string } | null;
}

export const enterVisit = async (
  { access, patient, instead }: VisitEntering,
  value: unknown,
): Promise<string> => {
  const row = checked(visitFields, value, visitRefusals);
  const replaced = (await visitsOnRecord(access, patient.id)).find(({ id }) => id === instead?.id);
  return beginVisit(access, patient.id, row, replaced ?? null);
};

const supervisedDay = (day: string, today: string): readonly Refusal[] =>
  isDay(day) && daysBetween(day, today) >= 0
    ? []
    : [
        {
          field: 'input.day',
          code: 'too-high',
          reason: 'Enter the day of the supervised session: today or earlier.',
        },
      ];

export const enterSupervised = async (
  { access, patient }: VisitEntering,
  value: unknown,
): Promise<string> => {
  const row = checked(observedSessionFields, value, ({ day }) => supervisedDay(day, access.day));
  const { observed } = await homeFactsOf(access, patient.id);
  const before = observed.filter((one) => one.limb === row.limb && one.side === row.side).length;
  const refused = firstOcclusionRemote(await visitNow(access, patient.id), before, row.remoteReason);
  if (refused.length > 0) throw refusedWith(refused);
  return recordObservedSession(access, patient.id, row);
};
