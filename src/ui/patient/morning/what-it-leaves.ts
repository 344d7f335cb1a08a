/**
 * What this morning's answers leave of today until the clinic's page counts them. The phone carries no rules: a
 * pain is read from the table for "pain now" that came with the day; for swelling, which has no table, the
 * bounds are a clinic choice of ours, no source fixes them. Only ever takes away. Pure.
 */
import type { Today } from '#core/decision/answers.ts';
import { type LeftOfJoint, mostCautiousToday } from '#core/decision/left-of-today.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { MorningEntry } from '#core/record/entries.ts';
import type { Swelling } from '#core/record/morning-questions.ts';

type Answers = Pick<MorningEntry['joints'][number], 'joint' | 'pain' | 'swelling' | 'flare'>;

const bySwelling: Readonly<Record<Swelling, Today>> = {
  none: 'as-planned',
  slight: 'bad-day',
  clear: 'rest-this-joint',
  severe: 'rest-this-joint',
};

const leftOf = ({ joint, pain, swelling, flare }: Answers, lookups: readonly PainLookup[]): Today => {
  if (flare === true) return 'none';
  const lookup = lookups.find((one) => one.joint === joint);
  return mostCautiousToday([
    swelling === null ? 'as-planned' : bySwelling[swelling],
    pain === null || !lookup ? 'as-planned' : (lookup.byPain[pain] ?? lookup.whenUnknown),
  ]);
};

/** Only the joints for which it is less than planned: what was answered itself is kept sealed. */
export const whatItLeaves = (
  joints: readonly Answers[],
  lookups: readonly PainLookup[],
): readonly LeftOfJoint[] =>
  joints
    .map((answers) => ({ joint: answers.joint, today: leftOf(answers, lookups) }))
    .filter(({ today }) => today !== 'as-planned');
