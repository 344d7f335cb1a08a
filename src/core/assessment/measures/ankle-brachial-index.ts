/** Pressures for the ankle-brachial index; the index itself is worked out in screening. */
import { side, whole } from './fields.ts';
import { measure } from './measure.ts';

export const ankleBrachialIndex = measure({
  kind: 'ankle-brachial-index',
  title: 'Ankle-brachial pressures',
  fields: [
    side,
    whole('dorsalisPedisMmhg', 'mm[Hg]', 20, 350, 'Dorsalis pedis'),
    whole('posteriorTibialMmhg', 'mm[Hg]', 20, 350, 'Posterior tibial'),
    {
      name: 'brachialMmhg',
      kind: 'list',
      minItems: 1,
      maxItems: 2,
      about: 'Upper arm, one or both, in mmHg',
      of: { name: 'arm', kind: 'integer', unit: 'mm[Hg]', min: 50, max: 300 },
    },
  ],
  sameBy: ['side'],
  figure: (row) => Math.max(row.dorsalisPedisMmhg, row.posteriorTibialMmhg),
  farFromLast: {
    percent: 40,
    figures: (row) => [
      { value: row.dorsalisPedisMmhg, unit: 'mmHg' },
      { value: row.posteriorTibialMmhg, unit: 'mmHg' },
    ],
  },
  inWords: (row) =>
    `ankle ${row.dorsalisPedisMmhg} and ${row.posteriorTibialMmhg} mmHg, arm ${row.brachialMmhg.join(' and ')} mmHg`,
});
