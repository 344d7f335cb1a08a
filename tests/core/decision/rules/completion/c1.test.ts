import { describeRule } from '../thresholds.ts';

describeRule('C1', {
  'under 60 % of the repetitions for the joint or an unknown reason eases back': {
    versions: [1, 2],
    cases: [
      [{ repetitionsDonePercent: 60, stopReason: 'joint-pain' }, false],
      [{ repetitionsDonePercent: 61, stopReason: 'joint-pain' }, false],
      [{ repetitionsDonePercent: 59, stopReason: 'time' }, false],
      [{ repetitionsDonePercent: 59, stopReason: 'tired' }, false],
      [{ repetitionsDonePercent: null, stopReason: 'joint-pain' }, false],
      [{ repetitionsDonePercent: 59, stopReason: 'unknown' }, true],
      [{ repetitionsDonePercent: 59, stopReason: 'symptom' }, true],
      [{ repetitionsDonePercent: 59, stopReason: 'joint-pain' }, true],
    ],
    answers: ['ease-back', null, 'as-planned', 'none'],
  },
});
