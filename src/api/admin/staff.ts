/** The clinic's people, for those who administer it. */
import { z } from 'zod';
import { addStaff, type Changed, resetStaff, setActive, setRoles, staffOf } from '#data/accounts/staff.ts';
import { Problem } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { administratorProcedure, freshAdministrator, router } from '../trpc.ts';

const userId = z.string().min(1).max(64);
const roles = { role: z.enum(['clinician', 'administrator', 'reception']), administers: z.boolean() };

/** Whoever administers reads what is not for the front desk. */
const notBoth = ({ role, administers }: { readonly role: string; readonly administers: boolean }): void => {
  if (role === 'reception' && administers)
    throw new Problem('refused', 'Reception does not administer the clinic. Choose one of the two.');
};

const settled = (changed: Changed): void => {
  if (changed === 'not-found') throw new Problem('not-found', 'There is no such person in your clinic.');
  if (changed === 'last-administrator') {
    throw new Problem(
      'conflict',
      'The clinic would have no administrator. Make somebody else an administrator first.',
    );
  }
};

const notYourself = (own: string, other: string): void => {
  if (own === other) throw new Problem('refused', 'Ask another administrator to do this.');
};

export const adminStaffRouter = router({
  list: administratorProcedure.query(({ ctx }) => staffOf(ctx.access)),

  /** The passphrase to hand over is answered once. */
  add: freshAdministrator
    .input(z.object({ name: z.string().trim().min(2).max(80), email: z.email().max(120), ...roles }))
    .mutation(async ({ ctx, input }) => {
      notBoth(input);
      const handed = await addStaff(ctx.access, input);
      if (!handed) throw new Problem('conflict', 'Somebody already signs in with this address.');
      return handed;
    }),

  setRoles: freshAdministrator
    .input(z.object({ userId, ...roles }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const { userId: id, ...rest } = input;
      notYourself(ctx.person.userId, id);
      notBoth(rest);
      settled(await setRoles(ctx.access, id, rest));
    }),

  deactivate: freshAdministrator
    .input(z.object({ userId }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      notYourself(ctx.person.userId, input.userId);
      settled(await setActive(ctx.access, input.userId, false));
    }),

  reactivate: freshAdministrator
    .input(z.object({ userId }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      settled(await setActive(ctx.access, input.userId, true));
    }),

  reset: freshAdministrator.input(z.object({ userId })).mutation(async ({ ctx, input }) => {
    notYourself(ctx.person.userId, input.userId);
    const handed = await resetStaff(ctx.access, input.userId);
    if (!handed) throw new Problem('not-found', 'There is no such person in your clinic.');
    return handed;
  }),
});
