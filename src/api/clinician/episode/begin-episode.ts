/** An episode of care opened by a first visit, from the care profile on record. */
import { refusedWith } from '#api/errors.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import type { Access } from '#data/access.ts';
import { goalStepsOf, recordGoalStep } from '#data/assessment/goals.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { episodesOf, openEpisode } from '#data/episode/episodes.ts';
import { patientOf } from '#data/patients/people.ts';

const reason = 'First visit.';

/** False where an episode goes on already with this goal; another goal is set beside those it has. */
export const beginEpisode = async (
  access: Access,
  patientId: string,
  goal: string | null,
): Promise<boolean> => {
  const refuse = (said: string) => refusedWith([{ field: 'input', code: 'inconsistent', reason: said }]);
  const episodes = await episodesOf(access, patientId);
  const { state } = episodeStatusOn(episodes, access.day);
  if (state === 'in-care') {
    const steps = await goalStepsOf(access, patientId);
    const known = [...episodes.flatMap(({ goals }) => goals), ...steps.map((step) => step.goal)];
    if (goal === null || known.includes(goal)) return false;
    await recordGoalStep(access, patientId, { goal, state: 'open', byDay: null, note: null });
    return true;
  }
  const profile = (await patientOf(access, patientId))?.profile;
  if (!profile) throw refuse('The episode of care opens once diagnosis and joint are saved.');
  const episodeId = await openEpisode(
    access,
    patientId,
    {
      diagnoses: [profile.diagnosis],
      joints: profile.followedJoints,
      followedJoints: profile.followedJoints,
      goals: goal === null ? [] : [goal],
      referrer: null,
      contacts: [],
    },
    reason,
  );
  await applyEpisodeChange(access, patientId, episodeId, {
    to: 'active',
    on: access.day,
    reason,
    breakKind: null,
    expectedBack: null,
  });
  return true;
};
