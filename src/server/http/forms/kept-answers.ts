/**
 * What was typed into a form that the browser sent itself, until its page is shown again. In memory only and for
 * minutes: it may be of a patient. Known by a mark in a cookie, and given to the same sign-in alone. Whoever is
 * not signed in has a place of their own, so that nobody from outside pushes out what a clinician typed.
 */
import { randomBytes } from 'node:crypto';
import { isSameForm, type PostedAnswer } from '#api/inputs/posted-form.ts';
import { perStore } from '#data/database/per-store.ts';

/** Long enough to look something up; as long as a one-time code is waited for where nobody is signed in. */
export const keptSeconds = 900;
const strangerSeconds = 300;
/** A page with several forms, each tried once. */
const mostForms = 8;

interface Bounds {
  readonly seconds: number;
  readonly browsers: number;
  /** Characters of one browser: all of them go out with each of its pages. */
  readonly ofOne: number;
}

const known: Bounds = { seconds: keptSeconds, browsers: 400, ofOne: 64_000 };
/** An address for email and a few refusals, in every language. */
const strangers: Bounds = { seconds: strangerSeconds, browsers: 2000, ofOne: 8_000 };

interface Kept {
  readonly until: number;
  readonly sessionId: string | null;
  readonly answers: readonly PostedAnswer[];
}

const sizeOf = (answers: readonly PostedAnswer[]): number => JSON.stringify(answers).length;

/** The newest that fit; of one that does not fit by itself the refusals are said, and what was typed is gone. */
const within = (answers: readonly PostedAnswer[], most: number): readonly PostedAnswer[] => {
  const newest = answers.slice(-mostForms);
  if (sizeOf(newest) <= most) return newest;
  if (newest.length > 1) return within(newest.slice(1), most);
  return newest.map((one) => ({ ...one, typed: {} }));
};

const makePool = ({ seconds, browsers: most, ofOne }: Bounds) => {
  const browsers = new Map<string, Kept>();
  const put = (mark: string, kept: Kept) => {
    browsers.delete(mark);
    if (kept.answers.length > 0) browsers.set(mark, kept);
    // The longest kept go first.
    for (const oldest of browsers.keys()) {
      if (browsers.size <= most) break;
      browsers.delete(oldest);
    }
  };
  const found = (mark: string | null, sessionId: string | null, now: number): Kept | null => {
    const kept = mark === null ? undefined : browsers.get(mark);
    if (kept && kept.until <= now) browsers.delete(mark!);
    return kept && kept.until > now && kept.sessionId === sessionId ? kept : null;
  };
  const clear = (now: number) => {
    for (const [mark, { until }] of browsers) if (until <= now) browsers.delete(mark);
  };
  return { put, found, clear, seconds, ofOne };
};

const makeKeeper = () => {
  const pools = { known: makePool(known), strangers: makePool(strangers) };
  const poolOf = (sessionId: string | null) => (sessionId === null ? pools.strangers : pools.known);
  return {
    /** The answer takes the place of an earlier one to the same form; returns the mark it is found by. */
    keep: (mark: string | null, sessionId: string | null, answer: PostedAnswer, now: number): string => {
      const { put, found, clear, seconds, ofOne } = poolOf(sessionId);
      clear(now);
      const before = found(mark, sessionId, now)?.answers ?? [];
      const answers = within([...before.filter((one) => !isSameForm(one, answer)), answer], ofOne);
      const own = before.length > 0 && mark ? mark : randomBytes(32).toString('base64url');
      put(own, { until: now + seconds * 1000, sessionId, answers });
      return own;
    },
    /** Taken, with another page to show: what was refused before is no longer waiting. */
    forget: (mark: string | null, sessionId: string | null, form: PostedAnswer, now: number): void => {
      const { put, found } = poolOf(sessionId);
      const kept = found(mark, sessionId, now);
      if (kept) put(mark!, { ...kept, answers: kept.answers.filter((one) => !isSameForm(one, form)) });
    },
    /** For a page that is about to be shown. That something was taken is said once. */
    take: (mark: string, sessionId: string | null, now: number): readonly PostedAnswer[] => {
      const { put, found } = poolOf(sessionId);
      const kept = found(mark, sessionId, now);
      if (!kept) return [];
      put(mark, { ...kept, answers: kept.answers.filter(({ done }) => done === null) });
      return kept.answers;
    },
    /** What was typed when the form was last sent, to tell whether it is still the same. */
    typedBefore: (mark: string | null, sessionId: string | null, form: PostedAnswer, now: number) =>
      poolOf(sessionId)
        .found(mark, sessionId, now)
        ?.answers.find((one) => isSameForm(one, form)) ?? null,
  };
};

export const keptAnswers = perStore('kept-answers', makeKeeper);
