/** The morning's answers in lines, each with the step that changes it. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion } from '#core/record/morning-questions.ts';
import { scoreText, yesNoText } from '#ui/patient/questions/answers-in-words.ts';
import type { CheckRow } from '../session/check-rows.ts';
import type { Score, YesNo } from '../session/draft.ts';
import { t } from '../words.ts';
import { choiceText, questionsOf } from './joint-questions.ts';
import {
  fatigueOffered,
  type JointMorning,
  jointMorning,
  type MorningDraft,
  otherJointOffered,
} from './morning-draft.ts';
import { askedInFull, isAllUsual, jointsAsked, morningSteps } from './morning-steps.ts';

const minutesText = (minutes: Score | null): string =>
  minutes === null
    ? t('ask.not-answered')
    : minutes === 'unknown'
      ? t('ask.unknown')
      : minutes === 0
        ? t('morning.stiff-0')
        : t('morning.stiff-minutes', { minutes });

/** An answer to a question of its kind; a choice has a sentence for each of its values. */
const answerText = ({ id, answer }: JointQuestion, given: JointMorning): string => {
  const said = given[answer.name];
  if (answer.kind === 'flag') return yesNoText(said as YesNo | null);
  if (answer.kind === 'integer')
    return answer.unit === '{score}' ? scoreText(said as Score | null) : minutesText(said as Score | null);
  if (said === null) return t('ask.not-answered');
  return said === 'unknown' ? t('ask.unknown') : choiceText(id, String(said));
};

/** Of several joints on one page, alike or each by itself. */
const isTogether = (draft: MorningDraft, id: JointQuestion['id']): boolean =>
  jointsAsked(draft, id).length > 1 && draft.alike?.[id] !== false;

/** The page that asks it: of two joints some questions are asked at once. */
const stepOf = (draft: MorningDraft, { id }: JointQuestion, joint: Joint): string => {
  if (draft.joints.length > 2) return isTogether(draft, id) ? `all:${id}` : `${id}:${joint}`;
  if (draft.joints.length !== 2) return `${id}:${joint}`;
  if (id === 'flare') return 'flares';
  return id === 'swelling' && draft.swollen != null && !draft.swollen.includes(joint)
    ? 'swollen'
    : `${id}:${joint}`;
};

const isUsualOf = (draft: MorningDraft, joint: Joint): boolean => !askedInFull(draft).includes(joint);

const jointRows = (draft: MorningDraft, joint: Joint): readonly CheckRow[] =>
  questionsOf(draft, joint).map((question) => ({
    step: isUsualOf(draft, joint) && question.id !== 'pain' ? 'usual' : stepOf(draft, question, joint),
    key: `${question.id}:${joint}`,
    name: t(`morning.${question.id}`, { joint }),
    value: answerText(question, jointMorning(draft, joint)),
  }));

/** The page that asks about another joint, or about pain relief: one page for both, unless each was asked. */
const onceStep = (draft: MorningDraft, step: 'other-joint' | 'relief'): string => {
  const steps = morningSteps(draft);
  return steps.includes('either') && !steps.includes(step) ? 'either' : step;
};

export const morningRows = (draft: MorningDraft): readonly CheckRow[] => [
  ...draft.joints.flatMap((joint) => jointRows(draft, joint)),
  ...(draft.asksUrine ? [{ step: 'urine', name: t('morning.urine'), value: yesNoText(draft.urine) }] : []),
  ...(draft.asksFatigue
    ? [
        {
          step: isAllUsual(draft) && fatigueOffered(draft) !== null ? 'usual' : 'fatigue',
          name: t('morning.fatigue'),
          value: scoreText(draft.fatigue ?? null),
        },
      ]
    : []),
  ...(draft.asksOtherJoint
    ? [
        {
          step:
            draft.isOnceUsual || (isAllUsual(draft) && otherJointOffered(draft))
              ? 'usual'
              : onceStep(draft, 'other-joint'),
          name: t('before.other-joint'),
          value: yesNoText(draft.otherJointWorse ?? null),
        },
      ]
    : []),
  {
    step: draft.isOnceUsual || isAllUsual(draft) ? 'usual' : onceStep(draft, 'relief'),
    key: 'relief',
    name: t('morning.relief'),
    value: yesNoText(draft.relief),
  },
];

const painEcho = (pain: Score | null): string =>
  typeof pain === 'number' ? t('morning.echo-pain', { pain }) : scoreText(pain);

/** One joint's answers in a line: what is as on ordinary days stands in the list that Change opens. */
const jointEcho = (draft: MorningDraft, joint: Joint): string => {
  const { pain, stiffnessMinutes: minutes, swelling, flare } = jointMorning(draft, joint);
  const isUsual = isUsualOf(draft, joint);
  const parts = [
    painEcho(pain),
    ...(typeof minutes === 'number' && minutes > 0 && !isUsual ? [t('morning.echo-stiff', { minutes })] : []),
    ...(swelling === null || swelling === 'unknown' || swelling === 'none'
      ? []
      : [t(`morning.echo-${swelling}`)]),
    ...(flare === true ? [t('morning.echo-flare')] : []),
  ];
  return t('morning.usual-of', { joint, text: parts.join(', ') });
};

/** What was answered, short enough to stand on the page of the last press. */
export const morningEcho = (draft: MorningDraft): string =>
  [
    ...draft.joints.map((joint) => jointEcho(draft, joint)),
    ...(isAllUsual(draft) ? [t('morning.echo-usual')] : []),
    ...(typeof draft.fatigue === 'number' ? [t('morning.echo-fatigue', { fatigue: draft.fatigue })] : []),
    ...(draft.otherJointWorse === true ? [t('morning.echo-other-joint')] : []),
    ...(draft.relief === true ? [t('morning.echo-relief')] : []),
  ]
    .map((text) => `${text}.`)
    .join(' ');
