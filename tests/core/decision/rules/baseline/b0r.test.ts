import { describeRule } from '../thresholds.ts';

describeRule('B0r', {
  'a usual pain that was told allows repetitions and no more': {
    versions: [2],
    cases: [
      [{ usualPainProvisional: false }, false],
      [{ usualPainProvisional: true }, true],
    ],
    answers: ['progress', 'repetitions', 'as-planned', 'none'],
  },
});
