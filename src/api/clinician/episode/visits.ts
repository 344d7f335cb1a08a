/** Appointments, supervised sessions, the gate for a cuff at home, and a whole first visit in one go. */
import { z } from 'zod';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { homeConditionsOf, ineligibleAtHome } from '#core/episode/home-eligibility.ts';
import { homeCheckFields } from '#core/episode/visit-fields.ts';
import { limbs, sides } from '#core/exercises/joints.ts';
import type { Refusal } from '#core/outcome.ts';
import { homeFactsOf, recordHomeCheck } from '#data/episode/home-eligibility.ts';
import { visitNow, visitsOf } from '#data/episode/visits.ts';
import { madeId } from '../../outputs.ts';
import { enter, firstEntry } from '../corrections/enter.ts';
import { firstVisitPage, saveFirstVisit } from './first-visit.ts';
import { firstVisitInput } from './first-visit-parts.ts';
import { requireHandsOnTest } from './hands-on-test.ts';

const wrapReason = (row: {
  readonly wrapOpened: boolean;
  readonly reason: string | null;
}): readonly Refusal[] =>
  row.wrapOpened && row.reason === null
    ? [
        {
          field: 'input.reason',
          code: 'missing',
          reason: 'Enter the reason for allowing an elastic wrap at home for this limb.',
        },
      ]
    : [];

export const visitsRouter = router({
  list: recordProcedure.query(async ({ ctx }) => ({
    now: await visitNow(ctx.access, ctx.patient.id),
    visits: await visitsOf(ctx.access, ctx.patient.id),
  })),

  begin: recordProcedure
    .input(z.object({ visit: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter.visit(firstEntry(ctx), input.visit)),

  /** What is on record for a cuff at home, per limb, and why it is closed where it is. */
  homeEligibility: recordProcedure.query(async ({ ctx }) => {
    const facts = await homeFactsOf(ctx.access, ctx.patient.id);
    return {
      ...facts,
      limbs: limbs.flatMap((limb) =>
        sides.map((side) => ({
          limb,
          side,
          conditions: homeConditionsOf(facts, { limb, side }),
          cuff: ineligibleAtHome(facts, { limb, side }, false),
          wrap: ineligibleAtHome(facts, { limb, side }, true),
        })),
      ),
    };
  }),

  watch: recordProcedure
    .input(z.object({ session: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter['supervised-session'](firstEntry(ctx), input.session)),

  checkHome: recordProcedure
    .input(z.object({ check: z.unknown() }))
    .output(madeId)
    .mutation(async ({ ctx, input }) => {
      const row = checked(homeCheckFields, input.check, wrapReason);
      await requireHandsOnTest(ctx.access, ctx.patient.id, 'home-check');
      return recordHomeCheck(ctx.access, ctx.patient.id, row);
    }),

  firstVisit: recordProcedure.query(({ ctx }) => firstVisitPage(ctx.access, ctx.patient)),

  saveFirstVisit: recordProcedure
    .input(
      z.object({
        visit: firstVisitInput,
        /** Unlikely values were confirmed. */
        confirmed: z.boolean().default(false),
      }),
    )
    .mutation(({ ctx, input }) => saveFirstVisit(ctx.access, ctx.patient, input.visit, input.confirmed)),
});
