'use client';
/** The morning check on screen, one question a page, with a short way when all is usual. */
import type { TodayView } from '#api/patient/today-view.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { dayText } from '#ui/language/text-of-time.ts';
import { CheckList } from '../questions/check-list.tsx';
import { flagOptions } from '../questions/flag-list.ts';
import { TickList } from '../questions/tick-list.tsx';
import { YesNoQuestion } from '../questions/yes-no-question.tsx';
import { CareAdvice } from '../session/pages/end-pages.tsx';
import { t } from '../words.ts';
import { JointQuestionPage } from './joint-question-page.tsx';
import { questionById } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import type { LastMorning, MorningDraft } from './morning-draft.ts';
import { morningRows } from './morning-rows.ts';
import { UsualPage } from './usual-page.tsx';

export interface MorningScreenProps {
  readonly draft: MorningDraft;
  readonly last: LastMorning;
  readonly clinic: TodayView['clinic'];
  /** A cuff is prescribed: its sign is asked about. */
  readonly hasCuff: boolean;
  readonly clock: () => number;
  readonly send: (event: MorningEvent) => void;
  readonly hasArrived: boolean;
  readonly onHome: () => void;
}

type Part = MorningScreenProps & { readonly joint: Joint };

const ReliefPage = ({ draft, send }: Part) => (
  <YesNoQuestion
    name="relief"
    question={t('morning.relief')}
    hint={t('before.relief-hint')}
    chosen={draft.relief}
    onChoose={(relief) => send({ type: 'relief', relief })}
    onContinue={() => send({ type: 'next' })}
  />
);

const UrinePage = ({ draft, send, clock }: Part) => (
  <YesNoQuestion
    name="urine"
    question={t('morning.urine')}
    hint={t('morning.urine-hint')}
    chosen={draft.urine ?? null}
    onChoose={(urine) => send({ type: 'urine', urine })}
    onContinue={() => send({ type: 'urine-done', now: clock() })}
  />
);

const FlagsPage = ({ draft, hasCuff, send, clock }: Part) => (
  <TickList
    name="flags"
    question={t('flags.morning')}
    hint={t('flags.hint')}
    options={flagOptions(hasCuff)}
    ticked={draft.ticked}
    onTick={(ticked) => send({ type: 'tick', ticked })}
    onContinue={(flags) => send({ type: 'flags', flags, now: clock() })}
  />
);

const CheckPage = ({ draft, send, clock }: Part) => (
  <CheckList
    rows={morningRows(draft)}
    onChange={(step) => send({ type: 'change', step })}
    // The warning signs are the one question that is never left open.
    onSend={() =>
      send(draft.flags === null ? { type: 'change', step: 'flags' } : { type: 'sent', now: clock() })
    }
  />
);

const EndPage = ({ draft, clinic, hasArrived, onHome }: Part) =>
  draft.step === 'care' ? (
    <CareAdvice
      flags={draft.flags ?? []}
      clinic={clinic}
      isCuffOn={false}
      hasArrived={hasArrived}
      onHome={onHome}
    />
  ) : (
    <div className="stack">
      <PageHeading caption={t('morning.caption')}>{t('morning.done')}</PageHeading>
      <p>{t('morning.done-next')}</p>
      <p aria-live="polite">{t(hasArrived ? 'done.stored' : 'done.kept')}</p>
      <Button isLarge isWide onClick={onHome}>
        {t('frame.home')}
      </Button>
    </div>
  );

const pages: Readonly<Record<string, (props: Part) => React.ReactNode>> = {
  urine: UrinePage,
  usual: UsualPage,
  flags: FlagsPage,
  relief: ReliefPage,
  check: CheckPage,
};

export const MorningScreen = (props: MorningScreenProps) => {
  const [name = '', joint = ''] = props.draft.step.split(':');
  if (props.draft.endedAt !== null) return <EndPage {...props} joint={joint as Joint} />;
  const question = questionById(name);
  const Page = pages[name] ?? CheckPage;
  return (
    <div className="step">
      {props.draft.isLate ? (
        <p className="soft">{t('morning.late', { date: dayText(props.draft.day) })}</p>
      ) : null}
      {question ? (
        <JointQuestionPage key={props.draft.step} {...props} question={question} joint={joint as Joint} />
      ) : (
        <Page key={props.draft.step} {...props} joint={joint as Joint} />
      )}
    </div>
  );
};
