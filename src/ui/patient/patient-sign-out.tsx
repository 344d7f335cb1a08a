'use client';
/** Signing out from any of the patient's pages, at their foot: it asks before anything is lost. */
import { type ComponentType, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';
import type { LeaveQuestionProps } from './leaving/leave-question.tsx';

interface Asked extends Omit<LeaveQuestionProps, 'onStay'> {
  readonly Question: ComponentType<LeaveQuestionProps>;
}

export const PatientSignOut = () => {
  const [asked, setAsked] = useState<Asked | null>(null);
  const [isGoing, setGoing] = useState(false);
  const press = async () => {
    setGoing(true);
    const { LeaveQuestion, haveWords, leave, leftBehind } = await import('./leaving/leave-question.tsx');
    const left = await leftBehind();
    const hasSignal = navigator.onLine;
    if (hasSignal && !left.isCuffOn && left.begun + left.unsent === 0) return leave(false);
    await haveWords();
    setAsked({ Question: LeaveQuestion, left, hasSignal });
    setGoing(false);
  };
  if (asked)
    return <asked.Question left={asked.left} hasSignal={asked.hasSignal} onStay={() => setAsked(null)} />;
  return (
    <Button tone="quiet" disabled={isGoing} onClick={() => void press().catch(() => setGoing(false))}>
      {t('sign-out.go')}
    </Button>
  );
};
