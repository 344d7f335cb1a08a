/** What an engine asks of the clinic and how the played clinician answers: calls, pauses, signatures. */
import type { Evaluation } from '#core/decision/scope.ts';
import type { Tally } from './tally.ts';

export interface ClinicDesk {
  /** An evaluation to be heard once; the same one again asks for nothing. */
  readonly hear: (day: number, evaluation: Evaluation) => void;
  /** The worklist names the person. */
  readonly ask: () => void;
  readonly callSameDay: (day: number, cause: string) => void;
  readonly isPaused: (day: number) => boolean;
  /** Whether the pause in force was looked at and taken back. */
  readonly isOverruled: () => boolean;
  readonly look: () => void;
}

const overdoneRule = 'D3';

const traceOf = ({ items, joints }: Evaluation): string =>
  JSON.stringify([
    joints.map(({ sessionId, morningId }) => [sessionId, morningId]),
    items.map(({ decision, largestStep, today, contact, reasons }) => [
      decision,
      largestStep,
      today,
      contact,
      reasons.map(({ rule }) => rule),
    ]),
  ]);

const pauseOf = ({ items, joints }: Evaluation): string | null => {
  const rules = items.flatMap(({ reasons }) =>
    reasons.filter(({ effect }) => effect.decision === 'pause').map(({ rule }) => rule),
  );
  return rules.length === 0 ? null : [joints[0]?.sessionId ?? '', ...rules].join(' ');
};

interface Pauses {
  readonly begin: (key: string | null) => void;
  readonly callOn: (day: number) => void;
  readonly resume: () => void;
  readonly isPaused: (day: number) => boolean;
  readonly isOverruled: () => boolean;
}

/** A pause ends when a clinician has looked at it, from the next day where called the same day. */
const pauseBook = (): Pauses => {
  const overruled = new Set<string>();
  let current: string | null = null;
  let pause: { readonly key: string; readonly resumesOn: number | null } | null = null;
  const resume = (): void => {
    if (pause) overruled.add(pause.key);
    pause = null;
  };
  return {
    begin: (key) => {
      current = key;
      if (key !== null && !overruled.has(key)) pause ??= { key, resumesOn: null };
    },
    callOn: (day) => {
      if (pause) pause = { ...pause, resumesOn: day + 1 };
    },
    resume,
    isPaused: (day) => {
      if (pause?.resumesOn != null && day >= pause.resumesOn) resume();
      return pause !== null;
    },
    isOverruled: () => current !== null && overruled.has(current),
  };
};

export const clinicDesk = ({ add, talkAboutOverdoing }: Tally): ClinicDesk => {
  const pauses = pauseBook();
  const causes = new Set<string>();
  let heard = '';
  let isAsked = false;
  let isOverdone = false;

  const call = (): void => {
    add('contacts');
    add('clinicianActions');
  };
  const callSameDay = (day: number, cause: string): void => {
    if (causes.has(cause)) return;
    causes.add(cause);
    call();
    add('sameDay');
    pauses.callOn(day);
  };

  return {
    hear: (day, evaluation) => {
      pauses.isPaused(day);
      const trace = traceOf(evaluation);
      if (trace === heard) return;
      heard = trace;
      pauses.begin(pauseOf(evaluation));
      if (evaluation.contact === 'same-day')
        callSameDay(day, evaluation.joints[0]?.sessionId ?? `day ${day}`);
      if (evaluation.contact === 'routine') isAsked = true;
      isOverdone ||= evaluation.items.some(({ reasons }) =>
        reasons.some(({ rule }) => rule === overdoneRule),
      );
    },
    ask: () => {
      isAsked = true;
    },
    callSameDay,
    isPaused: pauses.isPaused,
    isOverruled: pauses.isOverruled,
    look: () => {
      pauses.resume();
      if (!isAsked) return;
      call();
      if (isOverdone) talkAboutOverdoing();
      isAsked = false;
      isOverdone = false;
    },
  };
};
