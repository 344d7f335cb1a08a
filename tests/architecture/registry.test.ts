/** What every calculation of the registry owes its reader. */
import { describe, expect, it } from 'vitest';
import { answerLine } from '#api/batch/answer-line.ts';
import { evaluate } from '#api/inputs/evaluate.ts';
import type { Field } from '#core/calculations/describe.ts';
import { calculationById, registry } from '#core/calculations/registry.ts';
import { sources } from '#core/sources/index.ts';

/** Fields of a descriptor with those inside records and lists. */
const allFields = (fields: readonly Field[]): readonly Field[] =>
  fields.flatMap((field) => [
    field,
    ...(field.kind === 'record'
      ? allFields(field.fields)
      : field.kind === 'list'
        ? allFields([field.of])
        : []),
  ]);

/** The calculations fixed by the product's contract; further ones may stand beside them. */
const promised = [
  'one-rep-max',
  'one-rep-max-range',
  'load-rounding',
  'push-up-share',
  'limb-occlusion-pressure-estimate',
  'occlusion-target',
  'restriction-time',
  'blood-pressure-category',
  'exercise-start-gate',
  'ankle-brachial-index',
  'wells-dvt',
  'lean-mass',
  'resting-energy',
  'egfr',
  'protein-target',
  'session-load',
  'training-strain',
  'ewma-chart',
  'cusum-chart',
  'mann-kendall',
  'sen-slope',
  'nonoverlap-all-pairs',
  'reliable-change',
  'chair-stand-norm',
  'das28',
  'decide',
];

describe('the registry', () => {
  it('names each calculation once, in kebab case', () => {
    const ids = registry.map(({ id }) => id);
    expect(ids.filter((id, at) => ids.indexOf(id) !== at)).toEqual([]);
    expect(ids.filter((id) => !/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('finds a calculation by its id, and nothing by a name that objects inherit', () => {
    expect(registry.filter((row) => calculationById(row.id) !== row)).toEqual([]);
    expect(['constructor', '__proto__', 'toString', ''].map(calculationById)).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  it('holds every calculation the product promises', () => {
    expect(promised.filter((id) => !calculationById(id))).toEqual([]);
  });
});

describe.each(registry.map((row) => [row.id, row] as const))('%s', (_, row) => {
  it('cites known sources with a place in them', () => {
    expect(row.citations.length).toBeGreaterThan(0);
    expect(row.citations.filter(({ source }) => !Object.hasOwn(sources, source))).toEqual([]);
    expect(row.citations.filter(({ locator }) => locator.trim() === '')).toEqual([]);
  });

  it('computes its own example, in numbers that can be printed', () => {
    const outcome = evaluate(row, row.example);
    expect(outcome).toMatchObject({ ok: true });
    const line = JSON.stringify({ calculation: row.id, input: row.example });
    expect(answerLine(line, 1, calculationById).fault).toBeUndefined();
  });

  it('describes its result by the fields it gives', () => {
    const outcome = evaluate(row, row.example);
    const given = outcome.ok ? Object.keys(outcome.result as object) : [];
    const told = row.result.map(({ name }) => name);
    expect(given.filter((name) => !told.includes(name))).toEqual([]);
  });

  it('puts bounds on every number and a limit on every list that is computed with', () => {
    const open = allFields(row.input).filter(
      (field) =>
        ((field.kind === 'number' || field.kind === 'integer') &&
          (field.min === undefined || field.max === undefined)) ||
        (field.kind === 'list' && field.of.kind !== 'enum' && field.maxItems === undefined),
    );
    expect(open.map(({ name }) => name)).toEqual([]);
  });
});
