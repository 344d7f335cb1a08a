import { describeRule } from '../thresholds.ts';

describeRule('P5r', {
  'five answered mornings in a row over usual hold and ask for a look': {
    versions: [2],
    cases: [
      [{ morningsOverTop: 4 }, false],
      [{ morningsOverTop: 6, usualPain: null, usualPainTop: null }, false],
      [{ morningsOverTop: 6 }, true],
      [{ morningsOverTop: 5 }, true],
    ],
    answers: ['hold', null, 'as-planned', 'routine'],
  },
});
