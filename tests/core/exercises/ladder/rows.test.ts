import { describe, expect, it } from 'vitest';
import { modelAgainstMeasured } from '#core/exercises/statics/model-against-measured.ts';
import { variationRows } from '#core/exercises/statics/rows.ts';
import { variationSources } from '#core/sources/variation.ts';
import { leftOut } from '../statics/left-out.ts';

const cited = variationRows.flatMap((row) => row.citations.map((citation) => citation.source));

describe('Rows of the variation ladders', () => {
  it('each cite a known source, and every source is cited', () => {
    const known: readonly string[] = Object.keys(variationSources);
    expect(variationRows.filter((row) => row.citations.length === 0)).toEqual([]);
    expect(cited.filter((source) => !known.includes(source))).toEqual([]);
    expect(known.filter((source) => !cited.some((one) => one === source))).toEqual([]);
  });

  it('each answer their own example', () => {
    for (const row of variationRows) {
      expect(row.consistent?.(row.example) ?? [], row.id).toEqual([]);
      expect(row.calculate(row.example).ok, row.id).toBe(true);
    }
  });

  it('leave out only check values of their own part of the list', () => {
    expect(leftOut.filter(({ row, reason }) => row < 53 || row > 109 || reason === '')).toEqual([]);
  });
});

describe('Models beside measurements', () => {
  // Ebben 2011 (second-hand) against the closed form at a stature of 1.69 m; errors computed.
  const moving = modelAgainstMeasured(1.69).filter((row) => row.source === 'ebben-2011');

  it('keep the mean error of the closed form near 3 points and the largest under 5.6', () => {
    const errors = moving.flatMap((row) => (row.error === null ? [] : [Math.abs(row.error)]));
    expect(errors).toHaveLength(5);
    expect(errors.reduce((sum, error) => sum + error, 0) / errors.length).toBeLessThan(0.03);
    expect(Math.max(...errors)).toBeLessThan(0.056);
  });

  it('repeat the closed form as computed for the five variants on the feet', () => {
    const expected = [0.629, 0.512, 0.362, 0.701, 0.714];
    moving.slice(0, 5).forEach((row, index) => {
      expect(Math.abs(row.modelShare! - expected[index]!)).toBeLessThan(0.003);
    });
  });

  it('give no model on the knees', () => {
    const knees = moving.find((row) => row.variant.includes('knees'));
    expect(knees).toMatchObject({ measuredShare: 0.49, modelShare: null, error: null });
  });

  it('show the fit of the lean-back row off by 2.0, 2.8, 0.2 and −3.3 points (Melrose and Dawes 2015)', () => {
    const rows = modelAgainstMeasured(1.69).filter((row) => row.source === 'melrose-dawes-2015');
    const points = rows.map((row) => Math.round(row.error! * 1000) / 10);
    expect(points).toEqual([2, 2.8, 0.2, -3.3]);
  });

  it('name the models that no measurement stands beside', () => {
    const alone = modelAgainstMeasured(1.69).filter((row) => row.measuredShare === null);
    expect(alone.map((row) => row.variant).join()).toMatch(/wall.*bridge.*heel/);
    expect(alone.every((row) => row.remark.includes('No measurement found'))).toBe(true);
  });

  it('label the values that were only remembered', () => {
    const remembered = modelAgainstMeasured(1.69).filter((row) => row.mark === 'memory');
    expect(remembered.map((row) => row.measuredShare)).toEqual([0.5356, 0.618]);
  });
});
