'use client';
/** Questions before anything starts, and what today's answers leave of the session. */
import type { Text } from '#messages/text.ts';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { AnswerPage } from '#ui/patient/questions/answer-page.tsx';
import { ScoreQuestion } from '#ui/patient/questions/score-question.tsx';
import { TickList } from '#ui/patient/questions/tick-list.tsx';
import { YesNoQuestion } from '#ui/patient/questions/yes-no-question.tsx';
import { t, translate } from '#ui/patient/words.ts';
import { type News, news, type SessionDraft, scoreKey } from '../draft.ts';
import { isOut, reportedNew } from '../left-out.ts';
import type { PageProps } from './page-props.ts';

/** One score of one joint; before, during and after ask alike. */
export const JointScorePage = ({
  draft,
  joint,
  send,
  when,
}: PageProps & { readonly when: 'before' | 'during' | 'after' }) => {
  const key = scoreKey(when, joint);
  const question = { before: 'before.pain', during: 'after.during', after: 'after.after' } as const;
  return (
    <ScoreQuestion
      question={t(question[when], { joint })}
      hint={when === 'during' ? t('after.during-hint') : undefined}
      low={t('scale.pain-low')}
      high={t('scale.pain-high')}
      given={draft.scores[key]}
      onAnswer={(score) => {
        send({ type: 'score', key, score });
        send({ type: 'next' });
      }}
    />
  );
};

export const PainBeforePage = (props: PageProps) => <JointScorePage {...props} when="before" />;

const hasCuffWork = (draft: SessionDraft) => draft.items.some((item) => item.dose.method === 'occlusion');

const newsAsked = (asksPregnancy: boolean): readonly News[] =>
  news.filter((value) => asksPregnancy || value !== 'pregnancy');

/** With a cuff every kind of news is a line of its own: any of them leaves the cuff off. */
const NoNews = ({ draft, asksPregnancy }: Pick<PageProps, 'draft' | 'asksPregnancy'>) =>
  hasCuffWork(draft) ? (
    <li>
      {t('usual.no-news')}
      <ul className="statements-signs">
        {newsAsked(asksPregnancy).map((value) => (
          <li key={value}>{t(`news.${value}`)}</li>
        ))}
      </ul>
    </li>
  ) : (
    <li>{t(asksPregnancy ? 'usual.news-pregnancy' : 'usual.news')}</li>
  );

export const UsualPage = ({ draft, asksPregnancy, send }: PageProps) => (
  <AnswerPage<boolean>
    question={t('usual.title')}
    answers={[
      { value: true, label: t('usual.yes') },
      { value: false, label: t('usual.no') },
    ]}
    given={draft.isUsual}
    onAnswer={(isUsual) => send({ type: 'usual', isUsual })}
  >
    <ul className="statements">
      <li>{t('usual.other-joint')}</li>
      <li>{t('usual.relief')}</li>
      <NoNews draft={draft} asksPregnancy={asksPregnancy} />
    </ul>
  </AnswerPage>
);

export const ReliefPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    question={t('before.relief')}
    hint={t('before.relief-hint')}
    given={draft.relief}
    onAnswer={(relief) => {
      send({ type: 'relief', relief });
      send({ type: 'next' });
    }}
  />
);

export const OtherJointPage = ({ draft, send }: PageProps) => (
  <YesNoQuestion
    question={t('before.other-joint')}
    hint={t('before.other-joint-hint')}
    given={draft.otherJointWorse}
    onAnswer={(isWorse) => {
      send({ type: 'other-joint', isWorse });
      send({ type: 'next' });
    }}
  />
);

export const NewsPage = ({ draft, asksPregnancy, send }: PageProps) => (
  <TickList<News>
    name="news"
    question={t('before.news')}
    hint={t(hasCuffWork(draft) ? 'before.news-cuff-hint' : 'before.news-hint')}
    options={newsAsked(asksPregnancy).map((value) => ({ value, label: t(`news.${value}`) }))}
    ticked={draft.ticked.news ?? draft.news ?? []}
    noneText={t('flags.none')}
    someText={() => t('ask.continue')}
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
    <p>
      <RingText text={t('news.told', { clinic: clinic.name, phone: clinic.phone })} clinic={clinic} />
    </p>
    {hasCuffWork(draft) ? <p>{t('news.no-cuff')}</p> : null}
    <LinkButton href="/pre-visit" tone="plain">
      {t('visit.title')}
    </LinkButton>
  </div>
);

/** Never reached when today's answers change nothing. */
export const OfferPage = (props: PageProps) => {
  const { draft, clinic, send } = props;
  const out = draft.items.filter((item) => item.leftOut === 'offer');
  const eased = draft.items.filter(
    (item) => !isOut(draft, item) && item.isEasierSession && !item.planned.isEasierSession,
  );
  const isRest = draft.items.every((item) => isOut(draft, item));
  const isForPain = out.length > 0 || eased.length > 0;
  const hasNews = reportedNew(draft);
  return (
    <div className="stack">
      <PageHeading>
        {t(!isForPain ? 'news.told-title' : isRest ? 'offer.rest-title' : 'offer.title')}
      </PageHeading>
      {isForPain ? <p>{t(isRest ? 'offer.rest' : 'offer.easier')}</p> : null}
      {isForPain ? (
        <p>
          <RingText text={t('offer.ring', { clinic: clinic.name, phone: clinic.phone })} clinic={clinic} />
        </p>
      ) : null}
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
