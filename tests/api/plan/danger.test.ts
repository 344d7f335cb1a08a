/** A warning sign is closed by a person, through the procedures as three people use them. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { asPerson } from '#tests/support/callers.ts';
import { accessOf, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { workingPatient } from '#tests/support/working-patient.ts';

const minute = 60_000;
/** Half past seven on the morning after. */
const morning = Date.parse('2026-03-03T07:30:00Z');
const later = (minutes: number): number => morning + minutes * minute;

describe('a warning sign', () => {
  let store: Store;
  let patientId: string;
  let work: ReturnType<typeof workingPatient>;
  beforeEach(async () => {
    store = freshStore();
    ({ patientId } = await twoClinics(store));
    work = workingPatient(store, patientId);
    await work.signed();
  });
  afterEach(() => store.close());

  const clinicianAt = (at: number) =>
    asPerson(accessOf(store, 'a', 'clinician-a', at, 'Clinician A'), { provedAt: Date.now() }).clinician;
  const todayAt = (at: number) => work.patientAt(at).patient.today.get();
  const itemsAt = async (at: number) => {
    const { lines } = await clinicianAt(at).worklist.list({});
    const line = lines.find((one) => one.patientId === patientId);
    return line ? [line.item, ...line.others] : [];
  };
  const kindsAt = async (at: number) => (await itemsAt(at)).map(({ kind }) => kind);
  const openAt = async (at: number) =>
    (await clinicianAt(at).danger.get({ patientId })).plan.signs.filter(({ endedBy }) => endedBy === null);
  const signIdAt = async (at: number) => (await openAt(at))[0]!.sign.id;
  const told = () => work.answeredMorning(morning, 2, ['calf-pain-swelling']);

  const contactAt = async (at: number, more: Record<string, unknown> = {}) =>
    clinicianAt(at).danger.recordContact({
      patientId,
      contact: {
        signIds: [await signIdAt(at)],
        decisionIds: [],
        reached: 'patient',
        found: 'Calf soft, no swelling.',
        advised: 'Ring again if it swells or hurts.',
        referredTo: null,
        againInHours: null,
        ...more,
      },
    });
  const nobodyAt = (at: number, againInHours = 1) =>
    contactAt(at, { reached: 'nobody', found: null, advised: null, againInHours });

  const resumeAt = async (at: number) => {
    const { plan } = await clinicianAt(at).danger.get({ patientId });
    const [pause] = plan.pauses;
    return clinicianAt(at).danger.resume({
      patientId,
      pauseId: pause!.pause.id,
      itemIds: plan.items.map(({ itemId }) => itemId),
      reason: 'Examined today.',
    });
  };

  it('told on the phone stops everything there and stands first on the worklist', async () => {
    await told();
    const view = await todayAt(later(1));
    expect(view.isStopped).toBe(true);
    expect(view.exercises.map(({ today }) => today)).toEqual(['none']);
    expect(view.danger.map(({ en }) => en)).toEqual([
      'You told us of a warning sign. Do no exercises until we have spoken with you.',
    ]);
    expect((await kindsAt(later(1)))[0]).toBe('red-flag');
  });

  it('is open again, and what was resumed paused again, once the contact that ended it is entered in error', async () => {
    await told();
    const contactId = await contactAt(later(2));
    expect(await openAt(later(3))).toEqual([]);
    await resumeAt(later(3));
    expect((await todayAt(later(4))).exercises.map(({ today }) => today)).not.toContain('none');
    await clinicianAt(later(5)).corrections.enterInError({
      patientId,
      subject: 'contact',
      subjectId: contactId,
      reason: 'Recorded in the row of another patient.',
    });
    expect(await openAt(later(6))).toHaveLength(1);
    expect((await todayAt(later(6))).exercises.map(({ today }) => today)).toEqual(['none']);
    expect((await kindsAt(later(6)))[0]).toBe('red-flag');
    const { corrections } = clinicianAt(later(6));
    expect(await corrections.list({ patientId })).toMatchObject([
      { subject: 'contact', now: null, was: { found: 'Calf soft, no swelling.' } },
    ]);
  });

  it('stays acknowledged: that somebody has read of it is not taken back', async () => {
    await told();
    const { key } = (await itemsAt(later(1)))[0]!;
    await clinicianAt(later(2)).worklist.acknowledge({ patientId, key });
    await expect(
      clinicianAt(later(3)).worklist.takeBack({ patientId, key, act: 'acknowledge' }),
    ).rejects.toThrow(/not taken back/);
    expect((await itemsAt(later(4)))[0]!.acknowledgedBy).toBe('Clinician A');
  });

  it('is ended by no contact that was corrected into naming it', async () => {
    await told();
    const contactId = await nobodyAt(later(2));
    const correct = (signIds: readonly string[]) =>
      clinicianAt(later(3)).corrections.enterInError({
        patientId,
        subject: 'contact',
        subjectId: contactId,
        reason: 'She answered after all.',
        replacement: {
          signIds,
          decisionIds: [],
          reached: 'patient',
          found: 'Calf soft.',
          advised: 'Ring again.',
          referredTo: null,
          againInHours: null,
        },
      });
    await expect(correct(['another-sign'])).rejects.toThrow(/about what the first one was about/);
    await correct([await signIdAt(later(3))]);
    expect(await openAt(later(4))).toEqual([]);
  });

  it('is not removed from the worklist by accepting the decision it came with', async () => {
    await told();
    const { decisions } = await clinicianAt(later(1)).review.get({ patientId });
    const response = {
      decisionId: decisions.at(-1)!.id,
      kind: 'accept',
      decision: null,
      reason: '',
      until: null,
    };
    await clinicianAt(later(1)).review.respond({ patientId, response });
    expect(await kindsAt(later(2))).toContain('red-flag');
    expect((await todayAt(later(2))).isStopped).toBe(true);
  });

  it('cannot be overruled, neither its own decision nor any other while it is open', async () => {
    await told();
    const { decisions } = await clinicianAt(later(1)).review.get({ patientId });
    for (const { id } of decisions) {
      const response = {
        decisionId: id,
        kind: 'override',
        decision: 'progress',
        reason: 'Sounds like a strain.',
        until: '2026-03-06',
      };
      await expect(clinicianAt(later(1)).review.respond({ patientId, response })).rejects.toMatchObject({
        problem: 'refused',
      });
    }
    expect((await todayAt(later(2))).exercises.map(({ today }) => today)).toEqual(['none']);
  });

  it('acknowledged stays open, and the phone names who has seen it', async () => {
    await told();
    const [item] = await itemsAt(later(1));
    await clinicianAt(later(1)).worklist.acknowledge({ patientId, key: item!.key });
    expect(await openAt(later(2))).toHaveLength(1);
    expect((await todayAt(later(2))).danger[0]?.en).toBe(
      'Your exercises are paused. Clinician A knows why and will speak with you. Do no exercises until then.',
    );
    expect(await kindsAt(later(2))).toContain('red-flag');
  });

  it('stays open by a contact that reached nobody, which is counted and sets when it is tried again', async () => {
    await told();
    await nobodyAt(later(5));
    await nobodyAt(later(70));
    const [state] = await openAt(later(71));
    expect([state?.failedAttempts, state?.contactDueAt, state?.state]).toEqual([2, later(130), 'attempted']);
    expect((await todayAt(later(71))).danger[0]?.en).toMatch(/^We tried to reach you and could not\./);
    expect((await itemsAt(later(71)))[0]?.sentence).toContain('2 contacts tried, nobody reached');
  });

  it.each([
    [0, false],
    [1, true],
    [3, true],
    [4, true],
    [5, false],
    [24, false],
    [25, false],
  ])(
    'of the same day is tried again within 4 hours, as the clinic has it: in %i hours is taken: %s',
    async (hours, isTaken) => {
      await told();
      const call = nobodyAt(later(5), hours);
      if (isTaken) await call;
      else await expect(call).rejects.toMatchObject({ problem: 'refused' });
    },
  );

  it('is not taken as nobody reached without saying when it is tried again', async () => {
    await told();
    const contact = { reached: 'nobody', found: null, advised: null, againInHours: null };
    await expect(contactAt(later(5), contact)).rejects.toThrow('Enter when it will be tried again');
  });

  it('needs what was found and what was advised before a contact counts as one that reached somebody', async () => {
    await told();
    await expect(contactAt(later(5), { found: null })).rejects.toThrow('Enter what you found.');
    await expect(contactAt(later(5), { advised: null })).rejects.toThrow('Enter what you advised.');
    expect(await openAt(later(6))).toHaveLength(1);
  });

  it.each(['patient', 'carer'])(
    'ends by a contact that reached the %s, while the pause stays until a clinician resumes it exercise by exercise',
    async (reached) => {
      await told();
      await contactAt(later(5), { reached });
      expect(await openAt(later(6))).toEqual([]);
      const paused = await todayAt(later(6));
      expect([paused.isStopped, paused.exercises.map(({ today }) => today)]).toEqual([false, ['none']]);
      expect(paused.danger[0]?.en).toMatch(
        /^Clinician A has spoken with .* stay paused until we start them again\.$/,
      );
      expect(await kindsAt(later(6))).toContain('resume-due');
      await resumeAt(later(7));
      const resumed = await todayAt(later(8));
      expect(resumed.danger).toEqual([]);
      expect(resumed.exercises.map(({ today }) => today)).toEqual(['as-planned']);
      expect(await kindsAt(later(8))).not.toContain('resume-due');
    },
  );

  it('keeps its pause while it is open: resuming is refused and says what comes first', async () => {
    await told();
    await expect(resumeAt(later(2))).rejects.toThrow('First record a contact that reached the patient');
  });

  it('told by telephone is entered from the same list, stops the phone at once and goes through the same steps', async () => {
    await clinicianAt(later(1)).danger.report({
      patientId,
      sign: { flags: ['hot-swollen-joint'], joint: 'right-knee', remark: 'Rang at 7:31.' },
    });
    const view = await todayAt(later(2));
    expect([view.isStopped, view.danger[0]?.en]).toEqual([
      true,
      'Your exercises are paused. Do none of them until we have spoken with you.',
    ]);
    expect(await kindsAt(later(2))).toContain('red-flag');
    await contactAt(later(3));
    expect(await openAt(later(4))).toEqual([]);
  });

  it('is not taken away by a correction of the answer it was told in', async () => {
    await told();
    const { patient } = work.patientAt(later(10));
    const { mornings } = await patient.history.get().then(({ days }) => ({ mornings: days }));
    expect(mornings.length).toBeGreaterThan(0);
    await work.answeredMorning(later(10), 1, []);
    expect(await openAt(later(11))).toHaveLength(1);
  });

  it('a second one after the first has ended stops everything again', async () => {
    await told();
    await contactAt(later(5));
    await resumeAt(later(6));
    await clinicianAt(later(20)).danger.report({
      patientId,
      sign: { flags: ['chest-pain'], joint: null, remark: null },
    });
    const view = await todayAt(later(21));
    expect([view.isStopped, view.contact]).toEqual([true, 'emergency']);
  });

  it('ended by a colleague meanwhile is said, and the second contact is not written', async () => {
    await told();
    const id = await signIdAt(later(1));
    await contactAt(later(2));
    await expect(contactAt(later(3), { signIds: [id] })).rejects.toThrow();
    const contact = {
      signIds: [id],
      decisionIds: [],
      reached: 'patient',
      found: 'Fine.',
      advised: 'Nothing.',
      referredTo: null,
      againInHours: null,
    };
    await expect(clinicianAt(later(3)).danger.recordContact({ patientId, contact })).rejects.toThrow(
      'Clinician A has recorded a contact that ended this warning sign.',
    );
    expect((await clinicianAt(later(4)).danger.get({ patientId })).contacts).toHaveLength(1);
  });
});
