'use client';
/** The way from today's page to saying that something has changed. */
import { arrivalOf } from '../day-state.ts';
import { home } from '../phone/use-place.ts';
import { hasCuffIn } from '../questions/flag-list.ts';
import { Home, type ScreenProps } from '../today/home.tsx';

export const Changed = ({ at }: ScreenProps) => {
  const { seldom, place, go, outbox, view, ownerId, clock } = at;
  if (!seldom) return <Home at={at} />;
  return (
    <seldom.ChangedScreen
      {...{ ownerId, clock }}
      clinic={view.clinic}
      followedJoints={view.followedJoints}
      hasCuff={hasCuffIn(view.exercises)}
      step={place.step}
      arrivalOf={(entryId) => arrivalOf(outbox.state, entryId)}
      onStep={(step) => go({ screen: 'changed', step })}
      onSave={outbox.save}
      onHome={() => go(home)}
    />
  );
};
