/** What the clinic tells on today's page: changes of the last week and the newest messages. */
import type { Suspension } from '#core/episode/suspensions.ts';
import type { Access } from '#data/access.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { messagesOf } from '#data/messages/messages.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import type { TodayView } from './today-view.ts';

/**
 * Sentences about doses that changed within the last week. What brought the dose in force stays told
 * when a later decision repeats it: "do the same again" alone would hide that it was cut.
 */
export const recentChanges = async (
  access: Access,
  patientId: string,
  versions: readonly Prescription[],
): Promise<readonly string[]> => {
  const told = new Map<string, string>();
  const recent = (await proposalsOf(access, patientId)).filter(
    (proposal) => proposal.effect !== 'awaits-signature' && access.now - proposal.madeAt < 7 * 86_400_000,
  );
  const signedInForce = recent.filter(
    ({ effect, itemId, decisionId }) =>
      effect === 'acts-at-once' &&
      versions.some((row) => row.itemId === itemId && row.decisionId === decisionId),
  );
  for (const { itemId, patientText } of [...signedInForce, ...recent])
    if (!told.has(itemId)) told.set(itemId, patientText);
  return [...new Set(told.values())];
};

export const newestMessages = async (access: Access, patientId: string): Promise<TodayView['messages']> =>
  (await messagesOf(access, patientId, 5)).map(({ text, sentName, sentAt }) => ({ text, sentName, sentAt }));

/** Why exercises are held from outside the engine, each said once. */
export const suspensionTexts = (suspensions: ReadonlyMap<string, Suspension>): readonly string[] => [
  ...new Set([...suspensions.values()].map((suspension) => suspension.patientText)),
];
