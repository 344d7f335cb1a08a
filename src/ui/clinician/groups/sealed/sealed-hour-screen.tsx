'use client';
/** The page that opens without signal: a PIN, then the hour that was taken along. In itself it holds nobody's data. */
import { useCallback, useEffect, useRef, useState } from 'react';
import { say } from '#messages/en/staff/groups/sealed.ts';
import { PageFrame } from '#ui/design-system/page-frame.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { forgetHour, type KeptHour, lookAtHour, openHour } from '#ui/on-device/hour-kept.ts';
import { phoneStore } from '#ui/on-device/phone-store.ts';
import { steadyClock } from '#ui/on-device/steady-clock.ts';
import { asideAnswers, waitingAnswers } from './answers-kept.ts';
import { PinForm } from './pin-form.tsx';
import { arrivedBefore, type SealedRoster, type States } from './roster.ts';
import { SealedPeople } from './sealed-people.tsx';
import type { OpenHour } from './use-sealed-people.ts';
import { useSendingAnswers } from './use-sending-answers.ts';
import { WaitingNotice } from './waiting-answers.tsx';

type Showing =
  | { readonly kind: 'looking' }
  | { readonly kind: 'none' }
  | { readonly kind: 'locked'; readonly triesLeft: number | null }
  | { readonly kind: 'open'; readonly hour: OpenHour; readonly goneAt: number };

const lookMs = 5_000;
/** Untouched for so long, it asks for the PIN again. */
const lockMs = 10 * 60_000;
const wall = () => Date.now();

/** Instants of the clinic that go on while the page lives, whatever becomes of the tablet's clock. */
const instantOf = ({ highest, clockLacks }: KeptHour): (() => number) =>
  steadyClock(
    () => Date.now() + clockLacks,
    () => performance.now(),
    { last: highest, shift: 0 },
  );

const opened = async (pin: string): Promise<Showing> => {
  const store = await phoneStore();
  const looked = await lookAtHour(store, { wall });
  const answer = await openHour<SealedRoster>(store, { wall }, pin);
  if (answer.kind === 'gone' || looked === null) return { kind: 'none' };
  if (answer.kind === 'wrong') return { kind: 'locked', triesLeft: answer.triesLeft };
  const { clockLacks, goneAt } = looked.kept;
  const { roster, key } = answer;
  const drafts = (answer.drafts ?? {}) as States;
  const arrived = arrivedBefore(roster, drafts, await waitingAnswers(store));
  const aside = await asideAnswers(store);
  const hour = { roster, key, drafts, arrived, aside, clockLacks, instant: instantOf(looked.kept) };
  return { kind: 'open', goneAt, hour };
};

const useTouched = () => {
  const last = useRef(0);
  useEffect(() => {
    const touch = () => {
      last.current = performance.now();
    };
    touch();
    window.addEventListener('pointerdown', touch);
    window.addEventListener('keydown', touch);
    return () => {
      window.removeEventListener('pointerdown', touch);
      window.removeEventListener('keydown', touch);
    };
  }, []);
  return last;
};

const useSealedHour = (onGone: () => void) => {
  const [showing, setShowing] = useState<Showing>({ kind: 'looking' });
  const touched = useTouched();
  const gone = useRef(onGone);
  gone.current = onGone;
  const look = useCallback(async () => {
    const looked = await lookAtHour(await phoneStore(), {
      wall: () => (showing.kind === 'open' ? showing.hour.instant() - showing.hour.clockLacks : Date.now()),
    });
    const isLeft = performance.now() - touched.current > lockMs;
    if (looked === null && showing.kind !== 'none') {
      setShowing({ kind: 'none' });
      gone.current();
    } else if (looked && (showing.kind === 'looking' || (showing.kind === 'open' && isLeft)))
      setShowing({ kind: 'locked', triesLeft: null });
  }, [showing, touched]);
  useEffect(() => {
    void look();
    const timer = setInterval(() => void look(), lookMs);
    return () => clearInterval(timer);
  }, [look]);
  return { showing, setShowing };
};

const None = () => (
  <div className="stack-close">
    <p>{say('none')}</p>
    <p>{say('kept.rest')}</p>
    <p>
      <a href="/groups">{say('none.back')}</a>
    </p>
  </div>
);

export const SealedHourScreen = () => {
  const { send, ...sending } = useSendingAnswers();
  const { showing, setShowing } = useSealedHour(() => send());
  const putAway = async () => {
    await forgetHour(await phoneStore());
    setShowing({ kind: 'none' });
    send();
  };
  return (
    <PageFrame audience="clinic" homeHref="/group-hour">
      <div className="stack-wide">
        <WaitingNotice {...sending} send={send} />
        {showing.kind === 'open' ? (
          <SealedPeople
            hour={showing.hour}
            goneAt={showing.goneAt}
            arrived={new Set([...showing.hour.arrived, ...sending.arrived])}
            aside={new Set([...showing.hour.aside, ...sending.aside])}
            onFinished={() => send()}
            onLock={() => setShowing({ kind: 'locked', triesLeft: null })}
            onPutAway={() => void putAway()}
          />
        ) : (
          <PageHeading>{say(showing.kind === 'locked' ? 'open.title' : 'title')}</PageHeading>
        )}
        {showing.kind === 'none' ? <None /> : null}
        {showing.kind === 'locked' ? (
          <PinForm triesLeft={showing.triesLeft} onPin={async (pin) => setShowing(await opened(pin))} />
        ) : null}
      </div>
    </PageFrame>
  );
};
