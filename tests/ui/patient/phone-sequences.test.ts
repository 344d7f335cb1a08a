/**
 * A phone with its store, a session on it, and the clinic's real procedure behind a network that comes
 * and goes: whatever the order of presses, the record holds each finished session exactly once.
 */
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import { asPatient } from '#tests/support/callers.ts';
import { accessOf, signedExercise, start, twoClinics, zone } from '#tests/support/clinic.ts';
import { drawSeed, rounds } from '#tests/support/drawn-rounds.ts';
import { freshStore } from '#tests/support/store.ts';
import {
  type Effect,
  emptyOutbox,
  type Outbox,
  type OutboxEvent,
  outboxReducer,
  type Saved,
  waiting,
} from '#ui/patient/outbox/outbox.ts';
import { beginSession } from '#ui/patient/session/begin.ts';
import type { SessionDraft } from '#ui/patient/session/draft.ts';
import { sessionEntryOf } from '#ui/patient/session/entry.ts';
import type { SessionEvent } from '#ui/patient/session/events.ts';
import { sessionReducer } from '#ui/patient/session/session-reducer.ts';
import { stepsOf } from '#ui/patient/session/steps.ts';
import { exercise, today, weightDose } from './views.ts';

const runs = rounds(400, 5000);
const day = dayAt(start, zone);

let store: Store;
let clinician: Access;
let rows: ReturnType<Store['writer']['client']['prepare']>;

/** Somebody with one signed exercise, and the clinic's own procedure that takes what their phone sends. */
interface Person {
  readonly patientId: string;
  readonly view: ReturnType<typeof today>;
  readonly send: (saved: Saved) => Promise<OutboxEvent>;
}

beforeAll(async () => {
  store = freshStore();
  // What a power cut would take is tried elsewhere; here nobody waits for the disk.
  store.writer.client.pragma('synchronous = OFF');
  ({ clinician } = await twoClinics(store));
  rows = store.writer.client.prepare('SELECT entry_id AS id FROM training_session WHERE patient_id = ?');
});

const newPerson = async (): Promise<Person> => {
  const born = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  const patientId = await addPatient(clinician, born);
  const { prescriptionId, itemId } = await signedExercise(clinician, patientId);
  const access = accessOf(store, 'a', `user-${patientId}`);
  const api = asPatient(access, patientId);
  return {
    patientId,
    view: today({
      day,
      exercises: [exercise(itemId, { ...weightDose, sets: 1 }, { prescriptionId, itemId })],
    }),
    send: async ({ entryId, kind, entry }) => {
      const answer = await api.patient.entries.send({ kind, entry: { ...entry, sentAt: access.now } });
      return { type: 'answered', entryId, ...answer, now: access.now };
    },
  };
};

const stored = ({ patientId }: Person): readonly string[] =>
  (rows.all(patientId) as { id: string }[]).map((row) => row.id);

afterAll(() => store.close());

/** Everything a phone keeps when its page is closed. */
interface Disk {
  draft: SessionDraft | null;
  readonly entries: Map<string, Saved>;
}

const phone = (name: string, { view, send }: Person) => {
  const disk: Disk = { draft: null, entries: new Map() };
  const finished: string[] = [];
  let outbox: Outbox = emptyOutbox;
  let isConnected = true;
  let isOpen = true;
  let flying: Saved | null = null;
  let count = 0;
  let now = start;
  const take = (effects: readonly Effect[]) => {
    for (const effect of effects) {
      if (effect.type === 'keep') disk.entries.set(effect.saved.entryId, effect.saved);
      if (effect.type === 'forget') disk.entries.delete(effect.entryId);
      if (effect.type === 'send') flying = effect.saved;
    }
  };
  const translate = (event: OutboxEvent) => {
    const next = outboxReducer(outbox, event);
    outbox = next.state;
    take(next.effects);
  };
  const finish = (draft: SessionDraft) => {
    const entry = sessionEntryOf(draft, now);
    if (!finished.includes(draft.entryId)) finished.push(draft.entryId);
    translate({
      type: 'saved',
      saved: {
        entryId: draft.entryId,
        ownerId: 'p',
        kind: 'session',
        entry,
        encrypted: null,
        day,
        savedAt: now,
        isUrgent: (entry.redFlags?.length ?? 0) > 0,
        status: 'waiting',
        early: 0,
        clockDoubtful: false,
      },
      now,
    });
    disk.draft = null;
  };
  const step = (event: SessionEvent) => {
    if (!isOpen || disk.draft === null) return;
    disk.draft = sessionReducer(disk.draft, event);
    if (disk.draft.endedAt !== null) finish(disk.draft);
  };
  const open = () => {
    isOpen = true;
    outbox = emptyOutbox;
    flying = null;
    translate({ type: 'restored', entries: [...disk.entries.values()], now });
  };
  return {
    finished,
    outbox: () => outbox,
    begin: () => {
      if (!isOpen || disk.draft !== null) return;
      count += 1;
      disk.draft = beginSession({
        view,
        ownerId: 'p',
        entryId: `${name}-${count}`,
        zone,
        now,
        isEasierSession: false,
      });
    },
    answer: (event: SessionEvent) => step(event),
    back: () => {
      if (disk.draft === null) return;
      const steps = stepsOf(disk.draft);
      step({ type: 'go', step: steps[Math.max(0, steps.indexOf(disk.draft.step) - 1)] ?? 'check' });
    },
    finish: () => step({ type: 'sent', now }),
    close: () => {
      isOpen = false;
      flying = null;
    },
    open,
    /** The page dies after the end was written and before the entry was. */
    crash: () => {
      if (!isOpen || disk.draft === null) return;
      const ended = sessionReducer(disk.draft, { type: 'sent', now });
      open();
      finish(ended);
    },
    connect: (is: boolean) => {
      isConnected = is;
      if (isOpen) translate({ type: is ? 'online' : 'offline', now });
    },
    resend: () => {
      if (isOpen) translate({ type: 'asked', now });
    },
    wait: (ms: number) => {
      now += ms;
      if (isOpen) translate({ type: 'woke', now });
    },
    /** What is on its way arrives; the reply may be lost. */
    deliver: async (isReplyLost: boolean) => {
      if (!isOpen || flying === null) return;
      const saved: Saved = flying;
      flying = null;
      if (!isConnected) return translate({ type: 'failed', entryId: saved.entryId, why: 'trouble', now });
      const answer = await send(saved);
      translate(
        isReplyLost ? { type: 'failed', entryId: saved.entryId, why: 'trouble', now } : { ...answer, now },
      );
    },
  };
};

type Phone = ReturnType<typeof phone>;

const answers: readonly SessionEvent[] = [
  { type: 'next' },
  { type: 'flags', when: 'before', flags: [], now: start },
  { type: 'flags', when: 'during', flags: [], now: start },
  { type: 'flags', when: 'during', flags: ['chest-pain'], now: start },
  { type: 'score', key: 'before:right-knee', score: 3 },
  { type: 'score', key: 'after:right-knee', score: 4 },
  { type: 'count', item: 0, set: 1, repetitions: 15 },
  { type: 'set-done', item: 0, set: 1, lostCount: false, now: start },
];

const moves = {
  begin: (at: Phone) => at.begin(),
  back: (at: Phone) => at.back(),
  finish: (at: Phone) => at.finish(),
  close: (at: Phone) => at.close(),
  reopen: (at: Phone) => at.open(),
  reload: (at: Phone) => at.open(),
  crash: (at: Phone) => at.crash(),
  offline: (at: Phone) => at.connect(false),
  online: (at: Phone) => at.connect(true),
  resend: (at: Phone) => at.resend(),
  wait: (at: Phone) => at.wait(60_000),
  deliver: (at: Phone) => at.deliver(false),
  'lose-reply': (at: Phone) => at.deliver(true),
} as const satisfies Readonly<Record<string, (at: Phone) => void | Promise<void>>>;

const move = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom(...(Object.keys(moves) as (keyof typeof moves)[])) },
  { weight: 1, arbitrary: fc.nat(answers.length - 1) },
);

describe('a session on a phone whose page, network and replies come and go', () => {
  it(`is one record each, after any of ${runs} sequences (seed ${drawSeed})`, async () => {
    let place = 0;
    let sessions = 0;
    let person = await newPerson();
    await fc.assert(
      fc.asyncProperty(fc.array(move, { minLength: 4, maxLength: 30 }), async (list) => {
        // Deciding over thousands of sessions of one person is not what is tried here.
        if (place % 12 === 11) person = await newPerson();
        place += 1;
        const at = phone(`run-${place}`, person);
        at.begin();
        for (const one of list) {
          if (typeof one === 'number') at.answer(answers[one]!);
          else await moves[one](at);
        }
        at.open();
        at.connect(true);
        for (let round = 0; round < 40 && waiting(at.outbox()).length > 0; round++) {
          await at.deliver(false);
          at.wait(400_000);
        }
        expect(waiting(at.outbox())).toEqual([]);
        const mine = stored(person).filter((id) => id.startsWith(`run-${place}-`));
        expect(mine.sort()).toEqual([...at.finished].sort());
        sessions += mine.length;
      }),
      { seed: drawSeed, numRuns: runs },
    );
    expect(sessions).toBeGreaterThan(runs / 5);
  }, 300_000);
});
