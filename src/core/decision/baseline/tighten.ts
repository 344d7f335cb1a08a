/**
 * Usual pain that follows mornings which have become better. It only ever goes down, keeps the clinician's
 * width of the band and the age of the value it follows, and never loosens by itself. Since version 2.
 */
import type { Joint } from '#core/exercises/joints.ts';
import type { Baseline, PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { dayNumber } from '#core/time/day.ts';
import { type Moment, mornings } from '../facts/judged-session.ts';
import { morningScores } from '../facts/morning-scores.ts';
import { indexRecord } from '../facts/record-index.ts';
import { engineSettingValues, isOnSinceVersion2 } from '../settings.ts';
import { baselineWindowDays, lowerMedian } from './propose-baseline.ts';
import { painLimitOver } from './propose-pain-limit.ts';

/**
 * What a baseline that enough mornings have shown to be no longer true becomes today; null where usual pain stays
 * or cannot follow.
 */
export const tightenedBaseline = (
  record: PatientRecord,
  joint: Joint,
  inForce: Baseline,
  at: Moment,
  settingValues?: SettingValues,
): Baseline | null => {
  const settings = engineSettingValues(settingValues);
  if (!isOnSinceVersion2('tighten-usual', settings) || inForce.usualPain === null) return null;
  const day = dayNumber(at.day);
  const scores = morningScores(
    mornings(indexRecord(record), joint),
    day - baselineWindowDays,
    day,
    at.instant,
    settings,
  );
  const usualPain = lowerMedian(scores);
  if (usualPain === null || usualPain >= inForce.usualPain) return null;
  const { provisional: _told, riseAcknowledged: _acknowledged, ...kept } = inForce;
  const limit = painLimitOver(usualPain, settings['ceiling-over-usual']);
  return {
    ...kept,
    usualPain,
    usualPainTop:
      inForce.usualPainTop === null ? null : usualPain + (inForce.usualPainTop - inForce.usualPain),
    acceptablePainLimit: Math.min(inForce.acceptablePainLimit, limit),
    setOn: at.day,
    tightenedFrom: inForce.tightenedFrom ?? inForce.setOn,
  };
};
