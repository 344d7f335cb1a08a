/** The flare a note speaks of: as the patient reported it, within eight weeks. */
import { describe, expect, it } from 'vitest';
import type { JointMorning } from '#core/decision/facts/indexed-record.ts';
import { flareCourse } from '#core/episode/documents/flare-course.ts';
import { addDays, dayNumber } from '#core/time/day.ts';

const today = '2026-04-20';

const morning = (daysAgo: number, flare: boolean | null): JointMorning => {
  const day = addDays(today, -daysAgo);
  const answers = {
    joint: 'right-wrist',
    pain: 3,
    stiffnessMinutes: 30,
    swelling: 'none',
    swellingQuestion: 'more-than-usual',
    flare,
  } as const;
  return {
    answers,
    day: dayNumber(day),
    morning: {
      id: day,
      day,
      recordedAt: 0,
      joints: [answers],
      redFlags: [],
      extraPainRelief: false,
      fatigue: null,
      clockDoubtful: false,
    },
  };
};
const courseOf = (...mornings: readonly JointMorning[]) => flareCourse(mornings, today, 1);

describe('the flare of a note', () => {
  it('goes on until the patient says that it is over', () => {
    expect(courseOf(morning(3, false), morning(2, true), morning(1, true))).toEqual({
      first: '2026-04-18',
      last: '2026-04-19',
      isOpen: true,
    });
    expect(courseOf(morning(2, true), morning(1, false))).toEqual({
      first: '2026-04-18',
      last: '2026-04-18',
      isOpen: false,
    });
  });

  it('is none without an answer of yes, and none that was last reported more than eight weeks ago', () => {
    expect(courseOf()).toBeNull();
    expect(courseOf(morning(1, false), morning(0, null))).toBeNull();
    expect(courseOf(morning(55, true), morning(54, false))).not.toBeNull();
    expect(courseOf(morning(56, true), morning(55, false))).toBeNull();
    expect(courseOf(morning(57, true))).toBeNull();
  });
});
