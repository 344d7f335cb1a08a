/** The page of other programs: what each token may read and until when, and what can be asked. */
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { withRouter } from '#tests/support/with-router.tsx';
import { ProgramsScreen, type TokenShown } from '#ui/clinician/programs/programs-screen.tsx';
import { MadeToken } from '#ui/clinician/programs/token-form.tsx';
import { makeProgramToken } from '#ui/clinician/programs/token-form-sent.ts';

const now = Date.parse('2026-03-02T09:00:00Z');
const token: TokenShown = {
  ...{
    id: 't',
    name: 'Booking',
    scopes: ['people', 'plans'],
    state: 'open',
    madeAt: now,
    madeBy: 'Ada Quill',
  },
  ...{ expiresAt: now + 30 * 86_400_000, endedAt: null, endedBy: null },
};
const questions = [
  {
    path: '/api/programs/v1/people',
    scope: 'people',
    summary: 'People of the clinic',
    takes: ['changedSince'],
  },
] as const;
const shown = (tokens: readonly TokenShown[]): string =>
  renderToStaticMarkup(
    withRouter(
      <ProgramsScreen
        tokens={tokens}
        questions={questions}
        document="/api/programs/v1/openapi.json"
        clock={{ zone: 'Europe/Lisbon', now }}
      />,
    ),
  );

describe('the page of other programs', () => {
  it('says of a token what it may read, until when, and offers to withdraw it', () => {
    const html = shown([token]);
    expect(html).toContain('May read: people, plans in force.');
    expect(html).toMatch(/Holds until 1 Apr, 10:00\./);
    expect(html).toMatch(/Made by Ada Quill/);
    expect(html).toContain('Withdraw');
  });

  it.each([
    [{ state: 'run-out', expiresAt: now - 1 }, /Ran out/],
    [{ state: 'withdrawn', endedAt: now, endedBy: 'Ben Oss' }, /Withdrawn by Ben Oss/],
  ] as const)('offers nothing on one that is over, and says why: %o', (over, said) => {
    const html = shown([{ ...token, ...over }]);
    expect(html).toMatch(said);
    expect(html).not.toMatch(/<button[^>]*>[^<]*Withdraw/);
  });

  it('says that nobody has one, that a program changes nothing, and that patients see its name', () => {
    const html = shown([]);
    expect(html).toContain('No program has a token.');
    expect(html).toContain('It can change nothing.');
    expect(html).toContain('patients see the name of the program');
  });

  it('shows what can be asked and leads to the document', () => {
    const html = shown([]);
    expect(html).toContain('href="/api/programs/v1/openapi.json"');
    expect(html).toContain('/api/programs/v1/people');
    expect(html).toContain('changedSince');
  });

  it('shows a new token once, with what to do with it', () => {
    const html = renderToStaticMarkup(<MadeToken name="Booking" secret="loadgate_x" />);
    expect(html).toContain('loadgate_x');
    expect(html).toContain('cannot be shown again');
  });
});

describe('the form of a token', () => {
  const typed = { 'program-name': 'Booking', 'program-days': '30', 'scope-people': 'yes' };

  it('says of each answer that is missing what to do', () => {
    expect(makeProgramToken.missing({}, {}).map(({ field }) => field)).toEqual([
      'program-name',
      'scope-people',
      'program-days',
    ]);
    expect(makeProgramToken.missing(typed, {})).toEqual([]);
    expect(makeProgramToken.missing({ ...typed, 'program-days': '9999' }, {})).toHaveLength(1);
  });

  it('sends what was ticked, and days as a number', () => {
    expect(makeProgramToken.input(typed, {})).toEqual({ name: 'Booking', scopes: ['people'], days: 30 });
  });
});
