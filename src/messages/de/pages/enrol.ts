import type { words as english } from '#messages/en/pages/enrol.ts';
import type { Same } from '#messages/sentence.ts';

/** Setting up a phone, and its PIN, in German. */
export const words = {
  'join.title': 'Dieses Telefon einrichten',
  'join.code': 'Code von Ihrer Praxis',
  'join.code-hint': 'Zehn Buchstaben und Ziffern, zum Beispiel 4KQ7M-X2D9T. Er gilt nur einmal.',
  'join.no-code': 'Geben Sie den Code vom Blatt Ihrer Praxis ein.',
  'join.go': 'Weiter',
  'join.pin-title': 'Wählen Sie eine PIN',
  'join.pin-why':
    'Sie brauchen sie jedes Mal, wenn Sie diese Seite auf diesem Telefon öffnen. Auf einem anderen gilt sie nicht.',
  'join.pin': 'Neue PIN',
  'join.pin-hint': 'Sechs Ziffern. Keine Reihe wie 123456.',
  'join.again': 'Dieselbe PIN noch einmal',
  'join.pin-shape': 'Geben Sie sechs Ziffern ein.',
  'join.pin-differs': 'Die beiden PINs sind verschieden. Geben Sie zweimal dieselbe ein.',
  'join.done': 'Diese PIN behalten',
  'invite.how':
    'Öffnen Sie die Kamera Ihres Telefons, halten Sie sie auf das Bild und öffnen Sie die Seite. Oder öffnen Sie {address} und geben Sie diesen Code ein:',
  'invite.once':
    'Er gilt nur einmal, bis {date}. Dann wählen Sie eine PIN. Geben Sie das Blatt nicht aus der Hand, bis Sie den Code benutzt haben.',
  'pin.title': 'Geben Sie Ihre PIN ein',
  'pin.label': 'PIN dieses Telefons',
  'pin.hint': 'Sechs Ziffern',
  'pin.go': 'Öffnen',
  'pin.forgotten':
    'PIN vergessen? Rufen Sie Ihre Praxis an. Sie kann Ihnen einen neuen Code für dieses Telefon geben.',
  'pin.spent': 'Dieses Telefon braucht einen neuen Code',
  'pin.spent-text':
    'Die PIN war fünfmal falsch. Rufen Sie Ihre Praxis an und bitten Sie um einen neuen Code.',
  'pin.new-code': 'Ich habe einen neuen Code',
  'pin.passphrase': 'Mit Passwort anmelden',
} as const satisfies Same<typeof english>;
