/** The record as files: the patient finds each on the own page, and is told what a file no longer does. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { exportFormats } from '#exchange/person-files.ts';
import { OwnCopies } from '#ui/patient/account/own-copies.tsx';

describe('the own copies', () => {
  const page = renderToStaticMarkup(<OwnCopies />);

  it('lead to each open format that there is, and to the paper, in the language of the page', () => {
    const addresses = [...page.matchAll(/href="([^"]+)"/g)].map(([, address]) => address);
    expect(addresses.sort()).toEqual(
      [
        ...exportFormats.map((format) => `/exports/${format}?language=en`),
        '/papers/record?language=en',
      ].sort(),
    );
  });

  it('say that nobody has to be asked, that a calendar does not follow the plan, and that files are not locked', () => {
    for (const words of ['You need not ask anybody.', 'does not change when your plan changes', 'not locked'])
      expect(page).toContain(words);
  });
});
