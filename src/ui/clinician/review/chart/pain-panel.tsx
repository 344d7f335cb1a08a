/**
 * The lower panel: pain hangs from 0. The usual is a pale ground, the limit a dashed line, a flare a hatch through
 * both panels. What is within is small and pale; what is over is ink and hangs from the edge it went over.
 */
import type { PainMark } from '#core/review/answer-marks.ts';
import { dayNumber } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { type Drawn, Level } from './chart-axes.tsx';
import { cross, dot, hook, joined, rhombus } from './mark-paths.ts';

/** As they stood at the time: a newer baseline moves the edge on its day. */
export const Bands = ({ chart, scale, area }: Drawn) => (
  <g>
    {chart.thresholds.map((span) => {
      const from = scale.xOf(dayNumber(span.from) - 0.5);
      const to = span.to === chart.today ? area.x + area.width : scale.xOf(dayNumber(span.to) - 0.5);
      return (
        <g key={span.from}>
          {span.usualPainTop === null ? null : (
            <>
              <rect
                className="chart-usual-ground"
                x={from}
                y={scale.painHead}
                width={Math.max(0, to - from)}
                height={scale.pain(span.usualPainTop) - scale.painHead}
              />
              <Level className="chart-usual" from={from} to={to} y={scale.pain(span.usualPainTop)} />
            </>
          )}
          <Level className="chart-pain-limit" from={from} to={to} y={scale.pain(span.painCeiling)} />
        </g>
      );
    })}
  </g>
);

export const Flares = ({ chart, scale, area }: Drawn) => (
  <g>
    <defs>
      <pattern
        id="flare-hatch"
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path className="chart-hatch" d="M0 0v7" />
      </pattern>
    </defs>
    {chart.flares.map(({ from, to, mornings }) => {
      const [left, right] = [scale.morningX(from) - scale.half - 1, scale.morningX(to) + scale.half + 1];
      const middle = Math.min(Math.max((left + right) / 2, area.x + 36), area.x + area.width - 36);
      return (
        <g key={from}>
          <rect
            fill="url(#flare-hatch)"
            x={left}
            y={area.y}
            width={right - left}
            height={scale.foot - area.y}
          />
          <path className="chart-flare" d={`M${left} ${area.y + 5}v-5H${right}v5`} />
          <text className="chart-middle" x={middle} y={area.y - 6}>
            {say('flare', { count: mornings })}
          </text>
        </g>
      );
    })}
  </g>
);

type Given = PainMark & { readonly value: number };

const isGiven = (mark: PainMark): mark is Given => mark.value !== null;

export const PainPanel = ({ chart, scale }: Drawn) => {
  const { half, pain } = scale;
  const xOf = (mark: PainMark) =>
    mark.of === 'morning' ? scale.morningX(mark.day) : scale.sessionX(mark.day);
  const given = chart.pains.filter(isGiven);
  const of = (kind: PainMark['of'], isOver: boolean) =>
    given.filter((mark) => mark.of === kind && (mark.over !== undefined) === isOver);
  const stems = (marks: readonly Given[]) =>
    joined(marks, (mark) => `M${xOf(mark)} ${pain(mark.value - mark.over!)}V${pain(mark.value)}`);
  const dots = (marks: readonly Given[]) => joined(marks, (mark) => dot(xOf(mark), pain(mark.value)));
  const rhombs = (marks: readonly Given[], size: number) =>
    joined(marks, (mark) => rhombus(xOf(mark), pain(mark.value), size));
  const missing = chart.pains.filter(({ value }) => value === null);
  return (
    <g>
      <path
        className="chart-missing"
        d={joined(missing, (mark) => cross(xOf(mark), scale.painHead - 8, Math.min(3, half + 1)))}
      />
      <path className="chart-within" strokeWidth={half * 2} d={dots(of('morning', false))} />
      <path className="chart-session-within" d={rhombs(of('session', false), half + 0.8)} />
      <path className="chart-stem" d={stems(of('session', true)) + stems(of('morning', true))} />
      <path className="chart-session-pain" d={rhombs(of('session', true), half + 1.5)} />
      <path className="chart-morning-pain" strokeWidth={half * 2 + 1.5} d={dots(of('morning', true))} />
      <path
        className="chart-amended"
        d={joined(
          given.filter(({ amended }) => amended),
          (mark) => hook(xOf(mark), pain(mark.value) - half - 3),
        )}
      />
    </g>
  );
};
