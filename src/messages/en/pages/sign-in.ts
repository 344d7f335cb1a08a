/** Signing in: for the pages that ask for it, which read this file. */
import { teach } from '#messages/taught.ts';

export const signInWords = {
  'sign-in.title': 'Sign in',
  'sign-in.email': 'Email address',
  'sign-in.passphrase': 'Passphrase',
  'sign-in.go': 'Sign in',
  'sign-in.going': 'Signing in',
  'sign-in.no-email': 'Enter your email address.',
  'sign-in.email-shape': 'Enter an email address with an @ in it, such as name@example.org.',
  'sign-in.no-passphrase': 'Enter your passphrase.',
  'sign-in.wrong':
    'The email address and passphrase do not belong together. Check both and enter the passphrase again.',
  'sign-in.too-often': 'Too many tries. Wait {seconds} seconds, then try again.',
  'sign-in.code-title': 'Enter your code',
  'sign-in.code': 'Code of 6 digits',
  'sign-in.code-hint': 'Your code app shows it. It changes every 30 seconds.',
  'sign-in.code-shape': 'Enter the 6 digits your code app shows.',
  'sign-in.code-wrong': 'This code is not right or has run out. Enter the one shown now.',
  'sign-in.recovery': 'Recovery code',
  'sign-in.recovery-hint': 'One of the codes you kept on paper. Each works once.',
  'sign-in.no-recovery': 'Enter one of your recovery codes.',
  'sign-in.recovery-wrong': 'This recovery code is not right or was used before. Enter another one.',
  'sign-in.use-recovery': 'I have no code app here',
  'sign-in.use-code': 'Use the code app',
  'sign-in.no-answer': 'The clinic’s server did not answer. Check your signal, then sign in again.',
  'sign-in.passkey': 'Sign in with a passkey',
  'sign-in.passkey-none': 'No passkey was used. You can use your passphrase.',
  'sign-in.passkey-wrong': 'This passkey does not open anything here. Use your passphrase.',
  'sign-in.help': 'Forgotten your passphrase? Ring your clinic. It can give you a new one.',
  'sign-in.demo-title': 'Demo sign-ins',
  'sign-in.demo': 'These people are invented. The passphrase of each is {passphrase}.',
  'sign-in.demo-use': 'Use this one',
  'sign-in.cover': 'Nobody at the clinic watches all the time. In danger, ring the emergency number.',
} as const;

teach(signInWords);
