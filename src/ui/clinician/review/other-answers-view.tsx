/** A line for each fact: what was told, and what other values would have given, in words and figures. */
import type { OtherAnswer } from '#core/decision/what-would-change.ts';
import { say } from '#messages/en/staff/review/what-would-change.ts';
import type { WhatWouldChangeAnswer } from '../answers.ts';
import { contactInWords, decisionStatus, todayInWords } from '../words.ts';
import { factTitle, otherValuesInWords, toldInWords } from './other-answers-words.ts';

type Four = OtherAnswer['answers'];

const stepInWords = (step: Four['largestStep']): string =>
  step === 'load' ? say('step-load') : step === 'repetitions' ? say('step-repetitions') : '';

const decisionInWords = ({ decision }: Four): string => decisionStatus[decision].word.toLowerCase();

/** Only what differs; a step says nothing new where the decision is no longer progress. */
const differencesInWords = (before: Four, after: Four): string => {
  const instead = (answer: string, other: string) => say('instead', { answer, before: other });
  return [
    after.decision !== before.decision && instead(decisionInWords(after), decisionInWords(before)),
    after.largestStep !== null && after.largestStep !== before.largestStep && stepInWords(after.largestStep),
    after.today !== before.today && todayInWords[after.today],
    after.contact !== before.contact && contactInWords[after.contact],
  ]
    .filter(Boolean)
    .join(', ');
};

const FactLine = ({ before, lines }: { readonly before: Four; readonly lines: readonly OtherAnswer[] }) => {
  const [first] = lines;
  if (!first) return null;
  return (
    <li>
      <strong>{say('fact-was', { fact: factTitle(first), value: toldInWords(first) })}</strong>
      {first.isCounted ? <span className="soft"> ({say('counted')})</span> : null}.{' '}
      {lines
        .map((line) =>
          say('otherwise', {
            values: otherValuesInWords(line),
            answers: differencesInWords(before, line.answers),
          }),
        )
        .join(' ')}
    </li>
  );
};

const byFact = (lines: readonly OtherAnswer[]): readonly (readonly OtherAnswer[])[] =>
  [...new Set(lines.map(({ fact }) => fact))].map((fact) => lines.filter((line) => line.fact === fact));

const Group = (props: {
  readonly title: string;
  readonly none: string;
  readonly before: Four;
  readonly lines: readonly OtherAnswer[];
}) => (
  <>
    <h3>{props.title}</h3>
    {props.lines.length === 0 ? (
      <p>{props.none}</p>
    ) : (
      <ul className="plain-list stack-close">
        {byFact(props.lines).map((lines) => (
          <FactLine key={lines[0]?.fact} before={props.before} lines={lines} />
        ))}
      </ul>
    )}
  </>
);

export const OtherAnswersView = ({ answers, others }: WhatWouldChangeAnswer) => {
  if (!others) return <p>{say('not-worked-out')}</p>;
  return (
    <div className="stack-close">
      <p className="soft">{say('note')}</p>
      <Group
        title={say('bolder')}
        none={say('none-bolder')}
        before={answers}
        lines={others.filter(({ isBolder }) => isBolder)}
      />
      <Group
        title={say('more-cautious')}
        none={say('none-more-cautious')}
        before={answers}
        lines={others.filter(({ isBolder }) => !isBolder)}
      />
    </div>
  );
};
