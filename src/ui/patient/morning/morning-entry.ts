/** The entry a finished morning check becomes, and what may stand as "last time" tomorrow. */
import type { Joint } from '#core/exercises/joints.ts';
import { entryFormat, type MorningEntry } from '#core/record/entries.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { known } from '../session/entry.ts';
import { questionsOf } from './joint-questions.ts';
import { jointMorning, type LastMorning, type MorningDraft } from './morning-draft.ts';

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

export const morningEntryOf = (draft: MorningDraft, sentAt: number): MorningEntry => ({
  format: entryFormat,
  entryId: draft.entryId,
  day: draft.day,
  zone: draft.zone,
  sentAt,
  ...(draft.enteredAs ? { enteredAs: draft.enteredAs } : {}),
  ...(draft.amends ? { amends: draft.amends } : {}),
  redFlags: draft.flags === null ? null : [...draft.flags],
  extraPainRelief: known(draft.relief),
  answeredAt: draft.endedAt ?? sentAt,
  fatigue: null,
  fatigueState: 'not-applicable',
  joints: draft.joints.map((joint) => answersOf(draft, joint)),
});

/** What may stand in "as last time" tomorrow. */
export const lastMorningOf = (draft: MorningDraft): LastMorning =>
  Object.fromEntries(
    draft.joints.flatMap((joint) => {
      const { stiffnessMinutes } = jointMorning(draft, joint);
      return typeof stiffnessMinutes === 'number' ? [[joint, { stiffnessMinutes }]] : [];
    }),
  );
