/** How much pain in a joint is all right during the exercises: the patient's own limit, or the clinic's. */
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import { jointsByPainLimit } from '#core/record/followed-joints.ts';
import { listText, t } from '#ui/language/words.ts';

const limitsOf = (lookups: readonly PainLookup[]) =>
  lookups.flatMap(({ joint, acceptablePainLimit: limit }) => (limit === undefined ? [] : [{ joint, limit }]));

export const PainLimits = ({ lookups }: { readonly lookups: readonly PainLookup[] }) =>
  jointsByPainLimit(limitsOf(lookups)).map(({ limit, joints }) => (
    <p key={limit}>
      {t('pain.limit', { where: listText(joints.map((joint) => t('pain.in', { joint }))), limit })}
    </p>
  ));
