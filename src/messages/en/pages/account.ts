/** The own sign-in: passphrase, and where it is in use. */
export const words = {
  'account.own-first': 'Choose a passphrase of your own first',
  'account.own-first-text':
    'You signed in with a passphrase that was given to you. Everything else opens once you have changed it.',
  'account.passphrase': 'Passphrase',
  'account.no-passphrase': 'Enter your passphrase.',
  'account.current': 'Passphrase you have now',
  'account.next': 'New passphrase',
  'account.next-hint': 'At least 12 characters. Several words are easiest to remember.',
  'account.again': 'New passphrase once more',
  'account.differs': 'The two new passphrases differ. Type the new one twice.',
  'account.change': 'Change passphrase',
  'account.where': 'Where you are signed in',
  'account.this-one': '{where} (this one)',
  'account.since': 'Since {since}, last used {used}',
  'account.end': 'End',
  'account.end-all': 'Sign out everywhere',
  'account.browser': 'A browser',
  'account.browser-on': '{browser} on {system}',
  'account.iphone': 'iPhone or iPad',
  'account.with-pin': '{where}, with a PIN',
} as const;
