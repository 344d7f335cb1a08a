/** The own passphrase changed. None of its fields is ever shown again. */
import './words.ts';
import { t } from '#ui/language/words.ts';
import type { AskedForm } from './asked-form.ts';

export const passphraseNames = ['current', 'next', 'again'] as const;

export const changePassphrase: AskedForm = {
  name: 'passphrase',
  about: [],
  names: () => passphraseNames,
  secrets: passphraseNames,
  missing: ({ current, next, again }) => {
    if (!current) return [{ field: 'current', text: t('account.no-passphrase') }];
    return next === again ? [] : [{ field: 'again', text: t('account.differs') }];
  },
  path: 'account.changePassphrase',
  input: ({ current, next }) => ({ current, next }),
  page: () => '/account',
};
