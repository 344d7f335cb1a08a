'use client';
/** What was sent today, each answer with its Change; the corrected answers go in the place of those sent. */
import { useState } from 'react';
import '../asked-words.ts';
import '../today/seldom-words.ts';
import type { SentSession, TodayView } from '#api/patient/today-view.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import type { Carer } from '#core/record/entry-words.ts';
import { Button } from '#ui/design-system/button.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { t } from '#ui/language/words.ts';
import { correctionKey } from '#ui/on-device/phone-store.ts';
import type { Arrival } from '../day-state.ts';
import { useSavedValue } from '../phone/use-saved-reducer.ts';
import { WaysBack } from '../questions/answer-page.tsx';
import { AnswerRows } from '../questions/check-list.tsx';
import { overLimit } from '../session/left-out.ts';
import { PainAdvice } from '../session/pages/pain-advice.tsx';
import { AnswerQuestion } from './answer-question.tsx';
import { correctionRows } from './answers-in-rows.ts';
import { amending, answerAt, placesOf, putRight, stepOf } from './correction.ts';

export interface CorrectScreenProps {
  /** As it was when the page was opened: one that is refreshed meanwhile changes nothing here. */
  readonly sent: SentSession;
  readonly ownerId: string;
  readonly view: Pick<TodayView, 'clinic' | 'painLookups' | 'exercises'>;
  /** Empty: the list of answers. */
  readonly step: string;
  readonly enteredAs: Carer | null;
  readonly clock: () => number;
  readonly arrivalOf: (entryId: string) => Arrival;
  readonly onStep: (step: string) => void;
  /** Whether the phone could keep it. */
  readonly onSave: (entry: SessionEntry) => Promise<boolean>;
  readonly onHome: () => void;
}

interface Begun {
  /** Entry that is put right. */
  readonly of: string;
  readonly entry: SessionEntry;
}

const Sent = ({ entry, view, arrivalOf, onHome }: CorrectScreenProps & { readonly entry: SessionEntry }) => {
  const hurt = entry.joints.flatMap(({ joint, painDuring, painAfter }) =>
    overLimit(view, joint, [painDuring, painAfter]),
  );
  const [first] = hurt;
  const done = new Set(entry.sets.map(({ itemId }) => itemId));
  return (
    <div className="stack">
      <PageHeading>{first ? t('hurt.title', first) : t('correct.done')}</PageHeading>
      {first ? (
        <PainAdvice
          hurt={hurt}
          othersOf={(joint) =>
            view.exercises.filter(
              ({ itemId, planned, joints }) => planned && !done.has(itemId) && joints.includes(joint),
            )
          }
          clinic={view.clinic}
        />
      ) : null}
      <p aria-live="polite">{t(`done.${arrivalOf(entry.entryId)}`)}</p>
      <Button isLarge isWide onClick={onHome}>
        {t('frame.home')}
      </Button>
    </div>
  );
};

interface ListProps {
  readonly sent: SentSession;
  readonly entry: SessionEntry;
  readonly onStep: (step: string) => void;
  readonly onSend: () => void;
}

/** Nothing is sent before something was changed. */
const AnswerList = ({ sent, entry, onStep, onSend }: ListProps) => {
  const isChanged = placesOf(entry).some((one) => answerAt(entry, one) !== answerAt(sent.entry, one));
  return (
    <div className="stack">
      <PageHeading>{t('correct.title')}</PageHeading>
      <p>{t('correct.about')}</p>
      {isChanged ? (
        <Button isLarge isWide onClick={onSend}>
          {t('correct.send')}
        </Button>
      ) : null}
      <AnswerRows rows={correctionRows(entry, sent)} onChange={onStep} />
      <WaysBack />
    </div>
  );
};

export const CorrectScreen = (props: CorrectScreenProps) => {
  const { sent, ownerId, step, clock, enteredAs, onStep, onSave } = props;
  const [saved, setSaved] = useState<SessionEntry | null>(null);
  const draft = useSavedValue<Begun>(
    { ownerId, key: correctionKey(ownerId) },
    ({ of }) => of === sent.entry.entryId,
  );
  const entry = draft.state?.entry ?? sent.entry;
  const send = async () => {
    const now = Math.round(clock());
    const amended = amending(sent, entry, { entryId: crypto.randomUUID(), now, enteredAs });
    if (await onSave(amended)) draft.release();
    setSaved(amended);
  };
  if (saved) return <Sent {...props} entry={saved} />;
  const place = placesOf(entry).find((one) => stepOf(one) === step);
  if (!place) return <AnswerList {...{ sent, entry, onStep }} onSend={() => void send()} />;
  return (
    <div className="step">
      <AnswerQuestion
        key={step}
        {...{ place, entry }}
        sentAnswer={answerAt(sent.entry, place)}
        names={sent}
        onAnswer={(answer) => {
          draft.begin({ of: sent.entry.entryId, entry: putRight(entry, place, answer) });
          onStep('');
        }}
      />
    </div>
  );
};
