/** The picture of the review with the days that would have been others in it. */
import type { OtherAnswer } from '#core/review/day-detail.ts';
import { reviewChartOf } from '#core/review/review-chart.ts';
import { firstDrawn, rangeWithin, zoomed } from '#core/review/zoom.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review/what-if.ts';
import type { WhatIfOfPatient } from '../answers.ts';
import { chartTitle, seriesFor } from '../review/chart/pictures.ts';
import { sentChart } from '../review/chart/sent-chart.ts';
import { chartNames } from '../review/chart-names.ts';
import { ReviewChartView } from '../review/review-chart-view.tsx';
import { hrefWith } from '../review/review-choice.ts';
import type { ReviewProps } from '../review/review-props.ts';

const othersOf = (found: WhatIfOfPatient, joint: string | null): ReadonlyMap<Day, OtherAnswer> =>
  new Map(
    found.lines.flatMap((line) => {
      if (line.joint !== joint) return [];
      const before = say(line.before).toLowerCase();
      const word = say(line.after).toLowerCase();
      const after = line.after === line.before ? say('same-word', { word }) : word;
      const rules = line.rules.length > 0 ? line.rules.join(', ') : say('same-rules');
      return [[line.day, { way: line.way, text: say('on-day', { before, after, rules }) }] as const];
    }),
  );

/** Nothing where no day of the joint shown would have been another one. */
export const OnTheChart = ({ at, found }: { readonly at: ReviewProps; readonly found: WhatIfOfPatient }) => {
  const { choice, review, patient } = at;
  const others = othersOf(found, choice.joint);
  if (!choice.joint || others.size === 0) return null;
  const series = seriesFor(at, choice.joint, choice.version?.itemId ?? null);
  const whole = reviewChartOf(series, { ...chartNames(at), others }, review.dose?.course);
  const from = firstDrawn(whole) ?? whole.since;
  const chart = zoomed(whole, rangeWithin(whole, { from, to: whole.today }, 'from'));
  return (
    <section className="stack-close">
      <h3>{chartTitle(choice.version, choice.joint)}</h3>
      <ReviewChartView sent={sentChart(chart)} address={hrefWith(patient.id, choice, {})} answers={null}>
        {null}
      </ReviewChartView>
    </section>
  );
};
