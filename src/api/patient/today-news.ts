/** What the clinic tells on today's page: changes of the last week and the newest messages. */
import { hasWithdrawnLately } from '#core/episode/suspensions.ts';
import type { Plan, PlanReason } from '#core/plan/plan.ts';
import type { PatientRecord } from '#core/record/record.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { decisionsOf, type Proposal, proposalsOf } from '#data/decision/decisions.ts';
import { messagesOf } from '#data/messages/messages.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import { holdText } from '#messages/decisions.ts';
import { doseChangeText, writtenAnewText } from '#messages/dose-changes.ts';
import type { HoldCode } from '#messages/hold-code.ts';
import { messageText } from '#messages/ready.ts';
import { joined, type Text } from '#messages/text.ts';
import { reasonsTold } from './reasons-told.ts';
import type { TodayView } from './today-view.ts';

/** Signed by hand since, so that what was decided before speaks of another dose. */
const isOvertaken = ({ itemId, madeAt, decisionId }: Proposal, versions: readonly Prescription[]): boolean =>
  versions.some(
    (row) =>
      row.itemId === itemId &&
      row.signedAt !== null &&
      row.signedAt > madeAt &&
      row.decisionId !== decisionId,
  );

/** A week: what is older is no news. */
const toldForDays = 7;

interface Given {
  readonly patientId: string;
  readonly plan: Plan;
  /** Holds the sessions that decisions judged. */
  readonly record: PatientRecord | null;
  readonly versions: readonly Prescription[];
  /** All there ever were. */
  readonly written: readonly Prescription[];
}

/**
 * What changed in doses within the last week. What brought the dose in force stays told
 * when a later decision repeats it: "do the same again" alone would hide that it was cut.
 */
const newestProposals = async (
  access: Access,
  { patientId, versions, plan }: Given,
): Promise<readonly Proposal[]> => {
  // What changed in a dose that a limit keeps from being done is not said: another is shown.
  const closed = new Set(plan.items.filter(({ dose }) => dose === null).map(({ itemId }) => itemId));
  const newest = new Map<string, Proposal>();
  const recent = (await proposalsOf(access, patientId)).filter(
    // That exercises are stopped is said by what stops them now, and no longer than it does.
    (proposal) =>
      proposal.effect !== 'awaits-signature' &&
      proposal.kind !== 'stop' &&
      !isOvertaken(proposal, versions) &&
      access.now - proposal.madeAt < toldForDays * 86_400_000,
  );
  const signedInForce = recent.filter(
    ({ effect, itemId, decisionId }) =>
      effect === 'acts-at-once' &&
      versions.some((row) => row.itemId === itemId && row.decisionId === decisionId),
  );
  for (const proposal of [...signedInForce, ...recent])
    if (!newest.has(proposal.itemId) && !closed.has(proposal.itemId)) newest.set(proposal.itemId, proposal);
  return [...newest.values()];
};

const byEnglish = (texts: readonly Text[]): readonly Text[] => [
  ...new Map(texts.map((text) => [text.en, text])).values(),
];

/** What is told for the same reasons. */
interface Group {
  readonly why: readonly Text[];
  readonly told: readonly Text[];
  /** False where all of it is to do the same again. */
  readonly isChange: boolean;
}

/** The same change on both sides of the body is said once, and the reasons after all of them. */
const inOneText = ({ told, why }: Group): Text => joined([...byEnglish(told), ...why], ' ');

/** Doses that a clinician set anew by hand within the week; the first one of an exercise is no change. */
const writtenAnew = (access: Access, { plan, versions, written }: Given): readonly Text[] => {
  const done = new Set(plan.items.filter(({ dose }) => dose !== null).map(({ itemId }) => itemId));
  return versions
    .filter(
      ({ id, itemId, decisionId, signedAt }) =>
        decisionId === null &&
        signedAt !== null &&
        access.now - signedAt < toldForDays * 86_400_000 &&
        done.has(itemId) &&
        written.some((row) => row.itemId === itemId && row.id !== id && row.signedAt !== null),
    )
    .map(({ dose, signedName }) => writtenAnewText(dose.exerciseId, signedName ?? ''));
};

/** What a warning sign or a pause keeps from being done is left out for that, whatever an older decision said. */
const stoppedBy = ({ items }: Plan): ReadonlyMap<string, HoldCode> =>
  new Map(
    items.flatMap(({ itemId, reasons }) => {
      const codes = reasons.map(({ code }) => code);
      const code = (['warning-sign', 'paused'] as const).find((one) => codes.includes(one));
      return code ? [[itemId, code] as const] : [];
    }),
  );

/** Changes with the same reasons stand together. */
const recentChanges = async (
  access: Access,
  given: Given,
): Promise<Pick<Required<TodayView>, 'changes' | 'changesWithoutWhy' | 'unchanged'>> => {
  const { patientId, written, record } = given;
  const proposals = await newestProposals(access, given);
  const made =
    proposals.length === 0 ? [] : await decisionsOf(access, patientId, addDays(access.day, -toldForDays - 1));
  const decisions = new Map(made.map((row) => [row.id, row]));
  const todayOf = new Map(given.plan.items.map(({ itemId, today }) => [itemId, today]));
  const stops = stoppedBy(given.plan);
  const withWhy = new Map<string, Group>();
  const without: Text[] = [];
  for (const { decisionId, itemId, changeForPatient } of proposals) {
    const today = todayOf.get(itemId) ?? 'as-planned';
    const row = decisions.get(decisionId);
    const stopped = stops.get(itemId);
    const why = stopped ? [holdText(stopped)] : row ? reasonsTold(row, record?.sessions ?? [], written) : [];
    const told = doseChangeText(changeForPatient, today);
    if (why.length > 0) {
      const key = joined(why, ' ').en;
      const group = withWhy.get(key) ?? { why, told: [], isChange: false };
      const isChange = group.isChange || today !== 'as-planned' || changeForPatient.kind !== 'same';
      withWhy.set(key, { why, told: [...group.told, told], isChange });
      // To do the same again is no change, and without a reason it is no news.
    } else if (changeForPatient.kind !== 'same') without.push(told);
  }
  without.push(...writtenAnew(access, given));
  const groups = [...withWhy.values()];
  return {
    changes: groups.filter(({ isChange }) => isChange).map(inOneText),
    changesWithoutWhy: byEnglish(without),
    unchanged: groups.filter(({ isChange }) => !isChange).map(inOneText),
  };
};

/** A message from before the plan of today may speak of another one, and says so. */
const newestMessages = async (
  access: Access,
  patientId: string,
  versions: readonly Pick<Prescription, 'recordedAt' | 'signedAt'>[],
): Promise<TodayView['messages']> => {
  const plannedAt = Math.max(0, ...versions.map(({ recordedAt, signedAt }) => signedAt ?? recordedAt));
  return (await messagesOf(access, patientId, 5)).map(({ text, sentName, sentAt }) => ({
    text: messageText(text),
    sentName,
    sentAt,
    ...(sentAt < plannedAt ? { isOfEarlierPlan: true } : {}),
  }));
};

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
const holdTexts = ({ items }: Plan, hasWithdrawn: boolean): readonly Text[] => {
  const codes = items.flatMap(({ reasons }) => reasons.map(holdOf)).filter((code) => code !== null);
  return [...new Set<HoldCode>([...codes, ...(hasWithdrawn ? (['taken-back'] as const) : [])])].map(holdText);
};

export const newsOf = async (
  access: Access,
  given: Given,
  consents: Parameters<typeof hasWithdrawnLately>[0],
): Promise<Pick<TodayView, 'changes' | 'changesWithoutWhy' | 'unchanged' | 'messages'>> => {
  const { changes, changesWithoutWhy, unchanged } = await recentChanges(access, given);
  return {
    changes: [...holdTexts(given.plan, hasWithdrawnLately(consents, access.now)), ...changes],
    changesWithoutWhy,
    unchanged,
    messages: await newestMessages(access, given.patientId, given.versions),
  };
};
