import { describeRule } from '../thresholds.ts';

describeRule('S3', {
  'effusion 1+ holds where less is usual': {
    versions: [1, 2],
    cases: [
      [{ effusion: 'trace' }, false],
      [{ effusion: '1+', usualEffusion: '1+' }, false],
      [{ effusion: 'not-applicable' }, false],
      [{ effusion: '1+', usualEffusion: 'trace' }, true],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
