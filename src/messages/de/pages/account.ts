import type { words as english } from '#messages/en/pages/account.ts';
import type { Same } from '#messages/sentence.ts';

/** The own sign-in: passphrase, and where it is in use, in German. */
export const words = {
  'account.own-first': 'Wählen Sie zuerst ein eigenes Passwort',
  'account.own-first-text':
    'Sie sind mit einem Passwort angemeldet, das Sie bekommen haben. Alles andere öffnet sich, sobald Sie es geändert haben.',
  'account.passphrase': 'Passwort',
  'account.no-passphrase': 'Geben Sie Ihr Passwort ein.',
  'account.prove': 'Geben Sie Ihr Passwort noch einmal ein',
  'account.prove-pin': 'Geben Sie die PIN dieses Telefons noch einmal ein',
  'account.prove-why':
    'Das letzte Mal ist mehr als zehn Minuten her. Was Sie eingegeben haben, bleibt auf dieser Seite stehen.',
  'account.pin': 'PIN dieses Telefons',
  'account.no-pin': 'Geben Sie die sechs Ziffern Ihrer PIN ein.',
  'account.cancel': 'Abbrechen',
  'account.current': 'Ihr jetziges Passwort',
  'account.next': 'Neues Passwort',
  'account.next-hint': 'Mindestens 12 Zeichen. Mehrere Wörter merkt man sich am leichtesten.',
  'account.again': 'Das neue Passwort noch einmal',
  'account.differs': 'Die beiden neuen Passwörter sind verschieden. Geben Sie zweimal dasselbe ein.',
  'account.change': 'Passwort ändern',
  'account.where': 'Wo Sie angemeldet sind',
  'account.this-one': '{where} (hier)',
  'account.since': 'Seit dem {since}; zuletzt benutzt am {used}',
  'account.end': 'Beenden',
  'account.end-all': 'Überall abmelden',
  'account.browser': 'Ein Browser',
  'account.browser-on': '{browser}, {system}',
  'account.iphone': 'iPhone oder iPad',
  'account.with-pin': '{where}, mit PIN',
} as const satisfies Same<typeof english>;
