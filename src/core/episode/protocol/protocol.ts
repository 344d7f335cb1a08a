/**
 * A protocol after surgery or injury: dated phases of a surgeon or clinician, of which one is in force. A day that
 * comes opens nothing: the phase after it is in force once a clinician has confirmed it, and until then
 * the one before goes on binding. Only the first phase binds by itself from its day, since it opens nothing; it is
 * asked to be confirmed all the same.
 */
import type { Joint } from '../../exercises/joints.ts';
import type { Refusal } from '../../outcome.ts';
import { type Method, methods } from '../../prescribing/methods.ts';
import type { Limit } from '../../record/limit.ts';
import { type Day, daysBetween } from '../../time/day.ts';
import type { PhaseRow } from './protocol-fields.ts';

/** As it was written; a phase written anew is another row of the same place. */
export type Phase = PhaseRow & { readonly recordedAt: number; readonly recordedOn: Day };

export interface PhaseStep {
  /** Phase in force from then on; 0 = the protocol ended and binds nothing more. */
  readonly place: number;
  readonly on: Day;
  readonly at: number;
  readonly by: string;
  /** What was seen, or why it ended. */
  readonly seen: string;
}

export interface Protocol {
  readonly id: string;
  readonly joint: Joint;
  readonly procedure: string;
  /** Day of the operation or injury. */
  readonly on: Day;
  readonly author: string;
  readonly letter: string | null;
  /** Every row, oldest first. */
  readonly phases: readonly Phase[];
  /** Oldest first. */
  readonly steps: readonly PhaseStep[];
}

export const ended = 0;

/** What is planned: the newest row of each place, in order. */
export const phasesOf = ({ phases }: Pick<Protocol, 'phases'>): readonly Phase[] =>
  [...new Map(phases.map((phase) => [phase.place, phase])).values()].toSorted((a, b) => a.place - b.place);

export const hasEnded = ({ steps }: Pick<Protocol, 'steps'>): boolean => steps.at(-1)?.place === ended;

/** The phase after the one in force; null where there is none, or the protocol has ended. */
export const nextPhase = (protocol: Protocol): Phase | null => {
  if (hasEnded(protocol)) return null;
  const place = protocol.steps.at(-1)?.place ?? 0;
  return phasesOf(protocol).find((phase) => phase.place === place + 1) ?? null;
};

/** Begun without a phase: it bounds nothing, whatever its letter says. */
export const isUnwritten = (protocol: Pick<Protocol, 'phases' | 'steps'>): boolean =>
  protocol.phases.length === 0 && !hasEnded(protocol);

/** The next phase, where its day has come and nobody has confirmed it. */
export const phaseDue = (protocol: Protocol, today: Day): Phase | null => {
  const next = nextPhase(protocol);
  return next && daysBetween(next.from, today) >= 0 ? next : null;
};

/** Methods that a phase does not allow. */
export const methodsWithout = (
  phase: Pick<PhaseRow, 'lowLoad' | 'variation' | 'occlusion'>,
): readonly Method[] => {
  const allowed = { 'low-load': phase.lowLoad, variation: phase.variation, occlusion: phase.occlusion };
  return methods.filter((method) => !allowed[method]);
};

const limitsOfPhase = ({ joint, author }: Protocol, phase: Phase, from: Day): readonly Limit[] => {
  const bound = { joint, limitKg: null, from, to: null, author, ofPhase: true } as const;
  const { weightBearing, bearKg, movement, fromDegrees, toDegrees, limitKg } = phase;
  const withoutMethods = methodsWithout(phase);
  return [
    ...(weightBearing === 'full'
      ? []
      : [{ ...bound, kind: 'weight-bearing', weightBearing, bearKg: bearKg ?? null } as const]),
    ...(movement === null ? [] : [{ ...bound, kind: 'range', movement, fromDegrees, toDegrees } as const]),
    ...(limitKg === null ? [] : [{ ...bound, kind: 'load-limit', limitKg } as const]),
    ...(withoutMethods.length === 0 ? [] : [{ ...bound, kind: 'methods', withoutMethods } as const]),
  ];
};

interface Binding {
  readonly phase: Phase | null;
  readonly on: Day;
  readonly at: number;
}

/** The first phase before any step: from its day, or written anew after it from then on. */
const bindingsBefore = ({ phases, steps }: Pick<Protocol, 'phases' | 'steps'>): readonly Binding[] =>
  phases
    .filter(({ place, recordedAt }) => place === 1 && recordedAt < (steps[0]?.at ?? Number.POSITIVE_INFINITY))
    .reduce<readonly Binding[]>((held, phase) => {
      const { from, recordedOn, recordedAt: at } = phase;
      const begun = held.filter(({ on }) => on <= recordedOn);
      const on = begun.length > 0 || from < recordedOn ? recordedOn : from;
      return [...begun, { phase, on, at }];
    }, []);

/** Each moment at which what binds changed: a step, or the phase in force written anew. */
const bindingsOf = ({ phases, steps }: Pick<Protocol, 'phases' | 'steps'>): readonly Binding[] => [
  ...bindingsBefore({ phases, steps }),
  ...steps.flatMap((step, index): Binding[] => {
    const until = steps[index + 1]?.at ?? Number.POSITIVE_INFINITY;
    const ofPlace = phases.filter(({ place }) => place === step.place);
    const first = ofPlace.findLast(({ recordedAt }) => recordedAt <= step.at) ?? null;
    const anew = ofPlace.filter(({ recordedAt }) => recordedAt > step.at && recordedAt < until);
    return [
      { phase: first, on: step.on, at: step.at },
      ...anew.map((phase) => ({ phase, on: phase.recordedOn, at: phase.recordedAt })),
    ];
  }),
];

/** The phase in force; null where none has begun, or the protocol has ended. */
export const phaseInForce = (protocol: Pick<Protocol, 'phases' | 'steps'>, today: Day): Phase | null =>
  bindingsOf(protocol).findLast(({ on }) => on <= today)?.phase ?? null;

export interface PhaseLimit extends Limit {
  readonly id: string;
  readonly recordedAt: number;
  /** Name of the phase. */
  readonly remark: string;
}

/** What a protocol binds and has bound, as limits: each from the day of its step until the next. */
export const limitsOfProtocol = (protocol: Protocol): readonly PhaseLimit[] =>
  bindingsOf(protocol).flatMap(({ phase, on, at }, index, all) =>
    phase === null
      ? []
      : limitsOfPhase(protocol, phase, on).map((limit) => ({
          ...limit,
          id: `${protocol.id} ${index} ${limit.kind}`,
          recordedAt: at,
          remark: phase.name,
          liftedOn: all[index + 1]?.on ?? null,
        })),
  );

const refused = (field: string, reason: string): readonly Refusal[] => [
  { field: `input.${field}`, code: 'inconsistent', reason },
];

/** Why a phase cannot be confirmed today. Going back to an earlier phase is open on every day. */
export const stepRefusals = (protocol: Protocol, place: number, today: Day): readonly Refusal[] => {
  if (hasEnded(protocol)) return refused('place', 'This protocol has ended; begin another one.');
  const phase = phasesOf(protocol).find((one) => one.place === place);
  if (!phase) return refused('place', 'This protocol has no such phase; write it first.');
  const now = protocol.steps.at(-1)?.place ?? 0;
  if (place === now) return refused('place', 'This phase is in force already.');
  if (place < now) return [];
  if (place > now + 1) return refused('place', `Confirm phase ${now + 1} first; no phase is left out.`);
  return daysBetween(phase.from, today) >= 0
    ? []
    : refused(
        'place',
        `Phase ${place} is planned from ${phase.from}. Where it was allowed earlier, write the phase anew with its new day first.`,
      );
};
