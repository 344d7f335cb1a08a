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

export interface EarlierWord {
  readonly sessionId: string | null;
  readonly decision: DecisionWord;
  readonly madeAt: number;
}

/**
 * The last word on each session judged before. A session looked at twice, in the evening and the morning after,
 * counts once, and the session now judged does not count.
 */
const lastWords = (
  earlier: readonly EarlierWord[],
  judgedSessionId: string | null,
): readonly EarlierWord[] => {
  const last = new Map<string | null, EarlierWord>();
  for (const word of earlier) {
    if (word.sessionId !== judgedSessionId && !last.has(word.sessionId)) last.set(word.sessionId, word);
  }
  return [...last.values()];
};

interface Line {
  readonly record: PatientRecord;
  /** Joints whose answers gate the line. */
  readonly joints: readonly Joint[];
  readonly judgedSessionId: string | null;
  readonly settings?: SettingValues;
}

export const easedInARow = (
  /** Every word on the line, the newest first. */
  earlier: readonly EarlierWord[],
  { record, joints, judgedSessionId, settings }: Line,
): number => {
  const passesOver = engineVersionOf(engineSettingValues(settings)) >= 2;
  const counted = lastWords(earlier, judgedSessionId).filter(
    ({ decision, madeAt }) => decision !== 'ease-back' || !passesOver || !wasInFlare(record, joints, madeAt),
  );
  const end = counted.findIndex(({ decision }) => decision !== 'ease-back');
  return end < 0 ? counted.length : end;
};
