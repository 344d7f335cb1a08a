/**
 * Ease-backs on a line directly before now. Since version 2 those made in a reported flare are passed over: the
 * rules of the flare ask for a look.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import type { DecisionWord } from '../answers.ts';
import { engineSettingValues, engineVersionOf } from '../settings.ts';
import { wasInFlare } from './flares.ts';

/** The last word on one session judged before. */
export interface EarlierWord {
  readonly decision: DecisionWord;
  readonly madeAt: number;
}

export const easedInARow = (
  /** One for each session judged before this one, the newest first. */
  words: readonly EarlierWord[],
  record: PatientRecord,
  joints: readonly Joint[],
  settings?: SettingValues,
): number => {
  const passesOver = engineVersionOf(engineSettingValues(settings)) >= 2;
  const counted = words.filter(
    ({ decision, madeAt }) => decision !== 'ease-back' || !passesOver || !wasInFlare(record, joints, madeAt),
  );
  const end = counted.findIndex(({ decision }) => decision !== 'ease-back');
  return end < 0 ? counted.length : end;
};
