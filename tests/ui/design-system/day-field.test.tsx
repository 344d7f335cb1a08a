/** Days as they are typed and said back; one that does not exist is never taken for left out. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Field } from '#core/calculations/describe.ts';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { readTyped } from '#ui/clinician/forms/typed.ts';
import { BirthDayField, DayField } from '#ui/design-system/day/day-field.tsx';
import { dayOfParts, notADay, partsOfDay } from '#ui/design-system/day/day-parts.ts';

const fields: readonly Field[] = [
  { name: 'from', kind: 'day', about: 'From' },
  { name: 'to', kind: 'day', nullable: true, about: 'Last day' },
];

describe('a day in a form', () => {
  it('is read where it exists, and null where it may be left out', () => {
    expect(readTyped(fields, { from: '2028-02-29', to: '' })).toEqual({
      value: { from: '2028-02-29', to: null },
      problems: [],
    });
  });

  it.each(['2027-02-29', '2026-13-01', '1961-4-', notADay])(
    'is asked for again, all faults at once, where there is no such day: %s',
    (text) => {
      const { problems } = readTyped(fields, { from: text, to: text });
      expect(problems.map(({ field }) => field)).toEqual(['from', 'to']);
      expect(problems[1]?.text).toContain('“Last day”: there is no such day');
    },
  );

  it('is named by its label where the server refuses it', () => {
    const refusals = [{ field: 'input.from', code: 'wrong-type', reason: 'from is a day that exists.' }];
    const error = Object.assign(new Error(''), { data: { refusals } });
    expect(refusedBy(error, '', 'send', fields).problems[0]?.text).toMatch(/^“From”: there is no such day/);
  });
});

describe('a day typed in three boxes', () => {
  it('is the whole day once all three stand, whatever their length, and what was typed before that', () => {
    expect(dayOfParts({ day: '9', month: '4', year: '1961' })).toBe('1961-04-09');
    expect(dayOfParts({ day: '9', month: '', year: '' })).toBe('--9');
    expect(dayOfParts({ day: '', month: '', year: '' })).toBe('');
  });

  it.each([
    { day: '9', month: '4', year: '19' },
    { day: '31', month: '2', year: '1961' },
    { day: '', month: '4', year: '1961' },
  ])('keeps each part as it was typed where they are no day: %o', (parts) => {
    expect(partsOfDay(dayOfParts(parts))).toEqual(parts);
  });

  it('shows a whole day in its parts, without zeros in front', () => {
    expect(partsOfDay('1961-04-09')).toEqual({ day: '9', month: '4', year: '1961' });
    expect(partsOfDay(notADay)).toEqual({ day: '', month: '', year: '' });
  });
});

describe('a day on the page', () => {
  const near = (value: string) =>
    renderToStaticMarkup(<DayField name="from" label="From" value={value} onDay={() => undefined} />);

  it('is said back in words, since a browser orders its parts as it likes', () => {
    expect(near('2026-09-04')).toMatch(/Friday,? 4 September 2026/);
    expect(near('2026-09-31')).not.toContain('September');
  });

  it.each(['0002-04-27', '0202-04-27', '2026-04-27'])(
    'keeps what stands while its year is typed, or the rest could not be typed: %s',
    (soFar) => {
      expect(near(soFar)).toContain(`value="${soFar}"`);
    },
  );

  it('has bounds, without which a browser takes years of five figures', () => {
    expect(near('')).toMatch(/min="1900-01-01" max="2199-12-31"/);
  });

  it('of birth is three boxes under one name, the first led to by a message', () => {
    const html = renderToStaticMarkup(
      <BirthDayField
        name="birthDay"
        label="Day of birth"
        value="1961-04-09"
        error="x"
        onDay={() => undefined}
      />,
    );
    expect(html).toContain('<legend class="field-label">Day of birth');
    expect(html.match(/<input/g)).toHaveLength(3);
    expect(html).toMatch(/<label for="birthDay">Day<\/label><input id="birthDay"/);
    expect(html).toMatch(/Sunday,? 9 April 1961/);
  });
});
