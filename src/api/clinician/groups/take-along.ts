/**
 * What a tablet takes along to an hour without signal: of each person the first name and today's plan. Each key is
 * named here, so that nothing else of a record leaves with it: no surname, no diagnosis, no reason of the record.
 */
import { beginOf, type GroupHourOnRecord, sealedHourEnd } from '#core/clinic/group-hour.ts';
import type { Access } from '#data/access.ts';
import { instantAt } from '#data/civil-time.ts';
import { patientOf } from '#data/patients/people.ts';
import { Problem } from '../../errors.ts';
import type { groupPerson } from './group-person.ts';

type GroupPerson = Awaited<ReturnType<typeof groupPerson>>;
type Exercise = GroupPerson['today']['exercises'][number];

const exerciseTaken = ({ prescriptionId, itemId, joints, dose, badDay, today, ...one }: Exercise) => ({
  ...{ prescriptionId, itemId, joints, dose, badDay, today },
  isDoable: one.isDoable,
  isPlanned: one.isPlanned,
  // The id of a caution may name a condition; the sentence is what is read at the work.
  cautions: one.cautions.map(({ text, isLimit }) => ({ text, isLimit })),
});

const todayTaken = ({
  exercises,
  day,
  zone,
  emergencyNumber,
  stop,
  joints,
  painLookups,
  ...asks
}: Today) => ({
  ...{ day, zone, emergencyNumber, stop, joints, painLookups },
  isShortSigns: asks.isShortSigns,
  hasCuff: asks.hasCuff,
  asksPregnancy: asks.asksPregnancy,
  asksTwoHours: asks.asksTwoHours,
  isSentToday: asks.isSentToday,
  exercises: exercises.map(exerciseTaken),
});
type Today = GroupPerson['today'];

/** Until when it may be taken along and open, as an instant; refused where the hour is not of now. */
export const endOfTaking = (access: Access, hour: GroupHourOnRecord, zone: string): number => {
  const { day, time } = beginOf(hour.entry);
  if (hour.ended !== null) throw new Problem('refused', 'This hour does not stand. Nothing is taken along.');
  if (day !== access.day)
    throw new Problem('refused', 'An hour is taken along on its own day, with the plan of that day.');
  const goneAt = sealedHourEnd(instantAt(day, time, zone), hour.entry.minutes);
  if (access.now >= goneAt) throw new Problem('refused', 'This hour is over. Nothing is taken along.');
  return goneAt;
};

/** Pressed on the hour's page already: the tablet would ask it again, blank. */
const isBegun = ({ typed }: GroupPerson): boolean => Object.keys(typed ?? {}).some((name) => name !== 'hour');

/** Whose session is on record already is entered no second time, and who was begun on the hour's page is entered there. */
export const takenAlong = async (
  access: Access,
  people: readonly (GroupPerson | { readonly name: null })[],
) => {
  const open = people.flatMap((one) => (one.name === null || one.session !== null ? [] : [one]));
  const taken = [];
  const begun = [];
  for (const one of open) {
    const { patientId, entryId, today } = one;
    const firstName = (await patientOf(access, patientId))?.givenName ?? '';
    if (isBegun(one)) begun.push({ patientId, firstName });
    else taken.push({ patientId, entryId, firstName, today: todayTaken(today) });
  }
  return { people: taken, begun, leftOut: people.length - open.length };
};
