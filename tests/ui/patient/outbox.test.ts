/** The phone's queue against a server that keeps one record of each entry, as ours does. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holdsIn } from '#tests/support/holds.ts';
import {
  type Effect,
  emptyOutbox,
  type Outbox,
  type OutboxEvent,
  outboxReducer,
  type Saved,
  waiting,
} from '#ui/patient/outbox/outbox.ts';
import { sendEntry } from '#ui/patient/outbox/send-entry.ts';

const saved = (id: string, savedAt: number, isUrgent = false): Saved => ({
  entryId: id,
  ownerId: 'p',
  kind: 'session',
  entry: { entryId: id } as Saved['entry'],
  encrypted: null,
  day: '2026-03-09',
  savedAt,
  isUrgent,
  status: 'waiting',
  early: 0,
  clockDoubtful: false,
});

/** A phone (its memory and its store) and a clinic, stepped by hand. */
const world = () => {
  let state: Outbox = emptyOutbox;
  const store = new Map<string, Saved>();
  const server = new Map<string, number>();
  const order: string[] = [];
  let flying: Saved | null = null;
  let now = 0;
  const take = (effects: readonly Effect[]) => {
    for (const effect of effects) {
      if (effect.type === 'keep') store.set(effect.saved.entryId, effect.saved);
      if (effect.type === 'forget') store.delete(effect.entryId);
      if (effect.type === 'send') flying = effect.saved;
    }
  };
  const step = (event: OutboxEvent) => {
    const next = outboxReducer(state, event);
    state = next.state;
    take(next.effects);
  };
  return {
    server,
    store,
    order,
    state: () => state,
    isFlying: () => flying !== null,
    save: (id: string, isUrgent: boolean) => {
      now += 1;
      step({ type: 'saved', saved: saved(id, now, isUrgent), now });
    },
    wait: (ms: number) => {
      now += ms;
      step({ type: 'woke', now });
    },
    network: (isOnline: boolean) => step({ type: isOnline ? 'online' : 'offline', now }),
    reload: () => {
      state = emptyOutbox;
      flying = null;
      step({ type: 'restored', entries: [...store.values()], now });
    },
    /** The clinic gets it and answers. */
    answer: () => {
      if (!flying) return;
      const { entryId } = flying;
      flying = null;
      const before = server.get(entryId) ?? 0;
      server.set(entryId, before + 1);
      if (before === 0) order.push(entryId);
      step({
        type: 'answered',
        entryId,
        stored: before === 0 ? 'stored' : 'known',
        clockDoubtful: false,
        now,
      });
    },
    /** `reached`: the clinic stored it and the answer was lost on the way back. */
    lose: (reached: boolean, comeAgainAfterMs?: number) => {
      if (!flying) return;
      const { entryId } = flying;
      flying = null;
      if (reached) {
        if (!server.has(entryId)) order.push(entryId);
        server.set(entryId, (server.get(entryId) ?? 0) + 1);
      }
      const told = comeAgainAfterMs === undefined ? {} : { comeAgainAt: now + comeAgainAfterMs };
      step({ type: 'failed', entryId, why: 'trouble', now, ...told });
    },
  };
};

type Move =
  | { readonly do: 'save'; readonly isUrgent: boolean }
  | { readonly do: 'answer' | 'reload' | 'online' | 'offline' | 'lose' | 'lose-answer' }
  | { readonly do: 'wait'; readonly ms: number };

const moves: fc.Arbitrary<Move> = fc.oneof(
  fc.record({ do: fc.constant('save' as const), isUrgent: fc.boolean() }),
  fc.record({
    do: fc.constantFrom(
      'answer' as const,
      'answer' as const,
      'reload' as const,
      'online' as const,
      'offline' as const,
      'lose' as const,
      'lose-answer' as const,
    ),
  }),
  fc.record({ do: fc.constant('wait' as const), ms: fc.integer({ min: 1, max: 400_000 }) }),
);

const play = (at: ReturnType<typeof world>, move: Move, id: () => string) => {
  if (move.do === 'save') at.save(id(), move.isUrgent);
  else if (move.do === 'wait') at.wait(move.ms);
  else if (move.do === 'answer') at.answer();
  else if (move.do === 'reload') at.reload();
  else if (move.do === 'lose' || move.do === 'lose-answer') at.lose(move.do === 'lose-answer');
  else at.network(move.do === 'online');
};

describe('answers saved on the phone', () => {
  it('each reach the clinic as one record, whatever the signal, the reloads and the lost replies', () => {
    holdsIn(2000, fc.array(moves, { maxLength: 60 }), (list) => {
      const at = world();
      let count = 0;
      for (const move of list) play(at, move, () => `e${++count}`);
      at.network(true);
      for (let round = 0; round < 200 && waiting(at.state()).length > 0; round++) {
        at.answer();
        at.wait(400_000);
      }
      expect(waiting(at.state())).toEqual([]);
      expect([...at.server.keys()].sort()).toEqual(
        Array.from({ length: count }, (_, n) => `e${n + 1}`).sort(),
      );
      expect(new Set(at.order).size).toBe(count);
    });
  });

  it('are never more than one at a time on the way', () => {
    const at = world();
    at.save('a', false);
    at.save('b', false);
    expect(at.state().sendingId).toBe('a');
    at.answer();
    expect(at.state().sendingId).toBe('b');
  });

  it('go in the order in which they were saved, also after a failure', () => {
    const at = world();
    at.save('a', false);
    at.save('b', false);
    at.lose(false);
    at.wait(5_000);
    at.answer();
    at.answer();
    expect(at.order).toEqual(['a', 'b']);
  });

  it('go first when they carry a warning sign', () => {
    const at = world();
    at.network(false);
    at.save('a', false);
    at.save('danger', true);
    at.network(true);
    at.answer();
    at.answer();
    expect(at.order).toEqual(['danger', 'a']);
  });

  it('are sent at once when they carry a warning sign, whatever failed before', () => {
    const at = world();
    at.save('a', false);
    at.lose(false);
    at.save('b', false);
    expect(at.isFlying()).toBe(false);
    at.save('danger', true);
    expect(at.state().sendingId).toBe('danger');
  });

  it('with a warning sign are tried again every 15 seconds at least, without one after five minutes', () => {
    const [plain, urgent] = [world(), world()];
    plain.save('a', false);
    urgent.save('a', true);
    for (const at of [plain, urgent])
      for (let failure = 0; failure < 6; failure++) {
        at.wait(300_000);
        at.lose(false);
      }
    plain.wait(299_999);
    expect(plain.isFlying()).toBe(false);
    plain.wait(1);
    expect(plain.isFlying()).toBe(true);
    urgent.wait(14_999);
    expect(urgent.isFlying()).toBe(false);
    urgent.wait(1);
    expect(urgent.isFlying()).toBe(true);
  });

  it('wait 5 seconds after a first failure and not a millisecond less', () => {
    const at = world();
    at.save('a', false);
    at.lose(false);
    at.wait(4_999);
    expect(at.isFlying()).toBe(false);
    at.wait(1);
    expect(at.isFlying()).toBe(true);
  });

  it('come again when a clinic with too much to do says so, not before, and as often as it takes', () => {
    const at = world();
    at.save('a', false);
    for (let times = 0; times < 6; times += 1) {
      at.lose(false, 7_000);
      at.wait(6_999);
      expect(at.isFlying()).toBe(false);
      at.wait(1);
    }
    // None of it counts as a failure.
    at.lose(false);
    at.wait(5_000);
    expect(at.isFlying()).toBe(true);
    at.save('b', true);
    at.lose(false, 60_000);
    at.wait(15_000);
    expect(at.isFlying()).toBe(true);
  });

  it.each([
    ['7', 8_000],
    ['0', 1_000],
    ['999', 1_000_000],
    ['1000', undefined],
    ['Wed, 21 Oct 2015 07:28:00 GMT', undefined],
    [null, undefined],
  ])('are told when to come again by %s', async (said, comeAgainAt) => {
    const post = async () => new Response('', { status: 503, headers: said ? { 'retry-after': said } : {} });
    const event = await sendEntry(saved('a', 1), () => 1_000, post);
    expect(event).toEqual({
      ...{ type: 'failed', entryId: 'a', why: 'trouble', now: 1_000 },
      ...(comeAgainAt === undefined ? {} : { comeAgainAt }),
    });
  });

  it('stay on the phone when the sign-in has run out, and go when asked again', () => {
    const one = outboxReducer(emptyOutbox, { type: 'saved', saved: saved('a', 1), now: 1 });
    const out = outboxReducer(one.state, { type: 'failed', entryId: 'a', why: 'signed-out', now: 2 });
    expect(out.state.isSignedOut).toBe(true);
    expect(waiting(out.state)).toHaveLength(1);
    const again = outboxReducer(out.state, { type: 'asked', now: 3 });
    expect(again.effects).toEqual([{ type: 'send', saved: saved('a', 1) }]);
  });

  it('are put aside and kept when the clinic refuses them, and do not block the next', () => {
    const one = outboxReducer(emptyOutbox, { type: 'saved', saved: saved('a', 1), now: 1 });
    const two = outboxReducer(one.state, { type: 'saved', saved: saved('b', 2), now: 2 });
    const refused = outboxReducer(two.state, { type: 'failed', entryId: 'a', why: 'refused', now: 3 });
    const aside = refused.state.entries.find((entry) => entry.entryId === 'a');
    expect(aside?.status).toBe('aside');
    expect(aside?.entry).not.toBeNull();
    expect(refused.state.sendingId).toBe('b');
  });

  it('leave the phone once the clinic has them: only their time stays listed', () => {
    const one = outboxReducer(emptyOutbox, { type: 'saved', saved: saved('a', 1), now: 1 });
    const done = outboxReducer(one.state, {
      type: 'answered',
      entryId: 'a',
      stored: 'stored',
      clockDoubtful: false,
      now: 2,
    });
    expect(done.state.entries[0]).toMatchObject({ status: 'stored', entry: null });
  });

  it('keep their place behind the session they speak of when it has not arrived', () => {
    const one = outboxReducer(emptyOutbox, { type: 'saved', saved: saved('two-hours', 1), now: 1 });
    const two = outboxReducer(one.state, { type: 'saved', saved: saved('session', 2), now: 2 });
    const early = outboxReducer(two.state, {
      type: 'answered',
      entryId: 'two-hours',
      stored: 'no-session',
      clockDoubtful: false,
      now: 3,
    });
    const woke = outboxReducer(early.state, { type: 'woke', now: 5_003 });
    expect(woke.state.sendingId).toBe('session');
    expect(waiting(woke.state)).toHaveLength(2);
  });
});
