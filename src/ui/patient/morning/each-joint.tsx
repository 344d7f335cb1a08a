'use client';
/** One question about up to three joints on one page: a row of answers for each, where they are not alike. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion } from '#core/record/morning-questions.ts';
import { t } from '../words.ts';
import type { MorningEvent } from './morning.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';

type Value = NonNullable<JointMorning[JointQuestion['answer']['name']]>;

interface EachProps {
  readonly draft: MorningDraft;
  readonly question: JointQuestion;
  readonly joints: readonly Joint[];
  readonly choices: readonly { readonly label: string; readonly said: Value }[];
  readonly send: (event: MorningEvent) => void;
}

const classOf = (isGiven: boolean, isApart: boolean): string =>
  ['button', 'button-plain', 'answer', isApart ? 'answer-apart' : '', isGiven ? 'answer-given' : '']
    .filter(Boolean)
    .join(' ');

const Row = ({ draft, question: { id, answer }, joint, choices, send }: RowProps) => {
  const given = jointMorning(draft, joint)[answer.name];
  const all = [...choices, { label: t('ask.unknown'), said: 'unknown' as Value }];
  return (
    <fieldset className="each-joint">
      <legend>{t('morning.the-joint', { joint })}</legend>
      <div className="answers answers-rows">
        {all.map(({ label, said }) => (
          <button
            key={label}
            type="button"
            className={classOf(given === said, said === 'unknown')}
            aria-label={t('morning.usual-of', { joint, text: label })}
            aria-pressed={given === said}
            onClick={() => send({ type: 'each', id, joint, answer: { [answer.name]: said } })}
          >
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
};

interface RowProps extends Omit<EachProps, 'joints'> {
  readonly joint: Joint;
}

export const EachJoint = ({ joints, ...props }: EachProps) => (
  <section className="stack" aria-label={t('morning.each')}>
    <h2>{t('morning.each')}</h2>
    {joints.map((joint) => (
      <Row key={joint} {...props} joint={joint} />
    ))}
  </section>
);
