/** The marks of the picture that stand still: thresholds, gaps, sessions, answers, labels of the days. */

import { figure } from '#core/review/plain-words.ts';
import type { LoadMark, PainMark } from '#core/review/review-chart.ts';
import { say } from '#messages/en/staff/review.ts';
import { DayAxis, type Drawn, Level, PainAxis } from './chart-axes.tsx';
import type { Scale } from './chart-scale.ts';

/** As they stood at the time: a newer baseline moves the line on its day. */
const Thresholds = ({ chart, scale, area }: Drawn) => {
  const last = chart.thresholds.at(-1);
  const end = area.x + area.width + 6;
  return (
    <g>
      {chart.thresholds.map((span) => {
        const [from, to] = [scale.x(span.from), scale.x(span.to)];
        return (
          <g key={span.from}>
            <Level className="chart-pain-limit" from={from} to={to} y={scale.pain(span.painCeiling)} />
            {span.usualPainTop === null ? null : (
              <Level className="chart-usual" from={from} to={to} y={scale.pain(span.usualPainTop)} />
            )}
          </g>
        );
      })}
      {last ? (
        <text x={end} y={scale.pain(last.painCeiling) + 4}>
          {say('pain-limit')}
        </text>
      ) : null}
      {last && last.usualPainTop !== null ? (
        <text x={end} y={scale.pain(last.usualPainTop) + 4}>
          usual
        </text>
      ) : null}
    </g>
  );
};

const roomForWords = 100;

const Gaps = ({ chart, scale }: Drawn) => (
  <g>
    {chart.gaps.map((gap) => {
      const [from, to] = [scale.x(gap.from) + 6, scale.x(gap.to) - 6];
      if (to <= from) return null;
      return (
        <g key={gap.from}>
          <Level className="chart-gap" from={from} to={to} y={scale.loadFoot - 8} />
          {to - from > roomForWords ? (
            <text className="chart-middle" x={(from + to) / 2} y={scale.loadFoot - 16}>
              {say('gap', { days: gap.days })}
            </text>
          ) : null}
        </g>
      );
    })}
  </g>
);

const rhombus = (x: number, y: number, half: number): string =>
  `M${x} ${y - half}L${x + half} ${y}L${x} ${y + half}L${x - half} ${y}Z`;

/** Marks shrink where days stand close, and never below what can be told apart. */
const halfOf = (scale: Scale): number => Math.max(1.6, Math.min(4, scale.dayWidth * 0.45));

const LoadShape = ({ mark, scale }: { readonly mark: LoadMark; readonly scale: Scale }) => {
  const x = scale.x(mark.day);
  const half = halfOf(scale);
  if (mark.value === null) {
    return (
      <text className="chart-unknown chart-middle" x={x} y={scale.loadFoot - 5}>
        ?
      </text>
    );
  }
  const y = scale.load(mark.value);
  const hook = mark.amended ? <Amended x={x} y={y} half={half} /> : null;
  const shape =
    mark.kind === 'test' ? (
      <path className="chart-load" d={rhombus(x, y, half + 2)} />
    ) : (
      <rect
        className={mark.kind === 'full' ? 'chart-load' : 'chart-load chart-load-easier'}
        x={x - half}
        y={y - half}
        width={half * 2}
        height={half * 2}
      />
    );
  return (
    <g>
      {shape}
      {hook}
    </g>
  );
};

const roomForFigure = 30;

/** The figure at each step of the staircase, where it has room. */
const StepFigures = ({ chart, scale }: Drawn) => {
  let lastAt = Number.NEGATIVE_INFINITY;
  let lastValue: number | null = null;
  return (
    <g>
      {chart.loads.map((mark) => {
        if (mark.value === null || mark.kind !== 'full' || mark.value === lastValue) return null;
        const x = scale.x(mark.day);
        lastValue = mark.value;
        if (x - lastAt < roomForFigure) return null;
        lastAt = x;
        return (
          <text key={mark.day} className="chart-step" x={x - 4} y={scale.load(mark.value) - 9}>
            {figure(mark.value)}
          </text>
        );
      })}
    </g>
  );
};

/** A corrected entry carries a small hook above its mark, so that colour has no part in it. */
const Amended = ({ x, y, half }: { readonly x: number; readonly y: number; readonly half: number }) => (
  <path className="chart-amended" d={`M${x - 4} ${y - half - 3}l4 -4l4 4`} />
);

/** Missing answers stand in a row of their own above the pain panel, as crosses. */
const Missing = ({ x, scale }: { readonly x: number; readonly scale: Scale }) => {
  const y = scale.painHead - 9;
  return <path className="chart-missing" d={`M${x - 3.5} ${y - 3.5}l7 7M${x + 3.5} ${y - 3.5}l-7 7`} />;
};

const PainShape = ({ mark, scale }: { readonly mark: PainMark; readonly scale: Scale }) => {
  // A session comes later in the day than the morning, so its mark stands a little to the right.
  const x = scale.x(mark.day) + (mark.of === 'session' ? scale.dayWidth * 0.4 : 0);
  if (mark.value === null) return <Missing x={x} scale={scale} />;
  const y = scale.pain(mark.value);
  const half = halfOf(scale);
  const hook = mark.amended ? <Amended x={x} y={y} half={half} /> : null;
  if (mark.of === 'session')
    return (
      <g>
        <path className="chart-session-pain" d={rhombus(x, y, half + 1)} />
        {hook}
      </g>
    );
  return (
    <g>
      {hook}
      <line className="chart-stem" x1={x} x2={x} y1={scale.painHead} y2={y} />
      <circle className="chart-morning-pain" cx={x} cy={y} r={half} />
      {mark.flare ? <circle className="chart-flare" cx={x} cy={y} r={half + 3.5} /> : null}
    </g>
  );
};

export const ChartMarks = (props: Drawn) => {
  const { chart, scale, area } = props;
  return (
    <>
      <text className="chart-title" x={area.x + 4} y={area.y - 12}>
        {chart.title}
        {chart.unit ? `, ${chart.unit}` : ''}
      </text>
      <Thresholds {...props} />
      <Gaps {...props} />
      <DayAxis {...props} />
      <PainAxis {...props} />
      {chart.loads.map((mark) => (
        <LoadShape key={`${mark.day} ${mark.kind} ${mark.value}`} mark={mark} scale={scale} />
      ))}
      <StepFigures {...props} />
      {chart.pains.map((mark) => (
        <PainShape key={`${mark.day} ${mark.of} ${mark.value}`} mark={mark} scale={scale} />
      ))}
    </>
  );
};
