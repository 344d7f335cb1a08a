/** What a tablet takes along to a room without signal, and how what was answered there arrives. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { minutesAfterHour } from '#core/clinic/group-hour.ts';
import type { Access } from '#data/access.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { changeGroupHour, groupHoursOf, setGroupMember, writeGroupHour } from '#data/clinic/group-hours.ts';
import type { Store } from '#data/database/store.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient } from '#data/patients/people.ts';
import { isOfHour, sendOfHour } from '#server/http/sealed-hour.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import type { Runtime } from '#server/runtime.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { before } from '#tests/ui/clinician/groups/person-of-hour.ts';
import { storeHere } from '#tests/ui/clinician/groups/sealed/kept-here.ts';
import type { GroupPerson } from '#ui/clinician/answers.ts';
import { entryOf } from '#ui/clinician/groups/group-entry.ts';
import { keepAnswer, sendAnswers, waitingAnswers } from '#ui/clinician/groups/sealed/answers-kept.ts';
import { personOf } from '#ui/clinician/groups/sealed/roster.ts';

const keys = { phoneEntries: Buffer.alloc(32, 9), earlierPhoneEntries: [] } as unknown as Runtime['keys'];
const clinicKey = phoneEntriesKey(keys, 'a');
const minuteMs = 60_000;

let store: Store;
let at: Setting;
let ada: Access;
let hourId: string;
let patientId: string;
beforeEach(async () => {
  store = freshStore();
  at = await twoClinics(store);
  const adaId = (await addStaff(at.clinician, {
    ...{ name: 'Ada Verrin', email: 'ada@test.invalid' },
    ...{ role: 'clinician', administers: false },
  }))!.userId;
  ada = accessOf(store, 'a', adaId, start, 'Ada Verrin');
  const row = { name: 'Monday', place: 'Cellar', when: '2026-03-02T09:30', minutes: 60, clinicianId: adaId };
  hourId = await writeGroupHour(ada, { row, clinicianName: 'Ada Verrin', replaces: null });
  patientId = await addPatient(at.clinician, {
    ...{ givenName: 'Odo', familyName: 'Tessaly' },
    ...{ birthDay: '1951-07-23', phone: '910 555 777' },
  });
  await signedExercise(at.clinician, patientId);
  await setGroupMember(at.clinician, hourId, patientId, true);
});
afterEach(() => store.close());

const takeAs = (access: Access) => asClinician(access).clinician.groupSessions.takeAlong({ hourId });
const take = (now = start) => takeAs({ ...ada, now });
const rows = (sql: string) => store.reader.client.prepare(sql).all() as readonly Record<string, unknown>[];

describe('the roster a tablet takes along', () => {
  it('holds these things of each person and no others', async () => {
    const taken = await take();
    expect(Object.keys(taken).sort()).toEqual(
      [
        'begun',
        'goneAt',
        'hourId',
        'leftOut',
        'name',
        'people',
        'place',
        'takenBy',
        'takerName',
        'zone',
      ].sort(),
    );
    const [one] = taken.people;
    expect(Object.keys(one!).sort()).toEqual(['entryId', 'firstName', 'patientId', 'today']);
    expect(one!.firstName).toBe('Odo');
    expect(Object.keys(one!.today).sort()).toEqual([
      ...['asksPregnancy', 'asksTwoHours', 'day', 'emergencyNumber', 'exercises', 'hasCuff'],
      ...['isSentToday', 'isShortSigns', 'joints', 'painLookups', 'stop', 'zone'],
    ]);
    expect(Object.keys(one!.today.exercises[0]!).sort()).toEqual([
      ...['badDay', 'cautions', 'dose', 'isDoable', 'isPlanned', 'itemId', 'joints'],
      ...['prescriptionId', 'today'],
    ]);
    for (const caution of one!.today.exercises.flatMap(({ cautions }) => cautions))
      expect(Object.keys(caution).sort()).toEqual(['isLimit', 'text']);
  });

  it('holds no surname, birth date, number to ring or diagnosis anywhere', async () => {
    expect(JSON.stringify(await take())).not.toMatch(/Tessaly|1951|07-23|555|osteoarthritis/i);
  });

  it('has the doses and easier sessions of the hour’s own page', async () => {
    const [page] = await asClinician(ada).clinician.groupSessions.people({ hourId });
    const [one] = (await take()).people;
    if (!page || page.name === null) throw new Error('Nobody is shown.');
    expect(one!.today.exercises.map(({ dose, badDay, today }) => ({ dose, badDay, today }))).toEqual(
      page.today.exercises.map(({ dose, badDay, today }) => ({ dose, badDay, today })),
    );
    expect(one!.entryId).toBe(page.entryId);
  });

  it('is gone a fixed time after the booked end, and is not taken along from then on', async () => {
    const { goneAt } = await take();
    expect(goneAt).toBe(Date.parse('2026-03-02T09:30:00Z') + (60 + minutesAfterHour) * minuteMs);
    await expect(take(goneAt - 1)).resolves.toBeDefined();
    await expect(take(goneAt)).rejects.toThrow(/over/);
  });

  it('is of an hour of today that stands, and of the own clinic', async () => {
    await expect(takeAs({ ...ada, day: '2026-03-03' })).rejects.toThrow(/own day/);
    await expect(takeAs(at.stranger)).rejects.toThrow(/no such group hour/);
    await changeGroupHour(ada, (await groupHoursOf(ada))[0]!, 'cancelled', 'Nobody came');
    await expect(take()).rejects.toThrow(/does not stand/);
  });

  it('leaves out who is kept to a care team the caller is not in, and says how many', async () => {
    await saveSettings(at.clinician, { 'care-team-restriction': 1 }, 'Large clinic');
    const bo = { name: 'Bo', email: 'bo@test.invalid', role: 'clinician', administers: false } as const;
    await setTeamMember(at.clinician, patientId, (await addStaff(at.clinician, bo))!.userId, true);
    expect(await take()).toMatchObject({ people: [], leftOut: 1 });
  });

  it('leaves out who was begun on the hour’s page, by first name, and keeps what was pressed there', async () => {
    const drafts = asClinician(ada).clinician.drafts;
    const typed = { hour: hourId, signs: 'none', 'before:right-knee': '6' };
    await drafts.save({ patientId, form: 'group-hour', typed: { hour: hourId } });
    expect(await take()).toMatchObject({ people: [{ patientId }], begun: [] });
    await drafts.save({ patientId, form: 'group-hour', typed });
    expect(await take()).toMatchObject({ people: [], begun: [{ patientId, firstName: 'Odo' }], leftOut: 0 });
    const [page] = await asClinician(ada).clinician.groupSessions.people({ hourId });
    expect(page).toMatchObject({ typed });
  });

  it('stands in the access log of each person on it', async () => {
    await take();
    await flushReads(store);
    expect(
      rows("SELECT act, patient_id FROM audit WHERE subject = 'clinician.groupSessions.takeAlong'"),
    ).toEqual([{ act: 'read', patient_id: patientId }]);
  });
});

describe('what was answered without signal', () => {
  const person = (access: Access) =>
    ({ userId: access.actorId, clinicId: access.clinicId }) as Parameters<typeof sendOfHour>[1];
  /** The clinic’s door, or none. */
  const doorOf = (access: Access | null): typeof fetch =>
    (async (_, init) => {
      if (!access) throw new TypeError('no signal');
      const body = JSON.parse(String(init?.body));
      if (!isOfHour(body)) return Response.json({}, { status: 400 });
      try {
        const caller = asClinician(access) as Parameters<typeof sendOfHour>[2];
        return Response.json(await sendOfHour({ keys } as Runtime, person(access), caller, body));
      } catch (error) {
        const { problem, message } = error as { problem: string; message: string };
        return Response.json({ problem, message }, { status: 400 });
      }
    }) as typeof fetch;

  let tablet: ReturnType<typeof storeHere>;
  let doses: Readonly<Record<string, string>>;
  const keep = async (typed: object = {}, state: 'begun' | 'finished' = 'finished') => {
    const [one] = (await take()).people;
    const entry = entryOf(personOf(one!), { ...before, ...doses, ...typed }, { now: start });
    const taker = { takenBy: ada.actorId, takerName: ada.actorName, sealedAt: start };
    const answered = { hourId, patientId, ...taker, clinicKey, clockLacks: 0, state };
    await keepAnswer(tablet, answered, entry);
  };
  const send = (access: Access | null, isOpen = false) =>
    sendAnswers(tablet, { fetch: doorOf(access), wall: () => start, isOpen, isAgain: true });
  const sessions = () => rows('SELECT id FROM training_session').length;

  beforeEach(async () => {
    tablet = storeHere();
    const [one] = (await take()).people;
    const { itemId } = one!.today.exercises[0]!;
    doses = { began: String(start), [`as:${itemId}`]: 'planned', [`set:${itemId}:1`]: '20' };
  });

  it('is closed on the tablet, and arrives as a session supervised by who took the hour along', async () => {
    await keep();
    expect(JSON.stringify([...tablet.held])).not.toMatch(/repetitions|painBefore|right-knee/);
    expect(await send(null)).toMatchObject([{ as: 'no-answer' }]);
    expect(await waitingAnswers(tablet)).toHaveLength(1);
    expect(await send(ada)).toMatchObject([{ as: 'arrived' }]);
    expect(await waitingAnswers(tablet)).toEqual([]);
    expect(rows('SELECT entered_by, entered_as FROM training_session')).toEqual([
      { entered_by: ada.actorId, entered_as: 'clinic-supervised' },
    ]);
  });

  it('arrives once, though it is sent again because the answer was lost', async () => {
    await keep();
    const held = new Map(tablet.held);
    await send(ada);
    for (const [key, value] of held) tablet.held.set(key, value);
    expect(await send(ada)).toMatchObject([{ as: 'arrived' }]);
    expect([sessions(), await waitingAnswers(tablet)]).toEqual([1, []]);
  });

  it('of a session that is on record otherwise is put aside and told so, and changes nothing', async () => {
    await keep();
    await send(ada);
    tablet.held.clear();
    const [one] = (await asClinician(ada).clinician.groupSessions.people({ hourId })) as GroupPerson[];
    const entry = entryOf(one!, { ...before, ...doses, 'before:right-knee': '7' }, { now: start });
    const taker = { takenBy: ada.actorId, takerName: ada.actorName, sealedAt: start + 1 };
    const answered = { hourId, patientId, ...taker, clinicKey, clockLacks: 0, state: 'finished' } as const;
    await keepAnswer(tablet, answered, entry);
    expect(await send(ada)).toMatchObject([{ as: 'aside' }]);
    expect([sessions(), await waitingAnswers(tablet)]).toEqual([1, []]);
  });

  it('is sent by nobody but who took the hour along: signed in as another it waits', async () => {
    await keep();
    expect(await send(at.clinician)).toMatchObject([{ as: 'not-yours' }]);
    expect([sessions(), (await waitingAnswers(tablet)).length]).toEqual([0, 1]);
  });

  it('is not sent as somebody else’s by changing whose it is beside the seal', async () => {
    await keep();
    const [name, saved] = [...tablet.held][0]!;
    tablet.held.set(name, { ...(saved as object), patientId: at.otherPatientId, takenBy: 'clinician-a' });
    expect(await send(ada)).toMatchObject([{ as: 'refused' }]);
    expect(sessions()).toBe(0);
  });

  it('goes as far as it came once the hour is gone, and not before', async () => {
    await keep({}, 'begun');
    expect(await send(ada, true)).toEqual([]);
    expect(await send(ada, false)).toMatchObject([{ as: 'arrived' }]);
    expect(sessions()).toBe(1);
  });

  it('with a warning sign among them goes first, and stops the person', async () => {
    await keep({ 'signs-now': 'chest-pain' });
    expect((await waitingAnswers(tablet))[0]).toMatchObject({ isUrgent: true });
    await send(ada);
    expect((await take()).people).toEqual([]);
    const [page] = await asClinician(ada).clinician.groupSessions.people({ hourId });
    expect(page).toMatchObject({ today: { stop: 'warning-sign' } });
  });

  it('that the clinic refuses stays on the tablet with the reason', async () => {
    await keep();
    await setGroupMember(at.clinician, hourId, patientId, false);
    const [name, saved] = [...tablet.held][0]!;
    tablet.held.set(name, { ...(saved as object), hourId: 'another' });
    expect(await send(ada)).toMatchObject([{ as: 'refused' }]);
    expect(await waitingAnswers(tablet)).toMatchObject([{ refused: expect.stringMatching(/no such group/) }]);
  });
});
