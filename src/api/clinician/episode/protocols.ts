/** Protocols after surgery or injury. Whatever changes what binds is evaluated at once, as a limit is. */
import { z } from 'zod';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import {
  ended,
  hasEnded,
  type Protocol,
  phaseDue,
  phaseInForce,
  phasesOf,
  stepRefusals,
} from '#core/episode/protocol/protocol.ts';
import {
  endFields,
  phaseConsistent,
  phaseFields,
  protocolConsistent,
  protocolFields,
  seenFields,
  stepFields,
} from '#core/episode/protocol/protocol-fields.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '#data/access.ts';
import { evaluateRecord } from '#data/decision/evaluate.ts';
import {
  beginProtocol,
  protocolsOf,
  rewritePhaseInForce,
  stepProtocol,
  writePhase,
} from '#data/episode/protocols.ts';
import { madeId } from '../../outputs.ts';

interface Of {
  readonly access: Access;
  readonly patient: { readonly id: string };
}

/** In one transaction with what follows from it. */
const writing = ({ access, patient }: Of, write: () => Promise<string>): Promise<string> =>
  access.store.write(async () => {
    const id = await write();
    await evaluateRecord(access, patient.id, { cause: 'clinician', sessionId: null, morningId: null });
    return id;
  });

const openProtocol = async ({ access, patient }: Of, id: string): Promise<Protocol> => {
  const found = (await protocolsOf(access, patient.id)).find((one) => one.id === id);
  if (!found) throw new Problem('not-found', 'This record has no such protocol; open the page again.');
  if (hasEnded(found)) throw new Problem('conflict', 'This protocol has ended; begin another one.');
  return found;
};

const protocolId = z.string().max(64);
/** When the phase that the page showed was written; null = it showed none of this place. */
const seen = z.number().nullable().optional();

/** What is confirmed or written anew is what was read. */
const requireAsSeen = (of: Protocol, place: number, at: number | null | undefined): void => {
  const written = phasesOf(of).find((phase) => phase.place === place)?.recordedAt ?? null;
  if (at !== undefined && at !== written)
    throw new Problem('conflict', `Phase ${place} was written meanwhile. Load the page and read it first.`);
};

export const protocolsRouter = router({
  list: recordProcedure.query(async ({ ctx }) => {
    const all = await protocolsOf(ctx.access, ctx.patient.id);
    return all.toReversed().map((one) => ({
      ...one,
      phases: phasesOf(one),
      rewritten: one.phases.length - phasesOf(one).length,
      inForce: phaseInForce(one, ctx.access.day)?.place ?? null,
      due: phaseDue(one, ctx.access.day)?.place ?? null,
      hasEnded: hasEnded(one),
    }));
  }),

  begin: recordProcedure
    .input(z.object({ protocol: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => {
      const row = checked(protocolFields, input.protocol, (fields) =>
        protocolConsistent(fields, ctx.access.day),
      );
      return beginProtocol(ctx.access, ctx.patient.id, { ...row, joint: row.joint as Joint });
    }),

  writePhase: recordProcedure
    .input(z.object({ protocolId, seen, phase: z.unknown(), step: z.unknown().optional() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      writing(ctx, async () => {
        const of = await openProtocol(ctx, input.protocolId);
        const row = checked(phaseFields, input.phase, (fields) =>
          phaseConsistent(fields, { joint: of.joint, on: of.on, phases: phasesOf(of) }),
        );
        requireAsSeen(of, row.place, input.seen);
        if (phaseInForce(of, ctx.access.day)?.place !== row.place)
          return writePhase(ctx.access, ctx.patient.id, of, row);
        const step = checked(seenFields, input.step ?? {});
        return rewritePhaseInForce(ctx.access, ctx.patient.id, of, row, step.seen);
      }),
    ),

  confirm: recordProcedure
    .input(z.object({ protocolId, seen, step: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      writing(ctx, async () => {
        const of = await openProtocol(ctx, input.protocolId);
        const step = checked(stepFields, input.step, ({ place }) => stepRefusals(of, place, ctx.access.day));
        requireAsSeen(of, step.place, input.seen);
        return stepProtocol(ctx.access, ctx.patient.id, of, step);
      }),
    ),

  /** From then on nothing of it binds; limits entered by themselves go on binding. */
  end: recordProcedure
    .input(z.object({ protocolId, end: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) =>
      writing(ctx, async () => {
        const of = await openProtocol(ctx, input.protocolId);
        const { reason } = checked(endFields, input.end);
        return stepProtocol(ctx.access, ctx.patient.id, of, { place: ended, seen: reason });
      }),
    ),
});
