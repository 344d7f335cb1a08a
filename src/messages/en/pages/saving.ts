/** What is saved on this phone, and what has reached the clinic. */
export const words = {
  'saved.title': 'Saved on this phone',
  'saved.all-sent': 'All your answers have reached the clinic.',
  'saved.waiting': {
    by: 'count',
    one: '1 set of answers is waiting on this phone to be sent.',
    other: '{count} sets of answers are waiting on this phone to be sent.',
  },
  'saved.sending': 'Sending your answers now.',
  'saved.no-signal': 'There is no signal. Your answers are kept here and will be sent once there is one.',
  'saved.signed-out': 'You are signed out. Your answers are kept here. Sign in again to send them.',
  'saved.sign-in': 'Sign in again',
  'saved.kept-aside':
    'The clinic could not take one of your entries. It is kept on this phone. Ring {phone}.',
  'saved.not-kept': 'This phone cannot keep your answers. Leave this page open until they are sent.',
  'saved.try-now': 'Send now',
  'entry.session': 'Session',
  'entry.morning': 'Morning check',
  'entry.two-hours': 'Two hours after',
  'entry.message': 'Message',
  'entry.sign': 'Warning sign',
  'entry.home-answers': 'Questions from your clinic',
  'entry.at': '{kind}, {time}',
  'entry.waiting': 'Saved here',
  'entry.stored': 'At the clinic',
  'entry.aside': 'Kept here, ring us',
} as const;
