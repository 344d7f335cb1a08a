/** The base of every procedure: who may call it is decided here, before any of its code runs. */
import { initTRPC } from '@trpc/server';
import { z } from 'zod';
import type { Access } from '#data/access.ts';
import { type Patient, patientOf } from '#data/people.ts';
import { Problem } from './errors.ts';
import type { Person } from './person.ts';

export interface ApiContext {
  readonly person: Person | null;
  /** Null when nobody is signed in. */
  readonly access: Access | null;
  /** Clinical minus system time, for phones of the demo. */
  readonly clockOffset: number;
}

/** What `npm run procedures` and the access test print of a procedure. */
export interface ProcedureMeta {
  readonly roles: readonly ('clinician' | 'administrator' | 'patient' | 'anyone')[];
  /** In words: what is checked beside the role. */
  readonly guard: string;
}

const t = initTRPC
  .context<ApiContext>()
  .meta<ProcedureMeta>()
  .create({
    defaultMeta: { roles: [], guard: 'none' },
    errorFormatter: ({ shape, error }) => ({
      code: shape.code,
      message:
        error.code === 'INTERNAL_SERVER_ERROR'
          ? 'Something went wrong on our side. What you entered is still on this page; try again.'
          : shape.message,
      data: {
        code: shape.data.code,
        httpStatus: shape.data.httpStatus,
        path: shape.data.path,
        problem: error instanceof Problem ? error.problem : null,
        refusals: error instanceof Problem ? error.refusals : [],
        questions: error instanceof Problem ? error.questions : [],
      },
    }),
  });

export const router = t.router;
export const callerFactory = t.createCallerFactory;

const signedIn = t.procedure.use(({ ctx, next }) => {
  if (!ctx.person || !ctx.access)
    throw new Problem('signed-out', 'Sign in to go on. What you entered is still on this page.');
  return next({ ctx: { ...ctx, person: ctx.person, access: ctx.access } });
});

export const personProcedure = signedIn.meta({
  roles: ['clinician', 'administrator', 'patient'],
  guard: 'signed in',
});

export const clinicianProcedure = signedIn
  .meta({ roles: ['clinician'], guard: 'own clinic' })
  .use(({ ctx, next }) => {
    if (ctx.person.role !== 'clinician')
      throw new Problem('not-yours', 'This is for clinicians of the clinic.');
    return next({ ctx });
  });

/** A clinician on one patient of their own clinic. The patient is looked up before the procedure runs. */
export const recordProcedure = clinicianProcedure
  .meta({ roles: ['clinician'], guard: 'patient of own clinic' })
  .input(z.object({ patientId: z.string().min(1).max(64) }))
  .use(async ({ ctx, input, next }) => {
    const patient = await patientOf(ctx.access, input.patientId);
    if (!patient) throw new Problem('not-found', 'There is no such patient in your clinic.');
    return next({ ctx: { ...ctx, patient } });
  });

/** A patient on the own record; the id comes from the session, never from the input. */
export const patientProcedure = signedIn
  .meta({ roles: ['patient'], guard: 'own record' })
  .use(async ({ ctx, next }) => {
    if (ctx.person.role !== 'patient' || !ctx.person.patientId) {
      throw new Problem('not-yours', 'This page is for patients.');
    }
    const patient: Patient | null = await patientOf(ctx.access, ctx.person.patientId);
    if (!patient) throw new Problem('not-found', 'Your record was not found. Ring the clinic.');
    return next({ ctx: { ...ctx, patient } });
  });
