/** The morning's answers in lines, each with the step that changes it. */
import type { Joint } from '#core/exercises/joints.ts';
import { scoreText, yesNoText } from '#ui/patient/questions/answers-in-words.ts';
import { type CheckRow, flagsText } from '../session/check-rows.ts';
import type { Score } from '../session/draft.ts';
import { t } from '../words.ts';
import { asksSwellingOf, type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';

const minutesText = (minutes: Score | null): string =>
  minutes === null
    ? t('ask.not-answered')
    : minutes === 'unknown'
      ? t('ask.unknown')
      : minutes === 0
        ? t('morning.stiff-0')
        : t('morning.stiff-minutes', { minutes });

const swellingText = (swelling: JointMorning['swelling']): string =>
  swelling === null
    ? t('ask.not-answered')
    : swelling === 'unknown'
      ? t('ask.unknown')
      : t(`morning.swelling-${swelling}`);

const jointRows = (draft: MorningDraft, joint: Joint): readonly CheckRow[] => {
  const { pain, stiffnessMinutes, swelling, flare } = jointMorning(draft, joint);
  const named = { joint };
  return [
    { step: `pain:${joint}`, name: t('morning.pain', named), value: scoreText(pain) },
    ...(draft.asksStiffness
      ? [
          {
            step: `stiffness:${joint}`,
            name: t('morning.stiffness', named),
            value: minutesText(stiffnessMinutes),
          },
        ]
      : []),
    ...(asksSwellingOf(draft, joint)
      ? [{ step: `swelling:${joint}`, name: t('morning.swelling', named), value: swellingText(swelling) }]
      : []),
    { step: `flare:${joint}`, name: t('morning.flare', named), value: yesNoText(flare) },
  ];
};

export const morningRows = (draft: MorningDraft): readonly CheckRow[] => [
  ...(draft.asksUrine ? [{ step: 'urine', name: t('morning.urine'), value: yesNoText(draft.urine) }] : []),
  ...draft.joints.flatMap((joint) => jointRows(draft, joint)),
  { step: 'relief', name: t('morning.relief'), value: yesNoText(draft.relief) },
  { step: 'flags', name: t('flags.morning'), value: flagsText(draft.flags) },
];
