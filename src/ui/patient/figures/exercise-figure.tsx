/** How an exercise begins and goes on, drawn beside each other. The words under it say the same. */
import { t } from '#ui/language/words.ts';
import { figures, type Pose } from './poses.ts';

/** Where the strokes of the body meet or end. */
const jointsIn = (body: string): readonly string[] => {
  let [x, y] = ['0', '0'];
  const points = [...body.matchAll(/([MLHV])([\d.]+)(?: ([\d.]+))?/g)].map(
    ([, kind, first = '0', second = '0']) => {
      if (kind === 'V') y = first;
      else if (kind === 'H') x = first;
      else [x, y] = [first, second];
      return `${x} ${y}`;
    },
  );
  return [...new Set(points)];
};

const PoseDrawing = ({ pose, props, number }: { pose: Pose; props: string; number: number }) => (
  <g transform={`translate(${(number - 1) * 132} 0)`}>
    <path className="figure-props" d={props} />
    {pose.band ? <path className="figure-band" d={pose.band} /> : null}
    <path className="figure-body" d={pose.body} />
    {jointsIn(pose.body).map((point) => (
      <circle key={point} className="figure-joint" transform={`translate(${point})`} r={2.2} />
    ))}
    <circle className="figure-head" cx={pose.head[0]} cy={pose.head[1]} r={7} />
    {pose.weight ? (
      <rect className="figure-weight" x={pose.weight[0] - 4} y={pose.weight[1] - 4} width={8} height={8} />
    ) : null}
    <text className="figure-number" x={60} y={106} textAnchor="middle">
      {number}
    </text>
  </g>
);

export const ExerciseFigure = ({ exerciseId }: { readonly exerciseId: string }) => {
  const figure = figures[exerciseId];
  if (!figure) return null;
  return (
    <svg className="exercise-figure" viewBox="0 0 252 110" role="img" aria-label={t('dose.figure')}>
      <PoseDrawing pose={figure.begins} props={figure.props} number={1} />
      <PoseDrawing pose={figure.goesOn} props={figure.props} number={2} />
    </svg>
  );
};
