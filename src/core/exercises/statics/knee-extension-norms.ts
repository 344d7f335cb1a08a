/**
 * Isometric knee-extension strength at mid-range, pooled confidence interval of the mean, by group.
 *
 * A mean of a group, not of a person: it tells whether an ankle weight is light for most people like
 * this. It is not a strength test and gives no percentage of one's own maximum.
 */
import { calculation, units } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import type { Citation } from '#core/sources/citation.ts';
import { massField } from '../body/fields.ts';

const kneeExtensionNormCitations: readonly Citation[] = [
  {
    source: 'sarabon-2021',
    locator: 'abstract: 95 % confidence intervals of pooled means, mid-range angle, 13 893 people',
    mark: 'seen',
  },
];

const kneeExtensionNorms = {
  'adult-men': { lowNmPerKg: 2.92, highNmPerKg: 3.45 },
  'adult-women': { lowNmPerKg: 2.08, highNmPerKg: 2.74 },
  'older-men': { lowNmPerKg: 1.74, highNmPerKg: 2.16 },
  'older-women': { lowNmPerKg: 1.4, highNmPerKg: 1.64 },
} as const;

export const kneeExtensionNormRow = calculation({
  id: 'knee-extension-norm-share',
  title: 'Knee moment as a share of the mean strength of a group',
  area: 'variation',
  input: [
    massField,
    { name: 'momentNm', kind: 'number', unit: 'N.m', min: 0, max: 500 },
    { name: 'group', kind: 'enum', values: ['adult-men', 'adult-women', 'older-men', 'older-women'] },
  ],
  result: units({ lowPercent: '%', highPercent: '%' }),
  citations: kneeExtensionNormCitations,
  calculate: ({ massKg, momentNm, group }) => {
    const norm = kneeExtensionNorms[group];
    return answer(
      {
        lowPercent: (momentNm / (massKg * norm.highNmPerKg)) * 100,
        highPercent: (momentNm / (massKg * norm.lowNmPerKg)) * 100,
      },
      [{ code: 'group-mean', text: 'Against the mean of a group, not against this person’s own strength.' }],
    );
  },
  example: { massKg: 65, momentNm: 19.67, group: 'older-women' },
});
