'use client';
/** The way to what was sent today, to put an answer of it right. */
import { useState } from 'react';
import { arrivalOf } from '../day-state.ts';
import { home } from '../phone/use-place.ts';
import { Home, type ScreenProps } from '../today/home.tsx';

/** Left by a reload there is nothing open any more; today's page leads to it again. */
export const Correct = ({ at }: ScreenProps) => {
  const { seldom, toCorrect, place, go, outbox, view, ownerId, clock, enteredAs, setCorrected } = at;
  const [opened] = useState(toCorrect);
  if (!seldom || !opened) return <Home at={at} />;
  return (
    <seldom.CorrectScreen
      sent={opened}
      {...{ ownerId, view, clock, enteredAs }}
      step={place.step}
      arrivalOf={(entryId) => arrivalOf(outbox.state, entryId)}
      onStep={(step) => go({ screen: 'correct', step })}
      onSave={(entry) => {
        setCorrected({ entry, titles: opened.titles });
        return outbox.save('session', entry);
      }}
      onHome={() => go(home)}
    />
  );
};
