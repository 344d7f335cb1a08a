/** When questions asked at home are due, and of whom they are not asked. Every 28 days: common practice, no source. */
import { describe, expect, it } from 'vitest';
import {
  activitiesAsked,
  dueFrom,
  holdsQuestionsBack,
  homeQuestionsConsistent,
  isDue,
} from '#core/assessment/questionnaires/home-questions.ts';
import { addDays } from '#core/time/day.ts';

const first = '2026-03-02';
const every28 = { fromDay: first, everyDays: 28 };
const dayAfter = (days: number) => addDays(first, days);

describe('questions asked at home', () => {
  it.each([
    [-1, false],
    [0, true],
    [1, true],
    [200, true],
  ])('are due from the first day on until they are answered: day %i, %s', (days, due) => {
    expect(isDue(every28, [], dayAfter(days))).toBe(due);
  });

  it.each([
    [0, false],
    [27, false],
    [28, true],
    [29, true],
  ])('are due again so many days after the last answers: day %i, %s', (days, due) => {
    expect(isDue(every28, [first], dayAfter(days))).toBe(due);
  });

  it('answered late they wait the whole time again; the order in which answers came is irrelevant', () => {
    expect(dueFrom(every28, [dayAfter(40), dayAfter(3)])).toBe(dayAfter(68));
  });

  it('are not due before their first day whatever was answered earlier', () => {
    expect(dueFrom(every28, [dayAfter(-60)])).toBe(first);
  });

  it.each([
    [-1, false],
    [0, true],
    [92, true],
    [93, false],
  ])('begin from today to 92 days ahead: day %i, %s', (days, taken) => {
    expect(homeQuestionsConsistent({ fromDay: dayAfter(days) }, first).length === 0).toBe(taken);
  });

  it('begin on no day that does not exist', () => {
    expect(homeQuestionsConsistent({ fromDay: '2026-02-30' }, first)).toHaveLength(1);
  });
});

describe('nobody is asked', () => {
  type Plan = Parameters<typeof holdsQuestionsBack>[0];
  const quiet: Plan = { signs: [], pauses: [], contact: 'none', items: [{ decision: 'progress' }] };
  const pause = (joint: 'right-knee' | null, resumed: readonly string[] = []) =>
    ({
      pause: { joint },
      isSignOpen: false,
      resumedItemIds: new Set(resumed),
    }) as unknown as Plan['pauses'][number];
  const sign = (endedBy: object | null) => ({ endedBy }) as unknown as Plan['signs'][number];

  it.each<[string, Partial<Plan>, boolean]>([
    ['nothing stands in the way', {}, false],
    ['a warning sign is open', { signs: [sign(null)] }, true],
    ['a warning sign has ended', { signs: [sign({})] }, false],
    ['everything is paused', { pauses: [pause(null)] }, true],
    ['some of what was paused was resumed', { pauses: [pause(null, ['item'])] }, false],
    ['one joint is paused', { pauses: [pause('right-knee')] }, false],
    ['an exercise is stopped', { items: [{ decision: 'progress' }, { decision: 'pause' }] }, true],
    ['an exercise holds, for a gap or a limit', { items: [{ decision: 'hold' }] }, false],
    ['somebody is to be rung at once', { contact: 'emergency' }, true],
    ['somebody is to be rung today', { contact: 'same-day' }, true],
    ['somebody is to be rung some time', { contact: 'routine' }, false],
  ])('while %s: %s', (_title, more, isHeld) => {
    expect(holdsQuestionsBack({ ...quiet, ...more })).toBe(isHeld);
  });
});

describe('the activities a person chose', () => {
  const rated = (day: string, activity: string, answeredAtHome = false) =>
    ({ kind: 'patient-chosen-activity', day, activity, score: 4, answeredAtHome }) as const;

  it('are those last rated with a clinician; what was left out at home is still asked', () => {
    const rows = [
      rated(first, 'Swimming'),
      rated(dayAfter(20), 'Stairs'),
      rated(dayAfter(20), 'Kneeling'),
      rated(dayAfter(48), 'Stairs', true),
    ];
    expect(activitiesAsked(rows)).toEqual(['Stairs', 'Kneeling']);
  });

  it('are none where none is on record', () => {
    expect(activitiesAsked([{ kind: 'body-mass', day: first, massKg: 70 }])).toEqual([]);
  });
});
