/** A morning typed from paper or from a call, as an entry's answers. What was left empty stays open, never zero. */
import type { Joint } from '#core/exercises/joints.ts';
import type { OtherJoint } from '#core/record/entry-words.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { flagsOf, isAskedOnPaper, score, type Typed, yes } from './answers.ts';

const readAs = { integer: score, flag: yes, enum: (text: string | undefined) => text || null };

const answersOfJoint = (joint: Joint, swellingNotAsked: readonly Joint[], typed: Typed) =>
  Object.assign(
    {},
    ...morningQuestions.map(({ id, answer, state, sent }) => ({
      [answer.name]: readAs[answer.kind](typed[`${id}-${joint}`]),
      ...(state
        ? { [state.name]: isAskedOnPaper(id, joint, swellingNotAsked) ? 'asked' : 'not-applicable' }
        : {}),
      ...sent,
    })),
  ) as Readonly<Record<string, unknown>>;

/** What the clinic asks of this patient each morning beside the joints. */
export interface AskedMornings {
  readonly swellingNotAsked: readonly Joint[];
  readonly asksFatigue: boolean;
  readonly asksOtherJoint: boolean;
}

const otherJointOf = (said: boolean | null): OtherJoint =>
  said === null ? 'not-answered' : said ? 'worse' : 'not-worse';

export const morningAnswers = (
  entryId: string,
  joints: readonly Joint[],
  { swellingNotAsked, asksFatigue, asksOtherJoint }: AskedMornings,
  typed: Typed,
) => ({
  entryId,
  redFlags: flagsOf(typed),
  extraPainRelief: yes(typed.relief),
  fatigue: asksFatigue ? score(typed.fatigue) : null,
  fatigueState: asksFatigue ? 'asked' : 'not-applicable',
  ...(asksOtherJoint ? { otherJoint: otherJointOf(yes(typed['other-joint-morning'])) } : {}),
  joints: joints.map((joint) => ({ joint, ...answersOfJoint(joint, swellingNotAsked, typed) })),
});
