import { describeRule } from '../thresholds.ts';

describeRule('B3', {
  'usual pain two over the first of the plan holds and asks for a look': {
    versions: [2],
    cases: [
      [{ usualPainRise: 1 }, false],
      [{ usualPainRise: null }, false],
      [{ usualPainRise: 3 }, true],
      [{ usualPainRise: 2 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
