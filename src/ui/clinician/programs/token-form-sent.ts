/** The form by which a token is made. */
import { type TokenScope, tokenScopes } from '#core/clinic/token-scopes.ts';
import { say } from '#messages/en/staff/administration/programs.ts';
import type { AskedForm } from '../../account/asked-form.ts';

export const tokenDays = ['30', '90', '366'] as const;
export type TokenDays = (typeof tokenDays)[number];

export const scopeField = (scope: TokenScope): string => `scope-${scope}`;

const scopesIn = (typed: Readonly<Record<string, string | undefined>>): readonly TokenScope[] =>
  tokenScopes.filter((scope) => typed[scopeField(scope)] === 'yes');

export const makeProgramToken: AskedForm = {
  name: 'program-token',
  about: [],
  names: () => ['program-name', 'program-days', ...tokenScopes.map(scopeField)],
  missing: (typed) => [
    ...((typed['program-name'] ?? '').trim().length < 2
      ? [{ field: 'program-name', text: say('make.name-missing') }]
      : []),
    ...(scopesIn(typed).length === 0
      ? [{ field: scopeField(tokenScopes[0]), text: say('make.scopes-missing') }]
      : []),
    ...((tokenDays as readonly string[]).includes(typed['program-days'] ?? '')
      ? []
      : [{ field: 'program-days', text: say('make.days-missing') }]),
  ],
  path: 'admin.programTokens.make',
  input: (typed) => ({
    name: typed['program-name'],
    scopes: scopesIn(typed),
    days: Number(typed['program-days']),
  }),
  page: () => '/administration/programs',
  // Made for copying, and shown once.
  done: (answer, typed) =>
    `${say('made.title', { name: typed['program-name'] ?? '' })}: ${(answer as { readonly secret: string }).secret} ${say('made.note')}`,
};
