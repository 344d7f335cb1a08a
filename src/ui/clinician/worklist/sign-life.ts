/** The life of a warning sign on one line: reported, acknowledged, contact, resumed or ended; the open step in bold. */

import { say as danger } from '#messages/en/staff/danger.ts';
import { say } from '#messages/en/staff/worklist.ts';
import type { WorklistItem } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';

interface Step {
  readonly text: string;
  readonly state: 'done' | 'open' | 'ahead';
}

const sources: Readonly<Record<string, string>> = {
  patient: danger('sent-by-the-patient'),
  telephone: danger('reported-to-the-clinic'),
  clinician: danger('raised-by-a-clinician'),
  record: danger('found-in-the-record'),
};

const stepsOfSign = ({ facts, since, acknowledgedBy }: WorklistItem, clock: ClinicClock): readonly Step[] => {
  const tries = Number(facts.failedAttempts);
  return [
    {
      text: say('life.reported', {
        at: momentInWords(since, clock),
        source: sources[String(facts.source)] ?? '',
      }),
      state: 'done',
    },
    acknowledgedBy
      ? { text: say('life.acknowledged', { name: acknowledgedBy }), state: 'done' }
      : { text: say('life.not-acknowledged'), state: 'open' },
    {
      text: tries > 0 ? say('life.tried', { count: tries }) : say('life.no-contact'),
      state: 'open',
    },
    { text: say('life.resumed-or-ended'), state: 'ahead' },
  ];
};

const stepsOfPause = ({ since, facts }: WorklistItem, clock: ClinicClock): readonly Step[] => [
  { text: say('life.paused', { at: momentInWords(since, clock), name: String(facts.by) }), state: 'done' },
  { text: say('life.reached'), state: 'done' },
  { text: say('life.waits'), state: 'open' },
];

export interface SignLife {
  readonly steps: readonly Step[];
  /** By when it is tried again. */
  readonly due: { readonly text: string; readonly isOver: boolean } | null;
}

/** null = no warning sign is open and no pause after one. */
export const signLife = (items: readonly WorklistItem[], clock: ClinicClock): SignLife | null => {
  const sign = items.find(({ kind }) => kind === 'red-flag');
  const paused = items.find(({ kind, facts }) => kind === 'resume-due' && facts.cause === 'warning-sign');
  const steps = sign ? stepsOfSign(sign, clock) : paused ? stepsOfPause(paused, clock) : [];
  if (steps.length === 0) return null;
  const due = sign ? Number(sign.facts.contactDueAt) : Number.NaN;
  const isOver = due < clock.now;
  const wasTried = Number(sign?.facts.failedAttempts) > 0;
  const word = wasTried
    ? isOver
      ? 'life.again-overdue'
      : 'life.again'
    : isOver
      ? 'life.overdue'
      : 'life.due';
  return {
    steps,
    due: Number.isFinite(due) ? { text: say(word, { at: momentInWords(due, clock) }), isOver } : null,
  };
};
