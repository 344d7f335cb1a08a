import { describeRule } from '../thresholds.ts';

describeRule('B0', {
  'without a usual pain the dose is held': {
    versions: [1, 2],
    cases: [
      [
        {
          usualPain: 0,
          usualPainTop: 0,
          painBefore: 0,
          painTwoHours: 0,
          painNextMorning: 0,
          morningPainMean7: 0,
        },
        false,
      ],
      [
        {
          usualPain: null,
          usualPainTop: null,
          painBefore: 0,
          painTwoHours: 0,
          painNextMorning: 0,
          morningPainMean7: 0,
        },
        true,
      ],
    ],
    answers: ['hold', null, 'as-planned', 'none'],
  },
});
