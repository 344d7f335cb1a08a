/** What papers of parts say beside the words of the documents they are made from. */
export const words = {
  telephone: 'Telephone {phone}',
  about: '{name}, born {on}',
  signs: 'Warning signs on which the patient stops, in the patient’s words',
  'signs-emergency': 'Ring {number} at once: {what}',
  'signs-same-day':
    'Speak with a clinician the same day, {phone}, or ring {number} if nobody answers: {what}',
  'signs-routine': 'Ring the clinic, {phone}: {what}',
  'none-at-end': 'No such paper can be made: this episode of care goes on, or the patient has died.',
  'handed-over': 'No sheet is made for a patient who was handed to others: their word counts now.',
  handover: 'Handover',
  care: 'Care',
  urgent: 'Urgent',
  limits: 'Limits',
  overrides: 'Overrides',
  'no-caution': 'None is recorded.',
  'state-in-care': 'In care',
  'state-on-break': 'On a break',
  'state-closed': 'Closed',
} as const;
