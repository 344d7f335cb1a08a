/** A patient's own phones, and ending one that was lost. */
export const words = {
  'phones.title': 'Your phones',
  'phones.none': 'No phone has been set up for you.',
  'phones.each-time': 'A phone that was set up more than once is listed once for each time.',
  'phones.set-up': 'Phone set up {when}',
  'phones.this': '{which} (this phone)',
  'phones.opened': 'Last opened with its PIN {when}',
  'phones.no-pin': 'No PIN has been chosen on it yet',
  'phones.locked': 'Its PIN was wrong five times and no longer opens anything',
  'phones.ended-by-you': 'You signed it out {when}. Its PIN no longer opens anything.',
  'phones.ended-by-clinic': 'Your clinic signed it out {when}. Its PIN no longer opens anything.',
  'phones.lost': 'I have lost this phone',
  'phones.sure': 'Sign this phone out for good? This can’t be undone.',
  'phones.does':
    'It is signed out, its PIN no longer opens anything, and it can no longer send to your clinic.',
  'phones.erases-nothing': 'Nothing on the phone is erased, and the phone itself is not locked.',
  'phones.unsent':
    'Answers you finished there that have not been sent yet stay on it. They are encrypted for your clinic: nobody can read them on the phone. Your clinic gets them only if you find the phone and set it up again.',
  'phones.still-seen':
    'Pages kept for days without signal stay on it, and so does what you left unfinished. When it has no signal, somebody who can open the phone may still see them.',
  'phones.new-phone':
    'A new phone needs an invitation from your clinic, and so does this one if you find it. If it was your only phone, ring your clinic.',
  'phones.end': 'Yes, sign this phone out',
  'phones.keep': 'No, leave it as it is',
  'phones.ended-now': 'The phone is signed out',
  'phones.ended-before': 'This phone had already been signed out',
} as const;
