/** The picture of a summary: what is drawn, and what is left undrawn because nobody said it. */
import { describe, expect, it } from 'vitest';
import type { PatientRecord } from '#core/record/record.ts';
import { inFocus } from '#core/review/summary/in-focus.ts';
import { summaryPicture } from '#core/review/summary/picture.ts';
import { addDays } from '#core/time/day.ts';
import { judgedMorning, kneeDose, morning, record, version } from '../../decision/small-record.ts';

const since = addDays(judgedMorning, -28);
const step = { from: addDays(since, -30), to: null, share: 1, inShort: '3 × 15–20, 10 kg' };

const drawn = (more: Partial<PatientRecord> = {}, over: object = {}) => {
  const of = record({ prescriptions: [version()], ...more });
  return summaryPicture({
    record: of,
    focus: inFocus(of)!,
    steps: [step],
    waiting: null,
    since,
    today: judgedMorning,
    ...over,
  });
};
const lastWith = (over: Parameters<typeof morning>[1]) => {
  const mornings = record().mornings.map((one) =>
    one.day === judgedMorning ? morning(judgedMorning, over) : one,
  );
  return drawn({ mornings }).mornings.at(-1);
};
const usualTop = drawn().thresholds.at(-1)!.usualPainTop!;

describe('the picture of a summary', () => {
  it.each([
    ['under', -1, null],
    ['at', 0, null],
    ['over', 1, 1],
  ])('a morning %s the top of usual pain stands out only over it', (_where, more, over) => {
    expect(lastWith({ pain: usualTop + more })).toEqual({
      day: judgedMorning,
      pain: usualTop + more,
      over,
      isFlare: false,
    });
  });

  it('a morning that was due and did not come is no pain of nought', () => {
    const mornings = record().mornings.filter(({ day }) => day !== judgedMorning);
    expect(drawn({ mornings }).mornings.every(({ pain }) => pain === null || pain > 0)).toBe(true);
    expect(lastWith({ pain: null })).toMatchObject({ pain: null, over: null });
  });

  it('without a usual pain no morning is over it', () => {
    expect(drawn({ baselines: [] }).mornings.every(({ over }) => over === null)).toBe(true);
  });

  it('begins with the time shown, and holds no step that ended before it', () => {
    const ended = { ...step, to: addDays(since, -1), inShort: 'ended' };
    const endedOn = { ...step, to: since, inShort: 'ended on it' };
    const shown = drawn({}, { steps: [ended, endedOn, step] }).steps;
    expect(shown).toEqual([{ ...step, from: since }]);
  });

  it('draws the waiting dose by its share of the first, and not where none waits', () => {
    expect(drawn().waitingShare).toBeNull();
    // 3 × 20 with 12 kg beside 3 × 20 with 10 kg.
    expect(drawn({}, { waiting: { ...kneeDose, loadKg: 12 } }).waitingShare).toBeCloseTo(1.2, 9);
  });
});
