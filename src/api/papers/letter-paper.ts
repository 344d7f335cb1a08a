/** The letter to another doctor, gathered from the record as it stands today, whether care goes on or has ended. */

import type { DecisionWord } from '#core/decision/answers.ts';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import { clearedFindings } from '#core/episode/documents/cleared-findings.ts';
import { countLog, type DocumentLog } from '#core/episode/documents/document-facts.ts';
import { ineligibleMethods } from '#core/episode/documents/handover.ts';
import { weeksOverUsual } from '#core/episode/documents/weeks-over-usual.ts';
import type { Episode } from '#core/episode/episode.ts';
import { daysOff } from '#core/episode/episode-status.ts';
import { goalsFrom } from '#core/episode/goals.ts';
import { type Joint, joints } from '#core/exercises/joints.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { plannedSessions } from '#core/prescribing/programme/planned-sessions.ts';
import { isWithinSigned } from '#core/prescribing/signed-within.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { goalStepsOf } from '#data/assessment/goals.ts';
import { dayAt } from '#data/civil-time.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { morningsOf, sessionsOf } from '#data/entries/logs.ts';
import { checksUpTo, outcomesUpTo } from '#data/episode/document-checks.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { baselinesOf } from '#data/patients/baselines.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import type { LetterExercise, LetterPaper } from '#papers/letter/letter-paper.ts';
import { decisionsToldIn } from './letter-decisions.ts';
import { chosenNotes } from './letter-notes.ts';
import { painLimitsOf } from './pain-limits.ts';

const signedDay = (row: Prescription, zone: string): Day => dayAt(row.signedAt ?? row.recordedAt, zone);

const exercisesIn = (
  versions: readonly Prescription[],
  plan: Plan,
  zone: string,
): readonly LetterExercise[] =>
  inForce(versions).map((row) => {
    const first = versions.find(({ itemId, signedAt }) => itemId === row.itemId && signedAt !== null) ?? row;
    const item = plan.items.find(({ prescriptionId }) => prescriptionId === row.id);
    return {
      first: { dose: first.dose, signedOn: signedDay(first, zone) },
      now: {
        dose: item?.dose ?? row.dose,
        signedOn: signedDay(row, zone),
        signedName: row.signedName ?? '',
        isWithinSigned: isWithinSigned(row),
      },
      today: item?.today ?? 'none',
      cautions: row.cautions,
    };
  });

/** The first day of the episode that is newest, or else the day of the first signature. */
const sinceOf = (
  episode: Episode | undefined,
  versions: readonly Prescription[],
  zone: string,
): Day | null => {
  const opened = episode?.changes[0]?.on;
  if (opened) return opened;
  const signed = versions.filter(({ signedAt }) => signedAt !== null).map((row) => signedDay(row, zone));
  return signed.sort()[0] ?? null;
};

const logSince = async (
  access: Access,
  patientId: string,
  from: Day | null,
  episodes: readonly Episode[],
): Promise<DocumentLog | null> => {
  if (from === null) return null;
  const to = access.day;
  const programmes = await programmesOf(access, patientId);
  return countLog({
    sessions: await sessionsOf(access, patientId, from),
    mornings: await morningsOf(access, patientId, from),
    planned: programmes.some(({ fromDay }) => fromDay <= to) ? plannedSessions(programmes, from, to) : null,
    off: daysOff(episodes, from, to),
    from,
    to,
  });
};

/** What the plan says of dangers. */
const standing = (plan: Plan, zone: string): Pick<LetterPaper, 'openSigns' | 'isPaused'> => ({
  openSigns: openSigns(plan).map(({ sign }) => ({
    joint: sign.joint,
    flags: sign.flags,
    reportedOn: dayAt(sign.reportedAt, zone),
  })),
  isPaused: plan.items.some(({ reasons }) => reasons.some(({ code }) => code === 'paused')),
});

/** Mornings at either end that are told. */
const morningsAtEnd = 7;

const morningPains = async (
  access: Access,
  { id, profile }: Patient,
  from: Day,
): Promise<Pick<LetterPaper, 'mornings' | 'overUsual'>> => {
  const rows = (await morningsOf(access, id, from)).toSorted((a, b) => (a.day < b.day ? -1 : 1));
  const baselines = await baselinesOf(access, id);
  const scoresOf = (joint: Joint) =>
    rows.flatMap(({ day, joints: told }) =>
      told.flatMap((one) => (one.joint === joint && one.pain !== null ? [{ day, pain: one.pain }] : [])),
    );
  const followed = profile?.followedJoints ?? [];
  return {
    mornings: followed.flatMap((joint) => {
      const pains = scoresOf(joint).map(({ pain }) => pain);
      if (pains.length < 2 * morningsAtEnd) return [];
      const spanOf = (some: readonly number[]) => ({ low: Math.min(...some), high: Math.max(...some) });
      return [
        { joint, first: spanOf(pains.slice(0, morningsAtEnd)), last: spanOf(pains.slice(-morningsAtEnd)) },
      ];
    }),
    overUsual: followed.flatMap((joint) => {
      const usual = baselines.findLast((row) => row.joint === joint);
      const top = usual ? (usual.usualPainTop ?? usual.usualPain) : null;
      const over = weeksOverUsual(scoresOf(joint), top, access.day);
      return over ? [{ joint, ...over }] : [];
    }),
  };
};

const advisedSince = async (
  access: Access,
  patientId: string,
  from: Day,
): Promise<LetterPaper['advised']> => {
  const rows = await decisionsOf(access, patientId, from);
  const daysOf = (word: DecisionWord) =>
    new Set(rows.filter(({ decision }) => decision === word).map(({ day }) => day)).size;
  return { eased: daysOf('ease-back'), paused: daysOf('pause') };
};

export const letterPaperFor = async (
  access: Access,
  patient: Patient,
  chosen: readonly string[] = [],
): Promise<LetterPaper> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const { name, zone, phone } = clinic;
  const versions = await prescriptionsOf(access, patient.id);
  const plan = await planOf(access, patient, inForce(versions));
  const episodes = await episodesOf(access, patient.id);
  const episode = episodes.at(-1);
  const since = sinceOf(episode, versions, zone);
  const { outcomes, clearances, screening } = await prescribingContextFor(access, patient);
  const { givenName, familyName, birthDay, patientNumber, profile } = patient;
  return {
    clinic: { name, phone },
    patient: { name: `${givenName} ${familyName}`, birthDay, patientNumber },
    referrer: episode?.referrer ?? null,
    diagnoses: episode?.diagnoses ?? (profile ? [profile.diagnosis] : []),
    followed: profile?.followedJoints ?? [],
    since,
    log: await logSince(access, patient.id, since, episodes),
    outcomes: await outcomesUpTo(access, patient, access.day),
    exercises: exercisesIn(versions, plan, zone),
    painLimits: (await painLimitsOf(access, patient)).map(({ joint, acceptablePainLimit: limit }) => ({
      joint,
      limit,
    })),
    ...standing(plan, zone),
    decisions: await decisionsToldIn(access, patient.id, plan, versions, zone),
    closed: ineligibleMethods(outcomes),
    ...(since === null ? { mornings: [], overUsual: [] } : await morningPains(access, patient, since)),
    cleared: clearedFindings(outcomes, clearances, screening),
    advised: since === null ? { eased: 0, paused: 0 } : await advisedSince(access, patient.id, since),
    limits: limitsInForce(await limitsOfPerson(access, patient.id), joints, dayNumber(access.day)),
    goals: goalsFrom(episode?.goals ?? [], await goalStepsOf(access, patient.id), access.day),
    nextVisit: (await bookingOf(access, patient.id))?.day ?? null,
    checks: await checksUpTo(access, patient, access.day),
    notes: await chosenNotes(access, patient.id, chosen),
  };
};
