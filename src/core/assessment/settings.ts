/** What no source fixes in taking measurements. */
import type { ClinicSetting } from '#core/sources/clinic-setting.ts';

export const assessmentSettings: readonly ClinicSetting[] = [
  {
    id: 'knee-hip-score-licence',
    title: 'This clinic holds a licence for the KOOS or HOOS short scores',
    unit: '1',
    min: 0,
    max: 1,
    whole: true,
    default: 0,
    why: 'Their questions belong to somebody and none stands here. On, a score worked out elsewhere can be entered as a number; off, none is offered.',
  },
];
