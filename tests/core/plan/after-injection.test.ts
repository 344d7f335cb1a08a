/** The days after an injection. Their number is a clinic's choice: the sources disagree. */
import { describe, expect, it } from 'vitest';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import { injectionEvidence } from '#core/episode/treatment/injection-evidence.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { addDays } from '#core/time/day.ts';
import { decided } from './drawn-plans.ts';
import { day, hoursAfter, inputs } from './plan-inputs.ts';

const injected = (daysAgo: number, joint: RecordedEvent['joint']): RecordedEvent => ({
  id: 'injection',
  day: addDays(day, -daysAgo),
  kind: 'joint-injection',
  joint,
  recordedAt: hoursAfter(-24 * daysAgo),
  remark: null,
  medicine: null,
  courseForm: null,
});
const withEvents = (...events: readonly RecordedEvent[]) => ({ care: { ...inputs().care, events } });
const todayOf = (more: Parameters<typeof inputs>[0]) =>
  Object.fromEntries(planFor(inputs(more)).items.map(({ itemId, today }) => [itemId, today]));

describe('after an injection of the elbow', () => {
  it.each([
    [0, 2, 'bad-day'],
    [1, 2, 'bad-day'],
    [2, 2, 'bad-day'],
    [3, 2, 'as-planned'],
    [1, 1, 'bad-day'],
    [2, 1, 'as-planned'],
  ])('%i days after, with %i days chosen, the curl is %s', (daysAgo, days, expected) => {
    const more = {
      ...withEvents(injected(daysAgo, 'right-elbow')),
      settings: { 'injection-easier-days': days },
    };
    expect(todayOf(more).curl).toBe(expected);
  });

  it('is two days where the clinic has chosen nothing, and leaves exercises of other joints alone', () => {
    const seen = (daysAgo: number) => todayOf(withEvents(injected(daysAgo, 'right-elbow')));
    expect([seen(2), seen(3)].map(({ curl, chair }) => [curl, chair])).toEqual([
      ['bad-day', 'as-planned'],
      ['as-planned', 'as-planned'],
    ]);
  });

  it('names the joint, the day and the last day of it', () => {
    const { items } = planFor(inputs(withEvents(injected(1, 'right-elbow'))));
    expect(items.find(({ itemId }) => itemId === 'curl')).toMatchObject({
      decision: 'hold',
      easierSession: { sets: 1 },
      reasons: [
        {
          code: 'injection-easier',
          today: 'bad-day',
          joint: 'right-elbow',
          injectedOn: '2026-03-08',
          until: '2026-03-10',
        },
      ],
    });
  });

  it('counts from the person’s other record, and for every exercise where nobody named the joint', () => {
    const other = { ...inputs(), ...withEvents(injected(1, 'right-elbow')) };
    expect(todayOf({ beside: [other] }).curl).toBe('bad-day');
    expect(new Set(Object.values(todayOf(withEvents(injected(1, null)))))).toEqual(new Set(['bad-day']));
  });

  it('loosens nothing: what rests goes on resting', () => {
    const decisions = [decided({ joint: 'right-elbow', decision: 'pause', today: 'rest-this-joint' })];
    expect(todayOf({ decisions, ...withEvents(injected(1, 'right-elbow')) }).curl).toBe('rest-this-joint');
  });
});

it('the sources are told with their disagreement, and what was only remembered says so', () => {
  expect(new Set(injectionEvidence.map(({ direction }) => direction)).size).toBe(3);
  for (const { finding, citation } of injectionEvidence)
    expect(finding.includes('from memory'), finding).toBe(citation.mark === 'memory');
});
