import { describeRule } from '../thresholds.ts';

describeRule('C2', {
  'under 100 % of the repetitions holds': {
    versions: [1, 2],
    cases: [
      [{ repetitionsDonePercent: 100 }, false],
      [{ repetitionsDonePercent: 101 }, false],
      [{ repetitionsDonePercent: 99 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
