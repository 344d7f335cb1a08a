/** What may be moved in a look back beside settings: usual values of a joint, as though they had stood all along. */
import type { Field } from '../../calculations/describe.ts';
import { acceptablePainLimits } from '../baseline/propose-pain-limit.ts';
import { doseSettings } from '../dose-settings.ts';

export const usualValueFields = [
  {
    name: 'usualPain',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 10,
    nullable: true,
    optional: true,
    about: 'Usual pain',
  },
  {
    name: 'bandOver',
    kind: 'integer',
    unit: '{score}',
    min: 0,
    max: 2,
    optional: true,
    about: 'Top of the usual band over usual pain',
  },
  {
    name: 'acceptablePainLimit',
    kind: 'integer',
    unit: '{score}',
    min: acceptablePainLimits.low,
    max: acceptablePainLimits.high,
    optional: true,
    about: 'Acceptable pain limit',
  },
] as const satisfies readonly Field[];

/** Of version 3 and of the baseline, what shapes a dose or what a clinician is shown, and no decision. */
const beyondDecisions: readonly string[] = [
  ...doseSettings.map(({ id }) => id),
  'tolerated-sessions',
  'flare-easier-days',
  'tolerated-cut-rise',
  'baseline-mornings',
  'ceiling-over-usual',
];

/** Settings that a look back cannot show: they change the dose after a decision, or a value that is set anew. */
export const isBeyondDecisions = (id: string): boolean => beyondDecisions.includes(id);
