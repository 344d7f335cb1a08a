/** Why the server did not do what a patient asked for. */
export const refusals = {
  'code-not-open': 'This code no longer works, or was mistyped. Ask your clinic for a new one.',
  'phone-not-set-up': 'This phone is not set up. Ask your clinic for an invitation.',
  'phone-not-found': 'This phone is not one of yours. Load the page again.',
  'pin-too-plain':
    'Choose six digits that are not a row such as 123456 and not the same digit again and again.',
  'pin-chosen-already': 'A PIN was chosen already. Enter it, or ask your clinic for a new invitation.',
  'no-tries-left': 'Five wrong tries. This phone needs a new invitation from your clinic.',
  'wrong-pin': {
    by: 'left',
    one: 'That is not the PIN of this phone. {left} try left.',
    other: 'That is not the PIN of this phone. {left} tries left.',
  },
  'wait-seconds': {
    by: 'seconds',
    one: 'Too many tries. Wait {seconds} second, then try again.',
    other: 'Too many tries. Wait {seconds} seconds, then try again.',
  },
  'wrong-passphrase': 'That is not your passphrase. Check it and type it again.',
  'passphrase-too-short':
    'A passphrase has at least {count} characters. Several words are easiest to remember.',
  'passphrase-unchanged': 'Choose one that differs from the one you have now.',
  'passphrase-has-name': 'Choose one without your name or address, or the clinic’s, in it.',
  'passphrase-repeats': 'Choose one that is not the same again and again.',
  'passphrase-of-rows': 'Choose one that is not a row of keys, letters or figures.',
  'passphrase-one-word': 'Choose one that is more than one well-known word.',
  'sign-in-ended': 'This sign-in has already ended.',
  'confirm-sign-in': 'Enter your PIN or passphrase again to do this.',
  'signed-out': 'Sign in to go on. What you entered is still on this page.',
  'patients-only': 'This page is for patients.',
  'record-not-found': 'Your record was not found. Ring the clinic.',
  'server-failed-on-page':
    'Something went wrong on our side. What you entered is still on this page; try again.',
  'server-failed': 'Something went wrong on our side. What you entered is still there; try again.',
  'request-unread-on-page': 'This request could not be read. Load the page again.',
  'request-unread': 'This request could not be read.',
  'text-unreadable':
    'There is a character in this text that cannot be stored. Type the text instead of pasting it.',
  'foreign-origin': 'This request did not come from our own page.',
  'not-recorded':
    'Nothing can be shown at the moment, because it could not be noted who looked. Whoever runs the server has to make room or free the file; then load the page again.',
  'nothing-here': 'There is nothing here.',
  'nothing-planned': 'Nothing is planned yet, so there is nothing to put in a calendar.',
  'calendar-after-care': 'Your care here has ended, so there is nothing to put in a calendar.',
  'too-many-messages': 'You cannot send more messages today. Ring the clinic.',
  'wording-changed': 'The wording has changed since you opened this page. Read it again.',
  'answer-of-another-day':
    'You can change an answer until midnight of the day you sent it. Ring the clinic if it was not right.',
  'answer-not-found': 'The answer you want to change was not found. Load the page again.',
  'answer-changed-already': 'This answer was changed already. Load the page again to see the newest one.',
  'entry-of-another': 'This entry says it was typed by somebody who cannot use this page.',
} as const;
