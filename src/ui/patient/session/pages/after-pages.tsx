'use client';
import { QuestionPage } from '#ui/patient/questions/question-page.tsx';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { YesNoQuestion } from '#ui/patient/questions/yes-no-question.tsx';
/** After the last set: joint pain, muscle burn and the cuff are asked apart. */
import { t } from '#ui/patient/words.ts';
import { JointScorePage } from './before-pages.tsx';
import type { PageProps } from './page-props.ts';

export const PainDuringPage = (props: PageProps) => <JointScorePage {...props} when="during" />;
export const PainAfterPage = (props: PageProps) => <JointScorePage {...props} when="after" />;

const WholeScorePage = ({ draft, send, of }: PageProps & { readonly of: 'burn' | 'cuff' }) => {
  const next = () => send({ type: 'next' });
  return (
    <QuestionPage
      field={of}
      isAnswered={draft.scores[of] !== undefined}
      whenEmpty={t('ask.choose-number')}
      onContinue={next}
      onLeave={next}
    >
      {(error) => (
        <ScoreQuestion
          name={of}
          question={t(`after.${of}`)}
          hint={of === 'burn' ? t('after.burn-hint') : undefined}
          low={t(`scale.${of}-low`)}
          high={t(`scale.${of}-high`)}
          chosen={draft.scores[of] ?? null}
          error={error}
          onChoose={(score) => send({ type: 'score', key: of, score })}
        />
      )}
    </QuestionPage>
  );
};

export const BurnPage = (props: PageProps) => <WholeScorePage {...props} of="burn" />;
export const CuffBotherPage = (props: PageProps) => <WholeScorePage {...props} of="cuff" />;

export const GaveWayPage = ({ draft, joint, send }: PageProps) => (
  <YesNoQuestion
    name={`gave-way-${joint}`}
    question={t('after.gave-way', { joint })}
    hint={t('after.gave-way-hint', { joint })}
    chosen={draft.gaveWay[joint] ?? null}
    onChoose={(answer) => send({ type: 'gave-way', joint, gaveWay: answer })}
    onContinue={() => send({ type: 'next' })}
  />
);

export const ExtraPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    name="extra"
    question={t('after.extra')}
    hint={t('after.extra-hint')}
    chosen={draft.didExtra}
    onChoose={(answer) => send({ type: 'extra', didExtra: answer })}
    onContinue={() => send({ type: 'next' })}
  />
);
