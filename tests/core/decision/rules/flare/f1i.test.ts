import { describeRule } from '../thresholds.ts';

describeRule('F1i', {
  'a flare of 3 days in inflammatory arthritis tells the clinic': {
    versions: [1, 2],
    cases: [
      [{ flareDays: 2, inflammatoryArthritis: true }, false],
      [{ flareDays: 3 }, false],
      [{ flareDays: 4, inflammatoryArthritis: true }, true],
      [{ flareDays: 3, inflammatoryArthritis: true }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'routine'],
  },
});
