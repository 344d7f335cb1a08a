'use client';
/** How it went: sessions, answers and what came of them, newest first, in words. */
import type { HistoryDay, HistoryView } from '#api/patient/history-view.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays } from '#core/time/day.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { shortDayText } from '#ui/language/text-of-time.ts';
import { t } from '#ui/language/words.ts';
import { CourseChart } from './course-chart.tsx';
import { DayPart } from './day-part.tsx';
import { ownCourse } from './own-course.ts';

const Course = ({ view }: { readonly view: HistoryView }) => {
  const course = ownCourse(view);
  const [newest] = view.days;
  return course && newest ? <CourseChart course={course} today={newest.day} /> : null;
};

/** The Monday of the week of a day. */
const mondayOf = (day: string): string => addDays(day, 1 - weekdayOf(day));

const weeksOf = (days: readonly HistoryDay[]) => {
  const weeks = new Map<string, HistoryDay[]>();
  for (const day of days) {
    const monday = mondayOf(day.day);
    weeks.set(monday, [...(weeks.get(monday) ?? []), day]);
  }
  return [...weeks].map(([monday, ofWeek]) => ({ monday, days: ofWeek }));
};

/** One line a week. */
const weekText = (monday: string, days: readonly HistoryDay[]): string => {
  const count = days.flatMap(({ sessions }) => sessions).length;
  const about = count === 0 ? t('history.week-no-session') : t('history.week-sessions', { count });
  return t('history.week', { from: shortDayText(monday), about });
};

/** What was not answered is not counted. */
const morningsText = (days: readonly HistoryDay[]): string => {
  const mornings = days.flatMap((day) => day.mornings);
  const pains = mornings.flatMap(({ joints }) => joints.flatMap(({ pain }) => pain ?? []));
  const [low, high] = [Math.min(...pains), Math.max(...pains)];
  const parts = [
    ...(mornings.length > 0 ? [t('history.week-mornings', { count: mornings.length })] : []),
    ...(pains.length === 0
      ? []
      : [low === high ? t('history.week-pain-same', { low }) : t('history.week-pain', { low, high })]),
  ];
  return parts.join(' ');
};

const Week = ({ days }: { readonly days: readonly HistoryDay[] }) => {
  const mornings = morningsText(days);
  return (
    <>
      {mornings === '' ? null : <p className="soft">{mornings}</p>}
      {days.map((day) => (
        <DayPart key={day.day} day={day} />
      ))}
    </>
  );
};

const Weeks = ({ days }: Pick<HistoryView, 'days'>) => (
  <section className="stack-close">
    <h2>{t('history.weeks')}</h2>
    <ul className="weeks">
      {weeksOf(days).map((week, place) => (
        <li key={week.monday}>
          <Disclosure summary={weekText(week.monday, week.days)} isOpen={place === 0}>
            <Week days={week.days} />
          </Disclosure>
        </li>
      ))}
    </ul>
  </section>
);

export const HistoryPage = ({ view }: { readonly view: HistoryView }) => (
  <div className="stack-wide">
    <PageHeading>{t('history.title')}</PageHeading>
    {/* Without signal this page is the last one that was kept: only its day tells that it is not today's. */}
    <p className="soft">{t('history.as-of', { day: view.today })}</p>
    <Course view={view} />
    {view.days.length === 0 ? <p>{t('history.none')}</p> : <Weeks days={view.days} />}
    {view.earlierThan === null ? null : (
      <p className="seldom">
        <a href={`/history?before=${view.earlierThan}`}>{t('history.earlier')}</a>
      </p>
    )}
  </div>
);
