/** Whom a patient is told to ring, and in whose place. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { ContactFirst } from '#ui/patient/today/contact-first.tsx';
import { today } from '../views.ts';

const shown = (contact: 'routine' | 'same-day' | 'emergency') =>
  renderToStaticMarkup(<ContactFirst view={today({ contact })} />);
const inPlaceOfTheClinic = 'If nobody answers';

it('another number is named in place of the clinic where it is to be rung today, and not where it will ring', () => {
  expect(shown('same-day')).toContain(inPlaceOfTheClinic);
  expect(shown('routine')).toContain('It will ring you');
  expect(shown('routine')).not.toContain(inPlaceOfTheClinic);
  expect(shown('emergency')).not.toContain(inPlaceOfTheClinic);
});
