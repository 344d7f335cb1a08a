import { describeRule } from '../thresholds.ts';

describeRule('B1', {
  'usual values over 42 days old hold and ask for a look': {
    versions: [1, 2],
    cases: [
      [{ baselineAgeDays: 41 }, false],
      [{ baselineAgeDays: 42 }, false],
      [{ baselineAgeDays: 43 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
