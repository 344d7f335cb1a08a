/** The entry a finished morning check becomes. What was not answered goes out as null. */
import { type SignsAsked, shortWording } from '#core/danger/signs-asked.ts';
import type { LeftOfJoint } from '#core/decision/left-of-today.ts';
import type { PainLookup } from '#core/decision/pain-lookup.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { entryFormat, type MorningEntry } from '#core/record/entries.ts';
import type { MorningVia, OtherJoint } from '#core/record/entry-words.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { known } from '../session/entry.ts';
import { questionsOf } from './joint-questions.ts';
import { jointMorning, type MorningDraft } from './morning-draft.ts';
import { isAllUsual } from './morning-steps.ts';
import { whatItLeaves } from './what-it-leaves.ts';

/** What was not asked is sent as such, never as an answer. */
const answersOf = (draft: MorningDraft, joint: Joint): MorningEntry['joints'][number] => {
  const given = jointMorning(draft, joint);
  const asked = questionsOf(draft, joint);
  const fields = morningQuestions.map((question) => ({
    [question.answer.name]: asked.includes(question) ? known(given[question.answer.name]) : null,
    ...(question.state
      ? { [question.state.name]: asked.includes(question) ? 'asked' : 'not-applicable' }
      : {}),
    ...question.sent,
  }));
  return Object.assign({ joint }, ...fields);
};

/** The one wording of the urine question and the whole list name each sign; the short question has a number. */
const signsAskedOf = ({ signForm, flags }: MorningDraft): SignsAsked =>
  signForm === 'short' && flags?.length === 0
    ? { moment: 'morning', form: 'short', wording: shortWording }
    : { moment: 'morning', form: 'list', wording: null };

const viaOf = (draft: MorningDraft): MorningVia => {
  if (draft.isUsual === true) return isAllUsual(draft) ? 'as-yesterday' : 'partly';
  return draft.asYesterday === 'singly' ? 'singly' : 'asked';
};

const otherJointOf = ({ otherJointWorse: said }: MorningDraft): OtherJoint =>
  said === true ? 'worse' : said === false ? 'not-worse' : 'not-answered';

export const morningEntryOf = (draft: MorningDraft, sentAt: number): MorningEntry => ({
  format: entryFormat,
  entryId: draft.entryId,
  day: draft.day,
  zone: draft.zone,
  sentAt,
  ...(draft.enteredAs ? { enteredAs: draft.enteredAs } : {}),
  ...(draft.amends ? { amends: draft.amends } : {}),
  redFlags: draft.flags === null ? null : [...draft.flags],
  ...(draft.flags === null ? {} : { signsAsked: [signsAskedOf(draft)] }),
  ...(draft.slips?.length ? { signSlips: [...draft.slips] } : {}),
  via: viaOf(draft),
  extraPainRelief: known(draft.relief),
  answeredAt: draft.endedAt ?? sentAt,
  fatigue: draft.asksFatigue ? known(draft.fatigue) : null,
  fatigueState: draft.asksFatigue ? 'asked' : 'not-applicable',
  ...(draft.asksOtherJoint ? { otherJoint: otherJointOf(draft) } : {}),
  joints: draft.joints.map((joint) => answersOf(draft, joint)),
});

/** The entry, and what it leaves of today until the clinic's page counts it. */
export const morningSent = (
  draft: MorningDraft,
  lookups: readonly PainLookup[],
  sentAt: number,
): readonly [MorningEntry, readonly LeftOfJoint[]] => {
  const entry = morningEntryOf(draft, sentAt);
  return [entry, whatItLeaves(entry.joints, lookups)];
};
