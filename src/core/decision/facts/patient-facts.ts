/** Facts of the whole person rather than of one joint: red flags, adherence, breaks, treatment, tiredness. */

import { eventEffects } from '#core/episode/event-effects.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { dayNumber } from '#core/time/day.ts';
import { countUpTo } from './count-up-to.ts';
import type { Facts, RedFlag } from './facts.ts';
import type { RecordIndex } from './indexed-record.ts';
import type { Judged } from './judged-session.ts';

const dayOf = (one: { readonly day: number }): number => one.day;
const beganOf = (one: { readonly began: number }): number => one.began;
const itself = (number: number): number => number;

/** Days looked back for a red flag where no session is judged. */
const withoutSession = 14;

/**
 * Signs told since the day of the judged session, by whichever entry. An entry with a doubtful clock
 * counts here: its scores are missing, its danger is not.
 */
export const redFlagsAt = (
  index: RecordIndex,
  judged: Judged,
  flareOpen: boolean,
  day: number,
  instant: number,
): Facts['redFlags'] => {
  const from = judged.session?.day ?? day - withoutSession;
  const found = new Set<string>();
  for (let place = countUpTo(index.mornings, from - 1, dayOf); place < index.mornings.length; place++) {
    const { morning, day: on } = index.mornings[place]!;
    if (on > day) break;
    if (morning.recordedAt <= instant) for (const flag of morning.redFlags ?? []) found.add(flag);
  }
  for (const morning of index.doubtfulMornings) {
    const isSince = morning.recordedAt >= (judged.session?.began ?? Number.NEGATIVE_INFINITY);
    if (isSince && morning.recordedAt <= instant) for (const flag of morning.redFlags ?? []) found.add(flag);
  }
  for (let place = countUpTo(index.sessions, instant, beganOf) - 1; place >= 0; place--) {
    const { session, day: on } = index.sessions[place]!;
    // A day of grace: a traveller's civil day may run against the instant.
    if (on < from - 1 && !session.clockDoubtful) break;
    if (session.recordedAt > instant || (on < from && !session.clockDoubtful)) continue;
    for (const flag of session.redFlags ?? []) found.add(flag);
  }
  if (judged.session && fellAfterGivingWay(index, judged, day)) found.add('fall-with-injury');
  if (found.size > 0) return [...found].sort() as RedFlag[];
  const session = judged.session?.session;
  const isOpen =
    !session ||
    session.redFlags === null ||
    session.clockDoubtful ||
    (judged.nextMorning !== null && judged.nextMorning.morning.redFlags === null);
  return isOpen || flareOpen ? null : [];
};

/** Asked of the joint after work and not answered counts as yes; a joint that was not asked about is out of it. */
export const mayHaveGivenWay = ({ session }: Judged): boolean =>
  session?.answers ? (session.answers.gaveWay ?? session.session.sets.length > 0) : false;

/** Giving way is a reason to hold; giving way with a fall is a red flag. */
const fellAfterGivingWay = (index: RecordIndex, judged: Judged, day: number): boolean =>
  mayHaveGivenWay(judged) &&
  index.record.events.some((event) => {
    if (event.kind !== 'fall') return false;
    const on = dayNumber(event.day);
    return on >= judged.session!.day && on <= Math.min(day, judged.session!.day + 1);
  });

const window = 14;

const withinWindow = (days: readonly number[], day: number): number =>
  countUpTo(days, day - 1, itself) - countUpTo(days, day - 1 - window, itself);

/** Sessions made up on another day count: days with a session against days planned, today left out. */
export const adherenceFacts = (
  index: RecordIndex,
  day: number,
): Pick<Facts, 'missedSessions14' | 'plannedSessions14'> => {
  const plannedSessions14 = withinWindow(index.plannedDays, day);
  const done = withinWindow(index.sessionDays, day);
  return { plannedSessions14, missedSessions14: Math.max(0, plannedSessions14 - done) };
};

/**
 * The longer of the days since the last session and the days before it. A break before it no longer
 * counts once the dose was set anew in it, or the easier session was done after it.
 */
export const gapDaysAt = (index: RecordIndex, { session, previous }: Judged, day: number): number => {
  if (!session) return 0;
  const since = Math.max(0, day - session.day);
  if (!previous) return since;
  const isAnswered =
    session.session.kind === 'bad-day' ||
    session.session.sets.some((set) => {
      const version = index.versions.get(set.prescriptionId);
      return version !== undefined && version.signedAt > previous.began && version.origin !== 'progress';
    });
  return isAnswered ? since : Math.max(since, session.day - previous.day);
};

/** Days since the last medicine change, injection of this joint or day of a steroid course; null = none. */
export const treatmentChangeDaysAt = (index: RecordIndex, joint: Joint, day: number): number | null => {
  const days = index.record.events
    .filter(({ kind }) => eventEffects[kind].bluntsScores)
    .filter((event) => event.joint === null || event.joint === joint)
    .filter((event) => dayNumber(event.day) <= day)
    // A course counts from its last day, and until then as of today.
    .map((event) => Math.max(0, day - dayNumber(event.lastDay ?? event.day)));
  return days.length === 0 ? null : Math.min(...days);
};

/** Days for which an answer on tiredness still speaks. */
const fatigueHolds = 7;

export const fatigueRiseAt = (
  index: RecordIndex,
  usualFatigue: number | null,
  day: number,
  instant: number,
): number | null => {
  if (usualFatigue === null) return null;
  for (let place = countUpTo(index.mornings, day, dayOf) - 1; place >= 0; place--) {
    const { morning, day: on } = index.mornings[place]!;
    if (on <= day - fatigueHolds) return null;
    if (morning.recordedAt > instant || morning.clockDoubtful) continue;
    if (typeof morning.fatigue === 'number') return morning.fatigue - usualFatigue;
  }
  return null;
};
