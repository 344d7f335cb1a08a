/** The base of every procedure: who may call it is decided here, before any of its code runs. */
import { initTRPC } from '@trpc/server';
import { noteRead, noteRefused } from '#data/audit/audit.ts';
import { readingOnce } from '#data/database/read-together.ts';
import { mayOpen } from '#data/patients/care-team.ts';
import { patientOf } from '#data/patients/people.ts';
import { refusalText } from '#messages/refusals.ts';
import type { ApiContext, ProcedureMeta } from './context.ts';
import { Problem, toldOf } from './errors.ts';
import { requireFresh } from './fresh-sign-in.ts';
import { requireReadable } from './inputs/readable.ts';
import { ofPatientId, requirePatient } from './patient-of-clinic.ts';
import { requireShown } from './read-only-when-merged.ts';
import { requireNoted } from './require-noted.ts';

const t = initTRPC
  .context<ApiContext>()
  .meta<ProcedureMeta>()
  .create({
    isDev: false,
    defaultMeta: { roles: [], guard: 'none' },
    errorFormatter: ({ shape, error }) => ({
      code: shape.code,
      message: toldOf(error).message,
      data: {
        text: toldOf(error).text,
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

/** Refusals that say somebody reached for what is not theirs. */
const audited = ['not-yours', 'care-team', 'fresh-sign-in'];

/** Every call is counted; what was refused to somebody signed in is audited. */
export const watched = t.procedure.use(async ({ ctx, path, type, next }) => {
  let began = 0; // From its turn on: the calls it waited for are counted themselves.
  const run = () => {
    began = performance.now();
    return next();
  };
  const result = await (ctx.inTurn ? ctx.inTurn(run) : run());
  const error = result.ok ? null : result.error;
  const problem = error instanceof Problem ? error.problem : null;
  if (ctx.access && problem && audited.includes(problem))
    noteRefused(ctx.access, { subject: path, detail: { problem } });
  ctx.observe?.({
    path,
    kind: type,
    outcome: error ? error.code : 'ok',
    problem,
    fault: error?.code === 'INTERNAL_SERVER_ERROR' ? (error.cause ?? error) : null,
    milliseconds: performance.now() - began,
  });
  return result;
});

const signedIn = watched.use(async ({ ctx, getRawInput, next }) => {
  if (!ctx.person || !ctx.access) throw new Problem('signed-out', refusalText('signed-out'));
  requireReadable(await getRawInput());
  return next({ ctx: { person: ctx.person, access: ctx.access } });
});

/** For what concerns the own sign-in: open to everybody signed in, also before it is fully set up. */
export const personProcedure = signedIn.meta({
  roles: ['clinician', 'administrator', 'reception', 'patient'],
  guard: 'own sign-in',
});

const setUpText = {
  passphrase: 'First choose your own passphrase. You signed in with the one you were given.',
  'two-factor': 'First set up one-time codes or sign in with a passkey. Your clinic requires it.',
} as const;

/** Whoever is fully set up. What one question looks at twice is read once; what writes reads inside its write. */
export const settled = signedIn.use(({ ctx, type, next }) => {
  if (ctx.person.setUp !== 'done') throw new Problem('set-up', setUpText[ctx.person.setUp]);
  if (type !== 'query') return next();
  requireNoted(ctx.access);
  return (ctx.reading ?? readingOnce(ctx.access.store.read))(() => next());
});

/** Passphrase or PIN given within the last minutes; stands before what a stolen open session must not do. */
export const withFreshSignIn = t.middleware(({ ctx, next }) => {
  if (ctx.person) requireFresh(ctx.person);
  return next();
});

export const clinicianProcedure = settled
  .meta({ roles: ['clinician'], guard: 'own clinic' })
  .use(({ ctx, next }) => {
    if (ctx.person.role !== 'clinician')
      throw new Problem('not-yours', 'This page is for the clinic’s clinicians.');
    return next();
  });

export const administratorProcedure = settled
  .meta({ roles: ['administrator'], guard: 'own clinic' })
  .use(({ ctx, next }) => {
    if (!ctx.person.administers)
      throw new Problem('not-yours', 'This page is for the clinic’s administrators.');
    return next();
  });

/** For what the clinic is set to, and for its people. */
export const freshAdministrator = administratorProcedure
  .meta({ roles: ['administrator'], guard: 'own clinic, fresh sign-in' })
  .use(withFreshSignIn);

/** Clinicians and administrators of the clinic. */
export const staffProcedure = settled
  .meta({ roles: ['clinician', 'administrator'], guard: 'own clinic' })
  .use(({ ctx, next }) => {
    if (ctx.person.role !== 'clinician' && ctx.person.role !== 'administrator')
      throw new Problem('not-yours', 'This page is for the clinic’s clinicians and administrators.');
    return next();
  });

/** A clinician on a patient of their own clinic, also one kept to a care team: only for opening it with a reason. */
export const nameProcedure = clinicianProcedure
  .meta({ roles: ['clinician'], guard: 'patient of own clinic, not the record' })
  .input(ofPatientId)
  .use(async ({ ctx, input, path, next }) => {
    const patient = await requirePatient(ctx.access, input.patientId, path);
    return next({ ctx: { patient } });
  });

/** A clinician on one patient of their own clinic, looked up first; every opening that writes nothing itself is audited here. */
export const recordProcedure = nameProcedure
  .meta({ roles: ['clinician'], guard: 'patient of own clinic, care team where the clinic restricts' })
  .use(async ({ ctx, path, type, next }) => {
    if (!(await mayOpen(ctx.access, ctx.patient.id))) {
      throw new Problem(
        'care-team',
        'Only the care team can open this record. You can open it if you give a reason; the team is told.',
      );
    }
    if (type === 'query') noteRead(ctx.access, { subject: path, patientId: ctx.patient.id });
    else await requireShown(ctx.access, ctx.patient.id, path);
    return next();
  });

/** The same, for what an open session alone must not do. */
export const freshRecordProcedure = recordProcedure
  .meta({ roles: ['clinician'], guard: 'patient of own clinic, care team where restricted, fresh sign-in' })
  .use(withFreshSignIn);

/** A patient on the own record; the id comes from the session, never from the input. */
export const patientProcedure = settled
  .meta({ roles: ['patient'], guard: 'own record' })
  .use(async ({ ctx, path, type, next }) => {
    if (ctx.person.role !== 'patient' || !ctx.person.patientId) {
      throw new Problem('not-yours', refusalText('patients-only'));
    }
    const patient = await patientOf(ctx.access, ctx.person.patientId);
    if (!patient) throw new Problem('not-found', refusalText('record-not-found'));
    if (type === 'query') noteRead(ctx.access, { subject: path, patientId: patient.id });
    return next({ ctx: { patient } });
  });
