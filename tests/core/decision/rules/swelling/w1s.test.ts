import { describeRule } from '../thresholds.ts';

describeRule('W1s', {
  'slight swelling holds where none is usual': {
    versions: [1, 2],
    cases: [
      [{ swelling: 'none' }, false],
      [{ swelling: 'slight', usualSwelling: 'slight' }, false],
      [{ swelling: 'not-applicable' }, false],
      [{ swelling: 'slight' }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
