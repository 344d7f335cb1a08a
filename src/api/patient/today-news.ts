/** What the clinic tells on today's page: changes of the last week and the newest messages. */
import type { Plan, PlanReason } from '#core/plan/plan.ts';
import type { DoseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import type { Access } from '#data/access.ts';
import { proposalsOf } from '#data/decision/decisions.ts';
import { messagesOf } from '#data/messages/messages.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { holdText } from '#messages/decisions.ts';
import { doseChangeText } from '#messages/dose-changes.ts';
import type { HoldCode } from '#messages/hold-code.ts';
import { messageText } from '#messages/ready.ts';
import type { Text } from '#messages/text.ts';
import type { TodayView } from './today-view.ts';

/**
 * What changed in doses within the last week. What brought the dose in force stays told
 * when a later decision repeats it: "do the same again" alone would hide that it was cut.
 */
export const recentChanges = async (
  access: Access,
  patientId: string,
  versions: readonly Prescription[],
  { items }: Plan,
): Promise<readonly Text[]> => {
  // What changed in a dose that a limit keeps from being done is not said: another is shown.
  const closed = new Set(items.filter(({ dose }) => dose === null).map(({ itemId }) => itemId));
  const newest = new Map<string, DoseChangeForPatient>();
  const recent = (await proposalsOf(access, patientId)).filter(
    // That exercises are stopped is said by what stops them now, and no longer than it does.
    (proposal) =>
      proposal.effect !== 'awaits-signature' &&
      proposal.kind !== 'stop' &&
      access.now - proposal.madeAt < 7 * 86_400_000,
  );
  const signedInForce = recent.filter(
    ({ effect, itemId, decisionId }) =>
      effect === 'acts-at-once' &&
      versions.some((row) => row.itemId === itemId && row.decisionId === decisionId),
  );
  for (const { itemId, changeForPatient } of [...signedInForce, ...recent])
    if (!newest.has(itemId) && !closed.has(itemId)) newest.set(itemId, changeForPatient);
  // The same change on both sides of the body is said once.
  const changes = new Map([...newest.values()].map((change) => [JSON.stringify(change), change]));
  return [...changes.values()].map(doseChangeText);
};

export const newestMessages = async (access: Access, patientId: string): Promise<TodayView['messages']> =>
  (await messagesOf(access, patientId, 5)).map(({ text, sentName, sentAt }) => ({
    text: messageText(text),
    sentName,
    sentAt,
  }));

const holdOf = (reason: PlanReason): HoldCode | null => {
  switch (reason.code) {
    case 'warning-sign':
    case 'paused':
    case 'decision':
      return null;
    case 'contraindicated':
    case 'needs-clearance':
      return 'finding';
    case 'limit-load':
      return reason.today === 'bad-day' ? 'limit-load' : 'limit-closes';
    default:
      return reason.code;
  }
};

/** Why exercises are held from outside the engine, each said once. */
export const holdTexts = ({ items }: Plan, hasWithdrawn: boolean): readonly Text[] => {
  const codes = items.flatMap(({ reasons }) => reasons.map(holdOf)).filter((code) => code !== null);
  return [...new Set<HoldCode>([...codes, ...(hasWithdrawn ? (['taken-back'] as const) : [])])].map(holdText);
};
