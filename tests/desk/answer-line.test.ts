import { describe, expect, it } from 'vitest';
import { answerLine } from '#api/desk/answer-line.ts';
import { everyKind, lookup } from '#tests/support/desk-rows.ts';

const ask = (line: unknown, number = 1) =>
  JSON.parse(answerLine(typeof line === 'string' ? line : JSON.stringify(line), number, lookup).text);

const good = everyKind.example;
const askWith = (changes: Record<string, unknown>) =>
  ask({ calculation: 'every-kind', input: { ...good, ...changes } });
const onlyRefusal = (changes: Record<string, unknown>) => {
  const { refused } = askWith(changes);
  expect(refused).toHaveLength(1);
  return refused[0];
};

describe('an answered line carries its number, the result, the notes and the sources', () => {
  it('has exactly the keys of the published frame, in their order', () => {
    const text = answerLine(JSON.stringify({ calculation: 'every-kind', input: good }), 7, lookup).text;
    expect(text).toBe(
      '{"line":7,"calculation":"every-kind","result":{"echo":200,"pain":null},' +
        '"notes":[{"code":"made-up","text":"Only for tests."}],' +
        '"source":[{"key":"made-up","locator":"table 1","mark":"design"}]}',
    );
  });

  it('keeps null (asked, not answered) and a further literal apart from a number', () => {
    expect(askWith({ pain: null }).result.pain).toBeNull();
    expect(askWith({ pain: 'not-applicable' }).result.pain).toBe('not-applicable');
    expect(askWith({ pain: 0 }).result.pain).toBe(0);
  });

  it('writes minus zero as zero', () => {
    const { text } = answerLine('{"calculation":"broken","input":{"fault":"minus-zero"}}', 1, lookup);
    expect(text).toContain('"value":0}');
  });
});

describe('a hostile or mistaken line is refused with the field, a code and how to put it right', () => {
  const frames: readonly [string, string | object, { field: string; code: string }][] = [
    ['text that is not JSON', 'nope', { field: 'line', code: 'not-json' }],
    ['half an object', '{"calculation":', { field: 'line', code: 'not-json' }],
    ['NaN, which JSON does not know', '{"calculation":NaN}', { field: 'line', code: 'not-json' }],
    ['a list', '[1]', { field: 'line', code: 'wrong-type' }],
    ['null', 'null', { field: 'line', code: 'wrong-type' }],
    ['brackets a million deep', '['.repeat(1_000_000), { field: 'line', code: 'not-json' }],
    ['no calculation', { input: {} }, { field: 'calculation', code: 'missing' }],
    [
      'a calculation that is a number',
      { calculation: 3, input: {} },
      { field: 'calculation', code: 'wrong-type' },
    ],
    [
      'an unknown calculation',
      { calculation: 'x', input: {} },
      { field: 'calculation', code: 'unknown-calculation' },
    ],
    [
      'a name every object inherits',
      { calculation: 'constructor', input: {} },
      { field: 'calculation', code: 'unknown-calculation' },
    ],
    ['no input', { calculation: 'every-kind' }, { field: 'input', code: 'missing' }],
    [
      'an input that is a list',
      { calculation: 'every-kind', input: [] },
      { field: 'input', code: 'wrong-type' },
    ],
    [
      'an input that is null',
      { calculation: 'every-kind', input: null },
      { field: 'input', code: 'wrong-type' },
    ],
    [
      'a further field beside the input',
      { calculation: 'every-kind', input: good, version: 2 },
      { field: 'version', code: 'unknown-field' },
    ],
    [
      '__proto__ beside the input',
      `{"calculation":"every-kind","input":${JSON.stringify(good)},"__proto__":1}`,
      { field: '__proto__', code: 'unknown-field' },
    ],
  ];
  it.each(frames)('%s', (_, line, expected) => {
    const { refused, result } = ask(line);
    expect(result).toBeUndefined();
    expect(refused).toEqual([expect.objectContaining(expected)]);
    expect(refused[0].reason).toMatch(/^\S.* .*\.$/);
  });

  const fields: readonly [string, Record<string, unknown>, string, string, string][] = [
    ['a missing number', { loadKg: undefined }, 'input.loadKg', 'missing', 'Give loadKg: a number.'],
    ['a missing word', { sex: undefined }, 'input.sex', 'missing', 'Give sex: one of female, male.'],
    ['a number as text', { loadKg: '20' }, 'input.loadKg', 'wrong-type', 'loadKg is a number; this is text.'],
    [
      'null where no answer is no choice',
      { loadKg: null },
      'input.loadKg',
      'wrong-type',
      'loadKg is a number; this is null.',
    ],
    ['a bound that is itself refused', { loadKg: 0 }, 'input.loadKg', 'too-low', 'loadKg is above 0 kg.'],
    ['a negative load', { loadKg: -3 }, 'input.loadKg', 'too-low', 'loadKg is above 0 kg.'],
    ['a load over the bound', { loadKg: 500.1 }, 'input.loadKg', 'too-high', 'loadKg is at most 500 kg.'],
    [
      'half a repetition',
      { repetitions: 2.5 },
      'input.repetitions',
      'wrong-type',
      'repetitions is a whole number; this is a number with a fraction.',
    ],
    ['a word not listed', { sex: 'x' }, 'input.sex', 'not-listed', 'sex is one of female, male.'],
    [
      'a number for a word',
      { sex: 1 },
      'input.sex',
      'wrong-type',
      'sex is one of female, male; this is a number.',
    ],
    ['pain 11', { pain: 11 }, 'input.pain', 'too-high', 'pain is at most 10.'],
    [
      'a literal that is not among the further ones',
      { pain: 'bad' },
      'input.pain',
      'not-listed',
      'pain is a whole number, not-applicable or null.',
    ],
    [
      'true for a score',
      { pain: true },
      'input.pain',
      'wrong-type',
      'pain is a whole number, not-applicable or null; this is a boolean.',
    ],
    ['an empty list', { readings: [] }, 'input.readings', 'too-low', 'readings has at least 1 item.'],
    [
      'too long a list',
      { readings: [1, 2, 3, 4] },
      'input.readings',
      'too-high',
      'readings has at most 3 items.',
    ],
    [
      'one bad item',
      { readings: [1, -2] },
      'input.readings[1]',
      'too-low',
      'readings[1] is at least 0 mmHg.',
    ],
    [
      'an unknown field',
      { extra: 1 },
      'input.extra',
      'unknown-field',
      'Leave out extra: it is not a field of input.',
    ],
    ['a missing field inside', { body: {} }, 'input.body.massKg', 'missing', 'Give massKg: a number.'],
    [
      'too much text',
      { remark: 'x'.repeat(21) },
      'input.remark',
      'too-high',
      'remark has at most 20 characters.',
    ],
    [
      'null for a flag',
      { isSeated: null },
      'input.isSeated',
      'wrong-type',
      'isSeated is true or false; this is null.',
    ],
    [
      'fields that contradict',
      { loadKg: 450, repetitions: 25 },
      'input.repetitions',
      'inconsistent',
      'Nobody lifts that so often.',
    ],
  ];
  it.each(fields)('%s', (_, changes, field, code, reason) => {
    expect(onlyRefusal(changes)).toEqual({ field, code, reason });
  });

  it('refuses a number beyond what a double holds', () => {
    const text = JSON.stringify({ calculation: 'every-kind', input: good }).replace(
      '"loadKg":20',
      '"loadKg":1e999',
    );
    expect(ask(text).refused).toEqual([
      expect.objectContaining({ field: 'input.loadKg', code: 'wrong-type' }),
    ]);
  });

  it('names every fault of a line at once, of the frame and of the input', () => {
    const { refused } = ask({
      calculation: 'every-kind',
      input: { ...good, loadKg: -1, sex: 'x' },
      extra: 1,
    });
    expect(refused.map((one: { field: string }) => one.field)).toEqual([
      'extra',
      'input.loadKg',
      'input.sex',
    ]);
  });

  it('does not echo an id of a megabyte', () => {
    const answered = ask({ calculation: 'x'.repeat(1_000_000), input: {} });
    expect(answered.calculation).toBeNull();
    expect(JSON.stringify(answered).length).toBeLessThan(300);
  });
});

describe('a fault of a calculation is told as such and never printed as a number', () => {
  it.each(['throws', 'not-a-number', 'infinite'])('a calculation that %s', (fault) => {
    const answered = answerLine(JSON.stringify({ calculation: 'broken', input: { fault } }), 4, lookup);
    expect(answered.fault).toBeInstanceOf(Error);
    expect(JSON.parse(answered.text)).toMatchObject({
      line: 4,
      calculation: 'broken',
      refused: [{ field: 'input', code: 'outside-validity' }],
    });
  });

  it('a refusal by the calculation is an answer and not a fault', () => {
    const answered = answerLine('{"calculation":"broken","input":{"fault":"refuses"}}', 1, lookup);
    expect(answered.fault).toBeUndefined();
    expect(JSON.parse(answered.text).refused[0].code).toBe('outside-validity');
  });
});
