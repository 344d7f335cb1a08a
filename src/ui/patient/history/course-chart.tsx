/** Six weeks in sentences, and the same drawn: the work as a line of steps, the mornings as dots under it. */
import { daysBetween } from '#core/time/day.ts';
import './words.ts';
import { dayText, shortDayText } from '#ui/language/text-of-time.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { t, translate } from '#ui/language/words.ts';
import type { OwnCourse, Point } from './own-course.ts';

const width = 340;
const left = 26;
const right = width - 8;
const workTop = 14;
const workBottom = 92;
const painTop = 128;
const painBottom = 196;
const height = 222;

type Work = NonNullable<OwnCourse['work']>;

const figure = (of: Work['of'], value: number): string => (of === 'load' ? weightText(value) : String(value));

const sentences = (course: OwnCourse): readonly string[] => {
  const { sessions, since, work, mornings } = course;
  const date = dayText(since);
  const lines = [t('history.sum-sessions', { count: sessions, date })];
  if (work) {
    const first = figure(work.of, work.points[0]!.value);
    const last = figure(work.of, work.points.at(-1)!.value);
    lines.push(t(`history.sum-${work.of}`, { title: translate(work.title), first, last }));
  }
  for (const { joint, points } of mornings) {
    const values = points.map((point) => point.value);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    lines.push(
      low === high
        ? t('history.sum-pain-same', { joint, low, count: values.length })
        : t('history.sum-pain', { joint, low, high }),
    );
  }
  return lines;
};

const across = (course: OwnCourse, today: string) => {
  const days = Math.max(1, daysBetween(course.since, today));
  return (day: string): number => left + ((right - left) * daysBetween(course.since, day)) / days;
};

const steps = (points: readonly Point[], x: (day: string) => number): string => {
  const highest = Math.max(...points.map((point) => point.value), 1);
  const y = (value: number) => workBottom - ((workBottom - workTop) * value) / highest;
  const [first, ...rest] = points;
  if (!first) return '';
  const on = rest.map((point) => `H${x(point.day).toFixed(1)}V${y(point.value).toFixed(1)}`);
  return `M${x(first.day).toFixed(1)} ${y(first.value).toFixed(1)}${on.join('')}H${right}`;
};

const PainDots = ({ course, x }: { readonly course: OwnCourse; readonly x: (day: string) => number }) => (
  <>
    <line className="course-axis" x1={left} x2={right} y1={painTop} y2={painTop} />
    <line className="course-axis" x1={left} x2={right} y1={painBottom} y2={painBottom} />
    <text className="course-text" x={left - 8} y={painTop + 4} textAnchor="end">
      10
    </text>
    <text className="course-text" x={left - 8} y={painBottom + 4} textAnchor="end">
      0
    </text>
    {course.mornings.map(({ joint, points }, place) =>
      points.map(({ day, value }) => (
        <circle
          key={`${joint} ${day}`}
          className={place === 0 ? 'course-dot' : 'course-dot course-dot-second'}
          cx={x(day)}
          cy={painBottom - ((painBottom - painTop) * value) / 10}
          r={3.2}
        />
      )),
    )}
  </>
);

export const CourseChart = ({ course, today }: { readonly course: OwnCourse; readonly today: string }) => {
  const x = across(course, today);
  const { work } = course;
  return (
    <section className="stack-close">
      <h2>{t('history.picture-title')}</h2>
      <ul className="statements">
        {sentences(course).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
      {/* Time runs as in the page's language: a page read from the right turns the picture with it. */}
      <svg
        className="course"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={t('history.picture-is')}
      >
        {work ? (
          <>
            <line className="course-axis" x1={left} x2={right} y1={workBottom} y2={workBottom} />
            <path className="course-steps" d={steps(work.points, x)} />
          </>
        ) : null}
        <PainDots course={course} x={x} />
        <text className="course-text" x={left} y={height - 8}>
          {shortDayText(course.since)}
        </text>
        <text className="course-text" x={right} y={height - 8} textAnchor="end">
          {shortDayText(today)}
        </text>
      </svg>
      <ul className="course-key">
        {work ? <li>{t(`history.picture-${work.of}`, { title: translate(work.title) })} —</li> : null}
        {course.mornings.map(({ joint }, place) => (
          <li key={joint}>
            {place === 0 ? '● ' : '○ '}
            {t('history.picture-pain', { joint })}
          </li>
        ))}
      </ul>
    </section>
  );
};
