import { describe, expect, it } from 'vitest';
import { answerLine } from '#api/batch/answer-line.ts';
import { everyKind, lookup } from '#tests/support/desk-rows.ts';

const ask = (line: unknown, number = 1) =>
  JSON.parse(answerLine(typeof line === 'string' ? line : JSON.stringify(line), number, lookup).text);

const good = everyKind.example;
const askWith = (changes: Record<string, unknown>) =>
  ask({ calculation: 'every-kind', input: { ...good, ...changes } });

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
