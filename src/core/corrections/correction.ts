/**
 * Entries marked "entered in error". The row itself stays; a correction names it, says why, and names the
 * entry that takes its place, if one does. What bounds or stops something may become stricter by a
 * correction at once, and looser only when a clinician has seen the new plan: until then the correction
 * waits, and both entries count.
 */
import type { Measurement } from '../assessment/measurements/measurement.ts';

export const correctionSubjects = [
  'measurement',
  'screening',
  'event',
  'limit',
  'goal',
  'baseline',
  'effusion-test',
  'clearance',
  'supervised-session',
  'home-answers',
  'contact',
  'note',
  'visit',
] as const;
export type CorrectionSubject = (typeof correctionSubjects)[number];

/** What the patient said: it is struck out, and only the patient says it anew. */
export type StruckOutOnly = Extract<CorrectionSubject, 'home-answers'>;
export const isStruckOutOnly = (subject: CorrectionSubject): subject is StruckOutOnly =>
  subject === 'home-answers';

/** Measurements by which screening closes a method, or by which a cuff is filled. */
const boundingKinds: readonly Measurement['kind'][] = [
  'blood-pressure',
  'ankle-brachial-index',
  'limb-occlusion-pressure',
];

/**
 * What bounds nothing, or only opens: left out it is stricter at once, and a new one opens as any first entry.
 * Without the contact that ended it a warning sign is open again. An appointment at a distance locks hands-on tests,
 * and no dose.
 */
const neverBounding: readonly CorrectionSubject[] = [
  'goal',
  'clearance',
  'supervised-session',
  'home-answers',
  'contact',
  'note',
  'visit',
];

/** Whether a correction waits until a clinician has seen the plan it leads to; `kind` is that of a measurement. */
export const waitsToBeSeen = (subject: CorrectionSubject, kind: string | null): boolean => {
  if (neverBounding.includes(subject)) return false;
  return subject !== 'measurement' || boundingKinds.some((bounding) => bounding === kind);
};

/** One correction as readers need it. */
export interface CorrectionMark {
  readonly subjectId: string;
  /** Id of the entry in its place; null = struck out. */
  readonly replacedById: string | null;
  /** Instant at which the first of the entries corrected one after the other was recorded. */
  readonly firstSaidAt: number;
  readonly isWaiting: boolean;
}

interface Identified {
  readonly id: string;
}

export interface CorrectionIndex {
  /** "waiting": entered in error, and counted beside what replaces it until the new plan was seen. */
  readonly stateOf: (id: string) => 'stands' | 'left-out' | 'waiting';
  /** Whether it is corrected or replaces something, in a correction that still waits. */
  readonly isUnseen: (id: string) => boolean;
  /** Under which id it counts by now: its own, or that of what replaced it; null = struck out. */
  readonly standsAs: (id: string) => string | null;
  /** When a thing was first said: a replacement was asked when the entry in whose place it stands was. */
  readonly saidAt: (row: Identified & { readonly recordedAt: number }) => number;
  /** Corrections that wait, each as the ids that follow one another; null at the end = struck out. */
  readonly chains: readonly (readonly (string | null)[])[];
}

/** What became of each entry, from all corrections of a patient, or of a clinic. */
export const indexCorrections = (marks: readonly CorrectionMark[]): CorrectionIndex => {
  const bySubject = new Map(marks.map((mark) => [mark.subjectId, mark]));
  const byReplacement = new Map(marks.map((mark) => [mark.replacedById, mark]));
  const stateOf: CorrectionIndex['stateOf'] = (id) => {
    const mark = bySubject.get(id);
    if (!mark) return 'stands';
    return mark.isWaiting ? 'waiting' : 'left-out';
  };
  const standsAs: CorrectionIndex['standsAs'] = (id) => {
    const mark = bySubject.get(id);
    if (!mark || mark.isWaiting) return id;
    return mark.replacedById === null ? null : standsAs(mark.replacedById);
  };
  const chainFrom = (id: string): readonly (string | null)[] => {
    const mark = bySubject.get(id);
    if (!mark) return [id];
    const rest = mark.replacedById === null ? [null] : chainFrom(mark.replacedById);
    return mark.isWaiting ? [id, ...rest] : rest;
  };
  const isFirst = ({ subjectId, isWaiting }: CorrectionMark): boolean =>
    isWaiting && byReplacement.get(subjectId)?.isWaiting !== true;
  const chains = marks.filter(isFirst).map((mark) => chainFrom(mark.subjectId));
  const unseen = new Set(chains.flat());
  return {
    stateOf,
    isUnseen: (id) => unseen.has(id),
    standsAs,
    saidAt: ({ id, recordedAt }) => byReplacement.get(id)?.firstSaidAt ?? recordedAt,
    chains,
  };
};

/** The entries as corrected: what to read, to show and to go on from. */
export const asCorrected = <R extends Identified>(rows: readonly R[], index: CorrectionIndex): readonly R[] =>
  rows.filter((row) => index.stateOf(row.id) === 'stands');

export type Counted<R> = R & {
  /** Entered in error, and still counted until a clinician has seen the plan without it. */
  readonly correctedPending?: true;
};

/** What bounds or stops: the entries as corrected, and beside them those whose correction waits. */
export const inForce = <R extends Identified>(
  rows: readonly R[],
  index: CorrectionIndex,
): readonly Counted<R>[] =>
  rows
    .filter((row) => index.stateOf(row.id) !== 'left-out')
    .map((row) => (index.stateOf(row.id) === 'waiting' ? { ...row, correctedPending: true } : row));

/**
 * Every way the entries read while corrections wait: as first entered, with each step between, and last
 * as corrected. One reading when nothing waits.
 */
export const readings = <R extends Identified>(
  rows: readonly R[],
  index: CorrectionIndex,
): readonly [readonly R[], ...(readonly R[])[]] => {
  const own = new Set<string | null>(rows.map((row) => row.id));
  const chains = index.chains.filter((chain) => chain.some((id) => own.has(id)));
  const asSteps = chains.length === 0 ? 0 : Math.max(...chains.map((chain) => chain.length)) - 1;
  const readAt = (step: number): readonly R[] => {
    const chosen = new Set(chains.map((chain) => chain[Math.min(step, chain.length - 1)]));
    return rows.filter((row) =>
      index.isUnseen(row.id) ? chosen.has(row.id) : index.stateOf(row.id) === 'stands',
    );
  };
  return [readAt(0), ...Array.from({ length: asSteps }, (_, step) => readAt(step + 1))];
};

/** Of what is corrected, what the rules read as facts. */
const readByRules: readonly CorrectionSubject[] = ['event', 'baseline', 'effusion-test'];

/** Whether a decision was made while an entry of its joint, or of none, stood that was corrected since. */
export const madeBeforeCorrection = (
  decision: { readonly joint: string; readonly evaluatedAt: number },
  corrections: readonly {
    readonly subject: CorrectionSubject;
    readonly joint: string | null;
    readonly enteredAt: number;
    readonly correctedAt: number;
  }[],
): boolean =>
  corrections.some(
    ({ subject, joint, enteredAt, correctedAt }) =>
      readByRules.includes(subject) &&
      (joint === null || joint === decision.joint) &&
      enteredAt <= decision.evaluatedAt &&
      decision.evaluatedAt < correctedAt,
  );
