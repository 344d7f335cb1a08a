/** Warning signs, contacts, pauses and what is resumed. What changes the plan is evaluated at once. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { requireFresh } from '#api/fresh-sign-in.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { mostAgainHours } from '#core/danger/contact-again.ts';
import type { DangerRecord } from '#core/danger/danger.ts';
import { pauseConsistent, pauseFields, signFields } from '#core/danger/danger-fields.ts';
import { holdsBack } from '#core/danger/danger-state.ts';
import { dangerSettings } from '#core/danger/settings.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import type { Access } from '#data/access.ts';
import { settingsOf, settingValue } from '#data/clinic/clinic-settings.ts';
import { contactsOf, dangerRecordOf } from '#data/danger/danger-record.ts';
import { addPause, resume } from '#data/danger/pauses.ts';
import { reportSign } from '#data/danger/warning-signs.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { madeId, nothing } from '../../outputs.ts';
import { enter, firstEntry } from '../corrections/enter.ts';

const byClinician = { cause: 'clinician', sessionId: null, morningId: null } as const;

const heldItems = (plan: Plan, own: DangerRecord, pauseId: string): readonly string[] => {
  const state = plan.pauses.find(({ pause }) => pause.id === pauseId);
  if (!state) throw new Problem('conflict', 'This pause is over already. Reload the page.');
  if (!own.pauses.some(({ id }) => id === pauseId))
    throw new Problem(
      'refused',
      'This pause was made on the person’s other record. Open that one to resume it.',
    );
  if (openSigns(plan).length > 0)
    throw new Problem(
      'refused',
      'A warning sign is open. First record a contact that reached the patient, or the person who cares for the patient; then resume.',
    );
  return plan.items.filter((item) => holdsBack(state, item)).map(({ itemId }) => itemId);
};

/** Each exercise by a row of its own; once none is left the pause is over. */
const resumeItems = async (
  access: Access,
  patientId: string,
  held: readonly string[],
  row: { readonly pauseId: string; readonly itemIds: readonly string[]; readonly reason: string },
): Promise<void> => {
  const { pauseId, itemIds, reason } = row;
  if (itemIds.some((id) => !held.includes(id)))
    throw new Problem(
      'conflict',
      'One of these exercises is not held by this pause any more. Reload the page.',
    );
  for (const itemId of itemIds) await resume(access, patientId, { pauseId, itemId, reason });
  if (held.every((id) => itemIds.includes(id)))
    await resume(access, patientId, { pauseId, itemId: null, reason });
};

export const dangerRouter = router({
  get: recordProcedure.query(async ({ ctx }) => ({
    plan: await planOf(ctx.access, ctx.patient),
    contacts: await contactsOf(ctx.access, ctx.patient.id),
    /** Hours after which a failed attempt is tried again, as proposed. */
    againHours: await settingValue(ctx.access, dangerSettings, 'contact-again-hours'),
    /** Longest wait, by urgency. */
    mostAgainHours: mostAgainHours(await settingsOf(ctx.access)),
  })),

  /** A sign told by telephone, or seen by a clinician. */
  report: recordProcedure
    .input(z.object({ sign: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      const { flags, joint, remark } = checked(signFields, input.sign);
      return ctx.access.store.write(async () => {
        const id = await reportSign(ctx.access, ctx.patient.id, {
          source: 'telephone',
          flags: flags as readonly RedFlag[],
          joint: joint as Joint | null,
          entryId: null,
          remark,
          reason: 'A warning sign was reported to the clinic.',
        });
        await evaluateRecord(ctx.access, ctx.patient.id, byClinician);
        return id;
      });
    }),

  recordContact: recordProcedure
    .input(z.object({ contact: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      ctx.access.store.write(() => enter.contact(firstEntry(ctx), input.contact)),
    ),

  /** For a concern of the clinician's own it opens a warning sign; for any other cause it opens none. */
  pause: recordProcedure
    .input(z.object({ pause: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      const { access, patient } = ctx;
      const row = checked(pauseFields, input.pause, (value) => pauseConsistent(value, access.day));
      const { cause, reason, until } = row;
      const joint = row.joint as Joint | null;
      return access.store.write(async () => {
        const id =
          cause === 'warning-sign'
            ? await reportSign(access, patient.id, {
                source: 'clinician',
                flags: [],
                joint,
                entryId: null,
                remark: null,
                reason,
              })
            : await addPause(access, patient.id, { cause, joint, reason, until });
        await evaluateRecord(access, patient.id, byClinician);
        return id;
      });
    }),

  resume: recordProcedure
    .input(
      z.object({
        pauseId: z.string().max(64),
        itemIds: z.array(z.string().max(64)).max(60),
        reason: z.string().trim().min(1).max(300),
      }),
    )
    .output(nothing)
    .mutation(({ ctx, input }) => {
      const { access, patient } = ctx;
      requireFresh(ctx.person);
      return access.store.write(async () => {
        const own = await dangerRecordOf(access, patient.id);
        const held = heldItems(await planOf(access, patient), own, input.pauseId);
        await resumeItems(access, patient.id, held, input);
        await evaluateRecord(access, patient.id, byClinician);
      });
    }),
});
