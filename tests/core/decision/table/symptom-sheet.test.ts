/** Published check rows of the symptom rules, where the table in force keeps them; changed ones: left-out.ts. */
import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { factFields } from '#core/decision/facts/fact-fields.ts';
import { effusions } from '#core/record/record.ts';
import { facts } from '../base-facts.ts';
import { leftOut } from './left-out.ts';

const decisions = (...changes: Parameters<typeof facts>[0][]) =>
  changes.map((changed) => decide(facts(changed)).decision);

describe('check rows of the symptom rules', () => {
  it('effusion grades run zero, trace, 1+, 2+, 3+ [symptoms 59]', () => {
    expect(effusions).toEqual(['zero', 'trace', '1+', '2+', '3+']);
  });
  it('the base case progresses [symptoms 60]', () => {
    expect(decisions({})).toEqual(['progress']);
  });
  it('during 4, 5, 6: progress, hold, ease back [symptoms 61]', () => {
    expect(decisions({ painDuring: 4, painAfter: 3 }, { painDuring: 5 }, { painDuring: 6 })).toEqual([
      'progress',
      'hold',
      'ease-back',
    ]);
  });
  it('before 3 over a usual 1 holds [symptoms 62]', () => {
    expect(decisions({ painBefore: 3 })).toEqual(['hold']);
  });
  it('next morning 2 holds over a usual 1 [symptoms 63, its first part]', () => {
    expect(decisions({ painNextMorning: 2 })).toEqual(['hold']);
  });
  it('two hours 2 holds and 3 eases back over a usual 1 [symptoms 64]', () => {
    expect(decisions({ painTwoHours: 2 }, { painTwoHours: 3 })).toEqual(['hold', 'ease-back']);
  });
  it('a week 0.99, 1.0 and 2.0 over usual: progress, hold, ease back [symptoms 65]', () => {
    expect(decisions({ morningPainMean7: 1.99 }, { morningPainMean7: 2 }, { morningPainMean7: 3 })).toEqual([
      'progress',
      'hold',
      'ease-back',
    ]);
  });
  it('effusion trace, 1+, 2+, 2+ again, 3+ [symptoms 66]', () => {
    expect(
      decisions(
        { effusion: 'trace' },
        { effusion: '1+' },
        { effusion: '2+', effusionRun: 1 },
        { effusion: '2+', effusionRun: 2 },
        { effusion: '3+', effusionRun: 1 },
      ),
    ).toEqual(['progress', 'hold', 'ease-back', 'pause', 'pause']);
  });
  it('stiffness 30, 31, 60, 61 over a usual 10 [symptoms 67]', () => {
    expect(
      decisions(
        { stiffnessMinutes: 30 },
        { stiffnessMinutes: 31 },
        { stiffnessMinutes: 60 },
        { stiffnessMinutes: 61 },
      ),
    ).toEqual(['progress', 'hold', 'hold', 'ease-back']);
  });
  it('stiffness 45 where 45 is usual progresses [symptoms 68]', () => {
    expect(decisions({ stiffnessMinutes: 45, usualStiffnessMinutes: 45 })).toEqual(['progress']);
  });
  it('a flare of 1 day eases back [symptoms 69, its first part]', () => {
    expect(decisions({ flareDays: 1 })).toEqual(['ease-back']);
  });
  it('97 % of the repetitions holds [symptoms 70]', () => {
    expect(decisions({ repetitionsDonePercent: 97 })).toEqual(['hold']);
  });
  it('a gap of 14 days eases back [symptoms 71]', () => {
    expect(decisions({ gapDays: 14 })).toEqual(['ease-back']);
  });
  it('a signal alone holds; with during 6 the dose eases back [symptoms 72]', () => {
    expect(decisions({ symptomSignal: true }, { symptomSignal: true, painDuring: 6 })).toEqual([
      'hold',
      'ease-back',
    ]);
  });
  it('a missing next morning holds [symptoms 73]', () => {
    expect(decisions({ painNextMorning: null })).toEqual(['hold']);
  });
  it('a red flag pauses with all else best and with during 6 [symptoms 74]', () => {
    expect(
      decisions({ redFlags: ['hot-swollen-joint'] }, { redFlags: ['hot-swollen-joint'], painDuring: 6 }),
    ).toEqual(['pause', 'pause']);
  });
  it('of a hold and an ease-back the ease-back wins and both are listed [symptoms 75]', () => {
    const answers = decide(facts({ painNextMorning: 2, effusion: '2+', effusionRun: 1 }));
    expect([answers.decision, ...answers.reasons.map((one) => one.rule)]).toEqual([
      'ease-back',
      'P5h',
      'S2f',
    ]);
  });
  it('usual 3: before 3, during 5, two hours 3, morning 1 holds [symptoms 76]', () => {
    const changed = { usualPain: 3, usualPainTop: 3, painBefore: 3, painDuring: 5, painTwoHours: 3 };
    expect(decisions(changed)).toEqual(['hold']);
    expect(decide(facts(changed)).reasons.map((one) => one.rule)).toEqual(['P4']);
  });
  it('all pain 0 progresses [symptoms 78]', () => {
    const none = { painBefore: 0, painDuring: 0, painAfter: 0, painTwoHours: 0, painNextMorning: 0 };
    expect(decisions({ ...none, morningPainMean7: 0 })).toEqual(['progress']);
  });
  it('pain is described as a whole number from 0 to 10 or not answered, so −1, 11 and 3.5 are refused [symptoms 79]', () => {
    for (const name of ['painBefore', 'painDuring', 'painAfter', 'painTwoHours', 'painNextMorning']) {
      const field = factFields.find((one) => one.name === name);
      expect(field).toMatchObject({ kind: 'integer', min: 0, max: 10, nullable: true });
    }
  });
});

describe('rows the table in force changed', () => {
  it('each is listed once with its reason and what the engine now says', () => {
    expect(leftOut.map((one) => one.row)).toEqual([61, 62, 63, 68, 69, 70, 71]);
    expect(
      decisions(
        { painDuring: 8 },
        { painBefore: 5, painDuring: 5, painAfter: 5 },
        { painNextMorning: 3 },
        { stiffnessMinutes: 76, usualStiffnessMinutes: 45 },
        { flareDays: 8 },
        { repetitionsDonePercent: 50 },
        { reserveShortfall: 1 },
        { sessionsOnTarget: 1 },
        { missedSessions14: 1, plannedSessions14: 5 },
      ),
    ).toEqual(['ease-back', 'hold', 'hold', 'hold', 'ease-back', 'hold', 'progress', 'progress', 'progress']);
  });
});
