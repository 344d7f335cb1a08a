/** Whose error of measuring holds, from the first visit to the outcomes; and scores that need a licence. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import { outcomesUpTo } from '#data/episode/document-checks.ts';
import { patientOf } from '#data/patients/people.ts';
import { type CareSetting, careSetting, firstDay } from './setting.ts';

let at: CareSetting;
beforeEach(async () => {
  at = await careSetting();
});
afterEach(() => at.store.close());

const staff = () => at.clinician(1).clinician;
const saveReason = (over: object = {}) =>
  staff().visits.saveFirstVisit({
    patientId: at.patientId,
    visit: {
      reason: {
        diagnosis: 'Knee osteoarthritis, right',
        inflammatoryArthritis: false,
        followedJoints: ['right-knee'],
        ...over,
      },
    },
  });
const record = (measurement: object) =>
  staff().measurements.record({ patientId: at.patientId, measurement, confirmed: true });
const patient = async () => (await patientOf(at.accessOn(1), at.patientId))!;

describe('the group whose error of measuring holds', () => {
  beforeEach(async () => {
    for (const seconds of [20, 15]) await record({ kind: 'timed-up-and-go', day: firstDay, seconds });
  });
  const verdict = async () => {
    const { measurements, effusions } = await staff().outcomes.get({ patientId: at.patientId });
    return outcomeLines(measurements, effusions, personMeasured(await patient()))[0]!.change.verdict;
  };

  it('is nobody’s until a clinician names it, stays with one who says nothing of it, and can be taken out', async () => {
    expect(await verdict()).toBe('not-judged');
    await saveReason({ errorGroup: 'knee-osteoarthritis-mild' });
    expect(await verdict()).toBe('better');
    await saveReason({ diagnosis: 'Knee osteoarthritis, both' });
    expect(await verdict()).toBe('better');
    await saveReason({ errorGroup: 'knee-arthroplasty-awaited' });
    expect(await verdict()).toBe('within-error');
    await saveReason({ errorGroup: null });
    expect(await verdict()).toBe('not-judged');
  });

  it('holds for papers as for the page', async () => {
    await saveReason({ errorGroup: 'knee-arthroplasty-awaited' });
    const [line] = await outcomesUpTo(at.accessOn(1), await patient(), firstDay);
    expect(line!.change.verdict).toBe('within-error');
  });

  it('that is on no list is refused', async () => {
    const saved = await saveReason({ errorGroup: 'somebody-else' });
    expect(saved.parts.flatMap(({ refused }) => refused.map(({ field }) => field))).toEqual([
      'input.reason.errorGroup',
    ]);
  });
});

describe('a score whose questions need a licence', () => {
  const score = { kind: 'knee-hip-score', day: firstDay, joint: 'right-knee', scale: 'pain', score: 40 };
  const offered = async () =>
    (await staff().measurements.forms({ patientId: at.patientId })).map(({ kind }) => kind);

  it('is offered and taken once an administrator says that the clinic holds one', async () => {
    expect(await offered()).not.toContain('knee-hip-score');
    await expect(record(score)).rejects.toThrow('this clinic has not said that it holds a licence');
    await at.administrator(0).admin.clinicSettings.save({
      values: { 'knee-hip-score-licence': 1 },
      seen: { 'knee-hip-score-licence': 0 },
      reason: 'Licence of 2026',
    });
    expect(await offered()).toContain('knee-hip-score');
    await record(score);
    expect(await staff().measurements.list({ patientId: at.patientId })).toHaveLength(1);
  });
});
