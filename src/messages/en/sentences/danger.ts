/** A warning sign and a pause as the patient reads them. Each sentence says how things stand and no more. */
export const danger = {
  reported: 'You told us of a warning sign. Do no exercises until we have spoken with you.',
  'reported-to-us': 'Your exercises are paused. Do none of them until we have spoken with you.',
  acknowledged:
    'Your exercises are paused. {name} knows why and will speak with you. Do no exercises until then.',
  attempted:
    'We tried to reach you and could not. Ring us: {clinic}, {phone}. Do no exercises until we have spoken.',
  ended: '{name} has spoken with you. Your exercises stay paused until we start them again.',
  'ended-carer':
    '{name} has spoken with the person who cares for you. Your exercises stay paused until we start them again.',
  'ended-some':
    '{name} has spoken with you. The exercises marked below stay paused until we start them again.',
  'ended-carer-some':
    '{name} has spoken with the person who cares for you. The exercises marked below stay paused until we start them again.',
  'paused-all': 'Your exercises are paused until we start them again.',
  'paused-joint': 'Exercises for your {joint} are paused until we start them again.',
  'paused-some': 'Some of your exercises are paused until we start them again.',
} as const;
