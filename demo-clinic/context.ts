/** Where a story happens: who acts, at which instant, in which zone. */
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { dayAt, instantAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import type { Story } from './story.ts';

export interface Actor {
  readonly id: string;
  readonly name: string;
}

export interface DemoContext {
  readonly store: Store;
  readonly auditKey: Uint8Array;
  readonly clinicId: string;
  readonly zone: string;
  readonly clinician: Actor;
  /** Instant after which nothing has happened yet. */
  readonly now: number;
  /** The demo's today. */
  readonly today: Day;
}

const dayOf = (context: DemoContext, story: Pick<Story, 'days'>, day: number): Day =>
  addDays(context.today, day - story.days);

/** A wall-clock time on a day of the story. */
export const instantOf = (
  context: DemoContext,
  story: Pick<Story, 'days'>,
  day: number,
  time: string,
): number => instantAt(dayOf(context, story, day), time, context.zone);

export const accessAt = (context: DemoContext, actor: Actor, now: number): Access => ({
  store: context.store,
  auditKey: context.auditKey,
  clinicId: context.clinicId,
  actorId: actor.id,
  actorName: actor.name,
  now,
  day: dayAt(now, context.zone),
});
