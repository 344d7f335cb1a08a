/**
 * Prescribed exercises that rest for a reason outside the engine: an agreed break, the end of care, a
 * return not yet screened, or a consent that is missing.
 */
import type { Today } from '../decision/answers.ts';
import type { Dose } from '../prescribing/dose.ts';
import { dayMilliseconds } from '../time/day.ts';
import type { CareAround } from './care-eligibility.ts';
import { type ConsentRow, lastWord, missingConsents } from './consent.ts';
import { eventEffects, isAskedAgain } from './event-effects.ts';

export interface Suspension {
  readonly today: Extract<Today, 'rest-this-joint'>;
  readonly code: 'care-closed' | 'on-break' | 'returned' | 'after-event' | 'no-consent';
}

const suspension = (code: Suspension['code']): Suspension => ({ today: 'rest-this-joint', code });

const breakSuspension = (care: CareAround, dose: Pick<Dose, 'method'>): Suspension | null => {
  const { state, returned } = care.episodeStatus;
  if (state === 'closed') {
    return suspension('care-closed');
  }
  if (state === 'on-break') {
    return suspension('on-break');
  }
  if (!returned || (care.screening !== null && care.screening.day >= returned.on)) return null;
  // After a holiday ordinary work goes on under the engine's own rule for gaps; a cuff does not.
  return returned.from === 'holiday' && dose.method !== 'occlusion' ? null : suspension('returned');
};

/** What closes a method after something happened stops the work under way as well. */
const eventSuspension = (care: CareAround, { method }: Pick<Dose, 'method'>): Suspension | null =>
  care.events.some(
    (event) =>
      eventEffects[event.kind].contraindicatesUntilAsked.includes(method) &&
      !isAskedAgain(event, care.screening),
  )
    ? suspension('after-event')
    : null;

const consentSuspension = (care: CareAround, dose: Dose): Suspension | null =>
  missingConsents(care.consents, dose).length > 0 ? suspension('no-consent') : null;

export const suspensionOn = (care: CareAround, dose: Dose): Suspension | null =>
  breakSuspension(care, dose) ?? eventSuspension(care, dose) ?? consentSuspension(care, dose);

/** The patient withdrew a consent to the cuff within the last week, so that the exercise itself is gone. */
export const hasWithdrawnLately = (consents: readonly ConsentRow[], now: number): boolean =>
  (['occlusion-supervised', 'occlusion-unsupervised'] as const).some((kind) => {
    const last = lastWord(consents, kind);
    return last?.act === 'withdrawn' && now - last.at < 7 * dayMilliseconds;
  });

/** Nothing is asked for on the day: no reminder, no session, no morning. */
export const asksNothing = (care: Pick<CareAround, 'episodeStatus'>): boolean =>
  care.episodeStatus.state === 'on-break' || care.episodeStatus.state === 'closed';
