'use client';
/** The way from today's page to what the clinic asks now and then. */
import { useState } from 'react';
import { arrivalOf, dayState } from '../day-state.ts';
import { home } from '../phone/use-place.ts';
import { Home, type ScreenProps } from '../today/home.tsx';

export const HomeQuestions = ({ at }: ScreenProps) => {
  const { seldom, place, go, outbox, view, ownerId, clock, enteredAs } = at;
  // What was opened stays open: once sent, it is due no longer.
  const [due] = useState(() => dayState(view, outbox.state.entries, clock()).questionsDue);
  if (!seldom || !due) return <Home at={at} />;
  return (
    <seldom.HomeQuestionsScreen
      {...{ ownerId, clock, due, enteredAs }}
      clinic={view.clinic}
      step={place.step}
      arrivalOf={(entryId) => arrivalOf(outbox.state, entryId)}
      onStep={(step) => go({ screen: 'home-questions', step })}
      onSave={outbox.save}
      onHome={() => go(home)}
    />
  );
};
