/** A day with a time of day: read, told apart from empty, and said back. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { inputSchema } from '#api/inputs/from-descriptor.ts';
import type { Field } from '#core/calculations/describe.ts';
import { dateTimeParts } from '#core/time/date-time.ts';
import { DescriptorFields } from '#ui/clinician/forms/descriptor-fields.tsx';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { readTyped } from '#ui/clinician/forms/typed.ts';
import { DateTimeField } from '#ui/design-system/day/date-time-field.tsx';
import { dateTimeFrom, textPartsOf } from '#ui/design-system/day/date-time-parts.ts';

const whole: Field = { name: 'at', kind: 'date-time', about: 'Seen at' };
const loose: Field = { name: 'when', kind: 'date-time', mayLackTime: true, nullable: true, about: 'When' };

describe('a day with a time of day', () => {
  it.each([
    ['2026-03-02T00:00', true],
    ['2026-03-02T23:59', true],
    ['2026-03-02T24:00', false],
    ['2026-03-02T9:30', false],
    ['2026-02-30T09:30', false],
    ['2026-03-02T09:30:00', false],
    ['T09:30', false],
    ['2026-03-02', false],
  ])('%s is one: %s, to the form and to the server alike', (text, isOne) => {
    expect(inputSchema([whole]).safeParse({ at: text }).success).toBe(isOne);
    expect(readTyped([whole], { at: text }).problems.length === 0).toBe(isOne);
  });

  it('may be a day alone where the time may be left out, and nothing where it may be null', () => {
    expect(readTyped([loose], { when: '2026-03-02' })).toEqual({
      value: { when: '2026-03-02' },
      problems: [],
    });
    expect(readTyped([loose], { when: '' })).toEqual({ value: { when: null }, problems: [] });
    expect(dateTimeParts('2026-03-02')).toEqual({ day: '2026-03-02', time: null });
  });

  it('is named by its label with the way out, on the page and where the server refuses it', () => {
    const { problems } = readTyped([whole, loose], { at: '2026-03-02', when: 'T10:30' });
    expect(problems.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^“Seen at”: .*Enter both/),
      expect.stringMatching(/^“When”: .*may stay empty/),
    ]);
    const refusals = [{ field: 'input.at', code: 'wrong-type', reason: 'at is a day.' }];
    const error = Object.assign(new Error(''), { data: { refusals } });
    expect(refusedBy(error, '', 'send', [whole]).problems[0]?.text).toMatch(/^“Seen at”/);
  });

  it('keeps each part as it was typed, a time without a day too', () => {
    for (const parts of [
      { day: '2026-03-02', time: '10:30' },
      { day: '', time: '10:30' },
      { day: '2026-03-02', time: '' },
      { day: '', time: '' },
    ])
      expect(textPartsOf(dateTimeFrom(parts))).toEqual(parts);
  });

  it('is asked in two labelled boxes and said back in words', () => {
    const field = (value: string) =>
      renderToStaticMarkup(
        <DateTimeField name="when" label="When" mayLackTime value={value} onDateTime={() => undefined} />,
      );
    expect(field('2026-03-02T10:30')).toMatch(/Monday, 2 March 2026, 10:30/);
    expect(field('2026-03-02T')).not.toMatch(/Monday/);
    const form = renderToStaticMarkup(
      <DescriptorFields fields={[loose]} typed={{}} onType={() => undefined} errorOf={() => undefined} />,
    );
    expect(form).toMatch(/<legend[^>]*>When<span[^>]*> \(optional\)/);
    expect(form.match(/<label/g)).toHaveLength(2);
  });
});

describe('yes or no', () => {
  it('is refused in words of its label', () => {
    const field: Field = { name: 'isHome', kind: 'flag', about: 'Trains at home' };
    const refusals = [{ field: 'input.isHome', code: 'wrong-type', reason: 'isHome is true or false.' }];
    const error = Object.assign(new Error(''), { data: { refusals } });
    const [problem] = refusedBy(error, '', 'send', [field]).problems;
    expect(problem?.text).toBe('Choose an answer for “Trains at home”.');
    expect(readTyped([field], {}).problems[0]?.text).toBe(problem?.text);
  });
});
