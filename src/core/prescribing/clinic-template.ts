/**
 * A template of the clinic: doses somebody saved under a name of her own. It only fills in a request; what a person
 * has of their own is never part of it, and every dose is proposed anew for whom it is used.
 */
import { exerciseTitle } from '../exercises/catalogue.ts';
import type { Side } from '../exercises/joints.ts';
import type { Dose } from './dose.ts';
import type { Method } from './methods.ts';
import type { RequestValues } from './request-of-dose.ts';

export interface TemplateDose {
  readonly method: Method;
  readonly exerciseId: string;
  /** As it was saved. */
  readonly side: Dose['side'];
  /** The other fields of a request, by name. */
  readonly values: RequestValues;
}

/** A load, a maximum and what somebody was shown belong to the person they were written for. */
const ofThePerson: ReadonlySet<string> = new Set([
  'loadKg',
  'addedKg',
  'mark',
  'knownOneRepMaxKg',
  'pulseShown',
]);
const ownFields: ReadonlySet<string> = new Set(['exerciseId', 'side', 'limb']);

export const templateDoseOf = (method: Method, request: RequestValues): TemplateDose => ({
  method,
  exerciseId: String(request.exerciseId),
  side: request.side as Dose['side'],
  values: Object.fromEntries(
    Object.entries(request).filter(([name]) => !ofThePerson.has(name) && !ownFields.has(name)),
  ),
});

/** On which side its one-sided doses are worked; `saved` = each on its own. */
export const templateSides = ['saved', 'left', 'right'] as const;
export type TemplateSide = (typeof templateSides)[number];

export const sideOn = (dose: TemplateDose, on: TemplateSide): Side | 'both' =>
  on === 'saved' || dose.side === 'both' ? dose.side : on;

/** Which of its doses would be asked for twice once all are worked on one side: the later ones, by their place. */
export const askedTwice = (doses: readonly TemplateDose[], on: TemplateSide): ReadonlySet<number> => {
  const seen = new Set<string>();
  const twice = new Set<number>();
  for (const [place, dose] of doses.entries()) {
    const key = [dose.exerciseId, dose.method, sideOn(dose, on)].join(' ');
    if (seen.has(key)) twice.add(place);
    seen.add(key);
  }
  return twice;
};

export const templateDoseTitle = ({ exerciseId }: TemplateDose): string => exerciseTitle(exerciseId);
