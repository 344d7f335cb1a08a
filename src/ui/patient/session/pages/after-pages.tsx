'use client';
/** After the last set: joint pain, muscle burn and the cuff are asked apart, the rest is stated. */
import { Button } from '#ui/design-system/button.tsx';
import { AnswerPage } from '#ui/patient/questions/answer-page.tsx';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { YesNoQuestion } from '#ui/patient/questions/yes-no-question.tsx';
import { t } from '#ui/patient/words.ts';
import { JointScorePage } from './before-pages.tsx';
import type { PageProps } from './page-props.ts';

export const PainDuringPage = (props: PageProps) => <JointScorePage {...props} when="during" />;
export const PainAfterPage = (props: PageProps) => <JointScorePage {...props} when="after" />;

const WholeScorePage = ({ draft, send, of }: PageProps & { readonly of: 'burn' | 'cuff' }) => (
  <ScoreQuestion
    question={t(`after.${of}`)}
    low={t(`scale.${of}-low`)}
    high={t(`scale.${of}-high`)}
    given={draft.scores[of]}
    onAnswer={(score) => {
      send({ type: 'score', key: of, score });
      send({ type: 'next' });
    }}
  />
);

export const BurnPage = (props: PageProps) => <WholeScorePage {...props} of="burn" />;
export const CuffBotherPage = (props: PageProps) => <WholeScorePage {...props} of="cuff" />;

/** What is said to be right as a whole. The first line stands for the signs where the short question was asked. */
export const StatementPage = ({ draft, send }: PageProps) => (
  <AnswerPage<boolean>
    question={t('right.title')}
    answers={[
      { value: true, label: t('right.yes') },
      { value: false, label: t('right.no') },
    ]}
    given={draft.isRight}
    onAnswer={(isRight) => send({ type: 'right', isRight })}
  >
    <ul className="statements">
      {draft.signForm === 'short' ? <li>{t('right.signs')}</li> : null}
      {draft.joints.map((joint) => (
        <li key={joint}>{t('right.gave-way', { joint })}</li>
      ))}
      <li>{t('right.extra')}</li>
    </ul>
    {draft.signForm === 'short' ? (
      <Button tone="quiet" onClick={() => send({ type: 'right', isRight: false })}>
        {t('flags.whole-list')}
      </Button>
    ) : null}
  </AnswerPage>
);

export const GaveWayPage = ({ draft, joint, send }: PageProps) => (
  <YesNoQuestion
    question={t('after.gave-way', { joint })}
    hint={t('after.gave-way-hint', { joint })}
    given={draft.gaveWay[joint]}
    onAnswer={(gaveWay) => {
      send({ type: 'gave-way', joint, gaveWay });
      send({ type: 'next' });
    }}
  />
);

export const ExtraPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    question={t('after.extra')}
    hint={t('after.extra-hint')}
    given={draft.didExtra}
    onAnswer={(didExtra) => {
      send({ type: 'extra', didExtra });
      send({ type: 'next' });
    }}
  />
);
