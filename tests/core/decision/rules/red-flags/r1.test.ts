import { describe, expect, it } from 'vitest';
import { answerLine } from '#api/batch/answer-line.ts';
import { decide } from '#core/decision/decide.ts';
import { explainToClinician } from '#core/decision/explain.ts';
import { type RedFlag, redFlags } from '#core/decision/facts/facts.ts';
import { engineRows } from '#core/decision/rows.ts';
import { facts } from '../../base-facts.ts';
import { describeRule } from '../thresholds.ts';

describeRule('R1', {
  'any red flag pauses, stops today and calls by its class': {
    versions: [1, 2],
    cases: [
      [{ redFlags: [] }, false],
      [{ redFlags: null }, false],
      [{ redFlags: ['locked-joint'] }, true],
      [{ redFlags: ['locked-joint', 'dark-urine'] }, true],
      [{ redFlags: ['dark-urine', 'chest-pain'] }, true],
    ],
    answers: ['pause', null, 'none', 'emergency'],
  },
});

describe('a red flag', () => {
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
});
