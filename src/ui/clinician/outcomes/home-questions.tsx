/** What a person is asked at home, since when and how often, and every answer by question and day. */
import { ownAnswerInWords } from '#core/assessment/questionnaires/questionnaire.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { AskedAtHome, HomeQuestionsAnswer } from '../answers.ts';
import { optionInWords } from '../forms/field-words.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { AskAtHomeForm } from './ask-at-home-form.tsx';
import { EndHomeQuestions } from './end-home-questions.tsx';

export interface HomeQuestionsProps {
  readonly patientId: string;
  readonly atHome: HomeQuestionsAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
}

type AnswerSet = AskedAtHome['answers'][number];

const titleOf = ({ title }: AskedAtHome): string => title ?? say('home.activities');

/** Each question in the words in which it was asked, in the order of the newest answers. */
const questionsIn = (sets: readonly AnswerSet[]): readonly string[] => [
  ...new Set(sets.toReversed().flatMap(({ given }) => given.map(({ question }) => question))),
];

const aboutSet = ({ version, enteredAs }: AnswerSet): string =>
  [
    version === null ? '' : say('home.version', { version }),
    enteredAs ? say('home.typed-by', { who: optionInWords(enteredAs) }) : '',
  ]
    .filter(Boolean)
    .join(', ');

const Answers = ({ asked, day }: { readonly asked: AskedAtHome; readonly day: Day }) => (
  <DataTable
    caption={say('home.answers', { title: titleOf(asked) })}
    columns={[
      { key: 'question', title: 'Question' },
      { key: 'day', title: 'Day' },
      { key: 'answer', title: 'Answer' },
      { key: 'about', title: 'Version' },
    ]}
    rows={questionsIn(asked.answers).flatMap((question) =>
      asked.answers.flatMap((set) =>
        set.given
          .filter((one) => one.question === question)
          .map(({ answer }) => ({
            key: `${question} ${set.id}`,
            cells: [question, dayInWords(set.day, day), ownAnswerInWords(answer), aboutSet(set)],
          })),
      ),
    )}
    empty={say('home.none-answered')}
  />
);

const stateOf = (asked: AskedAtHome, { clock, day }: HomeQuestionsProps): string => {
  if (asked.ended)
    return say('home.ended', { name: asked.ended.by, time: momentInWords(asked.ended.at, clock) });
  if (asked.isRetired) return say('home.retired');
  return say(asked.dueFrom <= day ? 'home.due' : 'home.next', { date: dayInWords(asked.dueFrom, day) });
};

const Asked = ({ asked, ...props }: HomeQuestionsProps & { readonly asked: AskedAtHome }) => (
  <article className="stack-close">
    <h3>{titleOf(asked)}</h3>
    <p>
      {say('home.rhythm', {
        date: dayInWords(asked.fromDay, props.day),
        days: asked.everyDays,
        name: asked.byName,
        time: momentInWords(asked.recordedAt, props.clock),
      })}{' '}
      {stateOf(asked, props)}
    </p>
    {asked.ended ? null : (
      <div className="screen-only">
        <EndHomeQuestions patientId={props.patientId} homeQuestionsId={asked.id} title={titleOf(asked)} />
      </div>
    )}
    <Answers asked={asked} day={props.day} />
  </article>
);

export const HomeQuestions = (props: HomeQuestionsProps) => {
  const { patientId, atHome, day } = props;
  const { asked, offered, activities } = atHome;
  return (
    <section className="stack">
      <h2>{say('home.title')}</h2>
      <p className="soft">{say('home.note')}</p>
      {asked.length === 0 ? <p>{say('home.nobody')}</p> : null}
      {asked.map((one) => (
        <Asked key={one.id} asked={one} {...props} />
      ))}
      {activities.length === 0 ? <p className="soft">{say('home.no-activity')}</p> : null}
      {offered.length === 0 ? <p className="soft">{say('home.no-questionnaire')}</p> : null}
      {activities.length + offered.length > 0 ? (
        <div className="screen-only">
          <Disclosure summary={say('home.ask')}>
            <AskAtHomeForm {...{ patientId, day, offered, activities }} />
          </Disclosure>
        </div>
      ) : null}
    </section>
  );
};
