/** Facts of the whole person at the edges of what is known, and where little or nothing was entered. */
import { describe, expect, it } from 'vitest';
import { factsFor } from '#core/decision/facts/facts-from-record.ts';
import type { MorningRecord, PatientRecord, SessionRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import {
  baseline,
  instantOn,
  judgedMorning,
  knee,
  lastSession,
  morning,
  noonOf,
  record,
  session,
  shoulderVersion,
  trainingDays,
  version,
  withMorning,
  withSession,
} from '../small-record.ts';

const factsAt = (of: PatientRecord, at = noonOf(judgedMorning)) => factsFor(of, knee, at);
const noon = noonOf(judgedMorning).instant;
const back = (days: number): Day => addDays(judgedMorning, -days);

describe('warning signs', () => {
  it('told with a doubtful clock are known from their arrival on, also where there is no session', () => {
    const odd = (recordedAt: number) =>
      morning('2020-01-01', {}, { clockDoubtful: true, redFlags: ['dark-urine'], recordedAt });
    const of = (sessions: readonly SessionRecord[], recordedAt: number) =>
      factsAt(record({ sessions, mornings: [odd(recordedAt)] })).redFlags;
    expect([noon, noon + 1].map((at) => of([], at))).toEqual([['dark-urine'], null]);
    expect([noon, noon + 1].map((at) => of(record().sessions, at))).toEqual([['dark-urine'], []]);
  });

  it('told with a session of other joints count from the instant it is known', () => {
    const other = (recordedAt: number) =>
      session(judgedMorning, { redFlags: ['fainting'], beganAt: noon, recordedAt }, {}, [shoulderVersion]);
    const of = (recordedAt: number) =>
      factsAt({ ...record(), sessions: [...record().sessions, other(recordedAt)] }).redFlags;
    expect([noon, noon + 1].map(of)).toEqual([['fainting'], []]);
  });

  it('of a traveller count though a session of the day before began after them', () => {
    const [first, second] = [
      session(lastSession, { id: 'a', redFlags: ['fainting'], beganAt: instantOn(lastSession, 2) }, {}, [
        shoulderVersion,
      ]),
      session(addDays(lastSession, -1), { id: 'b', beganAt: instantOn(lastSession, 3) }, {}, [
        shoulderVersion,
      ]),
    ];
    const of = record({ sessions: [...record().sessions, first, second] });
    expect(factsAt(of).redFlags).toEqual(['fainting']);
  });

  it('are read from the only session there is, and left open with a doubtful clock they say nothing', () => {
    const of = (redFlags: SessionRecord['redFlags']) =>
      record({ sessions: [session(lastSession, { redFlags })] });
    expect([factsAt(of(['fainting'])).redFlags, factsAt(of([])).redFlags]).toEqual([['fainting'], []]);
    const silent = morning('2020-01-01', {}, { clockDoubtful: true, redFlags: null, recordedAt: noon });
    const quiet = of([]);
    expect(factsAt({ ...quiet, mornings: [...quiet.mornings, silent] }).redFlags).toEqual([]);
  });

  it('are open where the clock of the session is in doubt', () => {
    const doubtful = session(lastSession, { clockDoubtful: true });
    expect(factsAt(withSession(record(), doubtful)).redFlags).toBeNull();
  });
});

describe('giving way', () => {
  const [set] = session(lastSession).sets;

  it('left open counts as yes from one set on', () => {
    const of = (sets: SessionRecord['sets']) =>
      factsAt(withSession(record(), session(lastSession, { sets }, { gaveWay: null }))).gaveWay;
    expect([of([]), of([set!])]).toEqual([false, true]);
  });

  it('is a warning sign with a fall, and with no other event of the day', () => {
    const gave = withSession(record(), session(lastSession, {}, { gaveWay: true }));
    const flags = (kind: 'fall' | 'illness') =>
      factsAt({ ...gave, events: [{ day: lastSession, kind, joint: null }] }).redFlags;
    expect([flags('fall'), flags('illness')]).toEqual([['fall-with-injury'], []]);
  });

  it('is none of a joint that was not asked about', () => {
    const unasked = session(lastSession, { joints: [] });
    expect(factsAt(withSession(record(), unasked)).gaveWay).toBe(false);
  });
});

describe('days without a session', () => {
  it('are none where the session is of a day that has not come yet here', () => {
    const of = record({ sessions: [session(lastSession)] });
    const at = { instant: instantOn(lastSession, 20), day: addDays(lastSession, -1) };
    expect(factsAt(of, at).gapDays).toBe(0);
    expect(factsAt(of, { ...at, day: lastSession }).gapDays).toBe(0);
  });

  it('before the session no longer count once one of its lines was set anew, or the easier session was done', () => {
    const before = trainingDays[0]!;
    const anew = version({ id: 'b-2', itemId: 'b', signedAt: instantOn(lastSession, 9) });
    const of = (last: SessionRecord) =>
      factsAt(record({ prescriptions: [version(), anew], sessions: [session(before), last] })).gapDays;
    expect(of(session(lastSession))).toBe(18);
    expect(of(session(lastSession, {}, {}, [version(), anew]))).toBe(1);
    expect(of(session(lastSession, { kind: 'bad-day' }))).toBe(1);
  });
});

it('the last change of treatment counts, whichever way the record lists them', () => {
  const of = (...days: readonly number[]) =>
    factsAt(
      record({
        events: days.map((ago) => ({ day: back(ago), kind: 'medicine-change' as const, joint: null })),
      }),
    ).treatmentChangeDays;
  expect([of(9, 2), of(2, 9), of(3, -1)]).toEqual([2, 2, 3]);
});

describe('a course of steroid', () => {
  const of = (lastDay: Day) =>
    factsAt(record({ events: [{ day: back(9), kind: 'steroid-course', joint: null, lastDay }] }))
      .treatmentChangeDays;

  it('blunts the scores as of today while it runs, and from its last day on', () => {
    expect([of(back(-3)), of(back(0)), of(back(1)), of(back(4))]).toEqual([0, 0, 1, 4]);
  });

  it('that has not begun, and a missed dose, are no change of treatment', () => {
    const events = [
      { day: back(-1), kind: 'steroid-course', joint: null, lastDay: back(-9) },
      { day: back(2), kind: 'missed-dose', joint: null },
    ] as const;
    expect(factsAt(record({ events })).treatmentChangeDays).toBeNull();
  });
});

describe('tiredness', () => {
  const rise = (...mornings: readonly MorningRecord[]) =>
    factsAt(record({ baselines: [baseline({ usualFatigue: 2 })], mornings })).fatigueRise;
  const tired = (day: Day, fatigue: number, changed: Partial<MorningRecord> = {}) =>
    morning(day, {}, { fatigue, ...changed });

  it('is read from the only morning there is', () => {
    expect(rise(tired(judgedMorning, 5))).toBe(3);
    expect(rise()).toBeNull();
  });

  it('is that of the last morning known by now whose clock is trusted', () => {
    const earlier = tired(back(1), 4);
    const at = (changed: Partial<MorningRecord>) => rise(earlier, tired(judgedMorning, 9, changed));
    expect([noon, noon + 1].map((recordedAt) => at({ recordedAt }))).toEqual([7, 2]);
    expect(at({ clockDoubtful: true })).toBe(2);
  });
});

describe('extra pain relief', () => {
  it('is asked of the session and of the morning after it, and of none where there is none', () => {
    const evening = { instant: instantOn(lastSession, 22), day: lastSession };
    expect(factsAt(record(), evening).extraPainRelief).toBe(false);
    const silent = withMorning(record(), morning(judgedMorning, {}, { extraPainRelief: null }));
    expect(factsAt(silent).extraPainRelief).toBe(true);
    expect(
      factsAt(withSession(record(), session(trainingDays.at(-2)!, { extraPainRelief: true }))),
    ).toMatchObject({ extraPainRelief: false });
  });
});
