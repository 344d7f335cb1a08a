/**
 * How one joint answered each dose of a prescription item by the next morning, counted. A session counts at the dose
 * that was done, an easier one at its own. It counts what was logged and forecasts nothing; no decision reads it.
 */
import type { IndexedSession } from '#core/decision/facts/indexed-record.ts';
import type { Moment } from '#core/decision/facts/judged-session.ts';
import { indexRecord } from '#core/decision/facts/record-index.ts';
import { type EngineSettingValues, engineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord, PrescriptionVersion, SessionRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { Day } from '#core/time/day.ts';
import { shareInWords } from '../plain-words.ts';
import { corridorOf, type DoseAnswers, type DoseCorridor } from './corridor.ts';
import { type DoseDone, doseDone, firstDoseOf } from './dose-done.ts';
import {
  type LeftOut,
  leftOut,
  leftOutReasons,
  type MorningAnswer,
  morningAnswer,
} from './morning-answer.ts';

export interface AnsweredSession {
  readonly sessionId: string;
  readonly day: Day;
  /** Of the first signed dose, as done. */
  readonly share: number | null;
  readonly answer: MorningAnswer;
}

export interface LeftOutCount {
  readonly why: LeftOut;
  readonly sessions: number;
}

interface AnswersByDose {
  readonly itemId: string;
  readonly joint: Joint;
  /** Oldest first, those left out as well. */
  readonly sessions: readonly AnsweredSession[];
  /** Lowest dose first. */
  readonly doses: readonly DoseAnswers[];
  readonly leftOut: readonly LeftOutCount[];
  readonly corridor: DoseCorridor;
}

interface Asked {
  readonly record: PatientRecord;
  readonly itemId: string;
  readonly joint: Joint;
  readonly at: Moment;
  readonly settings?: SettingValues | undefined;
}

interface Looked extends Asked {
  readonly settings: EngineSettingValues;
  /** Versions of the item, by their id. */
  readonly versions: ReadonlyMap<string, PrescriptionVersion>;
  readonly first: Dose | null;
  readonly isLoaded: boolean;
}

interface Counted {
  readonly session: AnsweredSession;
  readonly dose: Dose | null;
}

/** What leaves a session out whatever the morning said; null = the morning is looked at. */
const withoutLooking = (
  { didExtra }: SessionRecord,
  { share, notKnown }: DoseDone,
  isLoaded: boolean,
): MorningAnswer | null => {
  if (!isLoaded) return leftOut('joint-not-loaded');
  if (notKnown !== null) return { ...leftOut('dose-not-known'), doseNotKnown: notKnown };
  if (share === 0) return leftOut('nothing-done');
  // Not answered is no "no": what was done is known only where nothing was added.
  return didExtra === false ? null : leftOut('more-done');
};

const countedSession = (looked: Looked, indexed: IndexedSession): Counted | null => {
  const { session } = indexed;
  const done = doseDone(session, looked.itemId, looked.versions, looked.first);
  if (!done) return null;
  const answer = withoutLooking(session, done, looked.isLoaded) ?? morningAnswer(looked, indexed);
  return {
    session: { sessionId: session.id, day: session.day, share: done.share, answer },
    dose: done.isAsMeant ? done.meant : null,
  };
};

/** Doses that are said alike are one row. */
const dosesOf = (counted: readonly Counted[]): readonly DoseAnswers[] => {
  const byShare = new Map<string, DoseAnswers>();
  for (const { session, dose } of counted) {
    const { share, answer } = session;
    if (share === null || answer.is === 'left-out') continue;
    const known = byShare.get(shareInWords(share)) ?? { share, dose: null, atUsual: 0, overUsual: 0 };
    byShare.set(shareInWords(share), {
      ...known,
      dose: dose ?? known.dose,
      atUsual: known.atUsual + Number(answer.is === 'at-usual'),
      overUsual: known.overUsual + Number(answer.is === 'over-usual'),
    });
  }
  return [...byShare.values()].sort((a, b) => a.share - b.share);
};

/** The reasons there are, each with its sessions. */
export const leftOutCounts = (sessions: readonly AnsweredSession[]): readonly LeftOutCount[] =>
  leftOutReasons.flatMap((why) => {
    const count = sessions.filter(({ answer }) => answer.is === 'left-out' && answer.why === why).length;
    return count === 0 ? [] : [{ why, sessions: count }];
  });

export const answersByDose = ({ record, itemId, joint, at, settings }: Asked): AnswersByDose => {
  const own = record.prescriptions.filter((one) => one.itemId === itemId);
  const looked: Looked = {
    record,
    itemId,
    joint,
    at,
    settings: engineSettingValues(settings),
    versions: new Map(own.map((one) => [one.id, one])),
    first: firstDoseOf(own),
    isLoaded: own.some(({ joints }) => joints.includes(joint)),
  };
  const counted = indexRecord(record)
    .sessions.filter(({ session }) => session.recordedAt <= at.instant && session.day <= at.day)
    .flatMap((indexed) => countedSession(looked, indexed) ?? []);
  const sessions = counted.map(({ session }) => session);
  const doses = dosesOf(counted);
  return { itemId, joint, sessions, doses, leftOut: leftOutCounts(sessions), corridor: corridorOf(doses) };
};
