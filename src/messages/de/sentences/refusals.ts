/** Why the server did not do what a patient asked for. */
import type { refusals as english } from '#messages/en/sentences/refusals.ts';
import type { Same } from '#messages/sentence.ts';

export const refusals = {
  'code-not-open':
    'Dieser Code gilt nicht mehr oder wurde falsch eingegeben. Bitten Sie Ihre Praxis um einen neuen.',
  'phone-not-set-up': 'Dieses Telefon ist nicht eingerichtet. Bitten Sie Ihre Praxis um eine Einladung.',
  'phone-not-found': 'Das ist keines Ihrer Telefone. Laden Sie die Seite neu.',
  'pin-too-plain': 'Wählen Sie sechs Ziffern: keine Reihe wie 123456 und nicht sechsmal dieselbe Ziffer.',
  'pin-chosen-already':
    'Es wurde schon eine PIN gewählt. Geben Sie sie ein oder bitten Sie Ihre Praxis um eine neue Einladung.',
  'no-tries-left': 'Fünf falsche Versuche. Dieses Telefon braucht eine neue Einladung von Ihrer Praxis.',
  'wrong-pin': {
    by: 'left',
    one: 'Das ist nicht die PIN dieses Telefons. Noch {left} Versuch.',
    other: 'Das ist nicht die PIN dieses Telefons. Noch {left} Versuche.',
  },
  'wait-seconds': {
    by: 'seconds',
    one: 'Zu viele Versuche. Warten Sie {seconds} Sekunde und versuchen Sie es dann noch einmal.',
    other: 'Zu viele Versuche. Warten Sie {seconds} Sekunden und versuchen Sie es dann noch einmal.',
  },
  'wrong-passphrase': 'Das ist nicht Ihr Passwort. Prüfen Sie es und geben Sie es noch einmal ein.',
  'passphrase-too-short':
    'Ein Passwort hat mindestens {count} Zeichen. Mehrere Wörter merkt man sich am leichtesten.',
  'passphrase-unchanged': 'Wählen Sie ein anderes als Ihr jetziges.',
  'passphrase-has-name': 'Wählen Sie eines ohne Ihren Namen oder Ihre Adresse und ohne die der Praxis.',
  'passphrase-repeats': 'Wählen Sie eines, in dem sich nicht immer dasselbe wiederholt.',
  'passphrase-of-rows': 'Wählen Sie eines, das keine Reihe von Tasten, Buchstaben oder Ziffern ist.',
  'passphrase-one-word': 'Wählen Sie eines, das mehr ist als ein bekanntes Wort.',
  'sign-in-ended': 'Diese Anmeldung ist schon beendet.',
  'confirm-sign-in': 'Geben Sie dafür Ihre PIN oder Ihr Passwort noch einmal ein.',
  'signed-out':
    'Melden Sie sich an, um weiterzumachen. Was Sie eingegeben haben, steht noch auf dieser Seite.',
  'patients-only': 'Diese Seite ist für Patientinnen und Patienten.',
  'record-not-found': 'Ihre Akte wurde nicht gefunden. Rufen Sie die Praxis an.',
  'server-failed-on-page':
    'Bei uns ist etwas schiefgegangen. Was Sie eingegeben haben, steht noch auf dieser Seite. Versuchen Sie es noch einmal.',
  'server-failed':
    'Bei uns ist etwas schiefgegangen. Was Sie eingegeben haben, ist noch da. Versuchen Sie es noch einmal.',
  'request-unread-on-page': 'Diese Anfrage war nicht lesbar. Laden Sie die Seite neu.',
  'request-unread': 'Diese Anfrage war nicht lesbar.',
  'text-unreadable':
    'In diesem Text steht ein Zeichen, das sich nicht speichern lässt. Tippen Sie ihn ein, statt ihn einzufügen.',
  'foreign-origin': 'Diese Anfrage kam nicht von unserer eigenen Seite.',
  'not-recorded':
    'Im Moment lässt sich nichts anzeigen, weil nicht festgehalten werden kann, wer etwas angesehen hat. Wer den Server betreibt, muss Platz schaffen oder die Datei freigeben. Laden Sie die Seite danach neu.',
  'nothing-here': 'Hier ist nichts.',
  'nothing-planned': 'Noch ist nichts geplant. Deshalb gibt es nichts für einen Kalender.',
  'calendar-after-care': 'Ihre Behandlung hier ist beendet. Für einen Kalender gibt es daher nichts.',
  'too-many-messages': 'Heute können Sie keine Nachrichten mehr senden. Rufen Sie die Praxis an.',
  'wording-changed':
    'Der Wortlaut hat sich geändert, seit Sie diese Seite geöffnet haben. Lesen Sie ihn noch einmal.',
  'answer-of-another-day':
    'Eine Antwort können Sie bis Mitternacht des Tages ändern, an dem Sie sie geschickt haben. Rufen Sie die Praxis an, wenn etwas nicht gestimmt hat.',
  'answer-not-found': 'Die Antwort, die Sie ändern möchten, wurde nicht gefunden. Laden Sie die Seite neu.',
  'answer-changed-already':
    'Diese Antwort wurde schon geändert. Laden Sie die Seite neu, dann sehen Sie die neueste.',
  'entry-of-another':
    'In diesem Eintrag steht, dass ihn jemand eingegeben hat, der diese Seite nicht benutzen darf.',
} as const satisfies Same<typeof english>;
