/** The marks of the picture that stand still: thresholds, gaps, sessions, answers, labels of the days. */
import type { LoadMark, PainMark, Picture } from '#core/review/picture.ts';
import type { Area, Scale } from './picture-scale.ts';

interface Drawn {
  readonly picture: Picture;
  readonly scale: Scale;
  readonly area: Area;
}

const Thresholds = ({ picture, scale, area }: Drawn) => (
  <g>
    {picture.thresholds.map((span, place) => {
      const [from, to] = [scale.x(span.from), scale.x(span.to)];
      const isLast = place === picture.thresholds.length - 1;
      return (
        <g key={span.from}>
          <line
            className="pic-ceiling"
            x1={from}
            x2={to}
            y1={scale.pain(span.painCeiling)}
            y2={scale.pain(span.painCeiling)}
          />
          {span.usualPainTop === null ? null : (
            <line
              className="pic-usual"
              x1={from}
              x2={to}
              y1={scale.pain(span.usualPainTop)}
              y2={scale.pain(span.usualPainTop)}
            />
          )}
          {isLast ? (
            <>
              <text
                className="pic-label pic-end"
                x={area.x + area.width + 6}
                y={scale.pain(span.painCeiling) + 4}
              >
                ceiling
              </text>
              {span.usualPainTop === null ? null : (
                <text
                  className="pic-label pic-end"
                  x={area.x + area.width + 6}
                  y={scale.pain(span.usualPainTop) + 4}
                >
                  usual
                </text>
              )}
            </>
          ) : null}
        </g>
      );
    })}
  </g>
);

const roomForWords = 84;

const Gaps = ({ picture, scale }: Omit<Drawn, 'area'>) => (
  <g>
    {picture.gaps.map((gap) => {
      const [from, to] = [scale.x(gap.from) + 5, scale.x(gap.to) - 5];
      if (to <= from) return null;
      return (
        <g key={gap.from}>
          <line className="pic-gap" x1={from} x2={to} y1={scale.loadFoot - 8} y2={scale.loadFoot - 8} />
          {to - from > roomForWords ? (
            <text className="pic-label pic-middle" x={(from + to) / 2} y={scale.loadFoot - 14}>
              {gap.days} days without
            </text>
          ) : null}
        </g>
      );
    })}
  </g>
);

const half = 4;

const LoadShape = ({ mark, scale }: { readonly mark: LoadMark; readonly scale: Scale }) => {
  const x = scale.x(mark.day);
  if (mark.value === null) {
    return (
      <text className="pic-unknown pic-middle" x={x} y={scale.loadFoot - 5}>
        ?
      </text>
    );
  }
  const y = scale.load(mark.value);
  return mark.kind === 'test' ? (
    <path className="pic-load" d={`M${x} ${y - 6}L${x + 6} ${y}L${x} ${y + 6}L${x - 6} ${y}Z`} />
  ) : (
    <rect
      className={mark.kind === 'full' ? 'pic-load' : 'pic-load pic-load-easier'}
      x={x - half}
      y={y - half}
      width={half * 2}
      height={half * 2}
    />
  );
};

/** Missing answers stand in a row of their own between axis and panel, as crosses. */
const Missing = ({ mark, scale }: { readonly mark: PainMark; readonly scale: Scale }) => {
  const [x, y] = [scale.x(mark.day), scale.painHead - (mark.of === 'morning' ? 8 : 18)];
  return <path className="pic-missing" d={`M${x - 3.5} ${y - 3.5}l7 7M${x + 3.5} ${y - 3.5}l-7 7`} />;
};

const PainShape = ({ mark, scale }: { readonly mark: PainMark; readonly scale: Scale }) => {
  if (mark.value === null) return <Missing mark={mark} scale={scale} />;
  const [x, y] = [scale.x(mark.day), scale.pain(mark.value)];
  if (mark.of === 'session') {
    return (
      <path className="pic-session-pain" d={`M${x} ${y - 5}L${x + 5} ${y}L${x} ${y + 5}L${x - 5} ${y}Z`} />
    );
  }
  return (
    <g>
      <line className="pic-stem" x1={x} x2={x} y1={scale.painHead} y2={y} />
      <circle className="pic-morning-pain" cx={x} cy={y} r={3.5} />
      {mark.flare ? <circle className="pic-flare" cx={x} cy={y} r={7} /> : null}
    </g>
  );
};

const Axis = ({ picture, scale, area }: Drawn) => (
  <g>
    <line className="pic-axis" x1={area.x} x2={area.x + area.width} y1={scale.loadFoot} y2={scale.loadFoot} />
    <line
      className="pic-axis-soft"
      x1={area.x}
      x2={area.x + area.width}
      y1={scale.painHead}
      y2={scale.painHead}
    />
    {picture.ticks.map((tick) => {
      const x = scale.x(tick.day);
      const isLast = tick.day === picture.today;
      return (
        <g key={tick.day}>
          <line className="pic-axis" x1={x} x2={x} y1={scale.loadFoot} y2={scale.loadFoot + 5} />
          <text
            className={isLast ? 'pic-label pic-last' : 'pic-label pic-middle'}
            x={isLast ? area.x + area.width : x}
            y={scale.loadFoot + 18}
          >
            {tick.label}
          </text>
        </g>
      );
    })}
  </g>
);

export const PictureMarks = (props: Drawn) => (
  <>
    <Thresholds {...props} />
    <Gaps {...props} />
    <Axis {...props} />
    <g>
      {props.picture.loads.map((mark) => (
        <LoadShape key={`${mark.day} ${mark.kind} ${mark.value}`} mark={mark} scale={props.scale} />
      ))}
      {props.picture.pains.map((mark) => (
        <PainShape key={`${mark.day} ${mark.of} ${mark.value}`} mark={mark} scale={props.scale} />
      ))}
    </g>
  </>
);
