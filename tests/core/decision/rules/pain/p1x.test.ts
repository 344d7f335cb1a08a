import { calm, describeRule, high } from '../thresholds.ts';

describeRule('P1x', {
  'pain of 10, or severe pain far over usual or repeated, pauses': {
    versions: [1, 2],
    cases: [
      [{ ...high, ...calm, usualPain: 8, usualPainTop: 8, painDuring: 9 }, false],
      [{ ...high, ...calm, usualPain: 8, usualPainTop: 8, painDuring: 10 }, true],
      [{ ...high, ...calm, painDuring: 8 }, false],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 9 }, false],
      [{ ...high, ...calm, painDuring: 9 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 9 }, true],
      [{ ...high, ...calm, painNextMorning: 7 }, false],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: 8 }, false],
      [{ ...high, ...calm, painNextMorning: 8 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: 7 }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: 8 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8 }, false],
      [{ ...high, ...calm, usualPain: 7, usualPainTop: 7, painDuring: 8, previousPeakEight: true }, false],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 7, previousPeakEight: true }, false],
      [{ ...high, ...calm, painDuring: 7, previousPeakEight: true }, false],
      [{ ...high, ...calm, painDuring: 8, previousPeakEight: true }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painDuring: 8, previousPeakEight: true }, true],
    ],
    answers: ['pause', null, 'none', 'same-day'],
  },
  'a later morning that speaks for the next one counts as it does': {
    versions: [2],
    cases: [
      [
        { ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: null, painLaterMorning: 7 },
        false,
      ],
      [
        { ...high, ...calm, usualPain: 7, usualPainTop: 7, painNextMorning: null, painLaterMorning: 8 },
        false,
      ],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: null, painLaterMorning: 9 }, true],
      [{ ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: null, painLaterMorning: 8 }, true],
    ],
    answers: ['pause', null, 'none', 'same-day'],
  },
  'no later morning counts': {
    versions: [1],
    cases: [
      [
        { ...high, ...calm, usualPain: 6, usualPainTop: 6, painNextMorning: null, painLaterMorning: 8 },
        false,
      ],
    ],
  },
});
