/** The entry a finished or stopped session becomes. What was not answered goes out as null, never as zero. */

import { shortWording } from '#core/danger/signs-asked.ts';
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { LimbCheck, SignAnswer } from '#core/prescribing/occlusion/limb-check.ts';
import type { SessionEntry } from '#core/record/entries.ts';
import { entryFormat } from '#core/record/entries.ts';
import { higherScore } from './asked-again.ts';
import {
  allFlags,
  asksReason,
  didWork,
  type ItemDraft,
  type LimbAnswer,
  type LimbAnswers,
  type Score,
  type SessionDraft,
  scoreKey,
  setOf,
} from './draft.ts';
import { signsOf } from './limb-signs.ts';
import { signFormOf } from './sign-form.ts';
import { asksLoad, reachedSets } from './steps.ts';

/** "I don't know" and no answer are alike to the engine: missing. */
export const known = <V extends number | boolean | string>(
  answer: V | 'unknown' | null | undefined,
): V | null => (answer === 'unknown' || answer === undefined ? null : (answer as V | null));

const setsOf = (item: ItemDraft): SessionEntry['sets'] =>
  Array.from({ length: reachedSets(item) }, (_, index) => {
    const set = setOf(item, index + 1);
    return {
      prescriptionId: item.prescriptionId,
      itemId: item.itemId,
      set: index + 1,
      repetitions: set.repetitions,
      loadKg: asksLoad(item) ? item.loadKg : prescribedLoadKg(item.dose),
      reserve: known(set.reserve),
      stopReason: set.stopReason ?? (asksReason(item, index + 1) || set.lostCount ? 'unknown' : 'none'),
      easier: item.isEasierSession,
    };
  });

/** An empty list says "asked, and none": it needs every time of asking to be answered. */
const redFlagsOf = (draft: SessionDraft): SessionEntry['redFlags'] => {
  const told = allFlags(draft);
  const isAnswered = draft.flagsBefore !== null && (draft.flagsDuring !== null || !didWork(draft));
  return told.length > 0 || isAnswered ? [...told] : null;
};

/** The form of each time of asking that was answered. */
const signsAskedOf = (draft: SessionDraft): NonNullable<SessionEntry['signsAsked']> => {
  const answered = {
    before: draft.flagsBefore !== null,
    during: draft.flagsDuring !== null,
    now: draft.flagsNow.length > 0,
  };
  return (['before', 'now', 'during'] as const)
    .filter((when) => answered[when])
    .map((when) => {
      const form = signFormOf(draft, when);
      return { moment: when, form, wording: form === 'list' ? null : shortWording };
    });
};

/** Lighter as a whole: chosen so, or every exercise done was the lighter one. */
const kindOf = (draft: SessionDraft): SessionEntry['kind'] => {
  const done = draft.items.filter((item) => reachedSets(item) > 0);
  return draft.kind === 'bad-day' || (done.length > 0 && done.every((item) => item.isEasierSession))
    ? 'bad-day'
    : 'full';
};

const signOf = (answer: LimbAnswer | undefined): SignAnswer | null =>
  answer === 'usual' || answer === 'not-usual' ? answer : null;

const limbCheckOf = (item: ItemDraft, moment: LimbCheck['moment'], answers: LimbAnswers): LimbCheck => {
  const isShown = item.signs?.pulse !== 'not-shown';
  return {
    itemId: item.itemId,
    moment,
    colour: signOf(answers.colour),
    feeling: signOf(answers.feeling),
    pulse: signOf(answers.pulse),
    pulseState: !signsOf(item, false).includes('pulse') ? 'not-asked' : isShown ? 'asked' : 'not-shown',
  };
};

/** One look for each line with a cuff, and a second where it was asked again. */
const limbChecksOf = (draft: SessionDraft): readonly LimbCheck[] =>
  draft.items
    .filter((item) => item.restrictions.length > 0)
    .flatMap((item) => [
      limbCheckOf(item, 'after', item.signs ?? {}),
      ...(item.signsLater ? [limbCheckOf(item, 'later', item.signsLater)] : []),
    ]);

/** Asked again after the session had been left, the higher answer counts: it can only make the rules more careful. */
const painBefore = ({ scores, earlierPain }: SessionDraft, joint: Joint): Score | undefined => {
  const key = scoreKey('before', joint);
  return higherScore(scores[key], earlierPain?.[key]);
};

export const sessionEntryOf = (draft: SessionDraft, sentAt: number): SessionEntry => {
  const score = (key: string): Score | undefined => draft.scores[key];
  return {
    format: entryFormat,
    entryId: draft.entryId,
    day: draft.day,
    zone: draft.zone,
    sentAt,
    ...(draft.enteredAs ? { enteredAs: draft.enteredAs } : {}),
    redFlags: redFlagsOf(draft),
    signsAsked: signsAskedOf(draft),
    ...(draft.slips?.length ? { signSlips: [...draft.slips] } : {}),
    extraPainRelief: known(draft.relief),
    kind: kindOf(draft),
    beganAt: draft.beganAt,
    endedAt: Math.max(draft.beganAt, draft.endedAt ?? sentAt),
    didExtra: known(draft.didExtra),
    news: draft.news === null ? null : [...draft.news],
    otherJointWorse: known(draft.otherJointWorse),
    stoppedByFlag: draft.stoppedByFlag,
    limbChecks: limbChecksOf(draft),
    sets: draft.items.flatMap(setsOf),
    joints: draft.joints.map((joint) => ({
      joint,
      painBefore: known(painBefore(draft, joint)),
      painDuring: known(score(scoreKey('during', joint))),
      painAfter: known(score(scoreKey('after', joint))),
      twoHoursState: draft.asksTwoHours ? 'asked' : 'not-applicable',
      muscleBurn: known(score('burn')),
      cuffDiscomfort: known(score('cuff')),
      gaveWay: known(draft.gaveWay[joint]),
    })),
  };
};
