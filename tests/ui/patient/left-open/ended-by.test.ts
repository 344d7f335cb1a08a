/** A session that lies open, and a plan that is another one by now. */
import { describe, expect, it } from 'vitest';
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import type { Today } from '#core/decision/answers.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { endedBy } from '#ui/patient/session/left-open/ended-by.ts';
import { began, begin, eligibility, next, oneSet, onlyCuff, play } from '../session-play.ts';
import { cuffDose, exercise, today, weightDose } from '../views.ts';

const at = { day: '2026-03-09', now: began };
const lookup = (more: Partial<PainLookup> = {}): PainLookup => ({
  joint: 'right-knee',
  byPain: Array.from({ length: 11 }, (_, pain): Today => (pain < 6 ? 'as-planned' : 'rest-this-joint')),
  whenUnknown: 'bad-day',
  acceptablePainLimit: 5,
  ...more,
});
const planOf = (more: Partial<TodayExercise> = {}, view: Partial<TodayView> = {}) =>
  today({ exercises: [exercise('weight', weightDose, more)], painLookups: [lookup()], ...view });
const running = (isEasier = false): SessionDraft =>
  play(begin(planOf(), isEasier), ...eligibility, next, ...oneSet(0, 1, 15, began));
const by = (view: TodayView, draft = running()) => endedBy(draft, view, at);

describe('a session that lies open', () => {
  it('is gone on with while the plan is the one it was begun with', () => {
    expect(by(planOf())).toBeNull();
    expect(by(planOf({ planned: false }))).toBeNull();
  });

  it.each([
    ['another version', { prescriptionId: 'newer' }],
    ['another dose by a decision', { dose: { ...weightDose, sets: 2 } }],
    ['an easier session', { today: 'bad-day' }],
    ['a rest', { today: 'rest-this-joint' }],
    ['nothing at all', { today: 'none' }],
  ] as const)('is not gone on with once the plan says %s', (_name, more) => {
    expect(by(planOf(more))).toBe('plan-changed');
  });

  it('is not gone on with once its exercise is gone, a sign stops the plan or less pain is allowed', () => {
    expect(by(planOf({}, { exercises: [] }))).toBe('plan-changed');
    expect(by(planOf({}, { isStopped: true }))).toBe('plan-changed');
    expect(by(planOf({}, { painLookups: [lookup({ acceptablePainLimit: 4 })] }))).toBe('plan-changed');
    const stricter = lookup().byPain.map((left, pain): Today => (pain === 5 ? 'bad-day' : left));
    expect(by(planOf({}, { painLookups: [lookup({ byPain: stricter })] }))).toBe('plan-changed');
  });

  it('is gone on with where the plan allows more, which it does not take', () => {
    const looser = lookup({ acceptablePainLimit: 6, byPain: lookup().byPain.map((): Today => 'as-planned') });
    expect(by(planOf({}, { painLookups: [looser] }))).toBeNull();
  });

  it('as an easier session goes on where only that is left, and not under another easier one', () => {
    expect(by(planOf({ today: 'bad-day' }), running(true))).toBeNull();
    const other = { ...weightDose, sets: 1 };
    expect(by(planOf({ badDay: other }), running(true))).toBe('plan-changed');
  });

  it('with no set left to do takes its last answers, whatever the plan is by now', () => {
    const done = play(running(), ...oneSet(0, 2, 15, began), ...oneSet(0, 3, 15, began));
    expect(by(planOf({ today: 'none' }), done)).toBeNull();
  });

  it('with a cuff on keeps its clock until the cuff is off', () => {
    const atCuff = play(begin(onlyCuff), ...eligibility, next);
    const on = play(atCuff, { type: 'cuff-on', item: 0, now: began });
    const stopped = { ...onlyCuff, exercises: [exercise('cuff', cuffDose, { today: 'none' })] };
    expect(endedBy(on, stopped, at)).toBeNull();
    expect(endedBy(play(on, { type: 'cuff-off', item: 0, now: began }), stopped, at)).toBe('plan-changed');
  });

  it('of another civil day is named so before anything about its plan', () => {
    const late = { day: '2026-03-11', now: began + 48 * 3600_000 };
    expect(endedBy(running(), planOf({ today: 'none' }), late)).toBe('another-day');
  });

  it('knows nothing of a field that came into the dose after it was begun', () => {
    const { secondsPerRepetition: _later, ...older } = weightDose;
    const draft = begin(planOf({ dose: older as typeof weightDose }));
    expect(by(planOf(), draft)).toBeNull();
  });
});
