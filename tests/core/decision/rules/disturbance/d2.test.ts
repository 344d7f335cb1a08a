import { describeRule } from '../thresholds.ts';

describeRule('D2', {
  'a treatment changed within 14 days holds and asks for a look': {
    versions: [1, 2],
    cases: [
      [{ treatmentChangeDays: 15 }, false],
      [{ treatmentChangeDays: null }, false],
      [{ treatmentChangeDays: 13 }, true],
      [{ treatmentChangeDays: 14 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
