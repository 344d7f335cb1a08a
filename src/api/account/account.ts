/** A person's own sign-in: what it is, where it is open, proving it again, changing the passphrase. */
import { z } from 'zod';
import { guessedFirst } from '#data/accounts/guessable-passphrase.ts';
import { passkeysOf, removePasskey } from '#data/accounts/passkeys.ts';
import { changePassphrase, passphraseLength, passphraseMatches } from '#data/accounts/passphrase.ts';
import {
  endSignInSessions,
  noteProof,
  signInFacts,
  signInSessions,
} from '#data/accounts/sign-in-sessions.ts';
import { coveringClinicianOf } from '#data/clinic/covering-clinicians.ts';
import { clinicOf } from '#data/patients/people.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Text } from '#messages/text.ts';
import { Problem } from '../errors.ts';
import { freshMinutes, isFresh } from '../fresh-sign-in.ts';
import { nothing } from '../outputs.ts';
import type { Person } from '../person.ts';
import { personProcedure, router, withFreshSignIn } from '../trpc.ts';
import { provePassphrase } from './prove-passphrase.ts';

const requireRight = async (
  access: Parameters<typeof noteProof>[0],
  sessionId: string,
  typed: string,
  field: string,
): Promise<void> => {
  const proof = await provePassphrase(access, sessionId, () =>
    passphraseMatches(access.store, access.actorId, typed),
  );
  if (proof.is === 'too-often') {
    throw new Problem('too-often', refusalText('wait-seconds', { seconds: proof.seconds }));
  }
  if (proof.is === 'wrong') {
    const text = refusalText('wrong-passphrase');
    throw new Problem('refused', text, {
      refusals: [{ field, code: 'inconsistent', reason: text.en, text }],
    });
  }
};

/** What somebody who knows the person would try. */
const ownWords = async (
  access: Parameters<typeof noteProof>[0],
  { email, name }: Person,
): Promise<readonly string[]> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  return [email, email.split('@')[0] ?? '', name, clinic?.name ?? ''];
};

/** Why the new passphrase is not taken; null when it is. */
const passphraseRefused = (
  { current, next }: { readonly current: string; readonly next: string },
  own: readonly string[],
): Text | null => {
  if (next.length < passphraseLength.min)
    return refusalText('passphrase-too-short', { count: passphraseLength.min });
  if (next === current) return refusalText('passphrase-unchanged');
  const guessed = guessedFirst(next, own);
  return guessed && refusalText(`passphrase-${guessed}`);
};

const typedPassphrase = z.string().min(1).max(passphraseLength.max);

const freshPerson = personProcedure
  .meta({
    roles: ['clinician', 'administrator', 'reception', 'patient'],
    guard: 'own sign-in, fresh sign-in',
  })
  .use(withFreshSignIn);

export const accountRouter = router({
  me: personProcedure.query(async ({ ctx: { person, access } }) => ({
    ...(await signInFacts(access)),
    name: person.name,
    email: person.email,
    role: person.role,
    administers: person.administers,
    setUp: person.setUp,
    sessionId: person.sessionId,
    isFresh: isFresh(person, Date.now()),
    freshMinutes,
  })),

  /** To staff, that nobody is named who takes over an urgent item not acknowledged in time. */
  isUncovered: personProcedure.query(
    async ({ ctx: { person, access } }) =>
      person.role !== 'patient' && (await coveringClinicianOf(access)) === null,
  ),

  sessions: personProcedure.query(({ ctx }) => signInSessions(ctx.access)),

  endSession: personProcedure
    .input(z.object({ sessionId: z.string().min(1).max(64) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const ended = await endSignInSessions(ctx.access, input.sessionId);
      if (ended === 0) throw new Problem('conflict', refusalText('sign-in-ended'));
    }),

  /** Also the one that asks. */
  endEverywhere: personProcedure
    .output(z.number())
    .mutation(({ ctx }) => endSignInSessions(ctx.access, null)),

  passkeys: personProcedure.query(({ ctx }) => passkeysOf(ctx.access)),

  removePasskey: freshPerson
    .input(z.object({ passkeyId: z.string().min(1).max(1400) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const isGone = await removePasskey(ctx.access, input.passkeyId);
      if (!isGone) throw new Problem('conflict', 'It has already been removed.');
    }),

  prove: personProcedure
    .input(z.object({ passphrase: typedPassphrase }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      await requireRight(ctx.access, ctx.person.sessionId, input.passphrase, 'input.passphrase');
      await noteProof(ctx.access, ctx.person.sessionId);
    }),

  changePassphrase: personProcedure
    .input(z.object({ current: typedPassphrase, next: z.string().max(passphraseLength.max) }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      await requireRight(ctx.access, ctx.person.sessionId, input.current, 'input.current');
      const text = passphraseRefused(input, await ownWords(ctx.access, ctx.person));
      if (text) {
        throw new Problem('refused', text, {
          refusals: [{ field: 'input.next', code: 'outside-validity', reason: text.en, text }],
        });
      }
      await changePassphrase(ctx.access, ctx.person.sessionId, input.next);
    }),
});
