/** Tells a story: all that happened, in the order of time, through the functions the product uses. */
import { addPatient, saveProfile } from '#data/people.ts';
import { perform } from './clinician.ts';
import { diaryDays } from './diary.ts';
import { type Actor, accessAt, type Ground, instantOf } from './ground.ts';
import { sendMorning, sendSession } from './patient.ts';
import type { Story } from './story.ts';

/** Wall-clock times of a day. A dose signed at ten is followed the same evening. */
const times = { morning: '07:40', visit: '10:00', session: '18:10' } as const;

interface Happening {
  readonly at: number;
  readonly happens: () => Promise<unknown>;
}

/** Minutes between two acts of one visit, so that their order can be read in the record. */
const betweenActs = 60_000;

const visits = (ground: Ground, story: Story): readonly Happening[] =>
  story.visits.flatMap(({ day, acts }) =>
    acts.map((act, place) => {
      const at = instantOf(ground, story, day, times.visit) + place * betweenActs;
      return { at, happens: () => perform(accessAt(ground, ground.clinician, at), story.id, act) };
    }),
  );

const answers = (ground: Ground, story: Story, self: Actor): readonly Happening[] =>
  diaryDays(story.weeks, story.remarks).flatMap(({ day, morning, session }) => {
    const joints = story.profile.followedJoints;
    const found: Happening[] = [];
    if (morning) {
      const at = instantOf(ground, story, day, times.morning);
      const access = accessAt(ground, self, at);
      found.push({ at, happens: () => sendMorning(access, story.id, ground.zone, joints, morning) });
    }
    if (session) {
      const at = instantOf(ground, story, day, times.session);
      const access = accessAt(ground, self, at);
      found.push({ at, happens: () => sendSession(access, story.id, ground.zone, joints, session) });
    }
    return found;
  });

/** The clinic opens the record before the first visit. */
export const openRecord = async (ground: Ground, story: Story): Promise<void> => {
  const access = accessAt(ground, ground.clinician, instantOf(ground, story, 0, '09:30'));
  await addPatient(access, story.person, story.id);
  await saveProfile(access, story.id, story.profile);
};

/** One transaction for the whole story: each write inside it joins. */
export const tell = (ground: Ground, story: Story, self: Actor): Promise<void> =>
  ground.store.write(async () => {
    const happenings = [...visits(ground, story), ...answers(ground, story, self)]
      .filter((one) => one.at <= ground.now)
      .sort((a, b) => a.at - b.at);
    for (const one of happenings) await one.happens();
  });
