/** Wrap lengths, release rules and the checks around a session. */
import { describe, expect, it } from 'vitest';
import { arthritisEvidence, arthritisReading } from '#core/prescribing/occlusion/arthritis-evidence.ts';
import { occlusionChecks, releaseEffects, releaseRules } from '#core/prescribing/occlusion/checks.ts';
import { occlusionRows } from '#core/prescribing/occlusion/rows.ts';
import { sources } from '#core/sources/index.ts';
import { noteCodes, resultOf } from './row-answers.ts';

describe('length of an elastic wrap (own reading of restraint: circumference less its share)', () => {
  it('55 cm around: 46.75 cm at 85 % of it, 44.0 cm at 20 % restraint [occlusion 50]', () => {
    const length = (restraintPercent: number) =>
      resultOf('elastic-wrap-length', { circumferenceCm: 55, restraintPercent }).lengthCm;
    expect(length(15)).toBeCloseTo(46.75, 2);
    expect(length(20)).toBeCloseTo(44.0, 2);
    expect(length(10)).toBeCloseTo(49.5, 2);
    expect(length(30)).toBeCloseTo(38.5, 2);
  });

  it('says that the pressure is not known', () => {
    expect(noteCodes('elastic-wrap-length', { circumferenceCm: 55, restraintPercent: 15 })).toEqual([
      'pressure-unknown',
    ]);
  });

  it('no row of occlusion turns a tightness into a pressure', () => {
    const withTightness = occlusionRows.filter((row) => JSON.stringify(row.input).includes('tightness'));
    expect(withTightness).toEqual([]);
  });
});

describe('around a session', () => {
  it('there are checks before, during and after, in words for the clinician', () => {
    expect(new Set(occlusionChecks.map(({ moment }) => moment))).toEqual(
      new Set(['before', 'during', 'after']),
    );
    expect(occlusionChecks.filter(({ text }) => text.length < 15)).toEqual([]);
  });

  it('the pulse is felt before and during', () => {
    expect(occlusionChecks.filter(({ id }) => id.startsWith('pulse-')).map(({ moment }) => moment)).toEqual([
      'before',
      'during',
    ]);
  });

  it('release rules stand from what ends the session to what is told afterwards', () => {
    const order = releaseRules.map(({ effect }) => releaseEffects.indexOf(effect));
    expect(order).toEqual([...order].sort((a, b) => a - b));
    const ends = releaseRules.filter(({ effect }) => effect === 'end-session').map(({ id }) => id);
    expect(ends).toEqual(
      expect.arrayContaining([
        'no-pulse',
        'white-or-blue',
        'numbness-persists',
        'chest-faint-head-sight',
        'phone-stopped',
      ]),
    );
  });
});

describe('evidence for sore joints', () => {
  it('shows findings on both sides, each with a known source, and claims no superiority', () => {
    expect(new Set(arthritisEvidence.map(({ direction }) => direction)).size).toBeGreaterThan(1);
    expect(arthritisEvidence.filter(({ citation }) => !Object.hasOwn(sources, citation.source))).toEqual([]);
    expect(arthritisReading).toContain('Not shown to beat ordinary training');
  });
});
