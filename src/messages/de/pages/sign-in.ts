import type { words as english } from '#messages/en/pages/sign-in.ts';
import type { Same } from '#messages/sentence.ts';

/** Signing in, in German. */
export const words = {
  'sign-in.title': 'Anmelden',
  'sign-in.email': 'E-Mail-Adresse',
  'sign-in.passphrase': 'Passwort',
  'sign-in.go': 'Anmelden',
  'sign-in.going': 'Anmeldung läuft',
  'sign-in.no-email': 'Geben Sie Ihre E-Mail-Adresse ein.',
  'sign-in.email-shape': 'Geben Sie eine Adresse mit @ ein, zum Beispiel name@example.org.',
  'sign-in.no-passphrase': 'Geben Sie Ihr Passwort ein.',
  'sign-in.wrong':
    'Adresse und Passwort passen nicht zusammen. Prüfen Sie beides und geben Sie das Passwort neu ein.',
  'sign-in.too-often': {
    by: 'seconds',
    one: 'Zu viele Versuche. Warten Sie 1 Sekunde und versuchen Sie es dann noch einmal.',
    other: 'Zu viele Versuche. Warten Sie {seconds} Sekunden und versuchen Sie es dann noch einmal.',
  },
  'sign-in.code-title': 'Geben Sie Ihren Code ein',
  'sign-in.code': 'Code mit 6 Ziffern',
  'sign-in.code-hint': 'Ihre Code-App zeigt ihn. Er wechselt alle 30 Sekunden.',
  'sign-in.code-shape': 'Geben Sie die 6 Ziffern ein, die Ihre Code-App zeigt.',
  'sign-in.code-wrong':
    'Dieser Code stimmt nicht oder ist abgelaufen. Geben Sie den ein, der jetzt angezeigt wird.',
  'sign-in.recovery': 'Ersatzcode',
  'sign-in.recovery-hint': 'Einer der Codes, die Sie auf Papier haben. Jeder gilt einmal.',
  'sign-in.no-recovery': 'Geben Sie einen Ihrer Ersatzcodes ein.',
  'sign-in.recovery-wrong': 'Dieser Ersatzcode stimmt nicht oder wurde benutzt. Nehmen Sie einen anderen.',
  'sign-in.use-recovery': 'Ich habe hier keine Code-App',
  'sign-in.use-code': 'Die Code-App benutzen',
  'sign-in.no-answer':
    'Der Server der Praxis hat nicht geantwortet. Prüfen Sie das Netz und melden Sie sich noch einmal an.',
  'sign-in.passkey': 'Mit Passkey anmelden',
  'sign-in.passkey-none': 'Es wurde kein Passkey benutzt. Sie können Ihr Passwort eingeben.',
  'sign-in.passkey-wrong': 'Dieser Passkey öffnet hier nichts. Geben Sie Ihr Passwort ein.',
  'sign-in.help': 'Passwort vergessen? Rufen Sie die Praxis an. Sie kann Ihnen ein neues geben.',
  'sign-in.demo-title': 'Anmeldungen der Vorführung',
  'sign-in.demo': 'Diese Menschen sind erfunden. Das Passwort von allen ist {passphrase}.',
  'sign-in.demo-use': 'Diese nehmen',
  'sign-in.cover': 'Ihre Antworten werden nicht rund um die Uhr gelesen. Bei Gefahr wählen Sie den Notruf.',
} as const satisfies Same<typeof english>;
