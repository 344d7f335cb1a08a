/** The page of the clinic’s figures: each with what it is of, and what is left out said so. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { clinicLearning } from '#core/clinic/learning/clinic-learning.ts';
import type { LearnedOfPerson } from '#core/clinic/learning/learned-of-person.ts';
import { ClinicFigures } from '#ui/clinician/learning/clinic-figures.tsx';

const one: LearnedOfPerson = {
  signs: [{ urgency: 'same-day', hours: 3.25 }],
  mornings: { asked: 10, answered: 9 },
  sessions: { planned: 4, done: 3 },
  weeks: 2,
  signatures: 1,
  contacts: 0,
  methods: [{ method: 'low-load', shares: [1.25], outcome: 'better' }],
};
const pageOf = (people: readonly LearnedOfPerson[]) =>
  renderToStaticMarkup(<ClinicFigures found={{ weeks: 26, fewest: 5, ...clinicLearning(people) }} />);

it('tells shares with count, denominator and interval, and a quartile among open ones as not reached', () => {
  const page = pageOf([
    ...Array.from({ length: 5 }, () => one),
    { ...one, signs: [{ urgency: 'same-day', hours: null }] },
  ]);
  expect(page).toContain('54 of 60 answered, 6 missing, of 6 people');
  expect(page).toContain('18 of 24 planned done');
  expect(page).toContain('6 of 6 (61–100 %)');
  expect(page).toContain('quarter 1.25, half 1.25, three quarters 1.25');
  expect(page).toContain('3.25');
  expect(
    pageOf(Array.from({ length: 5 }, () => ({ ...one, signs: [{ urgency: 'same-day', hours: null }] }))),
  ).toContain('not reached yet');
});

it('leaves out what one to four people are behind, and says where there is nobody', () => {
  expect(pageOf([one]).match(/one to four people are behind it/g)!.length).toBeGreaterThan(8);
  expect(pageOf([one])).not.toMatch(/9 of 10|3 of 4|1\.25/);
  const empty = pageOf([]);
  expect(empty).toContain('Nobody yet.');
  expect(empty).not.toMatch(/NaN|Infinity|undefined/);
});
