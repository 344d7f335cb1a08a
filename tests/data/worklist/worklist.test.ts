import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Day } from '#core/time/day.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { respond } from '#data/decision/decision-responses.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { storeSession } from '#data/entries/entries.ts';
import { handleWorklistItem } from '#data/worklist/handle-worklist-item.ts';
import { worklistPage, worklistPageWithDanger } from '#data/worklist/worklist.ts';
import { worklistCounts } from '#data/worklist/worklist-counts.ts';
import {
  accessOf,
  type Setting,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
  zone,
} from '#tests/support/clinic.ts';
import { sendMorning, sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';

const dayMs = 86_400_000;
const all = { after: null, limit: 50, kind: null, assignedTo: null } as const;

let store: Store;
let setting: Setting;
let line: { prescriptionId: string; itemId: string };
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  line = await signedExercise(setting.clinician, setting.patientId);
});
afterEach(() => store.close());

const at = (days: number, hours = 9): Access =>
  accessOf(store, 'a', 'clinician-a', start + days * dayMs + (hours - 9) * 3_600_000);

const session = (access: Access, painAfter: number, over: object = {}) =>
  sendSession(access, setting.patientId, line, painAfter, over);
const morning = (access: Access, pain: number | null) => sendMorning(access, setting.patientId, pain);

const kinds = async (access: Access) =>
  (await worklistPage(access, all)).lines.flatMap((row) => row.worklistItems.map((one) => one.kind));

describe('the worklist keeps due dates, not flags', () => {
  it('lists a patient with no morning answer from the third day on, with nothing written in between', async () => {
    expect([await kinds(at(2)), await kinds(at(3))]).toEqual([[], ['missing-answers']]);
    const [row] = (await worklistPage(at(5), all)).lines;
    expect(sentenceOf(row!.worklistItems[0] as never, at(5).day)).toBe('No morning answers for 5 days.');
  });

  it('lists an old screening the day after its last valid day, not on it', async () => {
    await morning(at(84), 2);
    expect([await kinds(at(84)), await kinds(at(85))]).toEqual([[], ['screening-due']]);
  });

  it('brings an overruled decision back the day after the override ended', async () => {
    await session(at(0, 18), 6);
    const decision = (await decisionsOf(at(0, 19), setting.patientId, '2026-01-01')).at(-1)!;
    expect(await kinds(at(0, 19))).toContain('ease-back');
    await respond(at(0, 19), setting.patientId, {
      decisionId: decision.id,
      kind: 'override',
      decision: 'hold',
      reason: 'Stairs.',
      until: '2026-03-04',
    });
    expect([await kinds(at(2)), (await kinds(at(3))).includes('override-ended')]).toEqual([[], true]);
  });
});

describe('order, pages and counts', () => {
  it('puts danger before age, and age before nothing', async () => {
    const other = await signedExercise(setting.clinician, setting.otherPatientId);
    expect(other.itemId).not.toBe(line.itemId);
    await session(at(4, 18), 2, { redFlags: ['chest-pain'], stoppedByFlag: true });
    const lines = (await worklistPage(at(5), all)).lines.map((row) => [
      row.patientId,
      row.worklistItems[0]?.kind,
    ]);
    expect(lines).toEqual([
      [setting.patientId, 'red-flag'],
      [setting.otherPatientId, 'missing-answers'],
    ]);
  });

  it('pages without losing or repeating a patient, and counts the same as it lists', async () => {
    await signedExercise(setting.clinician, setting.otherPatientId);
    const access = at(5);
    const first = await worklistPage(access, { ...all, limit: 1 });
    const second = await worklistPage(access, { ...all, limit: 1, after: first.next });
    const third = await worklistPage(access, { ...all, limit: 1, after: second.next });
    const ids = [first, second, third].flatMap((page) => page.lines.map((row) => row.patientId));
    expect(ids.toSorted()).toEqual([setting.patientId, setting.otherPatientId].toSorted());
    expect(await worklistCounts(access, all)).toEqual({ listed: 2, patients: 2 });
  });

  it('never puts danger behind a page: it goes on until somebody in no danger has come', async () => {
    const second = await signedExercise(setting.clinician, setting.otherPatientId);
    const danger = { redFlags: ['chest-pain'], stoppedByFlag: true } as const;
    await session(at(4, 18), 2, danger);
    const one = { ...all, limit: 1 };
    const shown = async () => (await worklistPageWithDanger(at(5), one)).lines.map((row) => row.patientId);
    expect(await shown()).toHaveLength(2);
    expect((await worklistPage(at(5), one)).lines).toHaveLength(1);
    await sendSession(at(4, 19), setting.otherPatientId, second, 2, danger);
    expect((await shown()).toSorted()).toEqual([setting.patientId, setting.otherPatientId].toSorted());
  });

  it('shows a clinic nothing of another clinic', async () => {
    await signedExercise(setting.stranger, setting.strangerPatientId);
    const ids = (await worklistPage(at(5), all)).lines.map((row) => row.patientId);
    expect(ids).toEqual([setting.patientId]);
  });
});

describe('handling an item', () => {
  it('snoozes an item until a day and no longer', async () => {
    const done = await handleWorklistItem(at(3), setting.patientId, {
      key: 'missing-answers',
      act: 'snooze',
      until: '2026-03-07',
      assignee: null,
      reason: 'On holiday',
    });
    expect([done, await kinds(at(5)), await kinds(at(6))]).toEqual(['done', [], ['missing-answers']]);
  });

  it('never puts danger off', async () => {
    await session(at(0, 18), 2, { redFlags: ['chest-pain'], stoppedByFlag: true });
    const [line] = (await worklistPage(at(0, 19), all)).lines;
    const { key } = line!.worklistItems.find(({ kind }) => kind === 'red-flag')!;
    expect(
      await handleWorklistItem(at(0, 19), setting.patientId, {
        key,
        act: 'snooze',
        until: '2026-03-07',
        assignee: null,
        reason: 'Later',
      }),
    ).toBe('danger');
    expect(await kinds(at(0, 19))).toContain('red-flag');
  });

  it('begins afresh when a new item of the same kind arises', async () => {
    await handleWorklistItem(at(3), setting.patientId, {
      key: 'missing-answers',
      act: 'snooze',
      until: '2026-03-31',
      assignee: null,
      reason: 'On holiday',
    });
    await morning(at(3, 10), 2);
    expect(await kinds(at(6))).toEqual(['missing-answers']);
  });
});

describe('a session about which nothing is decided', () => {
  const { entryId: _, ...plain } = sessionEntry({ entryId: 'x' });
  it.each([
    ['tells something new', { news: ['medicine'] }, 'reported-new'],
    ['comes from a doubtful clock', { sentAt: start + 11 * 60_000 }, 'clock-doubtful'],
  ] as const)('is listed when it %s', async (_what, over, kind) => {
    const entry = { ...plain, entryId: 's-1', ...over, news: 'news' in over ? [...over.news] : null };
    expect(await storeSession(at(0), setting.patientId, entry)).toMatchObject({ kind: 'stored' });
    expect(await kinds(at(0))).toEqual([kind]);
  });

  it('comes off the list when it is amended by one without doubt', async () => {
    await storeSession(at(0), setting.patientId, { ...plain, entryId: 's-1', sentAt: start + 11 * 60_000 });
    await storeSession(at(0), setting.patientId, { ...plain, entryId: 's-2', amends: 's-1' });
    expect(await kinds(at(0))).toEqual([]);
  });
});

describe('the day an item shows from', () => {
  it('works a day out from the clinic’s own zone', () => {
    const day: Day = dayAt(Date.parse('2026-06-30T23:30:00Z'), zone);
    expect(day).toBe('2026-07-01');
  });
});
