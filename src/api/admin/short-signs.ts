/** The short form of asking for warning signs: read by all staff, approved or withdrawn by a clinician. */
import { familiesAsked, shortWording } from '#core/danger/signs-asked.ts';
import { actOnShortSigns, shortSignsActOf } from '#data/danger/short-signs.ts';
import { familyText } from '#messages/sign-families.ts';
import { nothing } from '../outputs.ts';
import { clinicianProcedure, router, staffProcedure, withFreshSignIn } from '../trpc.ts';

const freshClinician = clinicianProcedure
  .meta({ roles: ['clinician'], guard: 'own clinic, fresh sign-in' })
  .use(withFreshSignIn);

export const shortSignsRouter = router({
  state: staffProcedure.query(async ({ ctx }) => {
    const act = await shortSignsActOf(ctx.access);
    return {
      wording: shortWording,
      families: familiesAsked(true).map(familyText),
      act,
      isApproved: act?.act === 'approved' && act.wording === shortWording,
      mayAct: ctx.person.role === 'clinician',
    };
  }),
  approve: freshClinician.output(nothing).mutation(({ ctx }) => actOnShortSigns(ctx.access, 'approved')),
  withdraw: freshClinician.output(nothing).mutation(({ ctx }) => actOnShortSigns(ctx.access, 'withdrawn')),
});
