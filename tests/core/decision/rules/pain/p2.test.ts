import { expect, it } from 'vitest';
import { rulesOf } from '#core/decision/rules/table.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { describeRule } from '../thresholds.ts';

describeRule('P2', {
  'pain over the acceptable pain limit eases back and asks for the easier session': {
    versions: [1, 2],
    cases: [
      [{ painDuring: 5 }, false],
      [{ painDuring: 6, painCeiling: 6 }, false],
      [{ painDuring: 7, painCeiling: 7 }, false],
      [{ painDuring: 7, painCeiling: 6 }, true],
      [{ painDuring: 6 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'none'],
  },
  'a later morning that speaks for the next one is read': {
    versions: [2],
    cases: [
      [{ painNextMorning: null, painLaterMorning: 5 }, false],
      [{ painNextMorning: null, painLaterMorning: 7 }, true],
      [{ painNextMorning: null, painLaterMorning: 6 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'none'],
  },
  'no later morning is read': {
    versions: [1],
    cases: [[{ painNextMorning: null, painLaterMorning: 6 }, false]],
  },
});

it('its words name the limits a clinician may set: 5, 6 and 7', () => {
  const words = rulesOf(2)
    .find(({ id }) => id === 'P2')
    ?.threshold(engineDefaults);
  expect(words).toMatch(/ limit, 5 unless a clinician set 6 or 7$/);
});
