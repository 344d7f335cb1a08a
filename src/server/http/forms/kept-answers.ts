/**
 * What was typed into a form that the browser sent itself, until its page is shown again. In memory only and for
 * minutes: it may be of a patient. Known by a mark in a cookie, and given to the same sign-in alone.
 */
import { randomBytes } from 'node:crypto';
import { isSameForm, type PostedAnswer } from '#api/inputs/posted-form.ts';
import { perStore } from '#data/database/per-store.ts';

/** Long enough to look something up; as long as a one-time code is waited for where nobody is signed in. */
export const keptSeconds = 900;
const strangerSeconds = 300;
/** A page with several forms, each tried once. */
const mostForms = 8;
const mostBrowsers = 2000;
/** Characters of all together. */
const mostCharacters = 32_000_000;

interface Kept {
  readonly until: number;
  readonly sessionId: string | null;
  readonly answers: readonly PostedAnswer[];
  readonly size: number;
}

const makeKeeper = () => {
  const browsers = new Map<string, Kept>();
  let size = 0;
  const drop = (mark: string) => {
    size -= browsers.get(mark)?.size ?? 0;
    browsers.delete(mark);
  };
  const put = (mark: string, kept: Omit<Kept, 'size'>) => {
    drop(mark);
    if (kept.answers.length === 0) return;
    const own = JSON.stringify(kept.answers).length;
    browsers.set(mark, { ...kept, size: own });
    size += own;
    // The longest kept go first; the newest stays, however large.
    for (const oldest of browsers.keys()) {
      if (oldest === mark || (browsers.size <= mostBrowsers && size <= mostCharacters)) break;
      drop(oldest);
    }
  };
  const found = (mark: string | null, sessionId: string | null, now: number): Kept | null => {
    const kept = mark === null ? undefined : browsers.get(mark);
    return kept && kept.until > now && kept.sessionId === sessionId ? kept : null;
  };
  return {
    /** The answer takes the place of an earlier one to the same form; returns the mark it is found by. */
    keep: (mark: string | null, sessionId: string | null, answer: PostedAnswer, now: number): string => {
      const before = found(mark, sessionId, now)?.answers ?? [];
      const answers = [...before.filter((one) => !isSameForm(one, answer)), answer].slice(-mostForms);
      const own = before.length > 0 && mark ? mark : randomBytes(32).toString('base64url');
      const seconds = sessionId === null ? strangerSeconds : keptSeconds;
      put(own, { until: now + seconds * 1000, sessionId, answers });
      return own;
    },
    /** Taken, with another page to show: what was refused before is no longer waiting. */
    forget: (mark: string | null, sessionId: string | null, form: PostedAnswer, now: number): void => {
      const kept = found(mark, sessionId, now);
      if (kept) put(mark!, { ...kept, answers: kept.answers.filter((one) => !isSameForm(one, form)) });
    },
    /** For a page that is about to be shown. That something was taken is said once. */
    take: (mark: string, sessionId: string | null, now: number): readonly PostedAnswer[] => {
      const kept = found(mark, sessionId, now);
      if (!kept) return [];
      put(mark, { ...kept, answers: kept.answers.filter(({ done }) => done === null) });
      return kept.answers;
    },
    /** What was typed when the form was last sent, to tell whether it is still the same. */
    typedBefore: (mark: string | null, sessionId: string | null, form: PostedAnswer, now: number) =>
      found(mark, sessionId, now)?.answers.find((one) => isSameForm(one, form)) ?? null,
  };
};

export const keptAnswers = perStore('kept-answers', makeKeeper);
