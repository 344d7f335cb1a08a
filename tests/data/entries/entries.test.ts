import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { replayableDecisions } from '#data/decision/replayable-decisions.ts';
import { takeMorning, takeSession, takeTwoHours } from '#data/entries/take-entry.ts';
import { recordOf } from '#data/patients/record.ts';
import { entryConflict, trainingSession } from '#data/schema/schema.ts';
import {
  morningEntry,
  type Setting,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
  zone,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const joint = (over: object = {}) => ({
  joint: 'right-knee' as const,
  painBefore: 2,
  painDuring: 3,
  painAfter: 2,
  twoHoursState: 'asked' as const,
  muscleBurn: null,
  cuffDiscomfort: null,
  gaveWay: false,
  ...over,
});

describe('entries of a phone', () => {
  let store: Store;
  let setting: Setting;
  let line: { prescriptionId: string; itemId: string };
  beforeEach(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    line = await signedExercise(setting.clinician, setting.patientId);
  });
  afterEach(() => store.close());

  it('keeps an entry once however often it is sent, and answers the repeat with the same id', async () => {
    const { clinician, patientId } = setting;
    const entry = sessionEntry({ entryId: 'e1', joints: [joint()] });
    const first = await takeSession(clinician, patientId, entry);
    const again = await takeSession(clinician, patientId, { ...entry, sentAt: entry.sentAt + 60_000 });
    expect([first.kind, again.kind]).toEqual(['stored', 'known']);
    expect('id' in first && 'id' in again && first.id === again.id).toBe(true);
    expect((await store.read.select().from(trainingSession)).length).toBe(1);
  });

  it('keeps the same id with other content as a conflict and changes nothing', async () => {
    const { clinician, patientId } = setting;
    await takeSession(
      clinician,
      patientId,
      sessionEntry({ entryId: 'e1', joints: [joint({ painAfter: 6 })] }),
    );
    const other = await takeSession(
      clinician,
      patientId,
      sessionEntry({ entryId: 'e1', joints: [joint({ painAfter: 0 })] }),
    );
    const record = await recordOf(clinician, patientId);
    expect([other.kind, record?.sessions[0]?.joints[0]?.painAfter]).toEqual(['conflict', 6]);
    expect((await store.read.select().from(entryConflict)).length).toBe(1);
  });

  it('keeps a question asked and not answered as no answer, never as zero', async () => {
    const { clinician, patientId } = setting;
    const sets = [
      { ...line, set: 1, repetitions: null, loadKg: null, reserve: null, stopReason: 'unknown' as const },
    ];
    await takeSession(
      clinician,
      patientId,
      sessionEntry({
        entryId: 'e1',
        sets,
        redFlags: null,
        extraPainRelief: null,
        joints: [joint({ painBefore: null })],
      }),
    );
    const session = (await recordOf(clinician, patientId))?.sessions[0];
    expect({
      before: session?.joints[0]?.painBefore,
      twoHours: session?.joints[0]?.painTwoHours,
      repetitions: session?.sets[0]?.repetitions,
      load: session?.sets[0]?.loadKg,
      flags: session?.redFlags,
      relief: session?.extraPainRelief,
    }).toEqual({ before: null, twoHours: null, repetitions: null, load: null, flags: null, relief: null });
  });

  it('tells a question that was not asked from one that was not answered', async () => {
    const { clinician, patientId } = setting;
    await takeSession(
      clinician,
      patientId,
      sessionEntry({ entryId: 'e1', joints: [joint({ twoHoursState: 'not-applicable' })] }),
    );
    const answers = {
      joint: 'right-knee' as const,
      pain: 1,
      stiffnessMinutes: null,
      stiffnessState: 'not-applicable' as const,
      swelling: null,
      swellingState: 'asked' as const,
      flare: false,
    };
    await takeMorning(clinician, patientId, morningEntry({ entryId: 'm1', joints: [answers] }));
    const record = await recordOf(clinician, patientId);
    expect([
      record?.sessions[0]?.joints[0]?.painTwoHours,
      record?.mornings[0]?.joints[0]?.stiffnessMinutes,
      record?.mornings[0]?.joints[0]?.swelling,
    ]).toEqual(['not-applicable', 'not-applicable', null]);
  });

  it('joins the answer two hours later to its session', async () => {
    const { clinician, patientId } = setting;
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'e1', joints: [joint()] }));
    const later = {
      format: 1,
      entryId: 't1',
      day: clinician.day,
      zone,
      sentAt: start,
      redFlags: [],
      extraPainRelief: null,
      sessionEntryId: 'e1',
      joint: 'right-knee' as const,
      pain: 4,
    };
    await takeTwoHours(clinician, patientId, later);
    const orphan = await takeTwoHours(clinician, patientId, {
      ...later,
      entryId: 't2',
      sessionEntryId: 'never-sent',
    });
    expect([
      (await recordOf(clinician, patientId))?.sessions[0]?.joints[0]?.painTwoHours,
      orphan.kind,
    ]).toEqual([4, 'no-session']);
  });

  it('never refuses an entry for its clock, but marks it doubtful from ten minutes on', async () => {
    const { clinician, patientId } = setting;
    const kinds = await Promise.all(
      [9, 10, 11].map((minutes) => {
        const sentAt = start + minutes * 60_000;
        return takeSession(clinician, patientId, sessionEntry({ entryId: `late-${minutes}`, sentAt }));
      }),
    );
    expect(kinds.map((stored) => 'clockDoubtful' in stored && stored.clockDoubtful)).toEqual([
      false,
      false,
      true,
    ]);
  });

  // Four hours: common practice, no source.
  it('stores a session of over four hours and doubts its time; under and at four hours it does not', async () => {
    const { clinician, patientId } = setting;
    const doubts: (boolean | undefined)[] = [];
    for (const minutes of [239, 240, 241, 33 * 60]) {
      const beganAt = start - minutes * 60_000;
      const stored = await takeSession(
        clinician,
        patientId,
        sessionEntry({ entryId: `long-${minutes}`, beganAt, endedAt: start }),
      );
      doubts.push('clockDoubtful' in stored ? stored.clockDoubtful : undefined);
    }
    expect(doubts).toEqual([false, false, true, true]);
    const record = await recordOf(clinician, patientId);
    expect(record?.sessions.filter((session) => session.clockDoubtful)).toHaveLength(2);
  });

  it('puts a session that began at 23:50 and ended at 00:20 on the day it began', async () => {
    const { clinician, patientId } = setting;
    const beganAt = Date.parse('2026-03-01T23:50:00Z');
    await takeSession(
      clinician,
      patientId,
      sessionEntry({ entryId: 'night', beganAt, endedAt: beganAt + 30 * 60_000 }),
    );
    expect((await recordOf(clinician, patientId))?.sessions[0]?.day).toBe('2026-03-01');
  });

  it('refuses sets that name a prescription of somebody else', async () => {
    const { clinician, otherPatientId } = setting;
    const sets = [{ ...line, set: 1, repetitions: 20, loadKg: 4, reserve: 1, stopReason: 'none' as const }];
    const stored = await takeSession(clinician, otherPatientId, sessionEntry({ entryId: 'e1', sets }));
    expect(stored).toEqual({ kind: 'unknown-prescription', prescriptionId: line.prescriptionId });
    expect((await store.read.select().from(trainingSession)).length).toBe(0);
  });

  it('replaces an entry by its amendment and keeps both rows and both decisions', async () => {
    const { clinician, patientId } = setting;
    await takeSession(
      clinician,
      patientId,
      sessionEntry({ entryId: 'e1', joints: [joint({ painAfter: 2 })] }),
    );
    await takeSession(
      { ...clinician, now: start + 1000 },
      patientId,
      sessionEntry({ entryId: 'e2', amends: 'e1', joints: [joint({ painAfter: 7 })] }),
    );
    const record = await recordOf(clinician, patientId);
    const decisions = await decisionsOf(clinician, patientId, '2026-01-01');
    expect(record?.sessions.map((session) => session.joints[0]?.painAfter)).toEqual([7]);
    expect((await store.read.select().from(trainingSession)).length).toBe(2);
    expect(decisions.map((decision) => [decision.cause, decision.decision])).toEqual([
      ['session', 'hold'],
      ['amendment', 'ease-back'],
    ]);
  });

  it('stores a decision with the entry that caused it, with facts and choices enough to replay it', async () => {
    const { clinician, patientId } = setting;
    await takeSession(clinician, patientId, sessionEntry({ entryId: 'e1', joints: [joint()] }));
    const [decision] = await replayableDecisions(clinician, patientId, '2026-01-01');
    expect(decision?.facts.painAfter).toBe(2);
    expect(decision?.reasons.map((reason) => reason.rule)).toContain('M1');
    expect(Object.keys(decision?.settings ?? {}).length).toBeGreaterThan(10);
  });
});
