/** The next appointment in one line on today's page. */
import { renderToStaticMarkup } from 'react-dom/server';
import { afterEach, expect, it } from 'vitest';
import { everyLanguage } from '#messages/every-language.ts';
import { setLanguage } from '#ui/language/words.ts';
import { Told } from '#ui/patient/today/told.tsx';
import { viewOnDay } from '#ui/patient/view-on-day.ts';
import { today } from '../views.ts';

afterEach(() => setLanguage());

type Appointment = NonNullable<ReturnType<typeof today>['appointment']>;
const pageOn = (day: string, appointment: Appointment | null | undefined) =>
  renderToStaticMarkup(<Told view={viewOnDay(today({ appointment }), day)} />);
const booked = { day: '2026-03-12', time: '10:30', place: 'North site' };

it('says day, time and place', () => {
  expect(pageOn('2026-03-09', booked)).toBe('<p>Next appointment: Thursday 12 March, 10:30, North site</p>');
});

it('says no time and no place that were not booked', () => {
  expect(pageOn('2026-03-09', { ...booked, time: null, place: null })).toBe(
    '<p>Next appointment: Thursday 12 March</p>',
  );
});

it('makes a number in the place one touch away', () => {
  expect(pageOn('2026-03-09', { ...booked, place: 'ring 01 234' })).toContain(
    '<a href="tel:01234">01 234</a>',
  );
});

it.each([
  ['2026-03-11', true],
  ['2026-03-12', true],
  ['2026-03-13', false],
])('on a page kept without signal is shown on %s: %s', (day, isShown) => {
  expect(pageOn(day, booked).includes('North site')).toBe(isShown);
});

it.each([[null], [undefined]])('is not there where none is booked: %s', (none) => {
  expect(pageOn('2026-03-09', none)).toBe('');
});

it('is said in German', () => {
  const { de } = everyLanguage;
  setLanguage({ tag: 'de', locale: de.locale, forms: de.forms, words: de.pages });
  expect(pageOn('2026-03-09', booked)).toBe(
    '<p>Nächster Termin: Donnerstag, 12. März, 10:30, North site</p>',
  );
});
