/** Goals in the patient’s words: what was set at the start, what was added, and what became of each. */
import { describe, expect, it } from 'vitest';
import { type GoalStep, goalConsistent, goalsFrom } from '#core/episode/goals.ts';

const today = '2026-04-20';
const step = (goal: string, state: GoalStep['state'], more: Partial<GoalStep> = {}): GoalStep => ({
  goal,
  state,
  byDay: null,
  note: null,
  recordedAt: 1,
  byName: 'R. Clinician',
  ...more,
});

describe('goals', () => {
  it('set at the start of the episode are open until somebody says otherwise', () => {
    expect(goalsFrom(['Stairs without the rail'], [], today)).toMatchObject([
      { goal: 'Stairs without the rail', state: 'open', said: null, isOverdue: false },
    ]);
  });

  it('stand as their newest step leaves them, whatever the capitals and spaces', () => {
    const steps = [
      step('Walk to the shop', 'open'),
      step(' walk  to the SHOP ', 'reached', { recordedAt: 2 }),
    ];
    expect(goalsFrom([], steps, today)).toMatchObject([
      { goal: 'Walk to the shop', state: 'reached', said: { at: 2, by: 'R. Clinician' } },
    ]);
  });

  it.each([
    ['2026-04-19', 'open', true],
    ['2026-04-20', 'open', false],
    ['2026-04-21', 'open', false],
    ['2026-04-19', 'reached', false],
    ['2026-04-19', 'set-aside', false],
  ] as const)('to be reached by %s and %s: past its day %s', (byDay, state, isOverdue) => {
    expect(goalsFrom([], [step('Swim', state, { byDay })], today)[0]!.isOverdue).toBe(isOverdue);
  });

  it('keep their day when a later step gives none', () => {
    const steps = [step('Swim', 'open', { byDay: '2026-05-01' }), step('Swim', 'partly-reached')];
    expect(goalsFrom([], steps, today)[0]).toMatchObject({ byDay: '2026-05-01', state: 'partly-reached' });
  });
});

describe('the day of a goal', () => {
  it.each([
    [null, 'open', 0],
    ['2026-04-19', 'open', 1],
    ['2026-04-20', 'open', 0],
    ['2026-04-19', 'reached', 0],
    ['2029-04-20', 'open', 0],
    ['2029-04-22', 'open', 1],
    ['2026-02-30', 'open', 1],
  ] as const)('%s, %s: %i refusals', (byDay, state, count) => {
    expect(goalConsistent({ byDay, state }, today)).toHaveLength(count);
  });
});
