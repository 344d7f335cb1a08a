/**
 * One prescription item over time, relative to its first signed dose: a staircase of what was prescribed, and what
 * each session did on the same scale. A dose that cannot be compared with the first has no height and says so.
 */
import { changesBetween, type DoseChange, shareOf, withShareOfFirst } from '#core/decision/dose/volume.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { stepInShort } from '#core/prescribing/dose-in-short.ts';
import type { PrescriptionVersion, SessionRecord } from '#core/record/record.ts';
import type { Day } from '#core/time/day.ts';
import { type DoseDone, doseDone } from './dose-done.ts';

/** How a version came to be in force. */
export type StepWay = 'signed' | 'within-band' | 'approved-ahead' | 'eased-back';

/** A signed version, by civil days of the clinic. */
export interface DatedVersion extends PrescriptionVersion {
  readonly signedOn: Day;
  readonly endedOn: Day | null;
  readonly way: StepWay;
}

export interface DoseStep {
  readonly prescriptionId: string;
  readonly version: number;
  readonly from: Day;
  /** Day on which the next dose or the end of the item took its place; null = in force. */
  readonly to: Day | null;
  readonly dose: Dose;
  /** 1 = as much as the first signed dose; null = not to be compared with it. */
  readonly share: number | null;
  readonly way: StepWay;
  /** "3 × 12, 4.5 kg"; "× 13" where only the repetitions are new. */
  readonly inShort: string;
  /** From the dose before it; empty for the first. */
  readonly changes: readonly DoseChange[];
  readonly easier: { readonly dose: Dose; readonly share: number | null };
}

interface CourseSession extends Omit<DoseDone, 'meant'> {
  readonly sessionId: string;
  readonly day: Day;
}

export interface DoseCourse {
  readonly itemId: string;
  /** Oldest first. */
  readonly steps: readonly DoseStep[];
  readonly sessions: readonly CourseSession[];
  /** Steps that have no height, because the load of an exercise is not known. */
  readonly notComparable: number;
}

const earlier = (a: Day | null, b: Day | null): Day | null => (a === null || (b !== null && b < a) ? b : a);

const stepsOf = (versions: readonly DatedVersion[]): readonly DoseStep[] => {
  const ordered = withShareOfFirst(versions);
  return ordered.map(({ id, version, dose, badDay, signedOn, endedOn, way, share }, place) => {
    const before = ordered[place - 1]?.dose ?? null;
    return {
      prescriptionId: id,
      version,
      from: signedOn,
      to: earlier(ordered[place + 1]?.signedOn ?? null, endedOn),
      dose,
      share,
      way,
      inShort: stepInShort(before, dose),
      changes: before ? changesBetween(before, dose) : [],
      easier: { dose: badDay, share: shareOf(badDay, ordered[0]!.dose) },
    };
  });
};

export const doseCourseOf = (
  all: readonly DatedVersion[],
  sessions: readonly SessionRecord[],
  itemId: string,
): DoseCourse => {
  const own = all.filter((version) => version.itemId === itemId);
  const versions = new Map(own.map((version) => [version.id, version]));
  const steps = stepsOf(own);
  const first = steps[0]?.dose ?? null;
  return {
    itemId,
    steps,
    sessions: sessions.flatMap((session): readonly CourseSession[] => {
      const done = doseDone(session, itemId, versions, first);
      if (!done) return [];
      const { meant: _meant, ...rest } = done;
      return [{ sessionId: session.id, day: session.day, ...rest }];
    }),
    notComparable: steps.filter(({ share }) => share === null).length,
  };
};
