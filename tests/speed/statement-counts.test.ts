/** What a page asks of the file is a fixed number of statements, however much there is to show. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import { dayAt } from '#data/civil-time.ts';
import { readingOnce } from '#data/database/read-together.ts';
import { candidateDecisions } from '#data/decision/candidate-decisions.ts';
import { onWholeRecord } from '#data/decision/decide-queries.ts';
import { takeMorning, takeSession } from '#data/entries/take-entry.ts';
import { addPatient, patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, signedExercise, zone } from '#tests/support/clinic.ts';
import { type BusyClinic, busyClinic, morningAt, sessionAt } from './busy-clinic.ts';
import { statementsDuring } from './statements.ts';

const hour = 3_600_000;

const clinicianOf = (clinic: BusyClinic) =>
  asClinician(accessOf(clinic.store, 'a', 'clinician-a', clinic.now + hour));
const asPatientOf = (clinic: BusyClinic) =>
  asPatient(accessOf(clinic.store, 'a', clinic.patientId, clinic.now + hour), clinic.patientId);

const pages: readonly [string, (clinic: BusyClinic) => Promise<unknown>][] = [
  ['the worklist', (clinic) => clinicianOf(clinic).clinician.worklist.list()],
  ['the list of patients', (clinic) => clinicianOf(clinic).clinician.people.list()],
  [
    'the review of a record',
    (clinic) => clinicianOf(clinic).clinician.review.get({ patientId: clinic.patientId }),
  ],
  ['today’s page', (clinic) => asPatientOf(clinic).patient.today.get()],
  ['a patient’s own history', (clinic) => asPatientOf(clinic).patient.history.get()],
];

/** More people of the same clinic, each with something on the worklist. */
const addPeople = async (clinic: BusyClinic, people: number): Promise<void> => {
  const access = accessOf(clinic.store, 'a', 'clinician-a', clinic.now);
  for (let person = 0; person < people; person++) {
    const id = await addPatient(access, {
      givenName: 'Test',
      familyName: `Person ${person}`,
      birthDay: '1958-06-01',
      phone: null,
    });
    await signedExercise(access, id);
  }
};

/** How often the file may be asked, whatever the patient's record holds. */
const mostForARecord = 3;
const mostForADecidedSave = 20;

/** Who it is and whether the record may be opened, then everything else a page of it begins with. */
const mostForAnOpening = 4;

/** A knee this much worse than usual is eased back at once, which writes the most. */
const flaredUp = 6;

describe('the file is asked few questions', () => {
  let clinic: BusyClinic;
  let at: number;
  beforeAll(async () => {
    clinic = await busyClinic(10);
    at = clinic.now;
  });
  afterAll(() => clinic.store.close());

  const asPhone = () => accessOf(clinic.store, 'a', clinic.patientId, at);
  const clinician = () => asClinician(accessOf(clinic.store, 'a', 'clinician-a', at));
  const askedBy = async (work: () => Promise<unknown>): Promise<number> => {
    await flushReads(clinic.store);
    return (await statementsDuring(clinic.store, work)).length;
  };
  const newest = async (): Promise<string> =>
    (await candidateDecisions(asPhone(), clinic.patientId)).at(-1)!.id;
  const respond = async (response: object) =>
    clinician().clinician.review.respond({
      patientId: clinic.patientId,
      response: { decisionId: await newest(), decision: null, until: null, reason: 'Seen.', ...response },
    });

  const saves: readonly [string, number, () => Promise<unknown>][] = [
    [
      'a session',
      26,
      () => takeSession(asPhone(), clinic.patientId, sessionAt(clinic, at, 'session-counted')),
    ],
    ['a usual morning', 22, () => takeMorning(asPhone(), clinic.patientId, morningAt(at, 'morning-usual'))],
    [
      'a session of which the clock is in doubt',
      4,
      () => takeSession(asPhone(), clinic.patientId, sessionAt(clinic, at + 2 * hour, 'session-doubtful')),
    ],
    [
      'a morning that eases the dose back',
      20,
      () => takeMorning(asPhone(), clinic.patientId, morningAt(at, 'morning-flare', { pain: flaredUp })),
    ],
    [
      'that morning answered anew',
      1,
      () =>
        takeMorning(
          asPhone(),
          clinic.patientId,
          morningAt(at, 'morning-anew', { pain: flaredUp - 1, amends: 'morning-flare' }),
        ),
    ],
    ['a clinician’s consent to a decision', 2, () => respond({ kind: 'accept' })],
    [
      'a clinician’s own decision in its place',
      1,
      () => respond({ kind: 'override', decision: 'hold', until: dayAt(at + 96 * hour, zone) }),
    ],
    [
      'a morning with a warning sign',
      22,
      () =>
        takeMorning(
          asPhone(),
          clinic.patientId,
          morningAt(at, 'morning-sign', { redFlags: ['unexplained-fever'] }),
        ),
    ],
  ];

  it.each(saves)(`a decided save at most ${mostForADecidedSave} times: %s`, async (_, hours, save) => {
    at += hours * hour;
    expect(await askedBy(save)).toBeLessThanOrEqual(mostForADecidedSave);
  });

  it(`what every page of a record begins with at most ${mostForAnOpening} times`, async () => {
    const access = accessOf(clinic.store, 'a', 'clinician-a', at);
    const reading = readingOnce(clinic.store.read);
    const { patientId } = clinic;
    const { people } = asClinician(access).clinician;
    const asked = await askedBy(() =>
      reading(async () => [await people.get({ patientId }), await people.bar({ patientId })]),
    );
    expect(asked).toBeLessThanOrEqual(mostForAnOpening);
  });

  it(`what a record is decided from at most ${mostForARecord} times`, async () => {
    const access = accessOf(clinic.store, 'a', 'clinician-a', at);
    const patient = (await patientOf(access, clinic.patientId))!;
    const counts = [
      await askedBy(() => recordOf(access, patient.id)),
      await askedBy(() => planOf(access, patient)),
      await askedBy(() =>
        onWholeRecord(access, patient.id, async () => [
          await recordOf(access, patient.id),
          await planOf(access, patient),
        ]),
      ),
    ];
    expect(counts.filter((count) => count > mostForARecord)).toEqual([]);
  });
});

describe('statements of a page do not grow with what it shows', () => {
  let small: BusyClinic;
  let large: BusyClinic;
  beforeAll(async () => {
    small = await busyClinic(2);
    large = await busyClinic(10);
    await addPeople(large, 5);
  });
  afterAll(() => {
    small.store.close();
    large.store.close();
  });

  it.each(pages)('%s', async (_, ask) => {
    const [few, many] = [
      await statementsDuring(small.store, () => ask(small)),
      await statementsDuring(large.store, () => ask(large)),
    ];
    expect(few.length).toBeGreaterThan(0);
    expect(many.length).toBe(few.length);
  });

  it('a repeat of an entry asks once whether it is known and writes nothing', async () => {
    const at = large.now + 2 * hour;
    const access = accessOf(large.store, 'a', large.patientId, at);
    const entry = sessionAt(large, at, 'session-repeated');
    await takeSession(access, large.patientId, entry);
    // What the pages above noted as read is written now, and not while this is counted.
    await flushReads(large.store);
    const asked = await statementsDuring(large.store, () => takeSession(access, large.patientId, entry));
    expect(asked).toHaveLength(1);
  });
});
