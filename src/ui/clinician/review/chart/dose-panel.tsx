/** The upper panel: names and notches of the steps, sessions on them, easier ones hung below. */
import type { LoadMark } from '#core/review/answer-marks.ts';
import type { ReviewChart } from '#core/review/review-chart.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { stepNames } from '#ui/clinician/step-names.ts';
import { type Drawn, Level } from './chart-axes.tsx';
import { hook, joined, rhombus, square } from './mark-paths.ts';

const perLetter = 7;

const roomForWords = 100;

const Gaps = ({ chart, scale }: Drawn) => (
  <g>
    {chart.gaps.map((gap) => {
      const [from, to] = [scale.x(gap.from) + 6, scale.x(gap.to) - 6];
      if (to <= from) return null;
      return (
        <g key={gap.from}>
          <Level className="chart-gap" from={from} to={to} y={scale.loadFoot + 8} />
          {to - from > roomForWords ? (
            <text className="chart-middle" x={(from + to) / 2} y={scale.loadFoot + 1}>
              {say('gap', { days: gap.days })}
            </text>
          ) : null}
        </g>
      );
    })}
  </g>
);

const Steps = ({ chart, scale, area }: Drawn) => {
  const end = area.x + area.width;
  const notch = scale.half + 4;
  const notches = chart.steps.filter(
    ({ isSigned, isEarlier, share }) => isSigned && !isEarlier && share !== null,
  );
  const names = stepNames({
    steps: chart.steps,
    x: ({ from }) => scale.x(from),
    y: scale.load,
    from: area.x,
    to: end,
    perLetter,
  });
  return (
    <g>
      <path
        className="chart-signed"
        d={joined(
          notches,
          ({ from, share }) => `M${scale.x(from)} ${scale.load(share!) - notch}v${notch * 2}`,
        )}
      />
      {names.map(({ key, text, x, y, anchor, isSigned }) => (
        <text
          key={key}
          className={isSigned ? 'chart-step chart-step-signed' : 'chart-step'}
          x={x}
          y={y}
          textAnchor={anchor}
        >
          {text}
        </text>
      ))}
      {chart.steps.map(({ from, to, share }) =>
        share === null ? (
          <text
            key={from}
            className="chart-unknown chart-middle"
            x={(scale.x(from) + (to === null || to > chart.today ? end : scale.x(to))) / 2}
            y={scale.loadFoot - 4}
          >
            {say('no-height')}
          </text>
        ) : null,
      )}
    </g>
  );
};

/** The dose in force on a day; null where none has a height. */
const shareOn = ({ steps }: Pick<ReviewChart, 'steps'>, day: Day): number | null =>
  steps.findLast(({ from }) => from <= day)?.share ?? null;

type Known = LoadMark & { readonly value: number };

const isKnown = (mark: LoadMark): mark is Known => mark.value !== null;

export const DosePanel = (props: Drawn) => {
  const { chart, scale } = props;
  const { half } = scale;
  const known = chart.loads.filter(isKnown);
  const at = (kind: LoadMark['kind'], shape: typeof square, size: number) =>
    joined(
      known.filter((mark) => mark.kind === kind),
      ({ day, value }) => shape(scale.sessionX(day), scale.load(value), size),
    );
  const hung = known.filter(
    ({ day, kind, value }) => kind === 'bad-day' && (shareOn(chart, day) ?? value) > value,
  );
  return (
    <g>
      <Gaps {...props} />
      <path
        className="chart-hung"
        d={joined(
          hung,
          ({ day, value }) =>
            `M${scale.sessionX(day)} ${scale.load(shareOn(chart, day)!)}V${scale.load(value)}`,
        )}
      />
      <path className="chart-load" d={at('full', square, half + 0.6)} />
      <path className="chart-load chart-load-easier" d={at('bad-day', square, half + 0.6)} />
      <path className="chart-load" d={at('test', rhombus, half + 2)} />
      <path
        className="chart-amended"
        d={joined(
          known.filter(({ amended }) => amended),
          ({ day, value }) => hook(scale.sessionX(day), scale.load(value) - half - 3),
        )}
      />
      {chart.loads
        .filter(({ value }) => value === null)
        .map(({ day }) => (
          <text
            key={day}
            className="chart-unknown chart-middle"
            x={scale.sessionX(day)}
            y={scale.loadFoot + 12}
          >
            ?
          </text>
        ))}
      <Steps {...props} />
    </g>
  );
};
