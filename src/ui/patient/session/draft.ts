/** A running session as the phone keeps it. null always means: not answered yet. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Dose, repetitionsOfSet } from '#core/prescribing/dose.ts';
import type { LimbSign, SignAnswer } from '#core/prescribing/occlusion/limb-check.ts';
import { type Carer, type News, newsKinds } from '#core/record/entry-words.ts';
import type { StopReason } from '#core/record/record.ts';
import type { Text } from '#messages/text.ts';
import type { TakenUp } from './taken-up.ts';

/** A number, or said not to be known. */
export type Score = number | 'unknown';
export type YesNo = boolean | 'unknown';

export const news = newsKinds;
export type { News };
export interface SetDraft {
  readonly repetitions: number | null;
  /** Said to be lost, which is an answer and not a gap. */
  readonly lostCount: boolean;
  readonly reserve: Score | null;
  readonly stopReason: StopReason | null;
  /** "Stop this exercise" was pressed in this set. */
  readonly isStopped: boolean;
  /** Instant "set done" was first pressed; the rest runs from it. */
  readonly finishedAt: number | null;
  /** Stopped before a count was given: how many is asked. */
  readonly asksCount?: boolean;
  /** How much each joint hurt that the set was stopped for; absent until it is asked. */
  readonly hurt?: Readonly<Partial<Record<Joint, Score>>>;
}

/** A stretch of time with the cuff on; `to` null while it is. */
interface Restriction {
  readonly from: number;
  readonly to: number | null;
}

/** "Not shown" is an answer about the pulse alone. */
export type LimbAnswer = SignAnswer | 'unknown' | 'not-shown';
export type LimbAnswers = Readonly<Partial<Record<LimbSign, LimbAnswer>>>;

interface Planned {
  readonly dose: Dose;
  readonly isEasierSession: boolean;
}

export interface ItemDraft {
  readonly itemId: string;
  readonly prescriptionId: string;
  /** In the words of every language; plain English in drafts of an earlier release. */
  readonly title: Text | string;
  readonly instructions: readonly (Text | string)[];
  readonly joints: readonly Joint[];
  readonly cautions: readonly (Text | string)[];
  /** Those among them that set a limit to today's dose; absent in drafts of an earlier release. */
  readonly limits?: readonly Text[];
  /** The dose followed today: the prescribed one or the lighter one signed with it. */
  readonly dose: Dose;
  readonly badDay: Dose;
  readonly isEasierSession: boolean;
  /** Not done often yet: how to do it is shown open. */
  readonly isNew?: boolean;
  /** What the session began with, before the answers of today were known. */
  readonly planned: Planned;
  /** What that was before the patient asked for the easier session; absent where nobody did. */
  readonly beforeLighter?: Planned;
  /** Not done today: because of today's answers, or because the patient said so. */
  readonly leftOut: 'offer' | 'patient' | null;
  readonly loadKg: number | null;
  /** Sets reached, in order. */
  readonly sets: readonly SetDraft[];
  /** Set after which the rest of the exercise was left; null while it goes on. */
  readonly leftAt: number | null;
  readonly restrictions: readonly Restriction[];
  /** Fingers or toes two minutes after release; absent in drafts of an earlier release. */
  readonly signs?: LimbAnswers;
  /** The same once more; absent until it is asked. */
  readonly signsLater?: LimbAnswers;
  /** One answer on all signs at once, in drafts of an earlier release. */
  readonly limb?: 'usual' | 'not-yet' | 'unknown' | null;
}

export type FlagsWhen = 'before' | 'during' | 'now';

interface ToConfirm {
  readonly when: FlagsWhen;
  readonly flags: readonly RedFlag[];
  readonly from: string;
}

export interface SessionDraft extends TakenUp {
  /** Shape of this record; an older one is not read. */
  readonly shape: 1;
  readonly entryId: string;
  readonly ownerId: string;
  readonly day: string;
  readonly zone: string;
  readonly kind: 'full' | 'bad-day';
  readonly asksTwoHours: boolean;
  readonly beganAt: number;
  readonly joints: readonly Joint[];
  /** What each answer to "pain now" leaves of today, as it came with the day. */
  readonly painLookups: readonly PainLookup[];
  readonly items: readonly ItemDraft[];
  readonly step: string;
  /** Where "I feel unwell" was pressed; back there when it was nothing on the list. */
  readonly returnTo: string | null;
  /** Steps whose "I felt unwell" was followed by "None of these": not asked twice. */
  readonly lookedAt: readonly string[];
  /** A step was opened from the check page: go back there afterwards. */
  readonly isChanging: boolean;
  readonly flagsBefore: readonly RedFlag[] | null;
  readonly flagsDuring: readonly RedFlag[] | null;
  /** Warning signs told in the middle of the session. */
  readonly flagsNow: readonly RedFlag[];
  readonly relief: YesNo | null;
  /** Boxes ticked on a list that has not been answered yet, by list. */
  readonly ticked: Readonly<Record<string, readonly string[]>>;
  readonly news: readonly News[] | null;
  /** "As usual today?"; absent in drafts of an earlier release, which asked each thing on a page. */
  readonly isUsual?: boolean | null;
  /** "Is all of this right?" after the work; absent as above. */
  readonly isRight?: boolean | null;
  /** How warning signs are asked for; absent = by the whole list, as earlier releases did. */
  readonly signForm?: 'short' | 'list';
  /** Times of asking at which the whole list was opened. */
  readonly wholeLists?: readonly FlagsWhen[];
  /** Ticked and not confirmed yet, with the step it was ticked on. */
  readonly toConfirm?: ToConfirm | null;
  /** Ticked, and taken back when asked once more. */
  readonly slips?: readonly RedFlag[];
  /** Absent in drafts of an earlier release. */
  readonly otherJointWorse?: YesNo | null;
  /** Who types, where it is not the patient. Absent in drafts of an earlier release. */
  readonly enteredAs?: Carer | null;
  readonly scores: Readonly<Record<string, Score>>;
  readonly gaveWay: Readonly<Partial<Record<Joint, YesNo>>>;
  readonly didExtra: YesNo | null;
  readonly stoppedByFlag: boolean;
  readonly endedAt: number | null;
}

export const emptySet: SetDraft = {
  repetitions: null,
  lostCount: false,
  reserve: null,
  stopReason: null,
  isStopped: false,
  finishedAt: null,
};

export const scoreKey = (when: 'before' | 'during' | 'after', joint: Joint): string => `${when}:${joint}`;

export const setOf = (item: ItemDraft, set: number): SetDraft => item.sets[set - 1] ?? emptySet;

/** A set that fell short, was stopped, or was not counted: the reason is asked. */
export const asksReason = (item: ItemDraft, set: number): boolean => {
  const { repetitions, isStopped } = setOf(item, set);
  return isStopped || (repetitions !== null && repetitions < repetitionsOfSet(item.dose, set).low);
};

export const allFlags = (draft: SessionDraft): readonly RedFlag[] => [
  ...new Set([...(draft.flagsBefore ?? []), ...draft.flagsNow, ...(draft.flagsDuring ?? [])]),
];

/** The exercise goes on: a set is to come, or the last one is not finished. */
export const hasSetsLeft = ({ leftAt, sets, dose }: ItemDraft): boolean =>
  leftAt === null && (sets.length < dose.sets || sets.at(-1)?.finishedAt === null);

/** Work was done in at least one set. */
export const didWork = (draft: SessionDraft): boolean => draft.items.some((item) => item.sets.length > 0);
