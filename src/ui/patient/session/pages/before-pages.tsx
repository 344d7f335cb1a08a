'use client';
/** Questions before anything starts, and what today's answers leave of the session. */
import type { Text } from '#messages/text.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { flagOptions } from '#ui/patient/questions/flag-list.ts';
import { painLimitHint } from '#ui/patient/questions/pain-limit.tsx';
import { QuestionPage } from '#ui/patient/questions/question-page.tsx';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { TickList } from '#ui/patient/questions/tick-list.tsx';
import { YesNoQuestion } from '#ui/patient/questions/yes-no-question.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { isOut, type News, news, reportedNew, type SessionDraft, scoreKey } from '../draft.ts';
import type { FlagsWhen } from '../events.ts';
import type { PageProps } from './page-props.ts';

/** What stands ticked: the present ticks, else the answer given before. */
const tickedOf = (draft: SessionDraft, list: string, answer: readonly string[] | null): readonly string[] =>
  draft.ticked[list] ?? (answer === null ? [] : answer.length === 0 ? ['none'] : answer);

const answerOf = (draft: SessionDraft, when: FlagsWhen) =>
  when === 'before' ? draft.flagsBefore : when === 'during' ? draft.flagsDuring : null;

const FlagsPage = ({ draft, hasCuff, send, clock, when }: PageProps & { readonly when: FlagsWhen }) => (
  <TickList
    name={`flags-${when}`}
    question={t(`flags.${when}`)}
    hint={t('flags.hint')}
    options={flagOptions(hasCuff)}
    ticked={tickedOf(draft, when, answerOf(draft, when))}
    onTick={(values) => send({ type: 'tick', list: when, values })}
    onContinue={(flags) => send({ type: 'flags', when, flags, now: clock() })}
  />
);

export const FlagsBeforePage = (props: PageProps) => <FlagsPage {...props} when="before" />;
export const FlagsDuringPage = (props: PageProps) => <FlagsPage {...props} when="during" />;
export const FlagsNowPage = (props: PageProps) => <FlagsPage {...props} when="now" />;

/** One score of one joint; before, during and after ask alike. */
export const JointScorePage = ({
  draft,
  joint,
  send,
  when,
}: PageProps & { readonly when: 'before' | 'during' | 'after' }) => {
  const key = scoreKey(when, joint);
  const isAnswered = draft.scores[key] !== undefined;
  const question = { before: 'before.pain', during: 'after.during', after: 'after.after' } as const;
  const next = () => send({ type: 'next' });
  return (
    <QuestionPage
      field={key}
      isAnswered={isAnswered}
      whenEmpty={t('ask.choose-number')}
      onContinue={next}
      onLeave={next}
    >
      {(error) => (
        <ScoreQuestion
          name={key}
          question={t(question[when], { joint })}
          hint={
            when === 'during'
              ? [t('after.during-hint'), ...painLimitHint(draft.painLookups, joint)].join(' ')
              : undefined
          }
          low={t('scale.pain-low')}
          high={t('scale.pain-high')}
          chosen={draft.scores[key] ?? null}
          error={error}
          onChoose={(score) => send({ type: 'score', key, score })}
        />
      )}
    </QuestionPage>
  );
};

export const PainBeforePage = (props: PageProps) => <JointScorePage {...props} when="before" />;

export const ReliefPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    name="relief"
    question={t('before.relief')}
    hint={t('before.relief-hint')}
    chosen={draft.relief}
    onChoose={(relief) => send({ type: 'relief', relief })}
    onContinue={() => send({ type: 'next' })}
  />
);

export const OtherJointPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    name="other-joint"
    question={t('before.other-joint')}
    hint={t('before.other-joint-hint')}
    chosen={draft.otherJointWorse ?? null}
    onChoose={(isWorse) => send({ type: 'other-joint', isWorse })}
    onContinue={() => send({ type: 'next' })}
  />
);

const hasCuffWork = (draft: SessionDraft) => draft.items.some((item) => item.dose.method === 'occlusion');

export const NewsPage = ({ draft, asksPregnancy, send }: PageProps) => (
  <TickList<News>
    name="news"
    question={t('before.news')}
    hint={t(hasCuffWork(draft) ? 'before.news-cuff-hint' : 'before.news-hint')}
    options={news
      .filter((value) => asksPregnancy || value !== 'pregnancy')
      .map((value) => ({ value, label: t(`news.${value}`) }))}
    ticked={tickedOf(draft, 'news', draft.news)}
    onTick={(values) => send({ type: 'tick', list: 'news', values })}
    onContinue={(chosen) => {
      send({ type: 'news', news: chosen });
      send({ type: 'next' });
    }}
  />
);

const titlesOf = (items: readonly { readonly title: Text | string }[]) =>
  items.map((item) => translate(item.title)).join('; ');

const NewsReported = ({ draft, clinic }: PageProps) => (
  <div className="stack-close">
    <p>{t('news.told', { clinic: clinic.name, phone: clinic.phone })}</p>
    {hasCuffWork(draft) ? <p>{t('news.no-cuff')}</p> : null}
    <LinkButton href="/pre-visit" tone="plain">
      {t('visit.title')}
    </LinkButton>
  </div>
);

/** Never reached when today's answers change nothing. */
export const OfferPage = (props: PageProps) => {
  const { draft, send } = props;
  const out = draft.items.filter((item) => item.leftOut === 'offer');
  const eased = draft.items.filter(
    (item) => !isOut(draft, item) && item.isEasierSession && !item.planned.isEasierSession,
  );
  const isRest = draft.items.every((item) => isOut(draft, item));
  const isForPain = out.length > 0 || eased.length > 0;
  const hasNews = reportedNew(draft);
  return (
    <div className="stack">
      <PageHeading>{t(isForPain ? 'offer.title' : 'news.told-title')}</PageHeading>
      {isForPain ? <p>{t(isRest ? 'offer.rest' : 'offer.easier')}</p> : null}
      {isForPain ? <p>{t('offer.ring', { clinic: props.clinic.name, phone: props.clinic.phone })}</p> : null}
      {eased.length > 0 ? <p>{t('offer.eased', { titles: titlesOf(eased) })}</p> : null}
      {out.length > 0 && !isRest ? <p>{t('offer.left-out', { titles: titlesOf(out) })}</p> : null}
      {isForPain && hasNews ? <h2>{t('news.told-title')}</h2> : null}
      {hasNews ? <NewsReported {...props} /> : null}
      {isRest && !isForPain ? <p>{t('news.nothing-left')}</p> : null}
      <div className="actions">
        <Button isLarge isWide onClick={() => send({ type: 'next' })}>
          {t(isRest ? 'offer.rest-take' : 'offer.take')}
        </Button>
        <Button tone="quiet" onClick={() => window.history.back()}>
          {t('ask.back')}
        </Button>
      </div>
    </div>
  );
};
