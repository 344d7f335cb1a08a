/** Asks a registry row as the desk would: descriptor bounds, rules across fields, then the sum. */
import { evaluate } from '#api/inputs/evaluate.ts';
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import type { Outcome } from '#core/outcome.ts';
import { occlusionRows } from '#core/prescribing/occlusion/rows.ts';
import { screeningRows } from '#core/screening/rows.ts';

const rowOf = (id: string): AnyCalculation => {
  const row = [...occlusionRows, ...screeningRows].find((candidate) => candidate.id === id);
  if (!row) throw new Error(`No row ${id}`);
  return row;
};

export const ask = (id: string, input: unknown): Outcome<Record<string, unknown>> =>
  evaluate(rowOf(id), input) as Outcome<Record<string, unknown>>;

export const resultOf = (id: string, input: unknown): Record<string, unknown> => {
  const outcome = ask(id, input);
  if (!outcome.ok) throw new Error(outcome.refused.map(({ reason }) => reason).join(' '));
  return outcome.result;
};

export const noteCodes = (id: string, input: unknown): readonly string[] => {
  const outcome = ask(id, input);
  return outcome.ok ? outcome.notes.map(({ code }) => code) : [];
};

/** "input.limb outside-validity" for each refusal; empty when answered. */
export const refusalsOf = (id: string, input: unknown): readonly string[] => {
  const outcome = ask(id, input);
  return outcome.ok ? [] : outcome.refused.map(({ field, code }) => `${field} ${code}`);
};
