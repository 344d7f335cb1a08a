import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { setBaseline } from '#data/assessment/baselines.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import { correctionsOf, markEnteredInError, recordPlanSeen } from '#data/corrections/corrections.ts';
import { enteredOf } from '#data/corrections/entered.ts';
import type { Store } from '#data/database/store.ts';
import { respond } from '#data/decision/decision-responses.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { confirmEntry } from '#data/entries/confirm-entry.ts';
import { takeTwoHours } from '#data/entries/take-entry.ts';
import { addEvent } from '#data/episode/care-events.ts';
import { applyEpisodeChange } from '#data/episode/episode-changes.ts';
import { episodesOf, openEpisode } from '#data/episode/episodes.ts';
import { addLimit } from '#data/episode/limits-and-pre-approvals.ts';
import { addVersion } from '#data/prescribing/prescribing.ts';
import { trainingSession, worklistItem } from '#data/schema/schema.ts';
import { handleWorklistItem } from '#data/worklist/handle-worklist-item.ts';
import { worklistPage } from '#data/worklist/worklist.ts';
import { rebuildWorklist, rebuiltWorklistItems } from '#data/worklist/worklist-items.ts';
import {
  accessOf,
  lowLoadDose,
  screenedClear,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
} from '#tests/support/clinic.ts';
import { drawSeed, rounds } from '#tests/support/drawn-rounds.ts';
import { type PrescriptionItem, sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { countedNumbers, keptNumbers } from '#tests/support/worklist-numbers.ts';

const hourMs = 3_600_000;

interface Scene {
  readonly store: Store;
  readonly access: Access;
  readonly patientId: string;
  readonly item: PrescriptionItem;
}

const sessions = ({ store }: Scene) =>
  store.read.select().from(trainingSession).orderBy(trainingSession.arrivedAt);

const send = ({ access, patientId, item }: Scene, painAfter: number, over: object = {}) =>
  sendSession(access, patientId, item, painAfter, over);

const answered = async ({ access, patientId }: Scene, answer: 'accept' | 'override'): Promise<void> => {
  const decision = (await decisionsOf(access, patientId, '2026-01-01')).at(-1);
  if (!decision) return;
  const overruled = { decision: 'hold', reason: 'Seen', until: addDays(access.day, 2) } as const;
  const accepted = { decision: null, reason: '', until: null };
  const said = answer === 'accept' ? accepted : overruled;
  await respond(access, patientId, { decisionId: decision.id, kind: answer, ...said });
};

const change = async (
  { access, patientId }: Scene,
  to: 'active' | 'on-break' | 'discharged',
): Promise<void> => {
  const episode = (await episodesOf(access, patientId)).at(-1);
  if (!episode) return;
  const isBreak = to === 'on-break';
  await applyEpisodeChange(access, patientId, episode.id, {
    to,
    on: access.day,
    reason: 'Test',
    breakKind: isBreak ? 'holiday' : null,
    expectedBack: isBreak ? addDays(access.day, 3) : null,
  });
};

/** Everything that may put an item on the list, change it or take it off. */
const acts: Readonly<Record<string, (scene: Scene) => Promise<unknown>>> = {
  session: (scene) => send(scene, 2),
  'bad session': (scene) => send(scene, 7),
  'red flag': (scene) => send(scene, 3, { redFlags: ['calf-pain-swelling'], stoppedByFlag: true }),
  'something new': (scene) => send(scene, 2, { news: ['medicine'], otherJointWorse: true }),
  'doubtful clock': (scene) => send(scene, 2, { sentAt: scene.access.now + hourMs }),
  amendment: async (scene) => {
    const last = (await sessions(scene)).at(-1);
    if (last) await send(scene, 1, { amends: last.entryId });
  },
  conflict: async (scene) => {
    const last = (await sessions(scene)).at(-1);
    if (last) await send(scene, 4, { entryId: last.entryId });
  },
  'two hours': async (scene) => {
    const { access, patientId } = scene;
    const last = (await sessions(scene)).at(-1);
    if (!last) return;
    const { format, zone, day } = sessionEntry({ entryId: 'two-hours' });
    await takeTwoHours(access, patientId, {
      entryId: `t-${access.now}`,
      format,
      zone,
      day,
      sentAt: access.now,
      sessionEntryId: last.entryId,
      joint: 'right-knee',
      pain: 8,
      redFlags: [],
      extraPainRelief: false,
    });
  },
  morning: ({ access, patientId }) => sendMorning(access, patientId, 2),
  'no answer': ({ access, patientId }) => sendMorning(access, patientId, null),
  'clock confirmed': async (scene) => {
    const rows = await sessions(scene);
    const doubtful = rows.find(
      (row) => row.clockDoubtful && !rows.some((other) => other.amends === row.entryId),
    );
    if (doubtful) await confirmEntry(scene.access, scene.patientId, 'session', doubtful.id);
  },
  'entered in error': async ({ access, patientId }) => {
    const marked = new Set((await correctionsOf(access, patientId)).map((row) => row.subjectId));
    for (const subject of ['screening', 'event', 'limit', 'baseline'] as const) {
      const row = (await enteredOf(access, patientId, subject)).find(({ id }) => !marked.has(id));
      if (!row) continue;
      const correction = { subject, row, reason: 'Test', replacedById: null, waits: true };
      await markEnteredInError(access, patientId, correction);
      return;
    }
  },
  'new plan seen': async ({ access, patientId }) => {
    const waiting = (await correctionsOf(access, patientId)).find(({ waits, seen }) => waits && !seen);
    if (waiting) await recordPlanSeen(access, patientId, waiting.id);
  },
  accept: (scene) => answered(scene, 'accept'),
  override: (scene) => answered(scene, 'override'),
  'frozen baseline': ({ access, patientId }) =>
    setBaseline(
      access,
      patientId,
      {
        joint: 'right-knee',
        usualPain: 2,
        usualPainTop: 2,
        acceptablePainLimit: 5,
        usualStiffnessMinutes: 10,
        usualSwelling: 'none',
        usualEffusion: 'zero',
      },
      'Diary',
    ),
  'unsigned version': ({ access, patientId, item }) =>
    addVersion(access, patientId, {
      itemId: item.itemId,
      dose: lowLoadDose,
      badDay: lowLoadDose,
      joints: ['right-knee'],
      cautions: [{ id: 'c', text: 'c', patient: { key: 'stop-signs' }, from: 't', support: 'clinic' }],
      working: [],
      origin: 'clinician',
    }),
  snooze: ({ access, patientId }) =>
    handleWorklistItem(access, patientId, {
      key: 'missing-answers',
      act: 'snooze',
      until: addDays(access.day, 1),
      assignee: null,
      reason: 'Later',
    }),
  acknowledge: ({ access, patientId }) =>
    handleWorklistItem(access, patientId, {
      key: 'decision right-knee',
      act: 'acknowledge',
      until: null,
      assignee: null,
      reason: '',
    }),
  settings: ({ access }) => saveSettings(access, { 'worklist-missing-mornings': 2 }, 'Sooner'),
  screening: ({ access, patientId }) => screenedClear(access, patientId),
  fall: ({ access, patientId }) =>
    addEvent(access, patientId, { day: access.day, kind: 'fall', joint: null, remark: null }),
  limit: ({ access, patientId }) =>
    addLimit(access, patientId, {
      joint: 'right-knee',
      kind: 'no-impact',
      limitKg: null,
      from: access.day,
      to: addDays(access.day, 2),
      liftedOn: null,
      author: 'surgeon',
      remark: null,
    }),
  'care opened': ({ access, patientId }) =>
    openEpisode(
      access,
      patientId,
      {
        diagnoses: ['Knee osteoarthritis'],
        joints: ['right-knee'],
        followedJoints: ['right-knee'],
        goals: [],
        referrer: null,
        contacts: [],
      },
      'Referred',
    ),
  break: (scene) => change(scene, 'on-break'),
  return: (scene) => change(scene, 'active'),
  discharge: (scene) => change(scene, 'discharged'),
  nothing: async () => {},
};

const told = (rows: readonly object[]) =>
  rows.map((row) => JSON.stringify(row, Object.keys(row).sort())).sort();

const listed = async (access: Access) =>
  (await worklistPage(access, { after: null, limit: 50, kind: null, assignedTo: null })).lines.flatMap(
    (row) => row.worklistItems.map((one) => `${row.patientId} ${one.key}`),
  );

describe('the worklist kept on write is the one a rebuild would find', () => {
  it('after random histories, at the end of each and at a later day with no write in between', async () => {
    const history = fc.array(
      fc.record({ act: fc.constantFrom(...Object.keys(acts)), hours: fc.integer({ min: 1, max: 60 }) }),
      { minLength: 6, maxLength: 20 },
    );
    const seen = new Set<string>();
    const property = fc.asyncProperty(history, async (events) => {
      const store = freshStore();
      const { clinician, patientId } = await twoClinics(store);
      const item = await signedExercise(clinician, patientId);
      let hours = 0;
      const at = () => accessOf(store, 'a', 'clinician-a', start + hours * hourMs);
      for (const event of events) {
        hours += event.hours;
        await acts[event.act]!({ store, access: at(), patientId, item });
      }
      hours += 1;
      const kept = await store.read.select().from(worklistItem);
      for (const row of kept) seen.add(row.kind);
      expect(told(kept)).toEqual(told(await rebuiltWorklistItems(at())));
      expect(await keptNumbers(at())).toEqual(await countedNumbers(at()));
      hours += 40 * 24;
      expect(await keptNumbers(at())).toEqual(await countedNumbers(at()));
      expect(await keptNumbers(at(), new Set([patientId]))).toEqual(
        await countedNumbers(at(), new Set([patientId])),
      );
      const before = await listed(at());
      await rebuildWorklist(at());
      expect(await listed(at())).toEqual(before);
      expect(await keptNumbers(at())).toEqual(await countedNumbers(at()));
      store.close();
    });
    await fc.assert(property, { seed: drawSeed, numRuns: rounds(8, 60) });
    // The histories reach the items that a session alone brings up, not only the common ones.
    expect([...seen]).toEqual(
      expect.arrayContaining([
        'red-flag',
        'reported-new',
        'clock-doubtful',
        'entry-conflict',
        'missing-answers',
      ]),
    );
  }, 240_000);
});
