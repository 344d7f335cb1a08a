/** A knee effusion test that has grown old: which grade it was, whether it still counts, and that it is due again. */
import { engineSettingValues } from '#core/decision/settings.ts';
import type { PatientRecord } from '#core/record/record.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { addDays, daysBetween } from '#core/time/day.ts';
import { dayInWords, jointInWords } from '../plain-words.ts';
import type { ReviewSeries } from '../series.ts';
import type { Finding } from './finding.ts';

/** null where the joint was never tested, or the newest test still holds. */
export const effusionTestFinding = (
  { joint, today, rows }: Pick<ReviewSeries, 'joint' | 'today' | 'rows'>,
  effusions: PatientRecord['effusions'],
  settings?: SettingValues,
): Finding | null => {
  const days = engineSettingValues(settings)['effusion-test-days'];
  const newest = effusions.filter((test) => test.joint === joint && test.day <= today).at(-1);
  if (!newest || daysBetween(newest.day, today) <= days) return null;
  const lastDay = addDays(newest.day, days);
  const hasTold = rows.some(
    ({ day, morning }) =>
      day > lastDay && morning && morning.swelling !== 'missing' && morning.swelling !== 'not-asked',
  );
  const counts = hasTold
    ? 'The patient has answered about swelling since, so the old grade no longer counts.'
    : 'The patient has not answered about swelling since, so the old grade still counts.';
  return {
    id: 'effusion-test',
    title: 'Knee effusion test',
    sentences: [
      `Test again: the ${jointInWords(joint)} was ${newest.grade} on ${dayInWords(newest.day, today)}, more than ${days} days ago.`,
      counts,
    ],
    workings: [],
  };
};
