/** Letters: drafts that are kept, signed once as they were read, void with a reason, and never changed. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { flushReads } from '#data/audit/audit.ts';
import { asClinician } from '#tests/support/callers.ts';
import { type CareSetting, careSetting, colleague, inCare } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
  await inCare(at);
});
afterEach(() => at.store.close());

const letters = (day?: number) => at.clinician(day).clinician.letters;
const of = () => ({ patientId: at.patientId });
const addressed = (over: object = {}) => ({
  name: 'Dr Ada Verrin',
  role: 'general practitioner',
  organisation: 'Hill Practice',
  address: null,
  copies: 'Dr Second\nWard 3',
  toPatient: true,
  language: 'en',
  ...over,
});
const begin = async (over: object = {}) =>
  (await letters().save({ ...of(), at: null, letter: addressed(over) })).letterId;
const get = (letterId: string, day?: number) => letters(day).get({ ...of(), letterId });
const seen = async (letterId: string) => ({ letterId, seen: (await get(letterId)).seen });
const signature = { role: 'physiotherapist', registration: 'PT 123' };
const sign = async (letterId: string, over: object = {}) =>
  letters().sign({
    ...of(),
    at: await seen(letterId),
    digest: (await get(letterId)).digest,
    signature,
    confirmed: true,
    ...over,
  });
const summary = (over: object = {}) => ({ care: null, outcomes: null, course: null, now: null, ...over });
const lineFrom = (words: { readonly before: readonly { readonly lines: readonly string[] }[] }) =>
  words.before.flatMap(({ lines }) => lines).join(' ');

describe('a draft', () => {
  it('is kept in versions, says it is one, and is made anew from the record each time', async () => {
    const letterId = await begin();
    const first = await get(letterId);
    expect(first).toMatchObject({ state: 'draft', seen: 1, draft: { name: 'Dr Ada Verrin' } });
    expect(first.words.draft).toBe('DRAFT – not signed');
    expect(first.words.copies).toBe('Copies: Dr Second; Ward 3; the patient');
    await letters().save({ ...of(), at: { letterId, seen: 1 }, letter: addressed({ name: 'Dr Other' }) });
    expect(await get(letterId)).toMatchObject({ seen: 2, draft: { name: 'Dr Other' } });
  });

  it('is refused by the name of its field, and where somebody else saved it since', async () => {
    await expect(begin({ name: '' })).rejects.toThrow();
    await expect(begin({ language: 'xx' })).rejects.toThrow();
    await expect(begin({ address: 'x'.repeat(401) })).rejects.toThrow(/400/);
    const letterId = await begin();
    await letters().save({ ...of(), at: { letterId, seen: 1 }, letter: addressed() });
    const late = letters().save({ ...of(), at: { letterId, seen: 1 }, letter: addressed({ name: 'Late' }) });
    await expect(late).rejects.toThrow(/saved or signed since/);
    expect((await get(letterId)).draft.name).toBe('Dr Ada Verrin');
  });

  it('is read as it was saved last, also where the clock was put back between', async () => {
    const letterId = await begin();
    const save = (day: number, name: string, seen: number) =>
      letters(day).save({ ...of(), at: { letterId, seen }, letter: addressed({ name }) });
    await save(2, 'Dr Second', 1);
    await save(1, 'Dr Third', 2);
    expect(await get(letterId)).toMatchObject({ seen: 3, draft: { name: 'Dr Third' } });
    await save(1, 'Dr Fourth', 3);
    expect((await get(letterId)).draft.name).toBe('Dr Fourth');
  });

  it('takes a sentence of the clinician’s own, shows it as hers, and gives the record’s back for an empty field', async () => {
    const letterId = await begin();
    const { made } = await get(letterId);
    const own = summary({ now: 'She walks to the market again.', care: made?.care });
    await letters().summarise({ ...of(), at: await seen(letterId), summary: own });
    const after = await get(letterId);
    expect(Object.keys(after.draft.own)).toEqual(['now']);
    expect(after.draft.own.now).toMatchObject({ by: 'clinician-a', instead: made?.now });
    expect(lineFrom(after.words)).toContain('She walks to the market again. *');
    expect(lineFrom(after.words)).toContain('* In the words of clinician-a');
    await letters().save({ ...of(), at: await seen(letterId), letter: addressed({ language: 'de' }) });
    expect(lineFrom((await get(letterId)).words)).toContain('She walks to the market again. *');
    await letters().summarise({ ...of(), at: await seen(letterId), summary: summary() });
    expect((await get(letterId)).draft.own).toEqual({});
  });

  it('offers earlier addressees again: this person’s, and of others only a practice or hospital', async () => {
    await begin();
    await begin({ name: 'Her neighbour', organisation: null, address: '1 Road' });
    const names = async (patientId: string) =>
      (await letters().list({ patientId })).addressees.map(({ name }) => name);
    expect(await names(at.patientId)).toEqual(['Her neighbour', 'Dr Ada Verrin']);
    const other = at.store.reader.client
      .prepare("SELECT id FROM patient WHERE clinic_id = 'a' AND id <> ?")
      .get(at.patientId) as { id: string };
    expect(await names(other.id)).toEqual(['Dr Ada Verrin']);
    expect((await letters().list(of())).referrer).toBe('Dr Referrer');
  });

  it('leaves out a chosen note that was entered in error since, and says so', async () => {
    const note = { contact: 'clinic', day: '2026-03-02', text: 'Her knee was cool.' };
    const empty = { subjective: null, objective: null, assessment: null, plan: null };
    const { visitNotes, corrections } = at.clinician().clinician;
    const subjectId = await visitNotes.record({ ...of(), note: { ...empty, ...note } });
    const { letterId } = await letters().save({
      ...of(),
      at: null,
      letter: addressed(),
      notes: [subjectId],
    });
    expect(JSON.stringify((await get(letterId)).words)).toContain('Her knee was cool.');
    await corrections.enterInError({ ...of(), subject: 'note', subjectId, reason: 'Another’s.' });
    const after = await get(letterId);
    expect(after.notesGone).toBe(1);
    expect(JSON.stringify(after.words)).not.toContain('Her knee was cool.');
  });
});

describe('a signature', () => {
  it('keeps the words as they were read, whatever the record says later', async () => {
    const letterId = await begin();
    await sign(letterId);
    const signed = await get(letterId);
    expect(signed).toMatchObject({ state: 'signed', made: null, signed: { by: 'clinician-a' } });
    expect(signed.words.draft).toBeNull();
    expect(signed.words.signature).toBe(
      'Signed: clinician-a, physiotherapist, registration number PT 123, 2 Mar 2026',
    );
    await at.clinician(9).clinician.care.addLimit({
      ...of(),
      limit: {
        joint: 'right-knee',
        kind: 'load-limit',
        limitKg: 3,
        from: '2026-03-11',
        to: null,
        author: 'Dr Surgeon',
        remark: null,
      },
    });
    expect((await get(letterId, 9)).words).toEqual(signed.words);
    const again = letters().save({ ...of(), at: { letterId, seen: 1 }, letter: addressed() });
    await expect(again).rejects.toThrow(/signed or void/);
    await expect(sign(letterId)).rejects.toThrow(/signed or void/);
  });

  it('is refused where the record changed since it was read, and no word of it is kept', async () => {
    const letterId = await begin();
    await expect(sign(letterId, { digest: 'another' })).rejects.toThrow(/record has changed/);
    await expect(sign(letterId, { signature: { role: '', registration: null } })).rejects.toThrow();
    expect((await get(letterId)).state).toBe('draft');
  });

  it('stands under no word that was not read, whoever else enters something in the same moment', async () => {
    const letterId = await begin();
    const { words: read, digest } = await get(letterId);
    const limit = (limitKg: number) => {
      const of = { joint: 'right-knee', kind: 'load-limit', limitKg, from: '2026-03-02', to: null } as const;
      return { ...of, author: 'Dr Surgeon', remark: null };
    };
    const signing = letters()
      .sign({ ...of(), at: { letterId, seen: 1 }, digest, signature, confirmed: true })
      .then(
        () => true,
        () => false,
      );
    const { care } = at.clinician().clinician;
    await Promise.all([3, 2].map((kg) => care.addLimit({ ...of(), limit: limit(kg) })));
    const isSigned = await signing;
    const { words } = await get(letterId);
    const { draft, signature: line } = read;
    if (isSigned) expect({ ...words, draft, signature: line }).toEqual(read);
    else expect((await get(letterId)).state).toBe('draft');
  });

  it('is asked about first where the patient has not agreed that others are told', async () => {
    const letterId = await begin();
    expect((await get(letterId)).mayTellOthers).toBe(false);
    await expect(sign(letterId, { confirmed: false })).rejects.toThrow(/has not agreed/);
    const { consents } = at.clinician().clinician;
    await consents.record({ ...of(), kind: 'sharing', act: 'given', ...proposedWording });
    await sign(letterId, { confirmed: false });
    expect((await get(letterId)).state).toBe('signed');
  });

  it('is asked about first where the record says something else than when a sentence was put into own words', async () => {
    const letterId = await begin();
    const { consents, prescriptions } = at.clinician().clinician;
    await consents.record({ ...of(), kind: 'sharing', act: 'given', ...proposedWording });
    await letters().summarise({
      ...of(),
      at: await seen(letterId),
      summary: summary({ care: 'On low load.' }),
    });
    await prescriptions.end({ ...of(), prescriptionId: at.item.prescriptionId, reason: 'Too heavy.' });
    const asked = sign(letterId, { confirmed: false });
    await expect(asked).rejects.toThrow(/“On low load.”.*now says.*No exercise/s);
    await sign(letterId);
    expect((await get(letterId)).state).toBe('signed');
  });

  it('offers the role and number under the last letter again, and to nobody else', async () => {
    await sign(await begin());
    const letterId = await begin();
    expect((await get(letterId)).signsAs).toEqual(signature);
    const actorId = await colleague(at, 'Rowan');
    const rowan = asClinician({ ...at.accessOn(1), actorId }).clinician.letters;
    expect((await rowan.get({ ...of(), letterId })).signsAs).toBeNull();
  });
});

describe('a letter that was wrong', () => {
  it('is void with its reason, once, stays in the list, and keeps its words', async () => {
    const letterId = await begin();
    await sign(letterId);
    const { words } = await get(letterId);
    await expect(letters().declareVoid({ ...of(), letterId, voiding: { reason: '' } })).rejects.toThrow();
    await letters().declareVoid({ ...of(), letterId, voiding: { reason: 'Wrong knee.' } });
    expect(await get(letterId)).toMatchObject({
      state: 'void',
      words,
      voided: { reason: 'Wrong knee.', by: 'clinician-a' },
    });
    await expect(letters().declareVoid({ ...of(), letterId, voiding: { reason: 'Again.' } })).rejects.toThrow(
      /void already/,
    );
    expect((await letters().list(of())).letters).toMatchObject([{ letterId, state: 'void' }]);
  });

  it('leaves a row of the audit for each act, and for its being read', async () => {
    const letterId = await begin();
    await sign(letterId);
    await letters().declareVoid({ ...of(), letterId, voiding: { reason: 'Wrong knee.' } });
    await flushReads(at.store);
    const subjects = (
      at.store.reader.client.prepare('SELECT subject FROM audit').all() as readonly { subject: string }[]
    ).map(({ subject }) => subject);
    for (const one of ['letter-draft', 'letter-signature', 'letter-void', 'clinician.letters.get'])
      expect(subjects).toContain(one);
  });

  it('is of this record alone', async () => {
    const missing = get('no-such-letter');
    await expect(missing).rejects.toThrow(/no such letter/);
  });
});
