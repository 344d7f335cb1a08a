/** Phone, review, handover, worklist and document say the same of a patient, on drawn records through the API. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { redFlags } from '#core/decision/facts/facts.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import { asTyped } from '#messages/text.ts';
import { disagreements, type Surfaces } from '#tests/support/agreement.ts';
import { asClinician, asPatient } from '#tests/support/callers.ts';
import { accessOf, clinicNamed, signedExercise, start } from '#tests/support/clinic.ts';
import { drawSeed, rounds } from '#tests/support/drawn-rounds.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { allNo } from '#tests/support/working-patient.ts';

const records = rounds(25, 200);
const hour = 3_600_000;
const episode = {
  diagnoses: ['Knee osteoarthritis'],
  joints: ['right-knee'],
  followedJoints: ['right-knee'],
  goals: ['Stairs without stopping'],
  referrer: null,
  contacts: [],
};

const drawnFrom = (seed: number) => {
  let state = seed >>> 0;
  return (below: number): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 4_294_967_296) * below);
  };
};

interface Person {
  readonly patientId: string;
  readonly item: Awaited<ReturnType<typeof signedExercise>>;
}

describe('of one patient', () => {
  let store: Store;
  beforeAll(async () => {
    store = freshStore();
  });
  afterAll(() => store.close());

  /** A clinic of its own for each record, so that one page of the worklist holds the patient. */
  let clinicId = '';
  const accessAt = (at: number) => accessOf(store, clinicId, 'clinician', at, 'Clinician A');
  const clinicianAt = (at: number) => asClinician(accessAt(at)).clinician;
  const planAt = async (at: number, patientId: string): Promise<Plan> =>
    (await clinicianAt(at).danger.get({ patientId })).plan;

  const contact = async (at: number, { patientId }: Person, reached: string) => {
    const open = openSigns(await planAt(at, patientId)).map(({ sign }) => sign.id);
    if (open.length === 0) return;
    const isReached = reached !== 'nobody';
    await clinicianAt(at).danger.recordContact({
      patientId,
      contact: {
        signIds: open,
        decisionIds: [],
        reached,
        found: isReached ? 'Nothing worrying.' : null,
        advised: isReached ? 'Ring if it changes.' : null,
        referredTo: null,
        againInHours: isReached ? null : 1,
      },
    });
  };

  const resume = async (at: number, { patientId, item }: Person) => {
    const plan = await planAt(at, patientId);
    const state = plan.pauses.find((one) => !one.isSignOpen);
    if (!state || openSigns(plan).length > 0) return;
    const isHeld = state.pause.joint === null || state.pause.joint === 'right-knee';
    const itemIds = isHeld && !state.resumedItemIds.has(item.itemId) ? [item.itemId] : [];
    await clinicianAt(at).danger.resume({
      patientId,
      pauseId: state.pause.id,
      itemIds,
      reason: 'Seen today.',
    });
  };

  /** What a record may consist of; each is done through the procedures or as a phone would. */
  const acts: readonly ((at: number, person: Person, draw: (below: number) => number) => Promise<unknown>)[] =
    [
      (at, { patientId, item }, draw) => sendSession(accessAt(at), patientId, item, draw(11)),
      (at, { patientId }, draw) => sendMorning(accessAt(at), patientId, draw(3) ? draw(11) : null),
      (at, { patientId }, draw) =>
        clinicianAt(at).danger.report({
          patientId,
          sign: { flags: [redFlags[draw(redFlags.length)]], joint: null, remark: null },
        }),
      (at, person, draw) => contact(at, person, ['patient', 'carer', 'nobody'][draw(3)]!),
      (at, person) => resume(at, person),
      (at, { patientId }, draw) => {
        const cause = ['warning-sign', 'holiday', 'other'][draw(3)];
        const until = draw(2) && cause !== 'warning-sign' ? accessAt(at + 48 * hour).day : null;
        const joint = [null, 'right-knee', 'left-wrist'][draw(3)];
        return clinicianAt(at).danger.pause({
          patientId,
          pause: { cause, joint, reason: 'As drawn.', until },
        });
      },
      (at, { patientId }, draw) =>
        clinicianAt(at).care.addLimit({
          patientId,
          limit: {
            joint: 'right-knee',
            kind: 'load-limit',
            limitKg: [0.5, 2, 4, 9][draw(4)],
            from: accessAt(at).day,
            to: null,
            author: 'Dr Vance',
            remark: null,
          },
        }),
      (at, { patientId }, draw) => {
        const sheet = allNo();
        const answers = sheet.answers.map((row, place) =>
          place === draw(sheet.answers.length) ? { ...row, answer: 'yes' as const } : row,
        );
        return clinicianAt(at).screening.record({ patientId, screening: { ...sheet, answers } });
      },
    ];

  const read = async (at: number, { patientId }: Person, episodeId: string | null): Promise<Surfaces> => {
    const { lines } = await clinicianAt(at).worklist.list({ limit: 100 });
    const line = lines.find((one) => one.patientId === patientId);
    const handover = await clinicianAt(at).handover.get({ patientId });
    const documents = episodeId ? await clinicianAt(at).documents.get({ patientId, episodeId }) : null;
    return {
      today: await asPatient(accessAt(at), patientId).patient.today.get(),
      review: (await clinicianAt(at).review.get({ patientId, days: 14 })).plan,
      handover,
      worklist: line ? [line.item, ...line.others] : [],
      document: documents?.facts.lines ?? null,
    };
  };

  const recordOf = async (seed: number) => {
    const draw = drawnFrom(seed);
    clinicId = `clinic-${seed}`;
    await clinicNamed(store, clinicId);
    const patientId = await addPatient(accessAt(start), {
      givenName: `Drawn ${seed}`,
      familyName: 'Person',
      birthDay: '1958-06-01',
      phone: null,
    });
    const item = await signedExercise(accessAt(start), patientId);
    const person: Person = { patientId, item };
    const isEnded = draw(4) === 0;
    const episodeId = isEnded
      ? await clinicianAt(start).episodes.open({ patientId, episode, reason: 'Begins.' })
      : null;
    let at = start + hour;
    for (let count = 2 + draw(5); count > 0; count--) {
      await acts[draw(acts.length)]!(at, person, draw);
      at += (1 + draw(20)) * hour;
    }
    const atEnd = await planAt(at, patientId);
    if (openSigns(atEnd).length > 0)
      return { at, plan: atEnd, atEnd, surfaces: await read(at, person, null) };
    const { lines } = await clinicianAt(at).worklist.list({});
    for (const { key, kind } of lines.flatMap(({ item: first, others }) => [first, ...others]))
      if (kind === 'pause' || kind === 'same-day-contact')
        await clinicianAt(at).worklist.acknowledge({ patientId, key });
    if (episodeId)
      await clinicianAt(at).episodes.change({
        patientId,
        change: {
          episodeId,
          to: 'discharged',
          on: accessAt(at).day,
          reason: 'Done.',
          breakKind: null,
          expectedBack: null,
        },
      });
    // Care that has ended leaves no patient’s page to compare; the document speaks of the plan before it.
    const plan = await planAt(at, patientId);
    return { at, plan, atEnd, surfaces: await read(at, person, episodeId) };
  };

  it(`${records} drawn records: every surface says what the plan says`, async () => {
    const found: string[] = [];
    for (let place = 1; place <= records; place++) {
      const seed = drawSeed + place;
      const { at, plan, atEnd, surfaces } = await recordOf(seed);
      const differences = disagreements(surfaces, plan, accessAt(at).day, atEnd);
      if (differences.length > 0) found.push(`seed ${seed}: ${differences.join(', ')}`);
    }
    expect(found).toEqual([]);
  });

  it('a difference planted in any one surface is found', async () => {
    const { at, plan, atEnd, surfaces } = await recordOf(drawSeed);
    const day = accessAt(at).day;
    const check = (changed: Partial<Surfaces>) =>
      disagreements({ ...surfaces, ...changed }, plan, day, atEnd);
    expect(check({})).toEqual([]);
    const other = (today: string) => (today === 'none' ? ('as-planned' as const) : ('none' as const));
    const items = surfaces.review.items.map((item) => ({ ...item, today: other(item.today) }));
    const exercises = surfaces.today.exercises.map((row) => ({ ...row, today: other(row.today) }));
    const planted: readonly Partial<Surfaces>[] = [
      { today: { ...surfaces.today, exercises } },
      { today: { ...surfaces.today, isStopped: !surfaces.today.isStopped } },
      {
        today: { ...surfaces.today, danger: surfaces.today.danger.length > 0 ? [] : [asTyped('x')] },
      },
      { today: { ...surfaces.today, contact: surfaces.today.contact === 'none' ? 'emergency' : 'none' } },
      { review: { ...surfaces.review, items } },
      { handover: { ...surfaces.handover, plan: { items } } },
      { handover: { ...surfaces.handover, dangers: [...surfaces.handover.dangers, { kind: 'red-flag' }] } },
      { worklist: [...surfaces.worklist, { kind: 'red-flag', key: 'sign planted' }] },
      { worklist: [...surfaces.worklist, { kind: 'resume-due', key: 'pause planted' }] },
      { worklist: [...surfaces.worklist, { kind: 'dose-stopped', key: 'dose-stopped planted' }] },
      { document: plan.items.map(({ itemId }) => ({ itemId, suspended: 'planted' as never })) },
    ];
    expect(planted.filter((one) => check(one).length === 0)).toEqual([]);
  });
});
