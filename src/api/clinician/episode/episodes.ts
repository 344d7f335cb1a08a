/** Episodes of care: opened, changed, read. */
import { z } from 'zod';
import { Problem, refusedWith } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { transitions } from '#core/episode/episode.ts';
import { episodeChangeFields, episodeConsistent, episodeFields } from '#core/episode/episode-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { episodesOf, openEpisode } from '#data/episode/episodes.ts';
import { madeId } from '../../outputs.ts';
import { followEpisode } from './first-visit-profile.ts';

export const episodesRouter = router({
  list: recordProcedure.query(async ({ ctx }) => ({
    episodes: await episodesOf(ctx.access, ctx.patient.id),
    transitions,
  })),

  open: recordProcedure
    .input(z.object({ episode: z.unknown(), reason: z.string().trim().min(1).max(300) }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      const row = checked(episodeFields, input.episode, episodeConsistent);
      const joints = row.joints as readonly Joint[];
      const followedJoints = row.followedJoints as readonly Joint[];
      return ctx.access.store.write(async () => {
        const reason = { diagnosis: row.diagnoses[0]!, followedJoints };
        await followEpisode(ctx.access, ctx.patient.id, reason);
        return openEpisode(ctx.access, ctx.patient.id, { ...row, joints, followedJoints }, input.reason);
      });
    }),

  change: recordProcedure.input(z.object({ change: z.unknown() })).mutation(async ({ ctx, input }) => {
    const { episodeId, ...wanted } = checked(episodeChangeFields, input.change);
    const outcome = await applyEpisodeChange(ctx.access, ctx.patient.id, episodeId, wanted);
    if (!outcome) throw new Problem('not-found', 'This patient has no such episode of care.');
    if (!outcome.ok) throw refusedWith(outcome.refused);
    return outcome.result;
  }),
});
