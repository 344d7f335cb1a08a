import { describe, expect, it } from 'vitest';
import { decide } from '#core/decision/decide.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import {
  type EngineVersion,
  engineDefaults,
  engineSettings,
  engineVersions,
  newestVersion,
} from '#core/decision/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { baseFacts, facts } from '../base-facts.ts';

describe('answers beside the table', () => {
  it('a quiet joint with two sessions on target may take the larger step, and no rule speaks', () => {
    expect(decide(baseFacts)).toEqual({
      decision: 'progress',
      largestStep: 'load',
      today: 'as-planned',
      contact: 'none',
      reasons: [],
    });
  });

  it('pause dominates everything else, whatever else fires', () => {
    const answers = decide(
      facts({ redFlags: ['chest-pain'], painDuring: 6, flareDays: 2, painBefore: null }),
    );
    expect([answers.decision, answers.largestStep, answers.today]).toEqual(['pause', null, 'none']);
    expect(answers.reasons.map((one) => one.rule)).toEqual(['R1', 'P2', 'P4', 'F2', 'M1']);
  });

  it('a reason carries what was found, the threshold with its figure and who says so', () => {
    const [reason] = decide(facts({ painDuring: 6 })).reasons;
    expect(reason).toMatchObject({
      rule: 'P2',
      observed: { peak: 6, painCeiling: 5 },
      support: 'ageberg-2010',
      effect: { decision: 'ease-back', today: 'bad-day' },
    });
    expect(reason?.threshold).toContain('5');
  });
});

describe('the order of the table', () => {
  it('is counted from 1 without a gap, and an older version keeps it', () => {
    const places = (version: EngineVersion) => rulesOf(version).map(({ order }) => order);
    expect(places(newestVersion)).toEqual(rulesOf(newestVersion).map((_, place) => place + 1));
    for (const version of engineVersions)
      expect(places(version)).toEqual(places(version).toSorted((a, b) => a - b));
    expect(new Set(rulesOf(newestVersion).map(({ id }) => id)).size).toBe(rulesOf(newestVersion).length);
  });
});

describe('clinic choices of the engine', () => {
  it('every default lies inside its own bounds and no id stands twice', () => {
    expect(checkSettings(engineSettings, engineDefaults)).toEqual([]);
    expect(new Set(engineSettings.map((setting) => setting.id)).size).toBe(engineSettings.length);
  });

  it('every choice a rule names exists', () => {
    const ids = new Set<string>(engineSettings.map((setting) => setting.id));
    for (const version of engineVersions) {
      expect(rulesOf(version).flatMap(({ settings }) => settings.filter((id) => !ids.has(id)))).toEqual([]);
    }
  });

  it('a clinic that moves a choice moves the rule, and the threshold says the figure in force', () => {
    const strict = { ...engineDefaults, 'baseline-expiry': 28 };
    expect(decide(facts({ baselineAgeDays: 29 })).decision).toBe('progress');
    const moved = decide(facts({ baselineAgeDays: 29 }), strict);
    expect(moved.decision).toBe('hold');
    expect(moved.reasons[0]?.threshold).toContain('28 days');
  });
});

describe('what a rule rests on', () => {
  const rules = rulesOf(newestVersion);
  const citations = rules.flatMap(({ citations }) => citations);

  it('is a source it cites, or a choice of which no source gives the number', () => {
    const withoutSource = rules.filter(({ restsOn, citations }) => restsOn === 'source' && !citations[0]);
    const withNumber = rules.filter(
      ({ restsOn, citations }) =>
        restsOn === 'clinic-choice' && citations.some(({ number }) => number === 'from-source'),
    );
    expect([...withoutSource, ...withNumber].map(({ id }) => id)).toEqual([]);
  });

  it('says whom each source studied, in the same words wherever it is cited', () => {
    expect(citations.filter(({ studied }) => studied === '')).toEqual([]);
    const told = new Set(citations.map(({ source, studied }) => `${source}: ${studied}`));
    expect(told.size).toBe(new Set(citations.map(({ source }) => source)).size);
  });

  it('says where a number was chosen near a source: two points against a detectable change of 1.33', () => {
    // Alghadir et al. 2018, Journal of Pain Research 11:851–856: detectable change 1.33 in 121 people.
    const near = citations.filter(({ source }) => source === 'alghadir-2018');
    expect(near.map(({ number }) => number)).toEqual(Array(4).fill('near-source'));
    expect(near[0]!.studied).toMatch(/^121 people with knee osteoarthritis/);
  });
});
