import { calm, describeRule, high, unknownUsual } from '../thresholds.ts';

describeRule('P1', {
  'pain of 8 eases back and asks for the easier session, and for a call the same day 2 over usual': {
    versions: [1, 2],
    cases: [
      [{ ...high, ...calm, painDuring: 7 }, false],
      [{ ...high, ...calm, painDuring: 9, usualPain: 7, usualPainTop: 7 }, true],
      [{ ...high, ...calm, painBefore: 8 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'same-day'],
  },
  'under 2 over a known usual pain the call can wait for the week': {
    versions: [2],
    cases: [
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 7 }, false],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 8 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'routine'],
  },
  'at 2 over usual the call is for the same day': {
    versions: [2],
    cases: [[{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8 }, true]],
    answers: ['ease-back', null, 'bad-day', 'same-day'],
  },
  'more than 2 over usual it is so too': {
    versions: [2],
    cases: [[{ ...high, ...calm, usualPain: 5.5, usualPainTop: 6, painDuring: 8 }, true]],
    answers: ['ease-back', null, 'bad-day', 'same-day'],
  },
  'without a usual pain the call is for the same day': {
    versions: [2],
    cases: [[{ ...high, ...calm, ...unknownUsual, painDuring: 8 }, true]],
    answers: ['ease-back', null, 'bad-day', 'same-day'],
  },
  'near usual the call was for the same day as well': {
    versions: [1],
    cases: [[{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 8 }, true]],
    answers: ['ease-back', null, 'bad-day', 'same-day'],
  },
  'a later morning that speaks for the next one is read': {
    versions: [2],
    cases: [
      [
        { ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: null, painLaterMorning: 7 },
        false,
      ],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: null, painLaterMorning: 8 }, true],
    ],
  },
  'no later morning is read': {
    versions: [1],
    cases: [
      [
        { ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: null, painLaterMorning: 8 },
        false,
      ],
    ],
  },
});
