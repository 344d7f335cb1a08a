import { describeRule } from '../thresholds.ts';

describeRule('F2', {
  'a flare eases back and asks for the easier session': {
    versions: [1, 2],
    cases: [
      [{ flareDays: 0 }, false],
      [{ flareDays: 2 }, true],
      [{ flareDays: 1 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'none'],
  },
});
