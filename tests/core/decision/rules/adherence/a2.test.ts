import { describeRule } from '../thresholds.ts';

describeRule('A2', {
  'fourteen days without a session eases back': {
    versions: [1, 2],
    cases: [
      [{ gapDays: 13 }, false],
      [{ gapDays: 15 }, true],
      [{ gapDays: 14 }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
});
