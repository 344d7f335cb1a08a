/** Signing out of a phone that holds something, or has no signal; and a locked phone. */
export const words = {
  'leave.unfinished': {
    by: 'count',
    one: 'Something you began is not finished',
    other: '{count} things you began are not finished',
  },
  'leave.unsent': {
    by: 'count',
    one: '1 set of answers has not been sent yet. It stays on this phone, closed, and goes once you sign in again.',
    other:
      '{count} sets of answers have not been sent yet. They stay on this phone, closed, and go once you sign in again.',
  },
  'leave.unsent-title': 'Not everything has been sent',
  'leave.no-signal-title': 'There is no signal',
  'leave.no-signal':
    'Without a signal this phone can only be locked. Then nobody can open your pages, not even you, until there is a signal and you sign in.',
  'leave.cuff-title': 'The cuff is on',
  'leave.cuff': 'Take it off first. Its clock is on the page of your session.',
  'leave.to-cuff': 'To the clock and “Take it off now”',
  'leave.stay': 'Stay signed in',
  'leave.lock': 'Lock, and keep what I began',
  'leave.lock-only': 'Lock this phone',
  'leave.go': 'Sign out',
  'leave.throw-away': 'Throw away what I began, and sign out',
  'leave.sure': 'Throw it away for good? Your clinic will not see it.',
  'leave.yes': 'Yes, throw it away',
  'locked.title': 'This phone is locked',
  'locked.text': 'You signed out, and there is no signal. Once there is one, sign in with your PIN to go on.',
  'locked.again': 'Try again',
} as const;
