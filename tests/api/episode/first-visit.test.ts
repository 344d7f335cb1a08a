/** A first visit: what was answered is saved part by part, and the proposal is a step of its own. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { firstVisitConsents } from '#core/episode/first-visit/first-visit-steps.ts';
import { minimumSet } from '#core/screening/pre-visit.ts';
import { addPatient } from '#data/patients/people.ts';
import { asked, home, reason, request, usual, visit } from './first-visit-answers.ts';
import { type CareSetting, careSetting, kneeRequest } from './setting.ts';

let at: CareSetting;
let patientId: string;
beforeEach(async () => {
  at = await careSetting();
  const person = { givenName: 'New', familyName: 'Person', birthDay: '1961-04-04' };
  patientId = await addPatient(at.accessOn(0), person);
});
afterEach(() => at.store.close());

const staff = (day = 0, time = '10:00') => at.clinician(day, time).clinician;
const save = (over: object = {}, confirmed = false, day = 0, time = '10:00') =>
  staff(day, time).visits.saveFirstVisit({ patientId, visit: { ...visit, ...over }, confirmed });
const propose = (wanted: object = request) => staff().prescriptions.propose({ patientId, request: wanted });
const outcomesOf = (answer: Awaited<ReturnType<typeof save>>) =>
  Object.fromEntries(answer.parts.map(({ part, outcome }) => [part, outcome]));

describe('a first visit', () => {
  it('goes from an empty patient to a signed low-load exercise, with occlusion still closed', async () => {
    const saved = await save();
    expect(outcomesOf(saved)).toEqual({
      reason: 'saved',
      goal: 'saved',
      screening: 'saved',
      'joints.right-knee': 'saved',
      home: 'saved',
      pressure: 'saved',
      test: 'saved',
    });
    const { dose } = await propose();
    expect(dose).toMatchObject({ method: 'low-load', loadKg: 4 });
    const prescriptionId = await staff().prescriptions.saveDraft({ patientId, request, shown: dose });
    await staff().prescriptions.sign({ patientId, prescriptionId });
    expect((await staff().prescriptions.list({ patientId })).inForce).toHaveLength(1);
    const eligibilities = (method: string) => [
      ...new Set(saved.outcomes.filter((one) => one.method === method).map(({ eligibility }) => eligibility)),
    ];
    expect(eligibilities('low-load')).toEqual(['open-with-precautions']);
    expect(eligibilities('occlusion')).toEqual(['closed']);
    const { episodes } = await staff().episodes.list({ patientId });
    expect(episodes.map((one) => [one.goals, one.changes.map(({ to }) => to)])).toEqual([
      [['Get up from the floor'], ['open', 'active']],
    ]);
  });

  it('saves a contraindicating answer and what comes with it: a result and no error', async () => {
    const saved = await save({ screening: asked({ 'new-chest-faint-or-breath': 'yes' }) });
    expect(new Set(Object.values(outcomesOf(saved)))).toEqual(new Set(['saved']));
    expect(saved.outcomes.every(({ eligibility }) => eligibility.startsWith('closed'))).toBe(true);
    await expect(propose()).rejects.toMatchObject({ problem: 'refused' });
    expect((await staff().people.get({ patientId })).profile?.diagnosis).toBe('Knee osteoarthritis');
    expect(await staff().measurements.list({ patientId })).toHaveLength(2);
  });

  it.each([
    ['180 mmHg', { systolicMmhg: 180, diastolicMmhg: 80 }, /all resistance work is held/],
    ['no screening', undefined, /No screening recorded/],
  ])('saves the rest where the proposal is refused: %s', async (_name, pressure, reason) => {
    const saved = await save(pressure ? { pressure } : { screening: undefined }, true);
    expect(saved.sentence).not.toMatch(/Not saved/);
    await expect(propose()).rejects.toThrow(reason);
    expect((await staff().people.get({ patientId })).profile).not.toBeNull();
  });

  it.each([
    ['pressure', { pressure: { systolicMmhg: 100, diastolicMmhg: 110 } }, 'input.pressure.diastolicMmhg'],
    ['pressure', { pressure: { systolicMmhg: 900, diastolicMmhg: 80 } }, 'input.pressure.systolicMmhg'],
    ['test', { test: { ...visit.test, repetitions: 61 } }, 'input.test.repetitions'],
    ['reason', { reason: { ...reason, diagnosis: '' } }, 'input.reason.diagnosis'],
    ['home', { home: { ...home, ownedLoadsKg: [900] } }, 'input.home.ownedLoadsKg[0]'],
    ['home', { home: { ...home, ownedEquipment: [] } }, 'input.home.ownedEquipment'],
    ['screening', { screening: { ...asked(), sheetVersion: 'older' } }, 'input.screening'],
    [
      'joints.right-knee',
      { joints: [{ ...usual, acceptablePainLimit: 8 }] },
      'input.joints.right-knee.acceptablePainLimit',
    ],
    [
      'consents.sharing',
      { consents: [{ kind: 'sharing', act: 'given', ...proposedWording, wordingVersion: 9 }] },
      'input.consents.sharing',
    ],
  ])(
    'names the part %s that is refused, with its field, and saves every other',
    async (part, over, field) => {
      await save({ goal: undefined });
      const changed = { ...reason, diagnosis: 'Knee osteoarthritis, both' };
      const { parts } = await save({ goal: undefined, reason: changed, ...over }, false, 1);
      expect(parts.filter(({ outcome }) => outcome === 'refused').map((one) => one.part)).toEqual([part]);
      expect(parts.find((one) => one.part === part)?.refused.map((one) => one.field)).toEqual([field]);
      expect(parts.filter(({ outcome }) => outcome === 'saved').length).toBeGreaterThan(0);
      const { profile: known } = await staff(2).people.get({ patientId });
      expect(known?.diagnosis).toBe(part === 'reason' ? reason.diagnosis : changed.diagnosis);
    },
  );

  it('asks about an unlikely value, saves the rest meanwhile, and takes it once confirmed', async () => {
    const test = { ...visit.test, repetitions: 60 };
    const pressure = { systolicMmhg: 260, diastolicMmhg: 80 };
    const first = await save({ pressure, test });
    expect(outcomesOf(first)).toMatchObject({ pressure: 'asked', test: 'saved', reason: 'saved' });
    expect(first.sentence).toMatch(/^Saved: .*Test to failure\. Not saved: Blood pressure\.$/);
    expect(outcomesOf(await save({ pressure, test }, true))).toMatchObject({
      pressure: 'saved',
      test: 'unchanged',
    });
  });

  it('sent again unchanged saves nothing twice', async () => {
    await save();
    const tables = ['care_profile', 'screening', 'measurement', 'baseline', 'episode', 'consent'];
    const rows = () =>
      tables.map(
        (table) =>
          at.store.reader.client.prepare(`SELECT id FROM ${table} WHERE patient_id = ?`).all(patientId)
            .length,
      );
    const before = rows();
    expect(new Set(Object.values(outcomesOf(await save({}, false, 0, '11:00'))))).toEqual(
      new Set(['unchanged']),
    );
    expect(rows()).toEqual(before);
  });

  it('takes personal details and consents with it', async () => {
    const details = [
      { detail: 'phone', value: '020 913 0100', because: 'changed-since', reason: null, seen: 0 },
    ];
    const consents = [{ kind: 'remote-monitoring', act: 'given', ...proposedWording }];
    expect(outcomesOf(await save({ details, consents }))).toMatchObject({
      details: 'saved',
      'consents.remote-monitoring': 'saved',
    });
    expect((await staff().people.get({ patientId })).phone).toBe('020 913 0100');
    const { kinds } = await staff().consents.list({ patientId });
    expect(kinds.find(({ kind }) => kind === 'remote-monitoring')?.state).toBe('given');
  });

  it('takes a known maximum instead of a test, and a second visit opens no second episode of care', async () => {
    const known = { ...kneeRequest, knownOneRepMaxKg: 10 };
    await save({ test: undefined });
    await expect(propose(known)).resolves.toBeDefined();
    await save({ test: undefined }, false, 7);
    expect((await staff(7).episodes.list({ patientId })).episodes).toHaveLength(1);
  });

  it('leads the bar on: to the first open step, and once a dose is signed to its days and the invitation', async () => {
    const next = async () => (await staff().people.bar({ patientId })).next;
    expect(await next()).toEqual({ because: 'first-visit', step: 'consents' });
    const consents = firstVisitConsents.map((kind) => ({ kind, act: 'given', ...proposedWording }));
    await save({ consents, home: undefined });
    expect(await next()).toEqual({ because: 'first-visit', step: 'home' });
    await save();
    expect(await next()).toEqual({ because: 'first-visit', step: 'exercise' });
    const prescriptionId = await staff().prescriptions.saveDraft({ patientId, request });
    await staff().prescriptions.sign({ patientId, prescriptionId });
    expect(await next()).toEqual({ because: 'first-visit', step: 'week' });
    const { itemId } = (await staff().prescriptions.list({ patientId })).inForce[0]!;
    const programme = { lines: [{ itemId, weekdays: [1, 3] }] };
    await staff().prescriptions.saveProgramme({ patientId, programme });
    expect(await next()).toEqual({ because: 'first-visit', step: 'invitation' });
    await staff().phones.invite({ patientId });
    expect(await next()).toBeNull();
  });

  it('is about one thing: what is put right later is the diagnosis of the episode that goes on, not of one before', async () => {
    await save();
    const closing = {
      to: 'discharged',
      on: '2026-03-03',
      reason: 'Done.',
      breakKind: null,
      expectedBack: null,
    };
    const [first] = (await staff().episodes.list({ patientId })).episodes;
    await staff(1).episodes.change({ patientId, change: { ...closing, episodeId: first!.id } });
    const again = { diagnoses: ['Hip osteoarthritis'], joints: ['left-hip'], followedJoints: ['left-hip'] };
    const episode = { ...again, goals: [], referrer: null, contacts: [] };
    await staff(2).episodes.open({ patientId, episode, reason: 'Comes back.' });
    const { profile } = await staff(2).people.get({ patientId });
    expect([profile?.diagnosis, profile?.followedJoints]).toEqual(['Hip osteoarthritis', ['left-hip']]);
    const changed = { ...reason, diagnosis: 'Hip, after a fall', followedJoints: ['left-hip', 'right-hip'] };
    await save({ reason: changed, joints: [] }, false, 3);
    const { episodes } = await staff(3).episodes.list({ patientId });
    expect(episodes.map((one) => [one.diagnoses, one.followedJoints])).toEqual([
      [['Knee osteoarthritis'], ['right-knee']],
      [['Hip, after a fall'], ['left-hip', 'right-hip']],
    ]);
  });

  it('keeps what nobody asked yet as not asked: an ordinary household is had once it was ticked', async () => {
    await save({ home: undefined });
    expect((await staff().people.get({ patientId })).profile).toMatchObject({
      ownedLoadsKg: [],
      ownedEquipment: [],
    });
    const before = (await staff().visits.firstVisit({ patientId })).states;
    expect(before.find(({ step }) => step === 'home')?.state).toBe('open');
    await save({ reason: undefined, home: { ...home, ownedLoadsKg: [] } });
    const after = (await staff().visits.firstVisit({ patientId })).states;
    expect(after.find(({ step }) => step === 'home')?.state).toBe('done');
  });

  it('what is at home is refused before anybody knows why the patient comes', async () => {
    expect(outcomesOf(await save({ reason: undefined, goal: undefined, joints: [] }))).toMatchObject({
      home: 'refused',
      screening: 'saved',
    });
  });

  it('puts nothing back that a colleague changed since the page was read', async () => {
    await save();
    const { version: seenProfile } = (await staff().people.get({ patientId })).profile!;
    await save({ reason: { ...reason, diagnosis: 'By a colleague' }, seenProfile });
    const late = await save({ reason: { ...reason, diagnosis: 'Seen before' }, seenProfile });
    expect(outcomesOf(late)).toMatchObject({ reason: 'refused', pressure: 'unchanged' });
    expect((await staff().people.get({ patientId })).profile?.diagnosis).toBe('By a colleague');
  });

  it('sets another goal beside those of the episode that goes on', async () => {
    await save();
    await save({ goal: 'Kneel in the garden' });
    expect((await staff().visits.firstVisit({ patientId })).goals).toEqual([
      'Get up from the floor',
      'Kneel in the garden',
    ]);
  });

  it('shows previous values beside the fields', async () => {
    await save();
    const page = await staff().visits.firstVisit({ patientId });
    expect(page.profile?.diagnosis).toBe('Knee osteoarthritis');
    expect(page.measurements.map(({ kind }) => kind).sort()).toEqual([
      'blood-pressure',
      'repetitions-to-failure',
    ]);
    expect(page.items.map(({ id }) => id)).toEqual(minimumSet('low-load', 64).map(({ id }) => id));
    expect(page.baselines.map(({ joint }) => joint)).toEqual(['right-knee']);
  });
});

describe('usual values told at a first visit', () => {
  it('are the baseline in force, marked provisional until a clinician sets another', async () => {
    await save();
    const { record } = await staff().review.get({ patientId, days: 28 });
    expect(record.baselines).toEqual([
      expect.objectContaining({ ...usual, provisional: true, setOn: '2026-03-02', setBy: 'clinician-a' }),
    ]);
    const { joint, ...values } = usual;
    const baseline = {
      joint,
      ...values,
      usualPainTop: null,
      usualEffusion: 'zero',
      reason: 'From the diary.',
    };
    await staff(1).review.setBaseline({ patientId, baseline });
    const after = await staff(2).review.get({ patientId, days: 28 });
    expect(after.record.baselines.at(-1)?.provisional).toBeUndefined();
  });

  it('need the acceptable pain limit from a clinician: a proposal is named and never taken by itself', async () => {
    const saved = await save({ joints: [{ ...usual, usualPain: 4, acceptablePainLimit: null }] });
    expect(saved.parts.find(({ part }) => part === 'joints.right-knee')?.refused[0]?.reason).toMatch(
      /Proposed from usual pain: 6\./,
    );
    const unknown = await save({ joints: [{ ...usual, usualPain: null, acceptablePainLimit: null }] });
    expect(unknown.parts.find(({ part }) => part === 'joints.right-knee')?.refused[0]?.reason).not.toMatch(
      /Proposed/,
    );
  });

  it('with usual pain not known it stays not known', async () => {
    await save({ joints: [{ ...usual, usualPain: null }] });
    const { record } = await staff().review.get({ patientId, days: 28 });
    expect(record.baselines.at(-1)?.usualPain).toBeNull();
  });

  it('of a joint that is not followed are refused', async () => {
    const saved = await save({ joints: [{ ...usual, joint: 'left-hip' }] });
    expect(outcomesOf(saved)['joints.left-hip']).toBe('refused');
  });
});
