'use client';
/** A clock over the page: rest, or the time seated after a cuff. Nothing moves by itself when it is over. */
import { clockText } from '#ui/language/text-of-time.ts';
import { useBuzz, useNow } from '#ui/patient/phone/use-now.ts';

export interface ClockBandProps {
  readonly endsAt: number;
  readonly clock: () => number;
  readonly until: string;
  readonly over: string;
}

export const ClockBand = ({ endsAt, clock, until, over }: ClockBandProps) => {
  const left = (endsAt - useNow(clock)) / 1000;
  useBuzz(left <= 0);
  return (
    <div className="clock-band">
      <p aria-live="polite">{left > 0 ? until : over}</p>
      <p className="clock-band-figure figure" role="timer">
        {clockText(left)}
      </p>
    </div>
  );
};
