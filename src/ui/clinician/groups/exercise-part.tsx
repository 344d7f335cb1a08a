'use client';
/** One exercise of one person: the dose of today with what changes it, and its sets. */
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { say } from '#messages/en/staff/groups/hour.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { TodayTag, whyInWords } from '../danger/plan-view.tsx';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { skipName, takeName } from './group-answers.ts';
import type { ExerciseProps } from './person-props.ts';
import { NextSet, SetLine } from './set-parts.tsx';

/** Why it is not asked about, and how it is taken up all the same where that may be. */
const Aside = ({ now, press }: ExerciseProps) => {
  const { itemId } = now.exercise;
  switch (now.state) {
    case 'cuff':
      return <p className="small">{say('state.cuff')}</p>;
    case 'not-planned':
      return (
        <p className="small">
          {say('state.not-planned')}{' '}
          <Button tone="quiet" onClick={() => press({ [takeName(itemId)]: 'yes' })}>
            {say('take')}
          </Button>
        </p>
      );
    case 'skipped':
      return (
        <p className="small">
          {say('state.skipped')}{' '}
          <Button tone="quiet" onClick={() => press({ [skipName(itemId)]: undefined })}>
            {say('skip.not')}
          </Button>
        </p>
      );
    case 'done':
      return <p className="small soft">{say('state.done')}.</p>;
    default:
      return null;
  }
};

const Cautions = ({ now: { exercise } }: Pick<ExerciseProps, 'now'>) => {
  const limits = exercise.cautions.filter(({ isLimit }) => isLimit);
  const others = exercise.cautions.filter(({ isLimit }) => !isLimit);
  return (
    <>
      {limits.map(({ id, text }) => (
        <p key={id} className="small limit-line">
          {text}
        </p>
      ))}
      {others.length > 0 ? (
        <Disclosure summary={say('cautions', { count: others.length })}>
          <ul className="small">
            {others.map(({ id, text }) => (
              <li key={id}>{text}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
    </>
  );
};

interface PartProps extends ExerciseProps {
  /** Sets are asked about: the questions before the work were answered. */
  readonly isAtWork: boolean;
}

export const ExercisePart = ({ isAtWork, ...props }: PartProps) => {
  const { now, person, press } = props;
  const { exercise, dose, today, sets, state } = now;
  const decided = new Map(person.today.decided.map(({ joint, decision }) => [joint, { decision }]));
  const why = today === exercise.today ? whyInWords(exercise, decided) : say('why.pain-now');
  return (
    <li className="group-exercise stack-close" data-state={state}>
      <h3>{doseTitle(dose)}</h3>
      <p className="figure-line">{doseInShort(dose)}</p>
      {today === 'as-planned' ? null : (
        <p className="small">
          <TodayTag today={today} /> {why}
        </p>
      )}
      <Cautions now={now} />
      <Disclosure summary={say('dose.whole')}>
        <p className="small">{doseInWords(dose)}</p>
      </Disclosure>
      {sets.length > 0 ? (
        <ul className="plain-list small">
          {sets.map((done) => (
            <SetLine key={done.set} {...props} done={done} />
          ))}
        </ul>
      ) : null}
      {isAtWork ? <Aside {...props} /> : null}
      {isAtWork && state === 'open' ? (
        <>
          <NextSet {...props} />
          {sets.length === 0 ? (
            <Button tone="quiet" onClick={() => press({ [skipName(exercise.itemId)]: 'yes' })}>
              {say('skip')}
            </Button>
          ) : null}
        </>
      ) : null}
    </li>
  );
};
