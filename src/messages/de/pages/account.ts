import type { words as english } from '#messages/en/pages/account.ts';
import type { Same } from '#messages/sentence.ts';

/** The own sign-in: passphrase, and where it is in use, in German. */
export const words = {
  'account.own-first': 'Wählen Sie zuerst ein eigenes Passwort',
  'account.own-first-text':
    'Sie sind mit einem Passwort angemeldet, das Sie bekommen haben. Alles andere öffnet sich, sobald Sie es geändert haben.',
  'account.passphrase': 'Passwort',
  'account.no-passphrase': 'Geben Sie Ihr Passwort ein.',
  'account.current': 'Ihr jetziges Passwort',
  'account.next': 'Neues Passwort',
  'account.next-hint': 'Mindestens 12 Zeichen. Mehrere Wörter merkt man sich am leichtesten.',
  'account.again': 'Das neue Passwort noch einmal',
  'account.differs': 'Die beiden neuen Passwörter sind verschieden. Geben Sie zweimal dasselbe ein.',
  'account.change': 'Passwort ändern',
  'account.where': 'Wo Sie angemeldet sind',
  'account.this-one': '{where} (hier)',
  'account.since': 'Seit {since}; zuletzt benutzt am {used}',
  'account.end': 'Beenden',
  'account.end-all': 'Überall abmelden',
  'account.browser': 'Ein Browser',
  'account.browser-on': '{browser}, {system}',
  'account.iphone': 'iPhone oder iPad',
  'account.with-pin': '{where}, mit PIN',
} as const satisfies Same<typeof english>;
