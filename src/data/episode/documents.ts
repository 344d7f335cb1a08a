/** What the papers at the end of an episode of care are put together from, read from the record. */

import { limitsInForce } from '#core/decision/dose/limits.ts';
import {
  countLog,
  type DocumentDecision,
  type DocumentFacts,
} from '#core/episode/documents/document-facts.ts';
import { type Episode, isOver } from '#core/episode/episode.ts';
import { daysOff, episodeStatusOn } from '#core/episode/episode-status.ts';
import { joints } from '#core/exercises/joints.ts';
import { plannedSessions } from '#core/prescribing/programme/planned-sessions.ts';
import { dayNumber } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { responsesOf } from '../decision/decision-responses.ts';
import { decisionsOf, newestDecisions } from '../decision/decisions.ts';
import { morningsOf, sessionsOf } from '../entries/logs.ts';
import { baselinesOf } from '../patients/baselines.ts';
import { type Clinic, clinicOf, type Patient } from '../patients/people.ts';
import { planOf } from '../plan/plan-of.ts';
import { prescriptionsOf } from '../prescribing/prescriptions.ts';
import { programmesOf } from '../prescribing/programmes.ts';
import { checksUpTo, outcomesUpTo, sidesUpTo } from './document-checks.ts';
import { itemsOf, lastSigned, type Period } from './document-items.ts';
import { episodesOf } from './episodes.ts';
import { limitsOfPerson } from './limits-of-person.ts';

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

interface Told {
  readonly episode: Episode;
  readonly end: DocumentFacts['end'];
  readonly period: Period;
}

const factsOf = async (
  access: Access,
  patient: Patient,
  clinic: Clinic,
  { episode, end, period }: Told,
): Promise<DocumentFacts> => {
  const { to, endedAt } = period;
  const episodes = await episodesOf(access, patient.id);
  // As it stood when care ended: printed months later, the sheet still says what rested then.
  const versions = await prescriptionsOf(access, patient.id);
  const plan = await planOf({ ...access, day: to, now: endedAt }, patient, lastSigned(versions, endedAt));
  const { name, phone, emergencyNumber, urgentNumber, monitoringHours } = clinic;
  return {
    clinic: { name, phone, emergencyNumber, urgentNumber, monitoringHours },
    patient: { name: `${patient.givenName} ${patient.familyName}`, birthDay: patient.birthDay },
    episode,
    from: period.from,
    end,
    careGoesOn: end === null || episodeStatusOn(episodes, access.day).state !== 'closed',
    lines: itemsOf(versions, plan, period),
    log: await logIn(access, patient.id, period, episodes),
    decisions: await decisionsIn(access, patient.id, period),
    limits: limitsInForce(await limitsOfPerson(access, patient.id), joints, dayNumber(to)),
    checks: await checksUpTo(access, patient, to),
    outcomes: await outcomesUpTo(access, patient, to),
    sides: await sidesUpTo(access, patient.id, to),
    baselines: (await baselinesOf(access, patient.id)).filter(({ setOn }) => setOn <= to).toReversed(),
  };
};

/** Null where there is no such episode, or where it has not been closed by a discharge or a handing over. */
export const documentFactsFor = async (
  access: Access,
  patient: Patient,
  episodeId: string,
): Promise<DocumentFacts | null> => {
  const episode = (await episodesOf(access, patient.id)).find((one) => one.id === episodeId);
  const [opened, last] = [episode?.changes[0], episode?.changes.at(-1)];
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!episode || !opened || !last || !clinic) return null;
  if (!isOver(episode) || last.to === 'died') return null;
  return factsOf(access, patient, clinic, {
    episode,
    end: { on: last.on, state: last.to, reason: last.reason, by: last.by },
    period: { from: opened.on, to: last.on, endedAt: last.recordedAt, zone: clinic.zone },
  });
};

/** What is known of care that nobody has opened an episode for. */
const withoutEpisode = ({ profile }: Patient): Episode => ({
  id: '',
  diagnoses: [profile?.diagnosis ?? 'not recorded'],
  joints: profile?.followedJoints ?? [],
  followedJoints: profile?.followedJoints ?? [],
  goals: [],
  referrer: null,
  contacts: [],
  changes: [],
});

/**
 * The same of the newest episode, ended or not; of care that goes on as it stands now. Null where the
 * person has died.
 */
export const newestDocumentFacts = async (
  access: Access,
  patient: Patient,
): Promise<DocumentFacts | null> => {
  const episode = (await episodesOf(access, patient.id)).at(-1);
  if (episode && isOver(episode)) return documentFactsFor(access, patient, episode.id);
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) return null;
  const { zone } = clinic;
  const signed = (await prescriptionsOf(access, patient.id)).flatMap(({ signedAt }) => signedAt ?? []);
  const from = episode?.changes[0]?.on ?? (signed.length > 0 ? dayAt(Math.min(...signed), zone) : access.day);
  return factsOf(access, patient, clinic, {
    episode: episode ?? withoutEpisode(patient),
    end: null,
    period: { from, to: access.day, endedAt: access.now, zone },
  });
};
