/** A staff member’s own sign-in: codes, passkeys. */
import { sayIn } from '../../say.ts';

export const words = {
  'own-sign-in': 'Your sign-in',
  'second-first': 'Set up one-time codes or a passkey first',
  'second-first-note':
    'Your clinic requires staff to use more than a passphrase. Set up codes, or sign in with a passkey, to use the other pages.',
  codes: 'One-time codes',
  'codes.on': 'On: you sign in with your passphrase and a code.',
  'codes.off': 'Off: you sign in with your passphrase only.',
  'codes.change': 'Change codes',
  'codes.set-up': 'Set up codes',
  'codes.replace': 'Codes are on. New recovery codes replace the old ones.',
  'codes.new': 'New recovery codes',
  'codes.switch-off': 'Switch codes off',
  'codes.about':
    'With a code from your phone as well, nobody can sign in with your passphrase alone. You need an authenticator app that shows six-digit codes.',
  'app.add': 'Add it to your app',
  'app.scan': 'Code to scan with an authenticator app',
  'app.secret': 'Or type this secret into the app:',
  'app.code': 'Code shown in the app',
  'app.code-hint': 'Six digits',
  'codes.switch-on': 'Switch codes on',
  'codes.are-on': 'One-time codes are on',
  'passkey.none-added':
    'No passkey was added. The device refused, the request timed out, or the device already has one.',
  'passkey.no-name': 'Name it, such as “desk key”.',
  'passkey.name': 'Name of the passkey',
  'passkey.name-hint': 'So that you can tell later which device it is on',
  'passkey.add': 'Add a passkey',
  'passkeys.note':
    'A passkey is stored on your device or on a security key, and unlocked with a PIN, fingerprint or face. It signs you in without a passphrase or code, and does not work on a fake page.',
  'passkey.used': 'Added {made}, last used {used}',
  'passkey.not-used': 'Added {made}, not used yet',
  'passkey.no-address':
    'Passkeys need a web address with a name. Here the clinic’s address is a number, so you cannot add one.',
  recovery: 'Recovery codes',
  'recovery.note':
    'Print them or write them down now. They are not shown again. Each one signs you in once instead of a code from the app. Keep them away from your computer.',
  'recovery.saved': 'I have saved them',
} as const;

export const say = sayIn(words);
