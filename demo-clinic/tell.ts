/** Tells a story: all that happened, in the order of time, through the functions the product uses. */
import { addPatient } from '#data/patients/people.ts';
import { saveProfile } from '#data/patients/save-profile.ts';
import { answerAtHome } from './at-home.ts';
import { perform } from './clinician.ts';
import { type Actor, accessAt, type DemoContext, instantOf } from './context.ts';
import { diaryDays } from './diary.ts';
import { sendMorning, sendSession } from './patient.ts';
import type { Story } from './story.ts';

/** Wall-clock times of a day. A dose signed at ten is followed the same evening. */
const times = { morning: '07:40', visit: '10:00', session: '18:10', atHome: '19:30' } as const;

interface Happening {
  readonly at: number;
  readonly happens: () => Promise<unknown>;
}

/** Minutes between two acts of one visit, so that their order can be read in the record. */
const betweenActs = 60_000;

const visits = (context: DemoContext, story: Story): readonly Happening[] =>
  story.visits.flatMap(({ day, acts }) =>
    acts.map((act, place) => {
      const at = instantOf(context, story, day, times.visit) + place * betweenActs;
      return { at, happens: () => perform(accessAt(context, context.clinician, at), story.id, act) };
    }),
  );

const answers = (context: DemoContext, story: Story, self: Actor): readonly Happening[] =>
  diaryDays(story.weeks, story.remarks).flatMap(({ day, morning, session }) => {
    const joints = story.profile.followedJoints;
    const found: Happening[] = [];
    if (morning) {
      const at = instantOf(context, story, day, times.morning);
      const access = accessAt(context, self, at);
      found.push({ at, happens: () => sendMorning(access, story.id, context.zone, story.profile, morning) });
    }
    if (session) {
      const at = instantOf(context, story, day, times.session);
      const access = accessAt(context, self, at);
      found.push({ at, happens: () => sendSession(access, story.id, context.zone, joints, session) });
    }
    return found;
  });

const atHome = (context: DemoContext, story: Story, self: Actor): readonly Happening[] =>
  (story.atHome ?? []).map((round) => {
    const at = instantOf(context, story, round.day, times.atHome);
    return { at, happens: () => answerAtHome(accessAt(context, self, at), story.id, round) };
  });

/** The clinic opens the record before the first visit. */
export const openRecord = async (context: DemoContext, story: Story): Promise<void> => {
  const access = accessAt(context, context.clinician, instantOf(context, story, 0, '09:30'));
  await addPatient(access, story.person, story.id);
  await saveProfile(access, story.id, story.profile);
};

/** One transaction for the whole story: each write inside it joins. */
export const tell = (context: DemoContext, story: Story, self: Actor): Promise<void> =>
  context.store.write(async () => {
    const happenings = [
      ...visits(context, story),
      ...answers(context, story, self),
      ...atHome(context, story, self),
    ]
      .filter((one) => one.at <= context.now)
      .sort((a, b) => a.at - b.at);
    for (const one of happenings) await one.happens();
  });
