/** One entry to the clinic's door for phones; the answer as an event of the outbox. */
import { postEntry } from '#ui/on-device/post-entry.ts';
import type { Answer, OutboxEvent, Saved } from './outbox.ts';

const answers: readonly string[] = ['stored', 'known', 'conflict', 'no-session', 'unknown-prescription'];

const failed = (
  saved: Saved,
  why: 'trouble' | 'signed-out' | 'refused',
  now: number,
  comeAgainAt?: number,
): OutboxEvent => ({
  type: 'failed',
  entryId: saved.entryId,
  why,
  now,
  ...(comeAgainAt === undefined ? {} : { comeAgainAt }),
});

/** 401 and 403: nobody, or somebody else, is signed in here. 400: the entry itself was not taken. */
const whyOf = (status: number) =>
  status === 401 || status === 403 ? 'signed-out' : status === 400 ? 'refused' : 'trouble';

/** When a clinic with too much to do asks to be asked again; undefined when it says nothing of it, or nonsense. */
const comeAgainAt = (headers: Headers, now: number): number | undefined => {
  const said = headers.get('retry-after') ?? '';
  return /^\d{1,3}$/.test(said) ? now + Number(said) * 1000 : undefined;
};

const bodyOf = ({ kind, entryId, entry, encrypted }: Saved, sentAt: number) =>
  encrypted ? { kind, entryId, sentAt, encrypted } : { kind, entry: { ...entry, sentAt } };

export const sendEntry = async (
  saved: Saved,
  clock: () => number,
  post: typeof fetch = fetch,
): Promise<OutboxEvent> => {
  try {
    const body = bodyOf(saved, Math.round(clock()));
    const response = await postEntry(post, body, { 'x-loadgate-patient': saved.ownerId });
    if (!response.ok) {
      const now = clock();
      return failed(saved, whyOf(response.status), now, comeAgainAt(response.headers, now));
    }
    const told = (await response.json()) as { stored?: string; clockDoubtful?: boolean };
    if (!told.stored || !answers.includes(told.stored)) return failed(saved, 'trouble', clock());
    return {
      type: 'answered',
      entryId: saved.entryId,
      stored: told.stored as Answer,
      clockDoubtful: told.clockDoubtful === true,
      now: clock(),
    };
  } catch {
    return failed(saved, 'trouble', clock());
  }
};
