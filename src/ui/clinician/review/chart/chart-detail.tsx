'use client';
import type { DayDetail } from '#core/review/day-detail.ts';
/** The words of the mark or day in hand, and buttons that go from day to day without a pointer. */
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review.ts';
import { Button } from '#ui/design-system/button.tsx';

export interface Detail {
  readonly title: string;
  readonly lines: readonly string[];
  readonly decisionId: string | null;
  readonly day: Day | null;
}

export const noDetail: Detail = {
  title: say('no-detail'),
  lines: [],
  decisionId: null,
  day: null,
};

/** The nearest day with something on it before or after the one in hand; from none, the newest; from outside the range, its end. */
export const neighbourOf = (days: readonly DayDetail[], day: Day | null, by: 1 | -1): DayDetail | null => {
  const first = days[0];
  const last = days.at(-1);
  if (!first || !last) return null;
  if (day === null || day > last.day) return last;
  if (day < first.day) return first;
  return (by === 1 ? days.find((one) => one.day > day) : days.findLast((one) => one.day < day)) ?? null;
};

interface ChartDetailProps {
  readonly detail: Detail;
  readonly days: readonly DayDetail[];
  readonly onDay: (detail: DayDetail) => void;
  /** Address of a decision of this review. */
  readonly hrefOf: (decisionId: string) => string;
}

export const ChartDetail = ({ detail, days, onDay, hrefOf }: ChartDetailProps) => {
  const go = (by: 1 | -1) => {
    const next = neighbourOf(days, detail.day, by);
    if (next) onDay(next);
  };
  return (
    <div className="chart-detail screen-only">
      <div className="row">
        <Button tone="quiet" onClick={() => go(-1)}>
          {say('day-before')}
        </Button>
        <Button tone="quiet" onClick={() => go(1)}>
          {say('day-after')}
        </Button>
      </div>
      <div aria-live="polite" className="stack-close">
        <p>
          <strong>{detail.title}</strong>{' '}
          {detail.decisionId ? <a href={hrefOf(detail.decisionId)}>{say('whole-decision')}</a> : null}
        </p>
        {detail.lines.length > 0 ? (
          <ul>
            {detail.lines.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        ) : null}
      </div>
    </div>
  );
};
