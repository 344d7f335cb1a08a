/**
 * What care around the dose closes, added to what screening leaves. The reasons have the form of a
 * screening reason, so that every page and every refusal shows them in the same place. None can be
 * cleared: each goes when what it asks for has been done.
 */

import type { Method } from '../prescribing/methods.ts';
import { screeningItem } from '../screening/items.ts';
import { mostCautious } from '../screening/outcomes.ts';
import type { MethodOutcome, MethodReason } from '../screening/screening.ts';
import { type ConsentRow, missingConsents } from './consent.ts';
import type { EpisodeStatus } from './episode-status.ts';
import {
  type AskedScreening,
  eventEffects,
  isAskedAgain,
  type RecordedEvent,
  stillToAskAfter,
} from './event-effects.ts';

export interface CareAround {
  readonly episodeStatus: EpisodeStatus;
  readonly consents: readonly ConsentRow[];
  readonly events: readonly RecordedEvent[];
  readonly screening: AskedScreening | null;
}

const closed = (code: string, from: string, text: string): MethodReason => ({
  code,
  from,
  eligibility: 'closed',
  text,
  clearedBy: null,
  support: 'clinic',
});

const stateWords = {
  discharged: 'was discharged',
  transferred: 'was transferred to another clinic',
  died: 'has died',
} as const;

const returnWords = {
  holiday: 'from a holiday',
  illness: 'from an illness',
  hospital: 'from hospital',
  'end-of-care': 'after care had ended',
} as const;

const episodeReasons = ({ episodeStatus, screening }: CareAround): readonly MethodReason[] => {
  const { state, change, returned } = episodeStatus;
  if (state === 'closed') {
    const words = stateWords[change?.to as keyof typeof stateWords] ?? 'is no longer in care';
    return [
      closed(
        'care-closed',
        'care',
        `The patient ${words} on ${change?.on}; open a new episode of care first.`,
      ),
    ];
  }
  if (state === 'on-break') {
    return [
      closed(
        'on-break',
        'care',
        `On a break (${change?.breakKind}) since ${change?.on}; record the return first.`,
      ),
    ];
  }
  if (returned && (screening === null || screening.day < returned.on)) {
    return [
      closed(
        'returned-from-break',
        'care',
        `Came back on ${returned.on} (${returnWords[returned.from]}); repeat the screening first.`,
      ),
    ];
  }
  return [];
};

const toAskInWords = (event: RecordedEvent, screening: AskedScreening | null): string => {
  const items = stillToAskAfter(event, screening);
  if (items === null) return 'repeat the screening first';
  const labels = items.map((id) => screeningItem(id)?.clinicianLabel ?? id);
  return `ask again first: ${labels.join('; ')}`;
};

const eventReasons = (care: CareAround, method: Method): readonly MethodReason[] =>
  care.events
    .filter((event) => eventEffects[event.kind].contraindicatesUntilAsked.includes(method))
    .filter((event) => !isAskedAgain(event, care.screening))
    .map((event) =>
      closed(
        `after-${event.kind}`,
        'event',
        `${eventEffects[event.kind].text} on ${event.day}; ${toAskInWords(event, care.screening)}.`,
      ),
    );

const consentReasons = (care: CareAround, method: Method): readonly MethodReason[] =>
  missingConsents(care.consents, { method, supervised: true }).map(({ kind, text }) =>
    closed(`no-consent-${kind}`, 'consent', text),
  );

/** Reasons for a method, the same on every limb. */
export const careReasons = (care: CareAround, method: Method): readonly MethodReason[] => [
  ...episodeReasons(care),
  ...eventReasons(care, method),
  ...consentReasons(care, method),
];

/**
 * A break, a return or an event asks the screening again; until then no step approved ahead acts by itself,
 * and none does without consent to treatment.
 */
export const stopsStepsAhead = (outcomes: readonly MethodOutcome[], method: Method): boolean =>
  outcomes.some(
    (outcome) =>
      outcome.method === method &&
      outcome.reasons.some(
        ({ code, from, eligibility }) =>
          eligibility === 'closed' &&
          (from === 'care' || from === 'event' || code === 'no-consent-treatment'),
      ),
  );

/** Screening outcomes with the reasons of care beside them; no outcome opens by this. */
export const withCare = (outcomes: readonly MethodOutcome[], care: CareAround): readonly MethodOutcome[] =>
  outcomes.map((outcome) => {
    const more = careReasons(care, outcome.method);
    if (more.length === 0) return outcome;
    return {
      ...outcome,
      eligibility: mostCautious([outcome.eligibility, ...more.map((reason) => reason.eligibility)]),
      reasons: [...outcome.reasons, ...more],
    };
  });
