'use client';
/** The morning check on screen, one question a page, with a short way when all is as yesterday. */
import { type ReactNode, useState } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { dayText } from '#ui/language/text-of-time.ts';
import type { Arrival } from '../day-state.ts';
import { Advice } from '../questions/calls.tsx';
import { AnswerRows } from '../questions/check-list.tsx';
import { flagClassOf } from '../questions/flag-list.ts';
import { ScoreQuestion } from '../questions/score-question.tsx';
import { ConfirmSigns, SignsPage } from '../questions/signs-page.tsx';
import { YesNoQuestion } from '../questions/yes-no-question.tsx';
import { CareAdvice } from '../session/pages/end-pages.tsx';
import '../asked-words.ts';
import { t } from '../words.ts';
import { AlikePage } from './alike-page.tsx';
import { EitherPage } from './either-page.tsx';
import { JointQuestionPage } from './joint-question-page.tsx';
import { questionById } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import type { MorningDraft } from './morning-draft.ts';
import { morningSent } from './morning-entry.ts';
import { morningEcho, morningRows } from './morning-rows.ts';
import { UsualPage } from './usual-page.tsx';
import { WhichJointsPage } from './which-joints-page.tsx';

export interface MorningScreenProps {
  readonly draft: MorningDraft;
  readonly clinic: TodayView['clinic'];
  /** A cuff is prescribed: its sign is asked about. */
  readonly hasCuff: boolean;
  readonly painLookups: TodayView['painLookups'];
  readonly clock: () => number;
  readonly send: (event: MorningEvent) => void;
  readonly arrival: Arrival;
  /** Answers once more what was just sent. */
  readonly onAmend: () => void;
  readonly onHome: () => void;
}

type Part = MorningScreenProps & { readonly joint: Joint };

const ReliefPage = ({ draft, send }: Part) => (
  <YesNoQuestion
    question={t('morning.relief')}
    hint={t('before.relief-hint')}
    given={draft.relief}
    onAnswer={(relief) => {
      send({ type: 'relief', relief });
      send({ type: 'next' });
    }}
  />
);

const FatiguePage = ({ draft, send }: Part) => (
  <ScoreQuestion
    question={t('morning.fatigue')}
    low={t('morning.fatigue-low')}
    high={t('morning.fatigue-high')}
    given={draft.fatigue ?? null}
    onAnswer={(fatigue) => send({ type: 'fatigue', fatigue })}
  />
);

const OtherJointPage = ({ draft, send }: Part) => (
  <YesNoQuestion
    question={t('before.other-joint')}
    hint={t('before.other-joint-hint')}
    given={draft.otherJointWorse ?? null}
    onAnswer={(isWorse) => send({ type: 'other-joint', isWorse })}
  />
);

const UrinePage = ({ draft, send }: Part) => (
  <YesNoQuestion
    question={t('morning.urine')}
    hint={t('morning.urine-hint')}
    given={draft.urine}
    onAnswer={(urine) => send({ type: 'urine', urine })}
  />
);

/** What was answered, on the page of the last press; each can be changed before it is sent. */
const Answered = ({ draft, send }: Pick<Part, 'draft' | 'send'>) => {
  const [isOpen, setOpen] = useState(false);
  if (isOpen)
    return <AnswerRows rows={morningRows(draft)} onChange={(step) => send({ type: 'change', step })} />;
  return (
    <p className="echo" data-echo>
      {morningEcho(draft)}{' '}
      <Button tone="quiet" onClick={() => setOpen(true)}>
        {t('ask.change')}
      </Button>
    </p>
  );
};

/** The last question: its answer sends the check. */
const FlagsPage = (props: Part) => {
  const { draft, hasCuff, clinic, send, clock } = props;
  return (
    <SignsPage
      isShort={draft.signForm === 'short'}
      question={t('flags.morning')}
      clinic={clinic}
      hasCuff={hasCuff}
      ticked={draft.ticked}
      noneText={t('flags.none-send')}
      onTick={(ticked) => send({ type: 'tick', ticked })}
      onAnswer={(flags) => send({ type: 'flags', flags, now: clock() })}
      onWholeList={() => send({ type: 'whole-list' })}
    >
      <Answered draft={draft} send={send} />
    </SignsPage>
  );
};

const ConfirmPage = ({ draft, clinic, send, clock }: Part) => {
  const flags = draft.toConfirm?.flags ?? [];
  return (
    <ConfirmSigns
      flags={flags}
      advice={<Advice level={flagClassOf(flags)} clinic={clinic} />}
      onAnswer={(isSlip) => send({ type: 'confirm', isSlip, now: clock() })}
    />
  );
};

const SwollenPage = (props: Part) => <WhichJointsPage {...props} about="swollen" />;
const FlaresPage = (props: Part) => <WhichJointsPage {...props} about="flares" />;

const changesToday = ({ draft, painLookups }: Part): boolean =>
  !draft.isLate && morningSent(draft, painLookups, draft.endedAt ?? 0)[1].length > 0;

const EndPage = (props: Part) => {
  const { draft, clinic, arrival, onAmend, onHome } = props;
  return draft.step === 'care' ? (
    <CareAdvice
      flags={draft.flags ?? []}
      clinic={clinic}
      isCuffOn={false}
      arrival={arrival}
      onHome={onHome}
    />
  ) : (
    <div className="stack">
      <PageHeading>{t('morning.done')}</PageHeading>
      <p data-echo>{morningEcho(draft)}</p>
      <p aria-live="polite">{t(`done.${arrival}`)}</p>
      {changesToday(props) ? <Notice tone="care" title={t('morning.look-at-today')} /> : null}
      <Button isLarge isWide onClick={onHome}>
        {t('frame.home')}
      </Button>
      {arrival === 'stored' ? (
        <Button tone="quiet" onClick={onAmend}>
          {t('ask.change')}
        </Button>
      ) : null}
    </div>
  );
};

const pages: Readonly<Record<string, (props: Part) => ReactNode>> = {
  urine: UrinePage,
  usual: UsualPage,
  swollen: SwollenPage,
  flares: FlaresPage,
  relief: ReliefPage,
  fatigue: FatiguePage,
  'other-joint': OtherJointPage,
  either: EitherPage,
  confirm: ConfirmPage,
};

export const MorningScreen = (props: MorningScreenProps) => {
  const [name = '', joint = ''] = props.draft.step.split(':');
  if (props.draft.endedAt !== null) return <EndPage {...props} joint={joint as Joint} />;
  const question = questionById(name);
  const together = name === 'all' ? questionById(joint) : undefined;
  // A step of an earlier release that is no more leads to the last question, with the answers on it.
  const Page = pages[name] ?? FlagsPage;
  return (
    <div className="step">
      {props.draft.isLate ? (
        <p className="soft">{t('morning.late', { date: dayText(props.draft.day) })}</p>
      ) : null}
      {together ? (
        <AlikePage key={props.draft.step} draft={props.draft} send={props.send} question={together} />
      ) : question ? (
        <JointQuestionPage key={props.draft.step} {...props} question={question} joint={joint as Joint} />
      ) : (
        <Page key={props.draft.step} {...props} joint={joint as Joint} />
      )}
    </div>
  );
};
