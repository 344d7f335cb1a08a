import { describeRule } from '../thresholds.ts';

describeRule('F1', {
  'a flare of 8 days tells the clinic and keeps the easier session, without inflammatory arthritis': {
    versions: [2],
    cases: [
      [{ flareDays: 7 }, false],
      [{ flareDays: 8, inflammatoryArthritis: true }, false],
      [{ flareDays: 9 }, true],
      [{ flareDays: 8 }, true],
    ],
    answers: ['ease-back', null, 'bad-day', 'routine'],
  },
  'a flare of 8 days pauses, rests the joint and tells the clinic, without inflammatory arthritis': {
    versions: [1],
    cases: [
      [{ flareDays: 7 }, false],
      [{ flareDays: 8, inflammatoryArthritis: true }, false],
      [{ flareDays: 9 }, true],
      [{ flareDays: 8 }, true],
    ],
    answers: ['pause', null, 'rest-this-joint', 'routine'],
  },
});
