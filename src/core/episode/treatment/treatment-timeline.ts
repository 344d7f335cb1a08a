/** What was done about the disease, as a line of days: medicines, courses, missed doses, injections. */
import type { Joint } from '../../exercises/joints.ts';
import type { Day } from '../../time/day.ts';
import { isTreatment, type TreatmentKind } from '../care-event.ts';
import type { RecordedEvent } from '../event-effects.ts';
import { eventInWords } from '../event-words.ts';

export interface TreatmentLine {
  readonly id: string;
  readonly kind: TreatmentKind;
  readonly day: Day;
  /** The day itself but for a course. */
  readonly lastDay: Day;
  /** null = it speaks of no one joint, or nobody named it. */
  readonly joint: Joint | null;
  readonly what: string;
  readonly remark: string | null;
  /** An entry in error that counts beside the one in its place. */
  readonly correctedPending?: true;
}

/** Oldest first. */
export const treatmentLines = (
  events: readonly (RecordedEvent & { readonly correctedPending?: true })[],
): readonly TreatmentLine[] =>
  events
    .filter(isTreatment)
    .toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : a.recordedAt - b.recordedAt))
    .map((event) => ({
      id: event.id,
      kind: event.kind,
      day: event.day,
      lastDay: event.lastDay ?? event.day,
      joint: event.joint,
      what: eventInWords(event),
      remark: event.remark,
      ...(event.correctedPending ? { correctedPending: true } : {}),
    }));

/** Those that reach into some days and speak of a joint; one that names none speaks of every joint. */
export const treatmentOf = (
  lines: readonly TreatmentLine[],
  joint: Joint | null,
  since: Day,
  today: Day,
): readonly TreatmentLine[] =>
  lines.filter(
    (line) =>
      line.lastDay >= since &&
      line.day <= today &&
      (joint === null || line.joint === null || line.joint === joint),
  );
