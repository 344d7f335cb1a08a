/** What the clinic asks now and then, from its own words to the answers on the outcomes page; no rule reads any of it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { chosenActivities } from '#core/assessment/questionnaires/home-questions.ts';
import { addDays } from '#core/time/day.ts';
import { addPatient } from '#data/patients/people.ts';
import { decision, homeAnswers, prescription } from '#data/schema/schema.ts';
import { type CareSetting, careSetting, change, firstDay, inCare } from '#tests/api/episode/setting.ts';
import { asPatient } from '#tests/support/callers.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const questions = [
  { kind: 'score', text: 'How was the night?', low: 'calm', high: 'awful' },
  { kind: 'yes-no', text: 'Did you go out?', low: null, high: null },
  { kind: 'words', text: 'What was hardest?', low: null, high: null },
] as const;
const questionnaire = { title: 'Nights and days', questions, isPermitted: true };

const own = () => at.administrator().admin.questionnaires;
const written = async (questionnaireId: string | null = null, over: object = {}) =>
  (await own().write({ questionnaireId, questionnaire: { ...questionnaire, ...over } })).questionnaireId;

const atHome = (day = 0) => at.clinician(day).clinician.homeQuestions;
const ask = (asked: string, over: object = {}, day = 0) =>
  atHome(day).ask({
    patientId: at.patientId,
    ask: { questions: asked, fromDay: firstDay, everyDays: 28, ...over },
  });
const shown = async (day = 0) => atHome(day).get({ patientId: at.patientId });

const dueOn = async (day: number) => (await at.patient(day).patient.today.get()).questionsDue;

const entryFor = async (
  day: number,
  answers: readonly (number | boolean | string | null)[],
  over: object = {},
) => {
  const [due] = (await dueOn(day)) ?? [];
  if (!due) throw new Error('Nothing is due.');
  return {
    entryId: crypto.randomUUID(),
    day: addDays(firstDay, day),
    homeQuestionsId: due.homeQuestionsId,
    version: due.version,
    answers: due.questions.map(({ text: question }, place) => ({ question, answer: answers[place] })),
    redFlags: null,
    ...over,
  };
};
const send = (day: number, entry: object) =>
  at.patient(day).patient.entries.send({ kind: 'home-answers', entry });

const rated = async () => {
  for (const [activity, score] of [
    ['Stairs', 4],
    ['Kneeling', 3],
    ['Market', 5],
  ] as const)
    await at.clinician().clinician.measurements.record({
      patientId: at.patientId,
      measurement: { kind: 'patient-chosen-activity', day: firstDay, activity, score },
    });
};

describe('a questionnaire of the clinic’s own', () => {
  it('is taken with 1 to 12 questions, and only when the clinic says that it may use them', async () => {
    const many = (count: number) =>
      Array.from({ length: count }, (_, place) => ({ ...questions[1], text: `Question ${place}` }));
    await expect(written(null, { questions: [] })).rejects.toMatchObject({ problem: 'refused' });
    await expect(written(null, { questions: many(13) })).rejects.toMatchObject({ problem: 'refused' });
    await expect(written(null, { isPermitted: false })).rejects.toMatchObject({ problem: 'refused' });
    for (const count of [1, 12])
      await expect(written(null, { questions: many(count) })).resolves.toBeDefined();
  });

  it('is changed by a new version alone, and answers keep the version they were given to', async () => {
    const id = await written();
    await ask(id);
    await send(0, await entryFor(0, [3, true, 'Stairs']));
    await written(id, { questions: [questions[0]] });
    expect((await own().list()).map(({ version, questions: { length } }) => [version, length])).toEqual([
      [2, 1],
    ]);
    const [asked] = (await shown()).asked;
    expect(asked!.answers).toMatchObject([
      { version: 1, given: [{ answer: 3 }, { answer: true }, { answer: 'Stairs' }] },
    ]);
    expect(await dueOn(28)).toMatchObject([{ version: 2, questions: [questions[0]] }]);
  });

  it('retired, it is offered to nobody, asked of nobody and never changed again', async () => {
    const id = await written();
    await ask(id);
    await own().retire({ questionnaireId: id });
    expect([(await shown()).offered, await dueOn(0)]).toEqual([[], undefined]);
    await expect(written(id)).rejects.toMatchObject({ problem: 'not-found' });
    await expect(own().retire({ questionnaireId: id })).rejects.toMatchObject({ problem: 'not-found' });
    await expect(ask(id)).rejects.toMatchObject({ problem: 'refused' });
  });
});

describe('asking a person', () => {
  it('from a day on, every 7 to 84 days, one request for each at a time', async () => {
    const id = await written();
    for (const everyDays of [6, 85])
      await expect(ask(id, { everyDays })).rejects.toMatchObject({ problem: 'refused' });
    await ask(id, { everyDays: 7, fromDay: addDays(firstDay, 3) });
    await expect(ask(id, { everyDays: 84 })).rejects.toMatchObject({ problem: 'conflict' });
    expect([await dueOn(2), (await dueOn(3))?.length]).toEqual([undefined, 1]);
  });

  it('ends, and can be asked anew with another rhythm', async () => {
    const id = await written();
    const homeQuestionsId = await ask(id, { everyDays: 7 });
    const patient = { patientId: at.patientId };
    await atHome().end({ ...patient, homeQuestionsId });
    expect(await dueOn(0)).toBeUndefined();
    await expect(atHome().end({ ...patient, homeQuestionsId })).rejects.toMatchObject({
      problem: 'not-found',
    });
    await ask(id, { everyDays: 84, fromDay: addDays(firstDay, 1) }, 1);
    expect((await shown(1)).asked.map(({ everyDays, ended }) => [everyDays, ended !== null])).toEqual([
      [7, true],
      [84, false],
    ]);
  });

  it('nobody is asked on a break', async () => {
    const episodeId = await inCare(at);
    await ask(await written());
    const { episodes } = at.clinician(1).clinician;
    const onBreak = change(episodeId, 'on-break', addDays(firstDay, 1), { breakKind: 'holiday' });
    await episodes.change({ patientId: at.patientId, change: onBreak });
    expect([(await dueOn(0))?.length, await dueOn(1)]).toEqual([1, undefined]);
  });

  it('nobody is asked while a warning sign is open', async () => {
    await ask(await written());
    const entry = { entryId: crypto.randomUUID(), redFlags: ['chest-pain'] };
    await at.patient(0, '09:05').patient.entries.send({ kind: 'sign', entry });
    expect(await dueOn(1)).toBeUndefined();
  });
});

describe('answers from the phone', () => {
  it('arrive once however often they are sent; something else under the same id is not taken', async () => {
    await ask(await written());
    const entry = await entryFor(0, [0, false, null]);
    expect([(await send(0, entry)).stored, (await send(1, entry)).stored]).toEqual(['stored', 'known']);
    const other = { ...entry, answers: entry.answers.map((one) => ({ ...one, answer: null })) };
    expect((await send(1, other)).stored).toBe('conflict');
    expect(await at.store.read.select().from(homeAnswers)).toMatchObject([
      { answers: [{ answer: 0 }, { answer: false }, { answer: null }] },
    ]);
    expect([await dueOn(27), (await dueOn(28))?.length]).toEqual([undefined, 1]);
  });

  it('are refused where they do not answer what was asked', async () => {
    await ask(await written());
    const entry = await entryFor(0, [3, true, 'Stairs']);
    const [first, ...others] = entry.answers;
    const wrong: readonly object[] = [
      { answers: others },
      { answers: [{ ...first, answer: 11 }, ...others] },
      { answers: [{ ...first, question: 'Something else?' }, ...others] },
      { version: 2 },
      { version: null },
      { homeQuestionsId: 'another' },
      { day: 'yesterday' },
    ];
    for (const over of wrong)
      await expect(send(0, { ...entry, ...over })).rejects.toMatchObject({ problem: 'refused' });
    expect(await at.store.read.select().from(homeAnswers)).toEqual([]);
  });

  it('given before it was ended are taken after it; a phone’s day ahead counts as the clinic’s', async () => {
    const homeQuestionsId = await ask(await written());
    const entry = await entryFor(0, [3, true, 'Stairs'], { day: addDays(firstDay, 2) });
    await atHome().end({ patientId: at.patientId, homeQuestionsId });
    expect((await send(1, entry)).stored).toBe('stored');
    expect((await shown(1)).asked[0]!.answers).toMatchObject([{ day: addDays(firstDay, 1) }]);
  });

  it('nobody of another patient can answer them', async () => {
    await ask(await written());
    const entry = await entryFor(0, [3, true, 'Stairs']);
    const person = { givenName: 'Other', familyName: 'Person', birthDay: '1960-01-01', phone: null };
    const otherId = await addPatient(at.accessOn(0), person);
    const stranger = asPatient(at.accessOn(0), otherId).patient.entries;
    await expect(stranger.send({ kind: 'home-answers', entry })).rejects.toMatchObject({
      problem: 'refused',
    });
  });

  it('no decision, dose or prescription comes of them', async () => {
    await rated();
    await ask(await written());
    await ask(chosenActivities, { fromDay: addDays(firstDay, 1) }, 1);
    const rows = async () => [
      await at.store.read.select().from(decision),
      await at.store.read.select().from(prescription),
    ];
    const before = await rows();
    await send(1, await entryFor(1, [10, true, 'Everything']));
    await send(1, await entryFor(1, [0, 0, 0]));
    expect(await rows()).toEqual(before);
  });
});

describe('activities the person chose', () => {
  it('can be asked only where some are on record', async () => {
    await expect(ask(chosenActivities)).rejects.toMatchObject({ problem: 'refused' });
    await rated();
    await expect(ask(chosenActivities)).resolves.toBeDefined();
  });

  it('answered at home become measurements told apart; what was not known becomes none, and is asked again', async () => {
    await rated();
    await ask(chosenActivities);
    await send(5, await entryFor(5, [6, null, 0]));
    const { measurements } = await at.clinician(5).clinician.outcomes.get({ patientId: at.patientId });
    const home = measurements.filter(({ answeredAtHome }) => answeredAtHome);
    expect(home).toMatchObject([
      { kind: 'patient-chosen-activity', day: addDays(firstDay, 5), activity: 'Stairs', score: 6 },
      { kind: 'patient-chosen-activity', day: addDays(firstDay, 5), activity: 'Market', score: 0 },
    ]);
    expect((await dueOn(33))?.[0]?.questions.map(({ text }) => text)).toEqual([
      'Stairs',
      'Kneeling',
      'Market',
    ]);
  });
});

describe('answers entered in error', () => {
  const strikeOut = async (replacement?: object) => {
    const { corrections } = at.clinician(1).clinician;
    const patient = { patientId: at.patientId };
    const [row] = await corrections.entries({ ...patient, subject: 'home-answers' });
    return corrections.enterInError({
      ...patient,
      subject: 'home-answers',
      subjectId: row!.id,
      reason: 'Answered by a grandchild.',
      replacement,
    });
  };

  it('leave the table at once with what was measured by them, and are due again', async () => {
    await rated();
    await ask(chosenActivities);
    const entry = await entryFor(0, [9, 9, 9]);
    await send(0, entry);
    expect((await strikeOut()).waitsToBeSeen).toBe(false);
    const { measurements } = await at.clinician(1).clinician.outcomes.get({ patientId: at.patientId });
    expect(measurements.map(({ answeredAtHome }) => answeredAtHome)).toEqual([false, false, false]);
    expect((await shown(1)).asked[0]!.answers).toEqual([]);
    expect(await dueOn(1)).toMatchObject([{ knownEntryIds: [entry.entryId] }]);
  });

  it('are replaced by nobody but the patient', async () => {
    await ask(await written());
    await send(0, await entryFor(0, [3, true, 'Stairs']));
    await expect(strikeOut({ answers: [] })).rejects.toMatchObject({ problem: 'refused' });
    expect((await shown(1)).asked[0]!.answers).toHaveLength(1);
  });
});
