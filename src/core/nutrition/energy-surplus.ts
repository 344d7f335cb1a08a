/**
 * A small energy surplus for building muscle, beside the published figures it disagrees with.
 *
 * Common practice is 100 to 200 kcal a day, under both published ranges (10 to 20 % of maintenance; 1500 to
 * 2000 kJ), which were written for bodybuilders and athletes; the surplus needed is unknown. Body mass
 * gained loads the joint, so an overweight person with joint disease starts at none. The locks close it.
 */
import { calculation } from '../calculations/calculation.ts';
import type { Field, InputOf } from '../calculations/describe.ts';
import { answer, type Note } from '../outcome.ts';
import type { SettingValues } from '../sources/clinic-setting.ts';
import { massKg, statureCm } from './body-fields.ts';
import { bodyMassIndex } from './body-mass-index.ts';
import { kidneyLockReasons } from './kidney-lock.ts';
import { egfrField, lockQuestions } from './lock-fields.ts';
import { lockCitations, lockNotes, otherLockReasons } from './nutrition-lock.ts';
import { nutritionDefaults, settingOf } from './settings.ts';

const published = {
  shareOfMaintenance: { low: 0.1, high: 0.2 },
  kilojoules: { low: 1500, high: 2000 },
  weeklyGainShare: { low: 0.0025, high: 0.005 },
} as const;
const kilojoulesPerKcal = 4.184;

const input = [
  { name: 'maintenanceKcalPerDay', kind: 'number', unit: 'kcal/d', min: 800, max: 8000 },
  massKg,
  statureCm,
  { name: 'jointDisease', kind: 'flag' },
  egfrField,
  ...lockQuestions,
] as const satisfies readonly Field[];
export type EnergySurplusInput = InputOf<typeof input>;

const publishedRanges = (maintenanceKcalPerDay: number) => [
  {
    source: 'iraki-2019',
    lowKcal: published.shareOfMaintenance.low * maintenanceKcalPerDay,
    highKcal: published.shareOfMaintenance.high * maintenanceKcalPerDay,
  },
  {
    source: 'slater-2019',
    lowKcal: published.kilojoules.low / kilojoulesPerKcal,
    highKcal: published.kilojoules.high / kilojoulesPerKcal,
  },
];

export const energySurplus = (given: EnergySurplusInput, settings: SettingValues = nutritionDefaults) => {
  const index = bodyMassIndex(given.massKg, given.statureCm);
  const lockReasons = [...kidneyLockReasons(given), ...otherLockReasons({ ...given, bodyMassIndex: index })];
  const locked = lockReasons.length > 0;
  const zero = given.jointDisease && index >= settingOf(settings, 'surplus-zero-from-bmi');
  const notes: Note[] = [
    {
      code: 'under-published-ranges',
      text: 'Common practice is lower than both published ranges, which were written for athletes; what is needed is unknown.',
    },
    ...lockNotes(given, lockReasons),
  ];
  if (zero) {
    notes.push({
      code: 'zero-for-joints',
      text: 'Overweight with joint disease: no surplus by default, since body mass gained loads the joint. The clinician decides.',
    });
  }
  return answer(
    {
      lowKcal: locked ? null : zero ? 0 : settingOf(settings, 'energy-surplus-low'),
      highKcal: locked ? null : zero ? 0 : settingOf(settings, 'energy-surplus-high'),
      locked,
      lockReasons,
      published: locked ? [] : publishedRanges(given.maintenanceKcalPerDay),
      publishedWeeklyGainLowKg: locked ? null : published.weeklyGainShare.low * given.massKg,
      publishedWeeklyGainHighKg: locked ? null : published.weeklyGainShare.high * given.massKg,
    },
    notes,
  );
};

export const energySurplusRow = calculation({
  id: 'energy-surplus',
  title: 'Energy surplus for building, beside the published figures',
  area: 'nutrition',
  input,
  result: [
    { name: 'lowKcal', unit: 'kcal/d', about: 'null when locked' },
    { name: 'highKcal', unit: 'kcal/d', about: 'null when locked' },
    { name: 'locked', unit: '' },
    { name: 'lockReasons', unit: '' },
    {
      name: 'published',
      unit: 'kcal/d',
      about: 'source, lowKcal, highKcal of each published range; empty when locked',
    },
    { name: 'publishedWeeklyGainLowKg', unit: 'kg/wk', about: 'null when locked' },
    { name: 'publishedWeeklyGainHighKg', unit: 'kg/wk', about: 'null when locked' },
  ],
  citations: [
    { source: 'surplus-practice', locator: '100 to 200 kcal a day', mark: 'common-practice' },
    {
      source: 'iraki-2019',
      locator: '10 to 20 % over maintenance; gain of 0.25 to 0.5 % of body mass a week',
      mark: 'seen',
      remark: 'A narrative review for bodybuilders.',
    },
    {
      source: 'slater-2019',
      locator: '1500 to 2000 kJ a day as a start',
      mark: 'second-hand',
      remark: 'The review itself says that the surplus needed is unknown.',
    },
    ...lockCitations,
  ],
  calculate: (given) => energySurplus(given),
  example: { maintenanceKcalPerDay: 2000, massKg: 70, statureCm: 175, jointDisease: false },
});
