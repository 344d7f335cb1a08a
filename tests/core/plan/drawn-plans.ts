/** Invented causes against an exercise, and records drawn from them; a failure can be drawn again by its seed. */
import type { DangerRecord } from '#core/danger/danger.ts';
import { todays } from '#core/decision/answers.ts';
import type { MadeDecision } from '#core/decision/decisions-in-force.ts';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import type { PlanInputs } from '#core/plan/plan-for.ts';
import type { Limit } from '#core/record/limit.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { addDays } from '#core/time/day.ts';
import { outcomesInput, screeningWith } from '../screening/answers.ts';
import { chair, curl, day, inputs, noon, version } from './plan-inputs.ts';

export const sign: DangerRecord = {
  signs: [
    {
      id: 'sign',
      source: 'telephone',
      flags: ['chest-pain'],
      joint: null,
      urgency: 'emergency',
      reportedAt: noon - 1,
      reportedBy: 'P. Okonma',
    },
  ],
  acknowledgements: [],
  contacts: [],
  pauses: [],
  resumptions: [],
};

export const decided = (more: Partial<MadeDecision>): MadeDecision => ({
  id: 'decision',
  joint: 'right-knee',
  decision: 'hold',
  largestStep: null,
  today: 'as-planned',
  contact: 'none',
  reasons: [],
  evaluatedAt: noon - 1000,
  cause: 'morning',
  sessionId: null,
  morningId: null,
  ...more,
});

export const limit = (more: Partial<Limit>): Limit => ({
  joint: 'right-elbow',
  kind: 'load-limit',
  limitKg: 1.5,
  from: day,
  to: null,
  author: 'Dr Vance',
  ...more,
});

export const screenedWith = (...changed: Parameters<typeof screeningWith>): Pick<PlanInputs, 'screened'> => {
  const screening = screeningWith(...changed);
  return {
    screened: {
      screening,
      clearances: [],
      today: day,
      outcomes: methodOutcomes(outcomesInput({ screening, today: day, measurements: [] })),
    },
  };
};

const injection = (daysAgo: number, isNamed: boolean): RecordedEvent => ({
  id: 'injection',
  day: addDays(day, -daysAgo),
  kind: 'joint-injection',
  joint: isNamed ? 'right-elbow' : null,
  recordedAt: noon,
  remark: null,
  medicine: null,
  courseForm: null,
});

/** A small random source, so that a failure can be drawn again. */
export const drawn = (seed: number) => {
  let state = seed >>> 0;
  return (below: number): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 4_294_967_296) * below);
  };
};

export const causes: readonly ((inputs: PlanInputs, draw: (below: number) => number) => PlanInputs)[] = [
  (one) => ({ ...one, danger: { ...one.danger, signs: sign.signs } }),
  (one) => ({ ...one, lastSessionOn: '2026-01-26' }),
  (one, draw) => ({
    ...one,
    care: { ...one.care, events: [...one.care.events, injection(draw(4), draw(2) === 0)] },
  }),
  (one, draw) => ({
    ...one,
    danger: {
      ...one.danger,
      pauses: [
        ...one.danger.pauses,
        {
          id: `pause-${draw(9)}`,
          cause: 'other',
          signId: null,
          joint: draw(2) ? 'right-knee' : null,
          reason: 'Tired.',
          until: null,
          at: noon - 1,
          by: 'P. Okonma',
        },
      ],
    },
  }),
  (one, draw) => ({ ...one, limits: [...one.limits, limit({ limitKg: draw(5) / 2 })] }),
  (one) => ({
    ...one,
    limits: [...one.limits, limit({ joint: 'left-hip', kind: 'weight-bearing', limitKg: null })],
  }),
  (one) => ({ ...one, newsToday: true }),
  (one) => ({
    ...one,
    ...screenedWith([{ item: 'lymph', answer: 'yes', limbs: [{ limb: 'leg', side: 'right' }] }], day),
  }),
  (one) => ({ ...one, care: { ...one.care, consents: [] } }),
];

/** A record with up to four causes against it. */
export const drawnInputs = (draw: (below: number) => number): PlanInputs => {
  let record = inputs({
    versions: [
      version('curl', { ...curl, loadKg: 1 + draw(3) / 2 }, ['right-elbow']),
      version('chair', chair, ['left-hip', 'left-knee']),
    ],
    decisions: [
      decided({
        joint: draw(2) ? 'left-knee' : 'right-elbow',
        today: todays[draw(todays.length)]!,
        decision: (['pause', 'ease-back', 'hold', 'progress'] as const)[draw(4)]!,
      }),
    ],
  });
  for (let count = draw(5); count > 0; count--) record = causes[draw(causes.length)]!(record, draw);
  return record;
};
