/** The entry a finished morning check becomes, and what may stand as "last time" tomorrow. */
import { entryFormat, type MorningEntry } from '#core/record/entries.ts';
import { known } from '../session/entry.ts';
import { asksSwellingOf, jointMorning, type LastMorning, type MorningDraft } from './morning-draft.ts';

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
  joints: draft.joints.map((joint) => {
    const { pain, stiffnessMinutes, swelling, flare } = jointMorning(draft, joint);
    return {
      joint,
      pain: known(pain),
      stiffnessMinutes: draft.asksStiffness ? known(stiffnessMinutes) : null,
      stiffnessState: draft.asksStiffness ? 'asked' : 'not-applicable',
      swelling: !asksSwellingOf(draft, joint) || swelling === 'unknown' ? null : swelling,
      swellingState: asksSwellingOf(draft, joint) ? 'asked' : 'not-applicable',
      swellingQuestion: 'more-than-usual',
      flare: known(flare),
    };
  }),
});

/** What may stand in "as last time" tomorrow. */
export const lastMorningOf = (draft: MorningDraft): LastMorning =>
  Object.fromEntries(
    draft.joints.flatMap((joint) => {
      const { stiffnessMinutes } = jointMorning(draft, joint);
      return typeof stiffnessMinutes === 'number' ? [[joint, { stiffnessMinutes }]] : [];
    }),
  );
