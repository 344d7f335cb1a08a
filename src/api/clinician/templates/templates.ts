/** Templates of the clinic. A template fills in a request and decides nothing. */
import { z } from 'zod';
import { templateDoseOf, templateSides } from '#core/prescribing/clinic-template.ts';
import { requestOfDose } from '#core/prescribing/request-of-dose.ts';
import type { Access } from '#data/access.ts';
import { measurementsOf } from '#data/assessment/measurements.ts';
import {
  addTemplate,
  changeTemplate,
  type DoseTemplate,
  templatesOf,
} from '#data/prescribing/dose-templates.ts';
import { prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { Problem, refusedWith } from '../../errors.ts';
import { madeId, nothing } from '../../outputs.ts';
import { clinicianProcedure, recordProcedure, router } from '../../trpc.ts';
import { keepProposal } from '../keep-proposal.ts';
import { proposedFrom } from './proposed.ts';

const name = z.string().trim().min(1).max(80);
const ofTemplate = z.object({ templateId: z.string().max(64) });
const ofPerson = ofTemplate.extend({ on: z.enum(templateSides) });

const templateOf = async (access: Access, templateId: string): Promise<DoseTemplate> => {
  const found = (await templatesOf(access)).find(({ id }) => id === templateId);
  if (!found) throw new Problem('not-found', 'This clinic has no such template.');
  return found;
};

const offered = async (access: Access, templateId: string): Promise<DoseTemplate> => {
  const found = await templateOf(access, templateId);
  if (found.withdrawn)
    throw new Problem(
      'conflict',
      `${found.withdrawn.byName} withdrew this template. Bring it back to use it.`,
    );
  return found;
};

/** Two of one name could not be told apart in the list. */
const requireOwnName = async (access: Access, wanted: string, exceptId?: string): Promise<void> => {
  const same = (await templatesOf(access)).find(
    (one) =>
      one.id !== exceptId && !one.withdrawn && one.name.toLocaleLowerCase() === wanted.toLocaleLowerCase(),
  );
  if (same)
    throw refusedWith([
      {
        field: 'input.name',
        code: 'inconsistent',
        reason: `“${same.name}” is a template already, saved by ${same.savedBy}. Give this one another name.`,
      },
    ]);
};

export const templatesRouter = router({
  /** Those withdrawn as well. */
  list: clinicianProcedure.query(({ ctx }) => templatesOf(ctx.access)),

  save: recordProcedure
    .input(z.object({ name, prescriptionIds: z.array(z.string().max(64)).min(1).max(30) }))
    .output(madeId)
    .mutation(({ ctx: { access, patient }, input }) =>
      access.store.write(async () => {
        await requireOwnName(access, input.name);
        const versions = await prescriptionsOf(access, patient.id);
        const measurements = await measurementsOf(access, patient.id);
        const doses = input.prescriptionIds.map((id) => {
          const version = versions.find((one) => one.id === id);
          if (!version) throw new Problem('not-found', 'This patient has no such prescription.');
          return templateDoseOf(version.dose.method, requestOfDose({ measurements }, version.dose));
        });
        return addTemplate(access, patient.id, { name: input.name, doses });
      }),
    ),

  rename: clinicianProcedure
    .input(ofTemplate.extend({ name }))
    .output(nothing)
    .mutation(({ ctx: { access }, input }) =>
      access.store.write(async () => {
        await offered(access, input.templateId);
        await requireOwnName(access, input.name, input.templateId);
        await changeTemplate(access, input.templateId, 'renamed', input.name);
      }),
    ),

  withdraw: clinicianProcedure
    .input(ofTemplate)
    .output(nothing)
    .mutation(({ ctx: { access }, input }) =>
      access.store.write(async () => {
        await offered(access, input.templateId);
        await changeTemplate(access, input.templateId, 'withdrawn');
      }),
    ),

  bringBack: clinicianProcedure
    .input(ofTemplate)
    .output(nothing)
    .mutation(({ ctx: { access }, input }) =>
      access.store.write(async () => {
        const template = await templateOf(access, input.templateId);
        if (!template.withdrawn) throw new Problem('conflict', 'It is offered already. Reload the page.');
        await requireOwnName(access, template.name, template.id);
        await changeTemplate(access, input.templateId, 'brought-back');
      }),
    ),

  /** What comes of a template for this person on this day; nothing is kept. null = it is not offered. */
  proposed: recordProcedure.input(ofPerson).query(async ({ ctx, input }) => {
    const template = (await templatesOf(ctx.access)).find(({ id }) => id === input.templateId);
    if (!template || template.withdrawn) return null;
    return {
      name: template.name,
      doses: await proposedFrom(ctx.access, ctx.patient, template.doses, input.on),
    };
  }),

  /** Keeps the doses that were shown, all of them or none; each waits to be signed. */
  add: recordProcedure
    .input(
      ofPerson.extend({
        shown: z
          .array(z.object({ place: z.number().int().min(0).max(30), dose: z.unknown() }))
          .min(1)
          .max(30),
      }),
    )
    .output(z.number())
    .mutation(({ ctx: { access, patient }, input }) =>
      access.store.write(async () => {
        const template = await offered(access, input.templateId);
        const possible = await proposedFrom(access, patient, template.doses, input.on);
        for (const { place, dose: shown } of input.shown) {
          const found = possible.find((one) => one.place === place);
          if (!found?.isPossible)
            throw new Problem(
              'conflict',
              `“${found?.title ?? template.name}” is no longer possible for this patient. Nothing was added; reload the page.`,
            );
          const { request, itemId } = found;
          await keepProposal(access, patient, {
            request,
            itemId: itemId ?? undefined,
            confirmed: false,
            shown,
          });
        }
        return input.shown.length;
      }),
    ),
});
