/**
 * What was answered in an hour without signal, sealed to the clinic at each press: on the tablet nobody opens it
 * again. It waits there until the clinic has it, also after the hour itself is gone.
 */
import type { SessionEntry } from '#core/record/entries.ts';
import { type Encrypted, encryptEntry } from '#ui/on-device/encrypt-entry.ts';
import type { PhoneStore } from '#ui/on-device/phone-store.ts';
import { postEntry } from '#ui/on-device/post-entry.ts';

const under = 'sealed-answer:';
/** Of what was put aside at the clinic the key alone stays, so that the hour, opened again, never says it counts. */
const asideUnder = 'sealed-aside:';

/** A session has one id whoever enters it, so whose sealing it comes from is part of the key: none takes another's place. */
export const answerKey = ({ takenBy, sealedAt, entryId }: KeyParts): string =>
  `${under}${takenBy}:${sealedAt}:${entryId}`;
type KeyParts = Pick<SealedAnswer, 'takenBy' | 'sealedAt' | 'entryId'>;

export interface SealedAnswer {
  readonly hourId: string;
  readonly patientId: string;
  readonly entryId: string;
  /** Who took the hour along, and alone sends what was answered in it. */
  readonly takenBy: string;
  readonly takerName: string;
  /** When the hour it was answered in was taken along: an instant of the clinic. */
  readonly sealedAt: number;
  readonly encrypted: Encrypted;
  /** The clinic's clock minus this tablet's, ms. */
  readonly clockLacks: number;
  /** "begun": it goes as far as it came, once the hour is gone. */
  readonly state: 'begun' | 'finished';
  readonly isUrgent: boolean;
  /** Why the clinic did not take it; it stays here. */
  readonly refused?: string;
}

export interface Answered {
  readonly hourId: string;
  readonly patientId: string;
  readonly takenBy: string;
  readonly takerName: string;
  readonly sealedAt: number;
  readonly clinicKey: string;
  readonly clockLacks: number;
  readonly state: SealedAnswer['state'];
}

/** What was only begun counts as a session by a set or a warning sign; without either it may be a slip on a card. */
const isOfSession = (state: SealedAnswer['state'], { sets, stoppedByFlag }: SessionEntry): boolean =>
  state === 'finished' || stoppedByFlag || sets.length > 0;

/** What was begun for a person by mistake; what was finished stays, and is corrected at the clinic. */
export const takeBackAnswer = async (store: PhoneStore, of: KeyParts): Promise<void> => {
  const key = answerKey(of);
  if ((await store.get<SealedAnswer>(key))?.state === 'begun') await store.remove(key);
};

/** `takenBy` stands inside the seal as well, where nobody on the tablet changes it. */
export const keepAnswer = async (
  store: PhoneStore,
  { clinicKey, ...answered }: Answered,
  entry: SessionEntry,
): Promise<void> => {
  const { patientId, takenBy, state } = answered;
  if (!isOfSession(state, entry)) return takeBackAnswer(store, { ...answered, entryId: entry.entryId });
  const bound: SessionEntry & { readonly takenBy: string } = { ...entry, takenBy };
  const encrypted = await encryptEntry(clinicKey, patientId, bound);
  const { entryId } = entry;
  const isUrgent = entry.stoppedByFlag;
  const kept: SealedAnswer = { ...answered, entryId, encrypted, isUrgent };
  await store.set(answerKey(kept), kept);
};

/** Warning signs first. */
export const waitingAnswers = async (store: PhoneStore): Promise<readonly SealedAnswer[]> =>
  (await store.under<SealedAnswer>(under)).toSorted(
    (one, other) => Number(other.isUrgent) - Number(one.isUrgent),
  );

export const asideAnswers = (store: PhoneStore): Promise<readonly string[]> =>
  store.under<string>(asideUnder);
export const forgetAside = (store: PhoneStore): Promise<void> => store.clear(asideUnder);

export interface Sender {
  readonly fetch: typeof fetch;
  /** Clock of this tablet. */
  readonly wall: () => number;
  /** The hour is still open here: what is only begun waits for its end. */
  readonly isOpen: boolean;
  /** What the clinic refused before is sent once more. */
  readonly isAgain: boolean;
}

/**
 * "aside": another session of the same hour, person and day is on record, and nothing of this one counts.
 * "not-yours": somebody else than who took the hour along is signed in. "fault": the server stumbled over this one.
 * Both leave it here, and say nothing of the next.
 */
type Outcome = 'arrived' | 'aside' | 'no-answer' | 'fault' | 'signed-out' | 'not-yours' | 'refused';

export interface Sent {
  readonly key: string;
  readonly as: Outcome;
}

interface Told {
  readonly stored?: string;
  readonly problem?: string;
  readonly message?: string;
}

const outcomes: Readonly<Record<string, Outcome>> = {
  stored: 'arrived',
  known: 'arrived',
  conflict: 'aside',
};

const outcomeOf = (answer: Response, { stored, problem }: Told): Outcome => {
  if (answer.ok && stored !== undefined) return outcomes[stored] ?? 'refused';
  if (problem === 'signed-out' || problem === 'not-yours') return problem;
  if (answer.status >= 500) return 'fault';
  return answer.status >= 400 && answer.status < 429 ? 'refused' : 'no-answer';
};

const sendOne = async ({ fetch, wall }: Sender, { clockLacks, ...saved }: SealedAnswer) => {
  const { hourId, patientId, entryId, encrypted } = saved;
  const sentAt = wall() + clockLacks;
  const body = { kind: 'group-hour', hourId, patientId, entryId, encrypted, sentAt };
  try {
    const answer = await postEntry(fetch, body);
    const told = (await answer.json().catch(() => ({}))) as Told;
    return { as: outcomeOf(answer, told), message: told.message ?? '' };
  } catch {
    return { as: 'no-answer' as const, message: '' };
  }
};

/** The clinic keeps each once, however often it is sent. What it took, or put aside for review, leaves the tablet. */
export const sendAnswers = async (store: PhoneStore, sender: Sender): Promise<readonly Sent[]> => {
  const told: Sent[] = [];
  for (const saved of await waitingAnswers(store)) {
    if (saved.state === 'begun' && sender.isOpen) continue;
    if (saved.refused !== undefined && !sender.isAgain) continue;
    const { as, message } = await sendOne(sender, saved);
    const key = answerKey(saved);
    told.push({ key, as });
    if (as === 'no-answer' || as === 'signed-out') break;
    if (as === 'not-yours' || as === 'fault') continue;
    // Pressed on meanwhile: the newer one is sent in its turn.
    if ((await store.get<SealedAnswer>(key))?.encrypted.data !== saved.encrypted.data) continue;
    if (as === 'aside') await store.set(`${asideUnder}${key}`, key);
    if (as === 'refused') await store.set(key, { ...saved, refused: message });
    else await store.remove(key);
  }
  return told;
};

/** The names of who has to sign in, so that what is left is sent: of all that waits where nobody is signed in. */
export const whoSignsIn = (waiting: readonly SealedAnswer[], told: readonly Sent[]): readonly string[] => {
  const isSignedOut = told.some(({ as }) => as === 'signed-out');
  const others = told.filter(({ as }) => as === 'not-yours').map(({ key }) => key);
  const left = waiting.filter((one) => isSignedOut || others.includes(answerKey(one)));
  return [...new Set(left.map(({ takerName }) => takerName))];
};
