import { describe, expect, it } from 'vitest';
import { answerLine } from '#api/batch/answer-line.ts';
import { decide } from '#core/decision/decide.ts';
import { explainToClinician } from '#core/decision/explain.ts';
import { type RedFlag, redFlags } from '#core/decision/facts/facts.ts';
import { engineRows } from '#core/decision/rows.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { engineDefaults, engineSettings } from '#core/decision/settings.ts';
import { checkSettings } from '#core/sources/clinic-setting.ts';
import { baseFacts, facts } from './base-facts.ts';
import { trios } from './trios.ts';
import { laterTrios } from './trios-later.ts';

const all = [...trios, ...laterTrios];
const fired = (changed: Parameters<typeof facts>[0]) => decide(facts(changed)).reasons.map((one) => one.rule);

describe('every rule under, at and over its threshold', () => {
  for (const { rule, guarantee, cases, answers } of all) {
    it(`${rule}: ${guarantee}`, () => {
      for (const [changed, fires] of cases) {
        expect({ changed, fires: fired(changed).includes(rule) }).toEqual({ changed, fires });
      }
      const { decision, today, contact } = decide(facts(cases.at(-1)![0]));
      expect([decision, today, contact]).toEqual(answers);
    });
  }

  it('no rule is without its trio, and the reasons come in the published order', () => {
    const published =
      'R1 P1 P1x P2 P3 P3b P4 P5 P5h P5r P6 P6h P7 P7h B0 B0r B1 B2 B3 W3 W2 W1s S1 S2 S2f S3 T1 T2 F1 F1i F2 W1 C1 C2 C3 C4 A1 A2 M1 M1r X1 D1 D2 D3 D4';
    const isNew = ['P5r', 'B0r', 'B3', 'M1r'];
    const ofVersion1 = published.split(' ').filter((id) => !isNew.includes(id));
    expect(
      rulesOf(2)
        .map((rule) => rule.id)
        .join(' '),
    ).toBe(published);
    expect(rulesOf(2).map((rule) => rule.order)).toEqual(published.split(' ').map((_, place) => place + 1));
    expect(rulesOf(1).map((rule) => rule.id)).toEqual(ofVersion1);
    expect(all.map((trio) => trio.rule).join(' ')).toBe(published);
  });
});

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

  it('after one session on target only repetitions may rise, and the reason says so', () => {
    const answers = decide(facts({ sessionsOnTarget: 1 }));
    expect([answers.decision, answers.largestStep]).toEqual(['progress', 'repetitions']);
    expect(answers.reasons.map((one) => [one.rule, one.effect])).toEqual([
      ['C4', { largestStep: 'repetitions' }],
    ]);
  });

  it('each red flag calls by its class and the most urgent wins', () => {
    const classes = {
      emergency:
        'chest-pain breathlessness fainting severe-headache-or-vision saddle-or-bladder-change face-speech-or-one-sided-weakness',
      'same-day':
        'hot-swollen-joint calf-pain-swelling dark-urine unexplained-fever cannot-bear-weight-or-deformity persistent-limb-change-after-release neck-pain-with-limb-symptoms new-weakness fall-with-injury',
      routine: 'locked-joint',
    };
    const seen: string[] = [];
    for (const [contact, ids] of Object.entries(classes)) {
      for (const id of ids.split(' ')) {
        seen.push(id);
        const answers = decide(facts({ redFlags: [id as (typeof redFlags)[number]] }));
        expect([id, answers.decision, answers.today, answers.contact]).toEqual([
          id,
          'pause',
          'none',
          contact,
        ]);
      }
    }
    expect([...redFlags].sort()).toEqual(seen.sort());
    expect(decide(facts({ redFlags: ['locked-joint', 'dark-urine'] })).contact).toBe('same-day');
  });

  it('the calculation takes a sign of stroke and answers emergency, and refuses a sign it does not know', () => {
    const decided = (flag: string) => {
      const line = { calculation: 'decide', input: { facts: { ...facts({}), redFlags: [flag] } } };
      return JSON.parse(
        answerLine(JSON.stringify(line), 1, (id) => engineRows.find((row) => row.id === id)).text,
      );
    };
    expect(decided('face-speech-or-one-sided-weakness').result).toMatchObject({
      decision: 'pause',
      today: 'none',
      contact: 'emergency',
    });
    expect(decided('face-droop')).toMatchObject({ refused: [{ code: 'not-listed' }] });
  });

  it('a calf leans on the scores for clots, other signs as before', () => {
    const supportOf = (...ids: RedFlag[]) => decide(facts({ redFlags: ids })).reasons[0]!.support;
    // Wells et al. 2003, New England Journal of Medicine 349:1227: calf at least 3 cm larger, deep-vein tenderness.
    expect(supportOf('calf-pain-swelling')).toBe('clot-score-2003');
    expect(supportOf('calf-pain-swelling', 'hot-swollen-joint')).toBe('coakley-2006');
    expect(supportOf('hot-swollen-joint')).toBe('coakley-2006');
    const [reason] = decide(facts({ redFlags: ['calf-pain-swelling'] })).reasons;
    expect(explainToClinician(reason!)).toContain('Support: Wells et al. 2003');
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

describe('clinic choices of the engine', () => {
  it('every default lies inside its own bounds and no id stands twice', () => {
    expect(checkSettings(engineSettings, engineDefaults)).toEqual([]);
    expect(new Set(engineSettings.map((setting) => setting.id)).size).toBe(engineSettings.length);
  });

  it('every choice a rule names exists, and a rule on a clinic choice alone cites nothing seen', () => {
    const ids = new Set<string>(engineSettings.map((setting) => setting.id));
    for (const rule of rulesOf(2)) for (const id of rule.settings) expect(ids.has(id)).toBe(true);
    for (const rule of rulesOf(2)) {
      expect([rule.id, rule.restsOn === 'clinic-choice' || rule.citations.length > 0]).toEqual([
        rule.id,
        true,
      ]);
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
