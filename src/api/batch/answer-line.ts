/**
 * One line of the calculation desk: text in, one line of JSON out. Pure; the process around it
 * reads, splits and writes.
 */
import type { AnyCalculation } from '#core/calculations/calculation.ts';
import type { Outcome, Refusal, RefusalCode } from '#core/outcome.ts';
import { evaluate } from '../inputs/evaluate.ts';
import { isPrintable } from './printable.ts';

export interface Answered {
  /** One line of JSON, without its line end. */
  readonly text: string;
  /** Set when a calculation itself failed, which is a defect of this program and not of the line. */
  readonly fault?: unknown;
}

export type Lookup = (id: string) => AnyCalculation | undefined;

/** An id longer than this is not echoed: it is no id of ours. */
const longestEchoedId = 100;

const refusedText = (line: number, id: string | null, refused: readonly Refusal[]): string =>
  JSON.stringify({ line, calculation: id, refused });

const single = (line: number, field: string, code: RefusalCode, reason: string): Answered => ({
  text: refusedText(line, null, [{ field, code, reason }]),
});

/** The answer to a line that was too long to be kept. */
export const tooLong = (line: number, limitBytes: number): Answered =>
  single(line, 'line', 'too-long', `Keep a line within ${limitBytes} bytes.`);

/** The answer to a line that is not JSON text in UTF-8. */
export const notJson = (line: number): Answered =>
  single(line, 'line', 'not-json', 'Write one JSON object on each line, in UTF-8.');

/** Where the figures of a calculation come from, as the desk prints it. */
export const sourcesOf = (row: AnyCalculation) =>
  row.citations.map(({ source, locator, mark }) => ({ key: source, locator, mark }));

const sources = new WeakMap<AnyCalculation, string>();

/** The same for every line of a calculation, so it is spelled once. */
const sourceText = (row: AnyCalculation): string => {
  const known = sources.get(row);
  if (known !== undefined) return known;
  const text = JSON.stringify(sourcesOf(row));
  sources.set(row, text);
  return text;
};

const failed = (line: number, id: string, fault: unknown): Answered => ({
  text: refusedText(line, id, [
    {
      field: 'input',
      code: 'outside-validity',
      reason: 'No finite answer was reached for this input: a fault of the calculation. Please report it.',
    },
  ]),
  fault,
});

const outcomeText = (line: number, row: AnyCalculation, outcome: Outcome<unknown>): Answered => {
  if (!outcome.ok) return { text: refusedText(line, row.id, outcome.refused) };
  if (!isPrintable(outcome.result)) {
    return failed(line, row.id, new Error(`${row.id} answered with a number JSON cannot hold`));
  }
  const result = JSON.stringify(outcome.result);
  const notes = JSON.stringify(outcome.notes.map(({ code, text }) => ({ code, text })));
  return {
    text: `{"line":${line},"calculation":${JSON.stringify(row.id)},"result":${result},"notes":${notes},"source":${sourceText(row)}}`,
  };
};

/** What is wrong with the frame itself, whatever the calculation. */
const frameRefusals = (frame: Readonly<Record<string, unknown>>): Refusal[] => {
  const refused: Refusal[] = [];
  for (const field of Object.keys(frame)) {
    if (field !== 'calculation' && field !== 'input') {
      const reason = `Leave out ${field}: a line has "calculation" and "input" only.`;
      refused.push({ field, code: 'unknown-field', reason });
    }
  }
  if (!Object.hasOwn(frame, 'calculation')) {
    const reason = 'Name the calculation; --list shows their ids.';
    refused.push({ field: 'calculation', code: 'missing', reason });
  } else if (typeof frame.calculation !== 'string') {
    const reason = 'The calculation is named by its id, as text; --list shows the ids.';
    refused.push({ field: 'calculation', code: 'wrong-type', reason });
  }
  if (!Object.hasOwn(frame, 'input')) {
    refused.push({ field: 'input', code: 'missing', reason: 'Give the input as an object.' });
  }
  return refused;
};

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Answers one line. `line` counts from 1 and includes the empty lines before it. */
export const answerLine = (text: string, line: number, lookup: Lookup): Answered => {
  let frame: unknown;
  try {
    frame = JSON.parse(text);
  } catch {
    return notJson(line);
  }
  if (!isObject(frame))
    return single(line, 'line', 'wrong-type', 'Write an object with "calculation" and "input".');
  const refused = frameRefusals(frame);
  const asked = typeof frame.calculation === 'string' ? frame.calculation : null;
  const row = asked === null ? undefined : lookup(asked);
  if (asked !== null && !row) {
    const reason = 'There is no calculation of this id; --list shows the ids.';
    refused.push({ field: 'calculation', code: 'unknown-calculation', reason });
  }
  const id = asked !== null && asked.length <= longestEchoedId ? asked : null;
  if (!row) return { text: refusedText(line, id, refused) };
  try {
    const outcome = evaluate(row, frame.input);
    if (refused.length === 0) return outcomeText(line, row, outcome);
    const more = outcome.ok || !Object.hasOwn(frame, 'input') ? [] : outcome.refused;
    return { text: refusedText(line, id, [...refused, ...more]) };
  } catch (fault) {
    return failed(line, row.id, fault);
  }
};
