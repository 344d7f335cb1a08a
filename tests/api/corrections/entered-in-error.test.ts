/** Nothing a clinician enters is beyond correction; the row itself stays, and the decisions made with it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { correctionSubjects, isStruckOutOnly, type StruckOutOnly } from '#core/corrections/correction.ts';
import { addDays } from '#core/time/day.ts';
import { correction } from '#data/schema/schema.ts';
import { type CareSetting, careSetting, firstDay, limitOn } from '#tests/api/episode/setting.ts';
import { asClinician, asPerson } from '#tests/support/callers.ts';
import { accessOf } from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { baselineOf, correctionsAt, pressureOf, reason, sheetWith } from './setting.ts';

let at: CareSetting;
let own: ReturnType<typeof correctionsAt>;
beforeEach(async () => {
  at = await careSetting();
  own = correctionsAt(at);
});
afterEach(() => at.store.close());

const weight = (massKg: number, day = firstDay) => ({ kind: 'body-mass', day, massKg });
const goal = (over: object = {}) => ({
  goal: 'Climb stairs',
  state: 'open',
  byDay: null,
  note: null,
  ...over,
});
const event = { day: firstDay, kind: 'fall', joint: null, remark: null };
const effusion = { joint: 'right-knee', grade: 'trace' };

const clearance = {
  method: 'low-load',
  limb: null,
  side: null,
  findings: ['hot-joint'],
  reason: 'Looked at.',
};
const supervised = {
  limb: 'leg',
  side: 'right',
  day: firstDay,
  supervisedThroughout: true,
  remoteReason: null,
  remark: null,
};

let signId = '';
const contactOf = (found: string) => ({
  signIds: [signId],
  decisionIds: [],
  reached: 'patient',
  found,
  advised: 'Ring again if it swells.',
  referredTo: null,
  againInHours: null,
});

const note = {
  day: firstDay,
  contact: 'clinic',
  subjective: 'Stairs go better.',
  objective: null,
  assessment: null,
  plan: null,
  text: null,
};

const visit = { place: 'home-visit', whereabouts: null, callBackPhone: null, present: ['Daughter'] };

const patient = () => ({ patientId: at.patientId });
const firstEntries = async () => {
  const { measurements, care, outcomes, review, screening, visits, visitNotes, danger } =
    at.clinician().clinician;
  await screening.record({ ...patient(), screening: sheetWith(['hot-joint']) });
  await screening.clear({ ...patient(), clearance });
  await visitNotes.record({ ...patient(), note });
  await visits.watch({ ...patient(), session: supervised });
  await measurements.record({ ...patient(), measurement: weight(70) });
  await care.addEvent({ ...patient(), event });
  await care.addLimit({ ...patient(), limit: limitOn() });
  await outcomes.setGoal({ ...patient(), goal: goal() });
  await review.setBaseline({ ...patient(), baseline: baselineOf() });
  await measurements.recordEffusion({ ...patient(), effusion });
  const sign = { flags: ['calf-pain-swelling'], joint: null, remark: null };
  signId = await danger.report({ ...patient(), sign });
  await danger.recordContact({ ...patient(), contact: contactOf('Calf soft.') });
  await visits.begin({ ...patient(), visit });
};

/** Struck out or replaced; what only the patient says is struck out alone (tests/api/home-questions). */
const replaceable = correctionSubjects.filter((subject) => !isStruckOutOnly(subject));
const inPlace: Readonly<Record<Exclude<(typeof correctionSubjects)[number], StruckOutOnly>, object>> = {
  measurement: weight(72),
  screening: sheetWith(['osteoporosis']),
  event: { ...event, kind: 'surgery' },
  limit: limitOn({ limitKg: 2 }),
  goal: goal({ goal: 'Climb two flights of stairs' }),
  baseline: baselineOf({ usualPain: 2, usualPainTop: 2 }),
  'effusion-test': { ...effusion, grade: '1+' },
  clearance: { ...clearance, limb: 'leg' },
  'supervised-session': { ...supervised, side: 'left' },
  note: { ...note, plan: 'Keep the dose.' },
  visit: { place: 'clinic', whereabouts: null, callBackPhone: null, present: [] },
  get contact() {
    return contactOf('Calf soft, no swelling.');
  },
};

describe.each(replaceable)('an entry of the kind %s', (subject) => {
  it('is replaced or struck out with a reason; it stays on record with who, when and why', async () => {
    await firstEntries();
    const wrong = await own.newest(subject);
    const replaced = await own.correct(subject, wrong, inPlace[subject]);
    const struck = await own.correct(subject, replaced.replacedById!);
    const rows = await own.list();
    expect(rows.map(({ id }) => id).sort()).toEqual([replaced.correctionId, struck.correctionId].sort());
    const first = rows.find(({ subjectId }) => subjectId === wrong)!;
    expect(first).toMatchObject({ subject, reason, correctedName: 'clinician-a', now: inPlace[subject] });
    expect(first.was).not.toEqual(first.now);
    expect(rows.find(({ id }) => id === struck.correctionId)).toMatchObject({ now: null });
    const entries = await at.clinician().clinician.corrections.entries({ ...patient(), subject });
    const marked = entries.filter(({ enteredInError }) => enteredInError !== null);
    expect(marked.map(({ id }) => id).sort()).toEqual([wrong, replaced.replacedById!].sort());
    expect(marked.every(({ enteredInError }) => enteredInError!.reason === reason)).toBe(true);
  });
});

describe('what neither bounds nor stops anything', () => {
  it('is left out everywhere at once: the weight, the goal', async () => {
    const { measurements, outcomes } = at.clinician().clinician;
    await measurements.record({ ...patient(), measurement: weight(70) });
    await outcomes.setGoal({ ...patient(), goal: goal() });
    const mass = await own.correct('measurement', await own.newest('measurement'), weight(71));
    const aim = await own.correct('goal', await own.newest('goal'), goal({ goal: 'Walk to the shop' }));
    expect([mass.waitsToBeSeen, aim.waitsToBeSeen, mass.planOnceSeen]).toEqual([false, false, null]);
    const shown = await outcomes.get(patient());
    expect(shown.measurements).toMatchObject([weight(71)]);
    expect(shown.goals.map((one) => one.goal)).toEqual(['Walk to the shop']);
    await expect(own.seen(mass.correctionId)).rejects.toThrow(/does not wait/);
  });

  it('a goal step corrected late does not overtake the newer step of the same goal', async () => {
    const set = (day: number, over: object) =>
      at.clinician(day).clinician.outcomes.setGoal({ ...patient(), goal: goal(over) });
    const wrong = await set(0, { note: 'With a stick' });
    await set(1, { state: 'reached' });
    await own.correct('goal', wrong, goal({ note: 'Without a stick' }), 2);
    const { goals } = await at.clinician(2).clinician.outcomes.get(patient());
    expect(goals.map(({ state }) => state)).toEqual(['reached']);
  });
});

describe('what only opens', () => {
  const closedNow = async () =>
    (await at.clinician().clinician.screening.outcomes(patient()))
      .filter(({ method, limb }) => method === 'low-load' && limb === 'leg')
      .map(({ eligibility }) => eligibility);

  it('a clearance struck out closes again at once, and waits for nobody', async () => {
    await firstEntries();
    expect(await closedNow()).toEqual(['open-with-precautions', 'open-with-precautions']);
    const told = await own.correct('clearance', await own.newest('clearance'));
    expect(told.waitsToBeSeen).toBe(false);
    expect(await closedNow()).toEqual(['closed-until-cleared', 'closed-until-cleared']);
  });

  it('another clearance in its place asks for the passphrase as a first one does', async () => {
    await firstEntries();
    const subjectId = await own.newest('clearance');
    const hourAgo = Date.now() - 3_600_000;
    const stale = asPerson(at.accessOn(0), { role: 'clinician', provedAt: hourAgo }).clinician.corrections;
    const ask = { ...patient(), subject: 'clearance' as const, subjectId, reason };
    await expect(stale.enterInError({ ...ask, replacement: clearance })).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
    await expect(stale.enterInError(ask)).resolves.toBeDefined();
  });

  it('a supervised session struck out no longer counts for a cuff at home', async () => {
    await firstEntries();
    const counted = async () =>
      JSON.stringify((await at.clinician().clinician.visits.homeEligibility(patient())).limbs);
    const before = await counted();
    await own.correct('supervised-session', await own.newest('supervised-session'));
    expect(await counted()).not.toBe(before);
  });
});

describe('a correction that cannot be taken', () => {
  const corrections = () => at.clinician().clinician.corrections;
  const nothingMarked = async () => expect(await at.store.read.select().from(correction)).toEqual([]);

  it('leaves the entry as it was when what is put in its place is refused', async () => {
    const id = await at.clinician().clinician.care.addLimit({ ...patient(), limit: limitOn() });
    await expect(own.correct('limit', id, limitOn({ limitKg: null }))).rejects.toThrow(/highest load/);
    const wrong = at
      .clinician()
      .clinician.measurements.record({ ...patient(), measurement: pressureOf(120, 80) });
    await expect(own.correct('measurement', await wrong, pressureOf(80, 120))).rejects.toThrow(/diastolic/);
    await nothingMarked();
    expect((await at.clinician().clinician.care.list(patient())).limits).toHaveLength(1);
  });

  it('asks about an unlikely figure in its place as about a first one', async () => {
    const id = await at.clinician().clinician.measurements.record({ ...patient(), measurement: weight(70) });
    const ask = { ...patient(), subject: 'measurement' as const, subjectId: id, reason };
    await expect(corrections().enterInError({ ...ask, replacement: weight(250) })).rejects.toThrow(
      /Is it right/,
    );
    await nothingMarked();
    await corrections().enterInError({ ...ask, replacement: weight(250), confirmed: true });
  });

  it.each([
    ['', /too_small|reason/i],
    [' '.repeat(5), /too_small|reason/i],
    ['x'.repeat(301), /too_big|reason/i],
  ])('needs a reason of at most 300 characters: %j', async (text, told) => {
    const subjectId = await own.newest('screening');
    await expect(
      corrections().enterInError({ ...patient(), subject: 'screening', subjectId, reason: text }),
    ).rejects.toThrow(told);
    const full = { ...patient(), subject: 'screening' as const, subjectId, reason: 'x'.repeat(300) };
    await expect(corrections().enterInError(full)).resolves.toBeDefined();
  });

  it('is taken once only; the second is told who was first', async () => {
    const id = await own.newest('screening');
    await own.correct('screening', id);
    await expect(own.correct('screening', id)).rejects.toThrow(/clinician-a already marked/);
  });

  it('reaches no entry of another patient, of another clinic or of another kind', async () => {
    const subjectId = await own.newest('screening');
    const ask = { ...patient(), subject: 'screening' as const, subjectId, reason };
    await expect(corrections().enterInError({ ...ask, subject: 'limit' })).rejects.toThrow(/no such entry/);
    const [other] = (await at.clinician().clinician.people.list()).patients.filter(
      ({ id }) => id !== at.patientId,
    );
    await expect(corrections().enterInError({ ...ask, patientId: other!.id })).rejects.toThrow(
      /no such entry/,
    );
    const stranger = asClinician(accessOf(at.store, 'b', 'clinician-b')).clinician;
    await expect(stranger.corrections.enterInError(ask)).rejects.toThrow(/no such patient/);
    await nothingMarked();
  });

  it('is not seen by agreeing to one that was seen, or that there is not', async () => {
    const { correctionId } = await own.correct('screening', await own.newest('screening'), sheetWith([]));
    await own.seen(correctionId);
    await expect(own.seen(correctionId)).rejects.toThrow(/does not wait/);
    await expect(own.seen('none')).rejects.toThrow(/no such correction/);
  });
});

describe('decisions made with an entry corrected since', () => {
  it('stay as they were made and say so; those of before the entry and after the correction do not', async () => {
    const send = (day: number) => sendSession(at.accessOn(day), at.patientId, at.item, 2);
    await send(1);
    const id = await at.clinician(2).clinician.review.setBaseline({ ...patient(), baseline: baselineOf() });
    await send(3);
    const before = (await at.clinician(3).clinician.review.get(patient())).decisions;
    await own.correct('baseline', id, baselineOf({ usualPain: 2, usualPainTop: 2 }), 4);
    await send(5);
    const { decisions } = await at.clinician(5).clinician.review.get(patient());
    const flagOn = new Map(decisions.map((row) => [row.day, row.correctedSince]));
    expect([1, 3, 5].map((day) => flagOn.get(addDays(firstDay, day)))).toEqual([false, true, false]);
    expect(decisions.slice(0, before.length).map(({ reasons }) => reasons)).toEqual(
      before.map(({ reasons }) => reasons),
    );
  });
});
