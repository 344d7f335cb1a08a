'use client';
/** Warning signs: by the whole list, or on most days by one question that names their families. */
import type { ReactNode } from 'react';
import type { TodayView } from '#api/patient/today-view.ts';
import { familiesAsked } from '#core/danger/signs-asked.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { Button } from '#ui/design-system/button.tsx';
import { telephone } from '#ui/language/ring-text.tsx';
import { t } from '#ui/language/words.ts';
import { AnswerPage, Question } from './answer-page.tsx';
import { flagOptions } from './flag-list.ts';
import { TickList } from './tick-list.tsx';

export interface SignsPageProps {
  readonly isShort: boolean;
  /** Over the whole list. */
  readonly question: string;
  readonly clinic: TodayView['clinic'];
  /** A cuff is prescribed: its sign is asked about. */
  readonly hasCuff: boolean;
  readonly ticked: readonly string[];
  /** Of the press that says there is none. */
  readonly noneText: string;
  readonly onTick: (ticked: readonly string[]) => void;
  readonly onAnswer: (flags: readonly RedFlag[]) => void;
  readonly onWholeList: () => void;
  readonly children?: ReactNode;
}

const ShortPage = (props: SignsPageProps) => (
  <div className="signs-short">
    <AnswerPage<'none' | 'some'>
      question={t('flags.short')}
      answers={[
        { value: 'none', label: props.noneText },
        { value: 'some', label: t('flags.not-sure') },
      ]}
      onAnswer={(answer) => (answer === 'none' ? props.onAnswer([]) : props.onWholeList())}
    >
      {props.children}
      <ul className="signs">
        {familiesAsked(props.hasCuff).map((family) => (
          <li key={family}>{t(`family.${family}`)}</li>
        ))}
      </ul>
    </AnswerPage>
    <div className="actions-quiet">
      <Button tone="quiet" onClick={props.onWholeList}>
        {t('flags.whole-list')}
      </Button>
      <a className="button button-quiet" href={telephone(props.clinic.emergencyNumber)}>
        {t('care.call-emergency', { emergency: props.clinic.emergencyNumber })}
      </a>
    </div>
  </div>
);

export const SignsPage = (props: SignsPageProps) =>
  props.isShort ? (
    <ShortPage {...props} />
  ) : (
    <>
      {props.children}
      <TickList
        name="flags"
        question={props.question}
        hint={t('flags.hint')}
        options={flagOptions(props.hasCuff)}
        ticked={props.ticked}
        noneText={props.noneText}
        someText={(count) => t('flags.go-on', { count })}
        onTick={props.onTick}
        onContinue={props.onAnswer}
      />
    </>
  );

export interface ConfirmSignsProps {
  readonly flags: readonly RedFlag[];
  /** What to do and whom to ring. */
  readonly advice: ReactNode;
  readonly onAnswer: (isSlip: boolean) => void;
}

/** Danger is never sent by one press, and what to do about it waits for no second one. */
export const ConfirmSigns = ({ flags, advice, onAnswer }: ConfirmSignsProps) => (
  <div className="stack ask">
    <Question caption={t('flags.ticked')}>{flags.map((flag) => t(`flag.${flag}`)).join('. ')}</Question>
    {advice}
    <div className="actions">
      <Button isLarge isWide onClick={() => onAnswer(false)}>
        {t(flags.length === 1 ? 'flags.have-this' : 'flags.have-these')}
      </Button>
      <Button tone="plain" isLarge isWide onClick={() => onAnswer(true)}>
        {t('flags.slip')}
      </Button>
    </div>
  </div>
);
