/** Letters to those who treat the same person: drafts that are saved, signed once as they were read, voided with a reason. */
import { z } from 'zod';
import { letterFields } from '#api/inputs/letter-fields.ts';
import { digestOf, keptLetter, type MadeLetter, makeLetter, readLetter } from '#api/papers/kept-letter.ts';
import { chosenNotes } from '#api/papers/letter-notes.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { isGiven } from '#core/episode/consent.ts';
import {
  letterState,
  ownSentences,
  signatureFields,
  summaryFields,
  summaryParts,
  voidFields,
} from '#core/episode/letters/letter.ts';
import type { Access } from '#data/access.ts';
import { consentsOf } from '#data/episode/consents.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import {
  earlierAddressees,
  type KeptLetter,
  lettersOf,
  saveDraft,
  signedBeforeAs,
  signLetter,
  voidLetter,
} from '#data/episode/letters.ts';
import { say } from '#messages/en/staff/papers/letters.ts';
import { Problem } from '../../errors.ts';
import { checked } from '../../inputs/checked.ts';
import { nothing } from '../../outputs.ts';

const id = z.string().max(64);
const seenLetter = z.object({ letterId: id, seen: z.number().int().min(1) });

const mayTellOthers = async (access: Access, patientId: string): Promise<boolean> =>
  isGiven(await consentsOf(access, patientId), 'sharing');

const inList = (letter: KeptLetter) => {
  const { letterId, draft, signature, voided } = letter;
  return {
    letterId,
    state: letterState(letter),
    name: draft.name,
    organisation: draft.organisation,
    language: draft.language,
    savedAt: draft.recordedAt,
    savedBy: draft.byName,
    signed: signature && { on: signature.day, by: signature.byName },
    voided: voided && { on: voided.day, by: voided.byName, reason: voided.reason },
  };
};

const draftNow = async (
  access: Access,
  patientId: string,
  { letterId, seen }: z.infer<typeof seenLetter>,
): Promise<KeptLetter> => {
  const letter = await keptLetter(access, patientId, letterId);
  if (letterState(letter) !== 'draft') throw new Problem('conflict', say('not-a-draft'));
  if (letter.version !== seen) throw new Problem('conflict', say('saved-since'));
  return letter;
};

/** Of sentences in somebody's own words: what the record says now, where it said something else when they were written. */
const outrun = ({ own }: KeptLetter['draft'], made: MadeLetter['made']): readonly string[] =>
  summaryParts.flatMap((part) => {
    const one = own[part];
    if (!one || one.instead === made[part]) return [];
    return [say('own-outrun', { text: one.text, now: made[part] || say('nothing-made') })];
  });

/** Nothing is sent from here, but a letter is signed to be: asked before, as one question after another. */
const requireConfirmed = (questions: readonly string[], isConfirmed: boolean): void => {
  if (questions.length === 0 || isConfirmed) return;
  throw new Problem('not-confirmed', questions.join(' '), { questions });
};

const list = recordProcedure.query(async ({ ctx: { access, patient } }) => ({
  letters: (await lettersOf(access, patient.id)).map(inList),
  addressees: await earlierAddressees(access, patient.id),
  referrer: (await episodesOf(access, patient.id)).at(-1)?.referrer ?? null,
  mayTellOthers: await mayTellOthers(access, patient.id),
}));

const get = recordProcedure.input(z.object({ letterId: id })).query(async ({ ctx, input }) => {
  const { access, patient } = ctx;
  const letter = await keptLetter(access, patient.id, input.letterId);
  const { draft, version, signature } = letter;
  const read = await readLetter(access, patient, letter);
  return {
    ...inList(letter),
    ...read,
    seen: version,
    draft: { ...draft, noteIds: [...draft.noteIds] },
    signedAs: signature && { role: signature.role, registration: signature.registration },
    digest: digestOf(read.words),
    signsAs: await signedBeforeAs(access),
    mayTellOthers: await mayTellOthers(access, patient.id),
  };
});

/** `seen` null begins a letter; the notes chosen for it stay with it. */
const save = recordProcedure
  .input(z.object({ at: seenLetter.nullable(), letter: z.unknown(), notes: z.array(id).max(20).default([]) }))
  .mutation(async ({ ctx: { access, patient }, input }) => {
    const letter = checked(letterFields, input.letter);
    const before = input.at && (await draftNow(access, patient.id, input.at));
    const noteIds = before ? before.draft.noteIds : input.notes;
    await chosenNotes(access, patient.id, noteIds);
    // Her own sentences stay hers in another language as well: nothing typed is lost.
    const own = before ? before.draft.own : {};
    const letterId = await saveDraft(access, patient.id, input.at, { ...letter, noteIds, own });
    if (!letterId) throw new Problem('conflict', say('saved-since'));
    return { letterId };
  });

const summarise = recordProcedure
  .input(z.object({ at: seenLetter, summary: z.unknown() }))
  .output(nothing)
  .mutation(async ({ ctx: { access, patient }, input }) => {
    const typed = checked(summaryFields, input.summary);
    const { draft } = await draftNow(access, patient.id, input.at);
    const { made } = await makeLetter(access, patient, draft);
    const own = ownSentences(typed, made, draft.own, access.actorName);
    const { recordedAt: _at, byName: _by, ...kept } = draft;
    if (!(await saveDraft(access, patient.id, input.at, { ...kept, own })))
      throw new Problem('conflict', say('saved-since'));
  });

/** `digest` tells which words were read. In one write: the record may not change between reading and signing. */
const sign = recordProcedure
  .input(
    z.object({
      at: seenLetter,
      digest: z.string().max(64),
      signature: z.unknown(),
      confirmed: z.boolean().default(false),
    }),
  )
  .output(nothing)
  .mutation(({ ctx: { access, patient }, input }) =>
    access.store.write(async () => {
      const { role, registration } = checked(signatureFields, input.signature);
      const { draft } = await draftNow(access, patient.id, input.at);
      const { words: read, made } = await makeLetter(access, patient, draft);
      if (digestOf(read) !== input.digest) throw new Problem('conflict', say('record-changed'));
      const isAgreed = await mayTellOthers(access, patient.id);
      const questions = [...(isAgreed ? [] : [say('not-agreed-sign')]), ...outrun(draft, made)];
      requireConfirmed(questions, input.confirmed);
      const signer = { name: access.actorName, role, registration };
      const { words } = await makeLetter(access, patient, draft, signer);
      if (!(await signLetter(access, patient.id, input.at, { role, registration, words })))
        throw new Problem('conflict', say('saved-since'));
    }),
  );

const declareVoid = recordProcedure
  .input(z.object({ letterId: id, voiding: z.unknown() }))
  .output(nothing)
  .mutation(async ({ ctx: { access, patient }, input }) => {
    const { reason } = checked(voidFields, input.voiding);
    await keptLetter(access, patient.id, input.letterId);
    if (!(await voidLetter(access, patient.id, input.letterId, reason)))
      throw new Problem('conflict', say('void-already'));
  });

export const lettersRouter = router({ list, get, save, summarise, sign, declareVoid });
