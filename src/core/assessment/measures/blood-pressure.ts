/** Blood pressure at rest; what it gates is decided in screening. */
import { position, usually, whole } from './fields.ts';
import { measure } from './measure.ts';

export const bloodPressure = measure({
  kind: 'blood-pressure',
  title: 'Blood pressure',
  fields: [
    whole('systolicMmhg', 'mm[Hg]', 50, 300, 'Systolic'),
    whole('diastolicMmhg', 'mm[Hg]', 20, 200, 'Diastolic'),
    position,
  ],
  usual: [usually('systolicMmhg', 90, 200, 'mm[Hg]'), usually('diastolicMmhg', 45, 120, 'mm[Hg]')],
  sameBy: ['position'],
  figure: (row) => row.systolicMmhg,
  farFromLast: {
    percent: 30,
    figures: (row) => [
      { value: row.systolicMmhg, unit: 'mmHg' },
      { value: row.diastolicMmhg, unit: 'mmHg' },
    ],
  },
  consistent: (row) =>
    row.diastolicMmhg < row.systolicMmhg
      ? []
      : [
          {
            field: 'input.diastolicMmhg',
            code: 'inconsistent',
            reason: 'The diastolic pressure is below the systolic one; check both figures.',
          },
        ],
  inWords: (row) => `${row.systolicMmhg}/${row.diastolicMmhg} mmHg, ${row.position}`,
});
