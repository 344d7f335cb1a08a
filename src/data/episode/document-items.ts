/** The prescribed exercises of an episode of care, or of care without one, each with the dose it began and ended with. */
import { isRest } from '#core/decision/left-of-today.ts';
import type { DocumentItem, DocumentVersion } from '#core/episode/documents/document-facts.ts';
import type { Plan, PlanItem } from '#core/plan/plan.ts';
import type { Day } from '#core/time/day.ts';
import { dayAt } from '../civil-time.ts';
import type { Prescription } from '../prescribing/prescriptions.ts';

export interface Period {
  readonly from: Day;
  readonly to: Day;
  /** Instant at which the end was written down. */
  readonly endedAt: number;
  readonly zone: string;
}

const versionOf = (row: Prescription, zone: string): DocumentVersion => ({
  dose: row.dose,
  badDay: row.badDay,
  joints: row.joints,
  cautions: row.cautions,
  signedOn: dayAt(row.signedAt ?? row.recordedAt, zone),
  signedName: row.signedName ?? '',
  endedOn: row.endedAt === null ? null : dayAt(row.endedAt, zone),
});

/** What the plan left of an exercise when care ended; that care ended is said by the document itself. */
const suspendedBy = (item: PlanItem | undefined, pauses: Plan['pauses']): DocumentItem['suspended'] => {
  const reasons = (item?.reasons ?? []).filter(({ code }) => code !== 'care-closed');
  const everything = pauses.filter(({ pause }) => pause.joint === null).map(({ pause }) => pause.id);
  const isEverything = reasons.some(
    (reason) =>
      reason.code === 'warning-sign' || (reason.code === 'paused' && everything.includes(reason.pauseId)),
  );
  if (isEverything) return 'everything-rests';
  if (reasons.some(({ today }) => isRest(today))) return 'joint-rests';
  return reasons.length > 0 ? 'easier-only' : null;
};

/** The newest signed version of each exercise, ended or not: the end of care ends what is prescribed. */
export const lastSigned = (versions: readonly Prescription[], endedAt: number): readonly Prescription[] => [
  ...new Map(
    versions
      .filter(({ signedAt }) => signedAt !== null && signedAt <= endedAt)
      .toSorted((a, b) => a.version - b.version)
      .map((row) => [row.itemId, row]),
  ).values(),
];

/**
 * The dose followed when the episode began, or else the first one signed in it. A line that had ended
 * with an earlier episode and was taken up again begins with what was signed anew.
 */
const firstOf = (item: readonly Prescription[], from: Day, zone: string): Prescription => {
  const signedOn = (row: Prescription) => dayAt(row.signedAt!, zone);
  const wentOn = (row: Prescription) => row.endedAt === null || dayAt(row.endedAt, zone) > from;
  return (
    item.findLast((row) => signedOn(row) <= from && wentOn(row)) ??
    item.find((row) => signedOn(row) >= from) ??
    item[0]!
  );
};

/** Lines signed before the end was written down and not ended before the episode began. */
export const itemsOf = (
  versions: readonly Prescription[],
  plan: Plan,
  { from, endedAt, zone }: Period,
): readonly DocumentItem[] => {
  const signed = versions.filter(({ signedAt }) => signedAt !== null && signedAt <= endedAt);
  return [...new Set(signed.map((row) => row.itemId))].flatMap((itemId) => {
    const item = signed.filter((row) => row.itemId === itemId).sort((a, b) => a.version - b.version);
    const last = item.at(-1)!;
    if (last.endedAt !== null && dayAt(last.endedAt, zone) < from) return [];
    const planned = plan.items.find((one) => one.prescriptionId === last.id);
    // The easier session within every limit, as the plan leaves it.
    const badDay = planned?.easierSession ?? last.badDay;
    const [first, lastVersion] = [firstOf(item, from, zone), { ...versionOf(last, zone), badDay }];
    return [
      {
        itemId,
        first: first === last ? lastVersion : versionOf(first, zone),
        last: lastVersion,
        // The end of care ends what is prescribed in the same instant.
        atEnd: last.endedAt === null || last.endedAt >= endedAt,
        suspended: suspendedBy(planned, plan.pauses),
      },
    ];
  });
};
