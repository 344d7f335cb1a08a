/** The pictures of a review, worked out from its record: the large one, and a small one of each joint. */
import type { Joint } from '#core/exercises/joints.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { jointMarksOf, reviewChartOf } from '#core/review/review-chart.ts';
import { type ReviewSeries, reviewSeries } from '#core/review/series.ts';
import { firstDrawn, rangeWithin, zoomed } from '#core/review/zoom.ts';
import { earlierDay } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { doseTitle } from '../../dose-words.ts';
import { chartNames } from '../chart-names.ts';
import { hrefWith, rangeOf } from '../review-choice.ts';
import type { ReviewProps } from '../review-props.ts';

export const seriesFor = ({ choice, review }: ReviewProps, joint: Joint, itemId: string | null) =>
  reviewSeries({
    record: review.record,
    decisions: review.decisions,
    joint,
    itemId,
    measure: choice.measure,
    ...rangeOf(choice, review),
    settings: review.settings,
  });

/** The large picture and those of all joints, over the same days: the empty time before is not drawn. */
export const picturesOf = (props: ReviewProps, series: ReviewSeries) => {
  const { choice, review } = props;
  const whole = reviewChartOf(series, chartNames(props), review.dose?.course);
  const joints = choice.joints.map((joint) => ({
    joint,
    marks: joint === series.joint ? whole : jointMarksOf(seriesFor(props, joint, null)),
  }));
  const first = [firstDrawn(whole), ...joints.map(({ marks }) => marks.pains[0]?.day ?? null)]
    .filter((day) => day !== null)
    .reduce(earlierDay, whole.today);
  const { from } = rangeWithin(whole, { from: first, to: whole.today }, 'from');
  return {
    chart: zoomed(whole, { from, to: whole.today }),
    joints: joints.map(({ joint, marks }) => ({
      joint,
      marks: { ...marks, since: from },
      // An exercise that does not load the joint gives way to one that does.
      href: hrefWith(props.patient.id, choice, {
        joint,
        ...(choice.version?.joints.includes(joint) ? {} : { line: '' }),
      }),
      isChosen: joint === series.joint,
    })),
  };
};

export const chartTitle = (version: ReviewProps['choice']['version'], joint: Joint): string =>
  say('chart-of', {
    exercise: version ? doseTitle(version.dose) : say('no-exercise'),
    'joint-name': jointInWords(joint),
  });
