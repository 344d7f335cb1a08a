/** What a diary proposes as usual. Scatter against a general-purpose library. */
import { sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { proposeBaseline } from '#core/decision/baseline/propose-baseline.ts';
import type { JointMorningAnswers, MorningRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import { judgedMorning, knee, morning, record } from '../small-record.ts';

const back = (days: number) => addDays(judgedMorning, -days);

/** Mornings up to today, the last one today. */
const diary = (
  pains: readonly number[],
  answers: Partial<JointMorningAnswers> = {},
  changed: Partial<MorningRecord> = {},
) => pains.map((pain, place) => morning(back(pains.length - 1 - place), { pain, ...answers }, changed));

const proposed = (mornings: readonly MorningRecord[], settings = {}) => {
  const answer = proposeBaseline(record({ mornings }), knee, judgedMorning, settings);
  return answer.ready ? answer.proposal : answer.mornings;
};

const ten = [2, 2, 2, 2, 2, 2, 2, 2, 2, 2];

describe('a baseline proposed from the diary', () => {
  it('needs ten quiet mornings', () => {
    expect(proposed(diary(ten.slice(1)))).toBe(9);
    expect(proposed(diary(ten))).toMatchObject({ mornings: 10, usualPain: 2 });
    expect(proposed(diary([...ten, 2]))).toMatchObject({ mornings: 11 });
  });

  it('reads usual pain from the last 14 days, today counted, and scatter from 28', () => {
    const at = (days: number) => proposed([morning(back(days), { pain: 2 }), ...diary(ten)]);
    expect([at(12), at(13), at(14)]).toMatchObject([{ mornings: 11 }, { mornings: 11 }, { mornings: 10 }]);
    expect([at(26), at(27), at(28)]).toMatchObject([
      { mornings: 10, morningSpread: { values: 11 } },
      { mornings: 10, morningSpread: { values: 11 } },
      { mornings: 10, morningSpread: { values: 10 } },
    ]);
    expect(proposed([...diary(ten), morning(back(-1), { pain: 9 })])).toMatchObject({ mornings: 10 });
  });

  it('gives as scatter the sample standard deviation of the mornings', () => {
    const scattered = [2, 4, 4, 4, 5, 5, 7, 9, 1, 3, 0, 6];
    expect(proposed(diary(scattered))).toMatchObject({
      morningSpread: {
        standardDeviation: expect.closeTo(sampleStandardDeviation(scattered), 12),
        values: 12,
      },
    });
    expect(proposed(diary(ten))).toMatchObject({ morningSpread: { standardDeviation: 0 } });
  });

  it('has no scatter of one morning, and that of two where a clinic asks for so few', () => {
    const spread = (pains: readonly number[]) => proposed(diary(pains), { 'baseline-mornings': 1 });
    expect(spread([3])).toMatchObject({ morningSpread: { standardDeviation: 0, values: 1 } });
    expect(spread([3, 5])).toMatchObject({
      morningSpread: { standardDeviation: expect.closeTo(Math.SQRT2, 12), values: 2 },
    });
  });

  it('takes the lower of the two middle mornings, of pain, stiffness and tiredness alike', () => {
    const halves = [1, 1, 1, 1, 1, 4, 4, 4, 4, 4];
    expect(proposed(diary(halves))).toMatchObject({ usualPain: 1, usualPainTop: 1 });
    expect(proposed(diary([...halves, 4]))).toMatchObject({ usualPain: 4 });
    const mornings = halves.map((value, place) =>
      morning(back(9 - place), { pain: 2, stiffnessMinutes: value * 10 }, { fatigue: value }),
    );
    expect(proposed(mornings)).toMatchObject({ usualStiffnessMinutes: 10, usualFatigue: 1 });
  });

  it('knows no usual stiffness or tiredness where neither was told', () => {
    expect(proposed(diary(ten, { stiffnessMinutes: 'not-applicable' }))).toMatchObject({
      usualStiffnessMinutes: null,
      usualFatigue: null,
    });
  });

  it('lets the band be widened to the second highest morning, 2 over usual at most, and never under it', () => {
    const widest = (...worst: readonly number[]) => proposed(diary([...ten, ...worst]));
    expect(widest(9)).toMatchObject({ widestUsualPainTop: 2 });
    expect(widest(9, 3)).toMatchObject({ widestUsualPainTop: 3 });
    expect(widest(9, 4)).toMatchObject({ widestUsualPainTop: 4 });
    expect(widest(9, 5)).toMatchObject({ widestUsualPainTop: 4 });
    expect(proposed(diary([3]), { 'baseline-mornings': 1 })).toMatchObject({ widestUsualPainTop: 3 });
  });

  it('leaves out flares, mornings without a word on them or on pain, and second answers of a day', () => {
    const odd = (answers: Partial<JointMorningAnswers>) =>
      proposed([morning(back(10), answers), ...diary(ten)]);
    expect(odd({ pain: 2 })).toMatchObject({ mornings: 11 });
    expect(odd({ pain: 2, flare: true })).toMatchObject({ mornings: 10 });
    expect(odd({ pain: 2, flare: null })).toMatchObject({ mornings: 10 });
    expect(odd({ pain: null })).toMatchObject({ mornings: 10 });
    const again = { ...morning(back(9), { pain: 9 }), id: 'again', recordedAt: Date.parse('2026-02-21') };
    const [first] = diary(ten);
    expect(proposed([...diary(ten), again])).toMatchObject({ mornings: 10 });
    expect(first!.day).toBe(again.day);
    expect(proposed(diary(ten, {}, { clockDoubtful: true }))).toBe(0);
  });
});
