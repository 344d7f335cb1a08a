/**
 * The mornings of every joint in small pictures on one scale, drawn on the server: within the usual pale, over it
 * ink, a cross where an answer did not come. Each is the way to that joint in the large picture.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { PainMark } from '#core/review/answer-marks.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import type { JointMarks } from '#core/review/review-chart.ts';
import { daysBetween } from '#core/time/day.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { cross, joined } from '../chart/mark-paths.ts';

const width = 200;
const zero = 8;
const depth = 40;

interface JointPicture {
  readonly joint: Joint;
  readonly marks: JointMarks;
  readonly href: string;
  readonly isChosen: boolean;
}

/** A tenth of a unit is finer than a screen; more figures only weigh. */
const tenth = (value: number): number => Math.round(value * 10) / 10;

const pathsOf = ({ since, today, pains, thresholds }: JointMarks, perPoint: number) => {
  const step = width / (daysBetween(since, today) + 1);
  const x = ({ day }: { readonly day: string }) => tenth((daysBetween(since, day) + 0.5) * step);
  const depthAt = (points: number): number => tenth(zero + points * perPoint);
  const mornings = pains.filter((mark) => mark.of === 'morning');
  const given = mornings.filter((mark): mark is PainMark & { value: number } => mark.value !== null);
  const over = given.filter((mark) => mark.over !== undefined);
  const edge = (mark: PainMark & { value: number }) => depthAt(mark.value - (mark.over ?? 0));
  return {
    step,
    // No pain is a mark of its own, so that it is no gap.
    within: joined(given, (mark) => `M${x(mark)} ${zero}V${Math.max(zero + 1, edge(mark))}`),
    over: joined(over, (mark) => `M${x(mark)} ${edge(mark)}V${depthAt(mark.value)}`),
    missing: joined(
      mornings.filter(({ value }) => value === null),
      (mark) => cross(x(mark), zero - 4, 1.5),
    ),
    limit: joined(thresholds, ({ from, to, painCeiling }) => {
      const [begin, end] = [Math.max(0, x({ day: from })), to === today ? width : x({ day: to })];
      return `M${begin} ${depthAt(painCeiling)}H${end}`;
    }),
  };
};

const Picture = ({ marks, perPoint }: { readonly marks: JointMarks; readonly perPoint: number }) => {
  const paths = pathsOf(marks, perPoint);
  return (
    <svg viewBox={`0 0 ${width} ${zero + depth + 2}`} preserveAspectRatio="none" aria-hidden="true">
      <path className="joint-zero" d={`M0 ${zero}H${width}`} />
      <path className="joint-within" strokeWidth={paths.step * 0.75} d={paths.within} />
      <path className="joint-over" strokeWidth={paths.step} d={paths.over} />
      <path className="joint-limit" d={paths.limit} />
      <path className="joint-missing" d={paths.missing} />
    </svg>
  );
};

const isAnswered = ({ pains }: JointMarks): boolean => pains.some(({ of }) => of === 'morning');

const nowInWords = ({ pains, thresholds }: JointMarks): string => {
  const newest = pains.findLast(({ of, value }) => of === 'morning' && value !== null);
  if (!newest) return say('joint.none');
  const top = thresholds.at(-1)?.usualPainTop ?? null;
  const pain = newest.value ?? '';
  return top === null ? say('joint.now-unset', { pain }) : say('joint.now', { pain, top });
};

const Ways = (props: {
  readonly pictures: readonly JointPicture[];
  readonly perPoint: number;
  readonly className: string;
}) => (
  <ul className={props.className}>
    {props.pictures.map(({ joint, marks, href, isChosen }) => (
      <li key={joint}>
        <a href={href} aria-current={isChosen ? 'true' : undefined}>
          <strong>{jointInWords(joint)}</strong> <span>{nowInWords(marks)}</span>
          {isAnswered(marks) ? <Picture marks={marks} perPoint={props.perPoint} /> : null}
        </a>
      </li>
    ))}
  </ul>
);

/** None where there is nothing to choose. */
export const JointPictures = ({ pictures }: { readonly pictures: readonly JointPicture[] }) => {
  if (pictures.length < 2) return null;
  const drawn = pictures.filter(({ marks }) => isAnswered(marks));
  const others = pictures.filter(({ marks }) => !isAnswered(marks));
  const perPoint = depth / Math.max(1, ...drawn.map(({ marks }) => marks.painFoot));
  return (
    <nav aria-label={say('joint.title')} className="stack-close">
      <Ways pictures={drawn} perPoint={perPoint} className="joint-pictures" />
      <Ways pictures={others} perPoint={perPoint} className="joint-links" />
    </nav>
  );
};
