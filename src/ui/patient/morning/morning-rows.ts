/** The morning's answers in lines, each with the step that changes it. */
import type { Joint } from '#core/joints.ts';
import { jointText } from '#ui/shared/text/joint-text.ts';
import { say } from '#ui/words.ts';
import { type CheckRow, flagsText, scoreText, yesNoText } from '../session/check-rows.ts';
import type { Score } from '../session/draft.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning.ts';

const minutesText = (minutes: Score | null): string =>
  minutes === null
    ? say('ask.not-answered')
    : minutes === 'unknown'
      ? say('ask.unknown')
      : minutes === 0
        ? say('morning.stiff-0')
        : say('morning.stiff-minutes', { minutes });

const swellingText = (swelling: JointMorning['swelling']): string =>
  swelling === null
    ? say('ask.not-answered')
    : swelling === 'unknown'
      ? say('ask.unknown')
      : say(`morning.swelling-${swelling}`);

const jointRows = (draft: MorningDraft, joint: Joint): readonly CheckRow[] => {
  const { pain, stiffnessMinutes, swelling, flare } = jointMorning(draft, joint);
  const named = { joint: jointText(joint) };
  return [
    { step: `pain:${joint}`, name: say('morning.pain', named), value: scoreText(pain) },
    ...(draft.asksStiffness
      ? [
          {
            step: `stiffness:${joint}`,
            name: say('morning.stiffness', named),
            value: minutesText(stiffnessMinutes),
          },
        ]
      : []),
    ...(draft.asksSwelling
      ? [{ step: `swelling:${joint}`, name: say('morning.swelling', named), value: swellingText(swelling) }]
      : []),
    { step: `flare:${joint}`, name: say('morning.flare', named), value: yesNoText(flare) },
  ];
};

export const morningRows = (draft: MorningDraft): readonly CheckRow[] => [
  ...(draft.asksUrine ? [{ step: 'urine', name: say('morning.urine'), value: yesNoText(draft.urine) }] : []),
  ...draft.joints.flatMap((joint) => jointRows(draft, joint)),
  { step: 'relief', name: say('morning.relief'), value: yesNoText(draft.relief) },
  { step: 'flags', name: say('flags.morning'), value: flagsText(draft.flags) },
];
