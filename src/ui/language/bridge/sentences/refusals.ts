import type { Sentences } from '../translator.ts';

/** What the server answers a patient who signs in or changes something, in German. Read by nobody yet. */
export const refusalSentences: Sentences = {
  'This code is not open any more, or was typed differently. Ask your clinic for a new one.':
    'Dieser Code gilt nicht mehr oder wurde anders eingegeben. Bitten Sie Ihre Praxis um einen neuen.',
  'This phone is not set up. Ask your clinic for an invitation.':
    'Dieses Telefon ist nicht eingerichtet. Bitten Sie Ihre Praxis um eine Einladung.',
  'Choose six digits that are not a row such as 123456 and not the same digit again and again.':
    'Wählen Sie sechs Ziffern, die keine Reihe wie 123456 sind und nicht immer dieselbe Ziffer.',
  'A PIN was chosen already. Enter it, or ask your clinic for a new invitation.':
    'Es wurde schon eine PIN gewählt. Geben Sie sie ein oder bitten Sie Ihre Praxis um eine neue Einladung.',
  'Five wrong tries. This phone needs a new invitation from your clinic.':
    'Fünf falsche Versuche. Dieses Telefon braucht eine neue Einladung von Ihrer Praxis.',
  'That is not the PIN of this phone. {#left} try left.':
    'Das ist nicht die PIN dieses Telefons. Noch {#left} Versuch.',
  'That is not the PIN of this phone. {#left} tries left.':
    'Das ist nicht die PIN dieses Telefons. Noch {#left} Versuche.',
  'Too many tries. Wait {#seconds} seconds, then try again.':
    'Zu viele Versuche. Warten Sie {#seconds} Sekunden, dann noch einmal.',
  'That is not your passphrase. Check it and type it again.':
    'Das ist nicht Ihr Passwort. Prüfen Sie es und geben Sie es noch einmal ein.',
  'A passphrase has at least {#count} characters. Several words are easiest to remember.':
    'Ein Passwort hat mindestens {#count} Zeichen. Mehrere Wörter merkt man sich am leichtesten.',
  'Choose one that is not the one you have.': 'Wählen Sie eines, das Sie noch nicht haben.',
  'Choose one without your name or address, or the clinic’s, in it.':
    'Wählen Sie eines ohne Ihren Namen oder Ihre Adresse und ohne die der Praxis.',
  'Choose one that is not the same again and again.': 'Wählen Sie eines, das sich nicht immer wiederholt.',
  'Choose one that is not a row of keys, letters or figures.':
    'Wählen Sie eines, das keine Reihe von Tasten, Buchstaben oder Ziffern ist.',
  'Choose one that is more than one well-known word.':
    'Wählen Sie eines, das mehr ist als ein bekanntes Wort.',
  'It has ended already.': 'Diese Anmeldung ist schon beendet.',
  'Enter your PIN or passphrase again to do this.':
    'Geben Sie dafür Ihre PIN oder Ihr Passwort noch einmal ein.',
  'Sign in to go on. What you entered is still on this page.':
    'Melden Sie sich an, um weiterzumachen. Was Sie eingegeben haben, steht noch auf dieser Seite.',
  'This page is for patients.': 'Diese Seite ist für Patientinnen und Patienten.',
  'Your record was not found. Ring the clinic.': 'Ihre Akte wurde nicht gefunden. Rufen Sie die Praxis an.',
  'The clinic’s server did not answer. What you entered is still here; try again.':
    'Der Server der Praxis hat nicht geantwortet. Was Sie eingegeben haben, ist noch hier. Versuchen Sie es noch einmal.',
  'Something went wrong on our side. What you entered is still on this page; try again.':
    'Bei uns ist etwas schiefgegangen. Was Sie eingegeben haben, steht noch auf dieser Seite. Versuchen Sie es noch einmal.',
  'Something went wrong on our side. What you entered is still there; try again.':
    'Bei uns ist etwas schiefgegangen. Was Sie eingegeben haben, ist noch da. Versuchen Sie es noch einmal.',
  'This request could not be read. Load the page again.':
    'Diese Anfrage war nicht lesbar. Laden Sie die Seite neu.',
  'This request could not be read.': 'Diese Anfrage war nicht lesbar.',
  'This request did not come from our own page.': 'Diese Anfrage kam nicht von unserer eigenen Seite.',
  'There is nothing here.': 'Hier ist nichts.',
  'That is more than a day’s messages. Ring the clinic.':
    'Das sind mehr Nachrichten, als an einem Tag gehen. Rufen Sie die Praxis an.',
  'The words have changed since you opened this page. Read them again.':
    'Die Sätze haben sich geändert, seit Sie diese Seite geöffnet haben. Lesen Sie sie noch einmal.',
  'This entry says it was typed by somebody who cannot use this page.':
    'In diesem Eintrag steht, dass ihn jemand eingegeben hat, der diese Seite nicht benutzen darf.',
};
