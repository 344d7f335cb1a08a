/** Every answer in a line, with the step that changes it. What was not answered says so. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { LimbSign } from '#core/prescribing/occlusion/limb-check.ts';
import type { StopReason } from '#core/record/record.ts';
import { weightText } from '#ui/language/weight-text.ts';
import { missing, scoreText, yesNoText } from '../questions/answers-in-words.ts';
import { t, translate } from '../words.ts';
import { type ItemDraft, type LimbAnswer, type News, type SessionDraft, setOf } from './draft.ts';
import { partsOf } from './step-names.ts';
import { asksLoad, reachedSets, signOf, stepsOf } from './steps.ts';

export interface CheckRow {
  readonly step: string;
  /** Left out = the step: two answers may be given on one page. */
  readonly key?: string;
  readonly name: string;
  readonly value: string;
}

export type StopReasonAsked = Exclude<StopReason, 'none'>;

export const limbQuestion = ({ dose }: ItemDraft, sign: LimbSign): string =>
  t(`limb.${sign}-${dose.method === 'occlusion' ? dose.limb : 'leg'}`);

const flagsText = (flags: readonly RedFlag[] | null): string =>
  flags === null
    ? missing()
    : flags.length === 0
      ? t('flags.none')
      : flags.map((flag) => t(`flag.${flag}`)).join('. ');

const newsText = (list: readonly News[] | null): string =>
  list === null
    ? missing()
    : list.length === 0
      ? t('flags.none')
      : list.map((one) => t(`news.${one}`)).join('. ');

/** Why a set ended before its time, in the words in which it was answered. */
export const reasonText = (reason: StopReasonAsked, { dose }: ItemDraft): string =>
  reason === 'time' && dose.method === 'occlusion' ? t('stop.time-up') : t(`stop.${reason}`);

const lineText = (item: ItemDraft): string => {
  const sets = Array.from({ length: reachedSets(item) }, (_, index) => {
    const { repetitions, stopReason } = setOf(item, index + 1);
    const count = repetitions === null ? t('check.set-unknown') : String(repetitions);
    return stopReason === null || stopReason === 'none'
      ? count
      : `${count} (${reasonText(stopReason, item)})`;
  });
  if (sets.length === 0) return t('check.no-sets');
  const load = !asksLoad(item) ? [] : [item.loadKg === null ? missing() : weightText(item.loadKg)];
  return [sets.join(', '), ...load].join(' · ');
};

const limbText = (answer: LimbAnswer | undefined): string =>
  answer === undefined
    ? missing()
    : answer === 'unknown'
      ? t('ask.unknown')
      : t(answer === 'usual' ? 'ask.yes' : answer === 'not-usual' ? 'ask.no' : 'limb.not-shown');

const limbRow = (item: ItemDraft, step: string): CheckRow => {
  const { name, set } = partsOf(step);
  const sign = signOf({ set });
  const answers = (name === 'limb' ? item.signs : item.signsLater) ?? {};
  const question = limbQuestion(item, sign);
  return {
    step,
    name: name === 'limb' ? question : t('limb.second-time', { question }),
    value: limbText(answers[sign]),
  };
};

const jointRow = (draft: SessionDraft, step: string, joint: Joint): CheckRow | null => {
  const named = { joint };
  switch (partsOf(step).name) {
    case 'before':
      return { step, name: t('check.pain-before', named), value: scoreText(draft.scores[step]) };
    case 'during':
      return { step, name: t('check.highest', named), value: scoreText(draft.scores[step]) };
    case 'after':
      return { step, name: t('check.pain-now', named), value: scoreText(draft.scores[step]) };
    case 'gave-way':
      return { step, name: t('after.gave-way', named), value: yesNoText(draft.gaveWay[joint]) };
    // What was said at a set stands in the row of the highest pain.
    default:
      return null;
  }
};

const sureText = (
  answer: boolean | null | undefined,
  yes: 'ask.yes' | 'check.right-yes',
  no: 'usual.no' | 'right.no',
): string => (answer == null ? missing() : t(answer ? yes : no));

const rowOf = (draft: SessionDraft, step: string): CheckRow | null => {
  const { name, joint, item } = partsOf(step);
  if (joint !== '') return jointRow(draft, step, joint as Joint);
  switch (name) {
    case 'flags-before':
      return {
        step,
        name: t('check.signs'),
        value: flagsText(draft.flagsBefore),
      };
    case 'flags-during':
      return { step, name: t('flags.during'), value: flagsText(draft.flagsDuring) };
    case 'other-joint':
      return { step, name: t('before.other-joint'), value: yesNoText(draft.otherJointWorse) };
    case 'usual':
      return { step, name: t('check.usual'), value: sureText(draft.isUsual, 'ask.yes', 'usual.no') };
    case 'statement':
      // Where not all of it was right each thing was asked, and stands in a row of its own.
      if (draft.isRight === false) return null;
      return { step, name: t('check.right'), value: sureText(draft.isRight, 'check.right-yes', 'right.no') };
    case 'relief':
      return { step, name: t('before.relief'), value: yesNoText(draft.relief) };
    case 'news':
      return { step, name: t('before.news'), value: newsText(draft.news) };
    case 'item':
      return { step, name: translate(draft.items[item]!.title), value: lineText(draft.items[item]!) };
    case 'limb':
    case 'limb-later':
      return limbRow(draft.items[item]!, step);
    case 'burn':
      return { step, name: t('check.burn'), value: scoreText(draft.scores.burn) };
    case 'cuff':
      return { step, name: t('after.cuff'), value: scoreText(draft.scores.cuff) };
    case 'extra':
      return { step, name: t('after.extra'), value: yesNoText(draft.didExtra) };
    default:
      return null;
  }
};

/** The sets of an exercise are changed from its first page on, one after the other. */
export const checkRows = (draft: SessionDraft): readonly CheckRow[] =>
  stepsOf(draft).flatMap((step) => rowOf(draft, step) ?? []);

/** A look at fingers or toes that was not given although a cuff was on. */
const isOpenLimb = (draft: SessionDraft, step: string): boolean => {
  const { name, item: index, set } = partsOf(step);
  const item = draft.items[index];
  if (!item?.restrictions.length || !name.startsWith('limb')) return false;
  return (name === 'limb' ? item.signs : item.signsLater)?.[signOf({ set })] === undefined;
};

/** What is never left open: the warning signs, and the limb after a cuff. Asked before anything is sent. */
export const neededStep = (draft: SessionDraft): string | null =>
  stepsOf(draft).find((step) => {
    const { name } = partsOf(step);
    if (name === 'flags-before') return draft.flagsBefore === null;
    // By its first line it is where warning signs are asked for.
    if (name === 'statement') return draft.isRight === null && draft.signForm === 'short';
    return (name === 'flags-during' && draft.flagsDuring === null) || isOpenLimb(draft, step);
  }) ?? null;
