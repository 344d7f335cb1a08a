/** What this morning's answers leave of the older plan that this phone still holds. */
import { describe, expect, it } from 'vitest';
import type { Today } from '#core/decision/answers.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Swelling } from '#core/record/morning-questions.ts';
import { dayState } from '#ui/patient/day-state.ts';
import { whatItLeaves } from '#ui/patient/morning/what-it-leaves.ts';
import type { Saved } from '#ui/patient/outbox/outbox.ts';
import { viewUntilCounted } from '#ui/patient/until-counted.ts';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { exercise, today, weightDose } from '../views.ts';

const day = '2026-03-09';
const told = (leaves: Saved['leaves'], more: Partial<Saved> = {}): Saved => ({
  entryId: 'e',
  ownerId: 'p',
  kind: 'morning',
  entry: null,
  encrypted: null,
  day,
  savedAt: 0,
  isUrgent: false,
  ...(leaves ? { leaves } : {}),
  status: 'waiting',
  early: 0,
  clockDoubtful: false,
  ...more,
});
const flare = (more: Partial<Saved> = {}) => told([{ joint: 'right-knee', today: 'none' }], more);

const exercises = [
  exercise('knee', weightDose),
  exercise('shoulder', weightDose, { joints: ['left-shoulder'] }),
  exercise('eased', weightDose, { today: 'bad-day' }),
];
/** `counted`: the answers of this morning that the clinic's page counts. */
const viewOf = (counted: string | null = null) => {
  const view = viewOnDay(today({ exercises }), day);
  return { ...view, morning: { ...view.morning, entryId: counted } };
};
const left = (saved: Saved, counted: string | null = null) =>
  dayState(viewOf(counted), [saved], 0).leftUntilCounted;
const plan = (saved: Saved): readonly Today[] =>
  viewUntilCounted(viewOf(), [saved]).exercises.map((one) => one.today);

describe('answers of this morning', () => {
  it('bind the plan on this phone until the clinic’s page counts them, sent or not', () => {
    expect(left(flare())).toBe('none');
    expect(left(flare({ status: 'stored' }))).toBe('none');
    expect(left(flare({ status: 'stored' }), 'e')).toBeNull();
    expect(left(flare(), 'e')).toBeNull();
  });

  it('bind it beside those of another phone while they wait, and not once others stand in their place', () => {
    expect(left(flare(), 'another')).toBe('none');
    expect(left(flare({ status: 'stored' }), 'amended')).toBeNull();
    expect(left(flare({ status: 'aside' }))).toBeNull();
  });

  it('bind nothing on another day, nor where they leave all as planned', () => {
    expect(left(flare({ day: '2026-03-08' }))).toBeNull();
    expect(left(told(undefined))).toBeNull();
    expect(plan(told(undefined))).toEqual(['as-planned', 'as-planned', 'bad-day']);
  });

  it('take away from what loads the joint, a flare from the whole day, and give nothing back', () => {
    expect(plan(flare())).toEqual(['none', 'none', 'none']);
    const less = (today: Today) => plan(told([{ joint: 'right-knee', today }]));
    expect(less('rest-this-joint')).toEqual(['rest-this-joint', 'as-planned', 'rest-this-joint']);
    expect(less('bad-day')).toEqual(['bad-day', 'as-planned', 'bad-day']);
  });
});

const byPain = Array.from(
  { length: 11 },
  (_, pain): Today => (pain < 5 ? 'as-planned' : pain < 7 ? 'bad-day' : 'rest-this-joint'),
);
const lookup: PainLookup = { joint: 'right-knee', byPain, whenUnknown: 'bad-day' };
interface Answers {
  readonly pain?: number | null;
  readonly swelling?: Swelling | null;
  readonly flare?: boolean | null;
}
const leftBy = (answers: Answers, lookups = [lookup]) => {
  const all = { joint: 'right-knee' as const, pain: 2, swelling: 'none' as const, flare: false, ...answers };
  return whatItLeaves([all], lookups).map((one) => one.today);
};

describe('what a morning leaves', () => {
  it('is read from the table for pain now, at and under each of its bounds', () => {
    expect([4, 5, 6, 7].map((pain) => leftBy({ pain })[0])).toEqual([
      undefined,
      'bad-day',
      'bad-day',
      'rest-this-joint',
    ]);
  });

  it('is less for more swelling, none for a flare, and the least of all that was answered', () => {
    expect(leftBy({ swelling: 'slight' })).toEqual(['bad-day']);
    expect(leftBy({ swelling: 'clear' })).toEqual(['rest-this-joint']);
    expect(leftBy({ swelling: 'severe', pain: 5 })).toEqual(['rest-this-joint']);
    expect(leftBy({ flare: true, pain: 8 })).toEqual(['none']);
  });

  it('says nothing by what was left open: pain is asked again before a session', () => {
    expect(leftBy({ pain: null, swelling: null, flare: null })).toEqual([]);
    expect(leftBy({ pain: 9 }, [])).toEqual([]);
  });
});
