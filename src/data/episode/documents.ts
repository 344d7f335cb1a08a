/** What the papers at the end of an episode of care are put together from, read from the record. */

import { limitsInForce } from '#core/decision/dose/limits.ts';
import { isRest } from '#core/decision/left-of-today.ts';
import {
  countLog,
  type DocumentDecision,
  type DocumentFacts,
  type DocumentItem,
  type DocumentVersion,
} from '#core/episode/documents/document-facts.ts';
import { closedStates, type Episode } from '#core/episode/episode.ts';
import { daysOff, episodeStatusOn } from '#core/episode/episode-status.ts';
import { joints } from '#core/exercises/joints.ts';
import type { Plan, PlanItem } from '#core/plan/plan.ts';
import { plannedSessions } from '#core/prescribing/programme/planned-sessions.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { decisionsOf, newestDecisions } from '../decision/decisions.ts';
import { morningsOf, sessionsOf } from '../entries/logs.ts';
import { baselinesOf } from '../patients/baselines.ts';
import { clinicOf, type Patient } from '../patients/people.ts';
import { planOf } from '../plan/plan-of.ts';
import { type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';
import { programmesOf } from '../prescribing/programmes.ts';
import { checksUpTo } from './document-checks.ts';
import { episodesOf } from './episodes.ts';
import { limitsOf } from './limits-and-pre-approvals.ts';

interface Period {
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
const lastSigned = (versions: readonly Prescription[], endedAt: number): readonly Prescription[] => [
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
const itemsOf = (
  versions: readonly Prescription[],
  plan: Plan,
  { from, endedAt, zone }: Period,
): readonly DocumentItem[] => {
  const signed = versions.filter(({ signedAt }) => signedAt !== null && signedAt <= endedAt);
  return [...new Set(signed.map((row) => row.itemId))].flatMap((itemId) => {
    const item = signed.filter((row) => row.itemId === itemId).sort((a, b) => a.version - b.version);
    const last = item.at(-1)!;
    if (last.endedAt !== null && dayAt(last.endedAt, zone) < from) return [];
    const [first, lastVersion] = [firstOf(item, from, zone), versionOf(last, zone)];
    return [
      {
        itemId,
        first: first === last ? lastVersion : versionOf(first, zone),
        last: lastVersion,
        // The end of care ends what is prescribed in the same instant.
        atEnd: last.endedAt === null || last.endedAt >= endedAt,
        suspended: suspendedBy(
          plan.items.find((one) => one.prescriptionId === last.id),
          plan.pauses,
        ),
      },
    ];
  });
};

const decisionsIn = async (
  access: Access,
  patientId: string,
  { from, to }: Period,
): Promise<readonly DocumentDecision[]> => {
  const rows = (await decisionsOf(access, patientId, from)).filter((row) => row.day <= to);
  const responses = await responsesOf(access, patientId);
  return [...newestDecisions(rows).values()].map((row) => {
    const last = responses
      .filter((one) => one.decisionId === row.id)
      .sort((a, b) => a.answeredAt - b.answeredAt)
      .at(-1);
    return {
      joint: row.joint,
      decision: row.decision,
      day: row.day,
      reasons: row.reasons,
      answer: last
        ? { kind: last.kind, decision: last.decision, reason: last.reason, by: last.answeredName }
        : null,
    };
  });
};

const logIn = async (
  access: Access,
  patientId: string,
  { from, to }: Period,
  episodes: readonly Episode[],
) => {
  const programmes = await programmesOf(access, patientId);
  const off = daysOff(episodes, from, to);
  return countLog({
    sessions: await sessionsOf(access, patientId, from),
    mornings: await morningsOf(access, patientId, from),
    planned: programmes.some(({ fromDay }) => fromDay <= to) ? plannedSessions(programmes, from, to) : null,
    off,
    from,
    to,
  });
};

/** Null where there is no such episode, or where it has not been closed by a discharge or a handing over. */
export const documentFactsFor = async (
  access: Access,
  patient: Patient,
  episodeId: string,
): Promise<DocumentFacts | null> => {
  const episodes = await episodesOf(access, patient.id);
  const episode = episodes.find((one) => one.id === episodeId);
  const [opened, last] = [episode?.changes[0], episode?.changes.at(-1)];
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!episode || !opened || !last || !clinic) return null;
  if (!closedStates.includes(last.to) || last.to === 'died') return null;
  const period: Period = { from: opened.on, to: last.on, endedAt: last.recordedAt, zone: clinic.zone };
  // As it stood when care ended: printed months later, the sheet still says what rested then.
  const versions = await prescriptionsOf(access, patient.id);
  const then: Access = { ...access, day: last.on, now: last.recordedAt };
  const plan = await planOf(then, patient, lastSigned(versions, last.recordedAt));
  const { state } = episodeStatusOn(episodes, access.day);
  const { name, phone, emergencyNumber, urgentNumber, monitoringHours } = clinic;
  return {
    clinic: { name, phone, emergencyNumber, urgentNumber, monitoringHours },
    patient: { name: `${patient.givenName} ${patient.familyName}`, birthDay: patient.birthDay },
    episode,
    from: period.from,
    end: { on: last.on, state: last.to, reason: last.reason, by: last.by },
    careGoesOn: state !== 'closed',
    lines: itemsOf(versions, plan, period),
    log: await logIn(access, patient.id, period, episodes),
    decisions: await decisionsIn(access, patient.id, period),
    limits: limitsInForce(await limitsOf(access, patient.id), joints, dayNumber(last.on)),
    checks: await checksUpTo(access, patient, period.to),
    baselines: (await baselinesOf(access, patient.id)).filter(({ setOn }) => setOn <= last.on).toReversed(),
  };
};
