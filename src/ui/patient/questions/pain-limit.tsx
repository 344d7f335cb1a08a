/** How much pain in a joint is all right during the exercises: the patient's own limit, or the clinic's. */
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import { t } from '#ui/language/words.ts';

const limitsOf = (lookups: readonly PainLookup[]) =>
  lookups.flatMap(({ joint, acceptablePainLimit: limit }) => (limit === undefined ? [] : [{ joint, limit }]));

export const PainLimits = ({ lookups }: { readonly lookups: readonly PainLookup[] }) =>
  limitsOf(lookups).map(({ joint, limit }) => <p key={joint}>{t('pain.limit', { joint, limit })}</p>);
