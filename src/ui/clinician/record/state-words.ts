/** Where a person stands, as the bar of the record says it. */
import type { EpisodeState } from '#core/episode/episode.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/record.ts';
import type { Shape } from '#ui/design-system/mark.tsx';
import type { StatusTone } from '#ui/design-system/status-tag.tsx';
import type { PatientBarAnswer } from '../answers.ts';
import { capital } from '../capital.ts';
import { type ClinicClock, dayAt } from '../when.ts';

type State = PatientBarAnswer['state'];
type Paused = Extract<State, { readonly reason: string }>;

const closedWords: Partial<Record<EpisodeState, 'state.discharged' | 'state.transferred' | 'state.died'>> = {
  discharged: 'state.discharged',
  transferred: 'state.transferred',
  died: 'state.died',
};

const whyInWords = ({ cause, reason, until }: Paused, day: Day): string => {
  const why = cause === 'warning-sign' ? say('state.after-sign') : reason;
  return until ? say('state.until', { reason: why, date: dayInWords(until, day) }) : why;
};

const breakInWords = ({ on, expectedBack }: Extract<State, { state: 'on-break' }>, day: Day): string => {
  const date = dayInWords(on, day);
  return expectedBack === null
    ? say('state.on-break', { date })
    : say('state.on-break-until', { date, back: dayInWords(expectedBack, day) });
};

/** Shape, tone and words of where a person stands. */
export const stateInWords = (
  state: State,
  clock: ClinicClock,
  day: Day,
): readonly [Shape, StatusTone, string] => {
  const on = (instant: number) => dayInWords(dayAt(instant, clock.zone), day);
  switch (state.state) {
    case 'warning-sign':
      return ['stop', 'danger', say('state.warning-sign', { date: on(state.since) })];
    case 'paused':
      return [
        'stop',
        'danger',
        say('state.paused', { date: on(state.since), reason: whyInWords(state, day) }),
      ];
    case 'joint-paused': {
      const joint = jointInWords(state.joint);
      const reason = whyInWords(state, day);
      return [
        'stop',
        'care',
        say('state.joint-paused', {
          'joint-name': capital(joint),
          date: on(state.since),
          reason,
        }),
      ];
    }
    case 'closed':
      return [
        'closed',
        'plain',
        say(closedWords[state.to] ?? 'state.discharged', { date: dayInWords(state.on, day) }),
      ];
    case 'on-break':
      return ['unknown', 'plain', breakInWords(state, day)];
    case 'in-care':
      return ['note', 'accent', say('state.in-care')];
    case 'not-recorded':
      return ['note', 'plain', say('state.not-recorded')];
  }
};
