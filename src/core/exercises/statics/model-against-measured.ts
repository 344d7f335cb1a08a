/**
 * The models beside every measurement found, for a clinician to open. A model without a measurement
 * is listed too and says so: an unvalidated figure must be seen to be one.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import type { Mark } from '#core/sources/citation.ts';
import type { VariationSource } from '#core/sources/variation.ts';
import { statureField } from '../body/fields.ts';
import { leanBackRowCitations, leanBackRowFit } from './lean-back-row.ts';
import { type MeasuredShare, measuredShares } from './measured-shares.ts';
import { pushUpCitations, pushUpShare } from './push-up.ts';
import { pushUpMeasuredCitations } from './push-up-measured.ts';

export interface ModelAgainstMeasured {
  readonly variant: string;
  readonly quantity: string;
  readonly group: string;
  readonly measuredShare: number | null;
  readonly modelShare: number | null;
  /** Model less measured. */
  readonly error: number | null;
  readonly source: VariationSource | null;
  readonly mark: Mark | null;
  readonly remark: string;
}

const unmeasured = [
  'wall push-up',
  'push-up with hands above 61 cm',
  'bridge on two legs or one',
  'heel raise on two legs or one',
  'squat and step-up, mass moved',
  'leg and arm lifts, joint moments',
] as const;

const modelOf = (row: MeasuredShare, statureM: number): number | null => {
  if (row.rowFromVerticalDeg !== undefined) return leanBackRowFit(row.rowFromVerticalDeg);
  if (!row.pushUp) return null;
  return pushUpShare(statureM, row.pushUp.handHeightM, row.pushUp.footHeightM)?.verticalShare ?? null;
};

const remarkOf = (row: MeasuredShare, modelShare: number | null): string => {
  if (modelShare === null) return 'No model here answers this variant.';
  if (row.rowFromVerticalDeg !== undefined) return 'Model is a one-constant fit to these four points.';
  return row.quantity === 'moving, peak'
    ? 'Closed form, no fitted constant.'
    : 'Closed form has the arms at right angles to the trunk; in a hold they stand upright, so it reads low.';
};

/** The whole table for a stature; heights are absolute, so the model depends on it. */
export const modelAgainstMeasured = (statureM: number): readonly ModelAgainstMeasured[] => [
  ...measuredShares.map((row) => {
    const modelShare = modelOf(row, statureM);
    return {
      variant: row.variant,
      quantity: row.quantity,
      group: row.group,
      measuredShare: row.share,
      modelShare,
      error: modelShare === null ? null : modelShare - row.share,
      source: row.source,
      mark: row.mark,
      remark: remarkOf(row, modelShare),
    };
  }),
  ...unmeasured.map((variant) => ({
    variant,
    quantity: '',
    group: '',
    measuredShare: null,
    modelShare: null,
    error: null,
    source: null,
    mark: null,
    remark: 'No measurement found; the figure shown elsewhere is the model’s alone.',
  })),
];

export const modelAgainstMeasuredRow = calculation({
  id: 'model-against-measured',
  title: 'Models beside every measured share found',
  area: 'variation',
  input: [statureField],
  result: [
    { name: 'table', unit: '', about: 'Variant, measured share, model share, error, source and mark.' },
  ],
  citations: [
    ...pushUpCitations,
    ...pushUpMeasuredCitations,
    ...leanBackRowCitations,
    { source: 'suprak-2011', locator: 'static push-up, top and bottom', mark: 'second-hand' },
    { source: 'suprak-2011', locator: 'static push-up on the knees, top and bottom', mark: 'memory' },
    { source: 'mier-2014', locator: 'abstract: static and dynamic, men and women', mark: 'seen' },
    { source: 'gouvali-2005', locator: 'abstract: starting load', mark: 'seen' },
    { source: 'gulmez-2017', locator: 'abstract: level body, elbows straight and bent', mark: 'seen' },
    { source: 'emerson-2014', locator: 'abstract: peak force, includes inertia', mark: 'seen' },
  ],
  calculate: ({ statureM }) => answer({ table: modelAgainstMeasured(statureM) }),
  example: { statureM: 1.7 },
});
