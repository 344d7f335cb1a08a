/** Everything that can happen in a session. Instants come with the event; the reducer reads no clock. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { LimbSign } from '#core/prescribing/occlusion/limb-check.ts';
import type { StopReason } from '#core/record/record.ts';
import type { FlagsWhen, LimbAnswer, News, Score, YesNo } from './draft.ts';

type At = { readonly item: number; readonly set: number };

export type SessionEvent =
  | { readonly type: 'go'; readonly step: string }
  | { readonly type: 'change'; readonly step: string }
  | { readonly type: 'next' }
  /** "I feel unwell": the list of warning signs, from wherever the session stands. */
  | { readonly type: 'unwell' }
  | { readonly type: 'tick'; readonly list: string; readonly values: readonly string[] }
  | { readonly type: 'score'; readonly key: string; readonly score: Score }
  | { readonly type: 'relief'; readonly relief: YesNo }
  | { readonly type: 'news'; readonly news: readonly News[] }
  | { readonly type: 'gave-way'; readonly joint: Joint; readonly gaveWay: YesNo }
  | { readonly type: 'extra'; readonly didExtra: YesNo }
  | { readonly type: 'other-joint'; readonly isWorse: YesNo }
  /** All as usual, or something different, which is then asked. */
  | { readonly type: 'usual'; readonly isUsual: boolean }
  /** The statements after the work: all right, or each asked. */
  | { readonly type: 'right'; readonly isRight: boolean }
  /** The whole list of warning signs, in place of the short question. */
  | { readonly type: 'whole-list'; readonly when: FlagsWhen }
  /** Asked once more about what was ticked. */
  | { readonly type: 'confirm'; readonly isSlip: boolean; readonly now: number }
  /** An empty list is the answer "none of these"; a flag is asked about once more. */
  | {
      readonly type: 'flags';
      readonly when: FlagsWhen;
      readonly flags: readonly RedFlag[];
      readonly now: number;
    }
  | { readonly type: 'load'; readonly item: number; readonly loadKg: number }
  /** The lighter dose signed for days like this, for all that has not been begun. */
  | { readonly type: 'lighter' }
  /** Not lighter after all: what "lighter" changed and nobody has begun since. */
  | { readonly type: 'not-lighter' }
  | { readonly type: 'leave-out'; readonly item: number }
  | { readonly type: 'finish-here' }
  /** null: the count was lost. */
  | ({ readonly type: 'count'; readonly repetitions: number | null } & At)
  | ({ readonly type: 'set-done'; readonly lostCount: boolean; readonly now: number } & At)
  | ({ readonly type: 'set-stopped'; readonly now: number } & At)
  | ({ readonly type: 'reserve'; readonly reserve: Score } & At)
  | ({ readonly type: 'stop-reason'; readonly reason: StopReason } & At)
  | ({ readonly type: 'hurt'; readonly joint: Joint; readonly score: Score } & At)
  /** Whether the rest of the exercise is left. */
  | ({ readonly type: 'stop-done'; readonly isLeft: boolean } & At)
  | { readonly type: 'cuff-on'; readonly item: number; readonly now: number }
  | { readonly type: 'cuff-down'; readonly item: number; readonly now: number }
  /** Stop pressed or time up: on the way to taking it off. */
  | ({ readonly type: 'cuff-stop' } & At)
  | { readonly type: 'cuff-off'; readonly item: number; readonly now: number }
  | {
      readonly type: 'limb';
      readonly item: number;
      readonly isLater: boolean;
      readonly sign: LimbSign;
      readonly answer: LimbAnswer;
    }
  /** Asked once more before the ten minutes are over, because all looks as usual again. */
  | { readonly type: 'limb-again'; readonly item: number }
  /** It was not: back to waiting. */
  | { readonly type: 'limb-wait'; readonly item: number }
  /** The session is looked at again: after a pause, after a reload, or because the phone was picked up. */
  | { readonly type: 'resumed' }
  | { readonly type: 'sent'; readonly now: number };
