/** Group hours of the demo clinic: one of today with people of the stories, and one that was cancelled. Invented. */
import type { Access } from '#data/access.ts';
import { changeGroupHour, groupHoursOf, setGroupMember, writeGroupHour } from '#data/clinic/group-hours.ts';
import { beyondHerDumbbells } from './patients/beyond-her-dumbbells.ts';
import { flareThenHold } from './patients/flare-then-hold.ts';
import { kidneyLock } from './patients/kidney-lock.ts';
import { kneeInPhases } from './patients/knee-in-phases.ts';
import { missedAnswers } from './patients/missed-answers.ts';
import { redFlag } from './patients/red-flag.ts';
import { steadyProgress } from './patients/steady-progress.ts';

/** In all states an hour meets: as planned, eased, not on this weekday, and stopped by an open warning sign. */
const people = [
  steadyProgress,
  flareThenHold,
  missedAnswers,
  redFlag,
  kidneyLock,
  beyondHerDumbbells,
  kneeInPhases,
];

/** The Friday before: whoever belongs to the hour was a patient by then. */
export const groupsPlannedAt = '2026-04-17T09:00:00+01:00';

const hour = { name: 'Monday strength group', place: 'Large room, ground floor', minutes: 60 };

export const planGroupHours = async (access: Access): Promise<void> => {
  const plan = (id: string, when: string) =>
    writeGroupHour(access, {
      id,
      row: { ...hour, when, clinicianId: access.actorId },
      clinicianName: access.actorName,
      replaces: null,
    });
  const earlier = await plan('easter-monday-group', '2026-04-06T10:00');
  const planned = (await groupHoursOf(access)).find(({ id }) => id === earlier);
  if (planned) await changeGroupHour(access, planned, 'cancelled', 'The clinic was shut on Easter Monday.');
  const today = await plan('monday-group', '2026-04-20T10:00');
  for (const { id } of people) await setGroupMember(access, today, id, true);
};
