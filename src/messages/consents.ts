/** What a patient is asked to consent to. */
import type { ConsentKind } from '#core/episode/consent.ts';
import { reportedPercent, sideEffectReports } from '#core/prescribing/occlusion/side-effects.ts';
import { textOf } from './every-language.ts';
import { asTyped, type Text } from './text.ts';

const [survey] = sideEffectReports;

/** How many people had it once among them, to the nearest whole number. */
const oneIn = (effect: (typeof survey.events)[number]['effect']): number => {
  const event = survey.events.find((one) => one.effect === effect)!;
  return Math.round(100 / reportedPercent(survey, event)!);
};

/** `own` is the wording of the clinic, which stays in the words it was written in; null where it has none. */
export const consentText = (kind: ConsentKind, own: string | null): Text => {
  if (own !== null) return asTyped(own);
  if (kind !== 'occlusion-supervised') return textOf('consents', kind);
  return textOf('consents', kind, {
    people: survey.denominator,
    numbness: oneIn('numbness'),
    faint: oneIn('fainting or dizziness'),
    bruise: oneIn('bruising'),
  });
};
