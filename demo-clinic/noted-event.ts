/** Treatment or another thing that happened, as a clinician of a story writes it down. */
import type { CareEvent, CourseForm } from '#core/episode/care-event.ts';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import type { Joint } from '#core/exercises/joints.ts';

export interface NotedEvent {
  readonly does: 'note-event';
  readonly kind: CareEvent['kind'];
  readonly joint: Joint | null;
  /** It happened before the day on which it was written down. */
  readonly daysAgo?: number;
  readonly medicine?: RecordedEvent['medicine'];
  /** A course of steroid: how many days it lasts, and how it is taken. */
  readonly course?: { readonly days: number; readonly form: CourseForm };
  readonly remark?: string;
}
