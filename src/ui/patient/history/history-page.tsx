'use client';
/** How it went: sessions, answers and what came of them, newest first, in words. */
import type { HistoryDay, HistoryView } from '#api/patient/history-view.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays } from '#core/time/day.ts';
import { type Definition, DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { dayText, shortDayText } from '#ui/language/text-of-time.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { type PlainWordKey, t, translate } from '#ui/language/words.ts';
import { scoreText, yesNoText } from '#ui/patient/questions/answers-in-words.ts';
import { CourseChart } from './course-chart.tsx';
import { ownCourse } from './own-course.ts';

type Session = HistoryDay['sessions'][number];
type Done = Session['exercises'][number];

const setsText = (exercise: Done): string => {
  const counts = exercise.sets.map((set) => set.repetitions ?? t('history.not-counted')).join(', ');
  const loads = [...new Set(exercise.sets.map((set) => set.loadKg))].filter(
    (load): load is number => load !== null && load > 0,
  );
  return [counts, ...loads.map((kg) => weightText(kg))].join(' · ');
};

const row = (key: PlainWordKey, joint: string, value: string): Definition => ({
  key: `${key} ${joint}`,
  name: t(key),
  value,
});

const nameOf = {
  full: 'history.session',
  'bad-day': 'history.easier-session',
  test: 'history.test',
} as const satisfies Readonly<Record<Session['kind'], PlainWordKey>>;

const SessionPart = ({ session }: { readonly session: Session }) => (
  <section className="stack-close">
    <h3>{t(nameOf[session.kind])}</h3>
    <DefinitionList
      rows={session.exercises.map((exercise) => ({
        key: exercise.exerciseId,
        name: translate(exercise.title),
        value: <span className="figure">{setsText(exercise)}</span>,
      }))}
    />
    {session.joints.map((one) => (
      <div key={one.joint} className="stack-close">
        <h4>{t('joint.name', { joint: one.joint })}</h4>
        <DefinitionList
          rows={[
            row('history.pain-before', one.joint, scoreText(one.painBefore)),
            row('history.pain-during', one.joint, scoreText(one.painDuring)),
            row('history.pain-after', one.joint, scoreText(one.painAfter)),
          ]}
        />
      </div>
    ))}
  </section>
);

const MorningPart = ({ morning }: { readonly morning: HistoryDay['mornings'][number] }) => (
  <section className="stack-close">
    <h3>{t('history.morning')}</h3>
    {morning.joints.map((one) => (
      <div key={one.joint} className="stack-close">
        <h4>{t('joint.name', { joint: one.joint })}</h4>
        <DefinitionList
          rows={[
            row('history.pain-morning', one.joint, scoreText(one.pain)),
            row('history.flare', one.joint, yesNoText(one.flare)),
          ]}
        />
      </div>
    ))}
  </section>
);

const DecisionPart = ({ decision }: { readonly decision: HistoryDay['decisions'][number] }) => (
  <section className="came-of-it keep-together stack-close">
    <h3>{t('history.what-next', { joint: decision.joint })}</h3>
    <p>{translate(decision.text)}</p>
    {decision.because.length > 0 ? (
      <>
        <h4>{t('history.why')}</h4>
        <ul>
          {decision.because.map((text) => (
            <li key={text.en}>{translate(text)}</li>
          ))}
        </ul>
      </>
    ) : null}
  </section>
);

/** Parts of one day have no ids of their own and never change order. */
const numbered = <T,>(parts: readonly T[]) => parts.map((part, index) => ({ part, key: String(index) }));

const Course = ({ view }: { readonly view: HistoryView }) => {
  const course = ownCourse(view);
  const [newest] = view.days;
  return course && newest ? <CourseChart course={course} today={newest.day} /> : null;
};

const DayPart = ({ day }: { readonly day: HistoryDay }) => (
  <article className="history-day stack">
    <h2>{dayText(day.day)}</h2>
    {numbered(day.decisions).map(({ part, key }) => (
      <DecisionPart key={key} decision={part} />
    ))}
    {numbered(day.sessions).map(({ part, key }) => (
      <SessionPart key={key} session={part} />
    ))}
    {numbered(day.mornings).map(({ part, key }) => (
      <MorningPart key={key} morning={part} />
    ))}
  </article>
);

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

/** One line a week; what was not answered is not counted. */
const weekText = (monday: string, days: readonly HistoryDay[]): string => {
  const sum = (of: (day: HistoryDay) => number) => days.reduce((n, day) => n + of(day), 0);
  const pains = days.flatMap(({ mornings }) =>
    mornings.flatMap(({ joints }) => joints.flatMap(({ pain }) => pain ?? [])),
  );
  const parts = [
    t('history.week-sessions', { count: sum(({ sessions }) => sessions.length) }),
    t('history.week-mornings', { count: sum(({ mornings }) => mornings.length) }),
  ];
  if (pains.length > 0)
    parts.push(t('history.week-pain', { low: Math.min(...pains), high: Math.max(...pains) }));
  const [from, to] = [shortDayText(monday), shortDayText(addDays(monday, 6))];
  return t('history.week', { from, to, about: parts.join(' · ') });
};

export const HistoryPage = ({ view }: { readonly view: HistoryView }) => (
  <div className="stack-wide">
    <PageHeading>{t('history.title')}</PageHeading>
    <Course view={view} />
    {view.days.length === 0 ? <p>{t('history.none')}</p> : null}
    <div>
      {weeksOf(view.days).map(({ monday, days }, place) => (
        <Disclosure key={monday} summary={weekText(monday, days)} isOpen={place === 0}>
          {days.map((day) => (
            <DayPart key={day.day} day={day} />
          ))}
        </Disclosure>
      ))}
    </div>
    {view.earlierThan === null ? null : (
      <p>
        <a href={`/history?before=${view.earlierThan}`}>{t('history.earlier')}</a>
      </p>
    )}
  </div>
);
