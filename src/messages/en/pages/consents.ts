/** What a patient consents to. */
export const words = {
  'consent.lead': 'You can withdraw each one at any time. You need not give a reason.',
  'consent.monitored': 'The clinic reads what you send: {hours}. Nobody reads it outside these hours.',
  'consent.not-monitored': 'You have not consented to the clinic reading what you send. Do not count on it.',
  'consent.call': 'If you feel in danger, ring {number}. To reach the clinic, ring {phone}.',
  'consent.occlusion-supervised': 'The cuff, with a clinician beside you',
  'consent.occlusion-unsupervised': 'The cuff at home, alone',
  'consent.remote-monitoring': 'The clinic reads what you send',
  'consent.sharing': 'Telling others who treat you',
  'consent.export': 'Handing on your record as a file',
  'consent.given': 'You have consented.',
  'consent.not-given': 'You have not consented.',
  'consent.give': 'I consent',
  'consent.withdraw': 'Withdraw',
  'consent.proposal': 'Your clinic has not checked this wording yet.',
  'consent.not-sent': 'Not sent. Try again in a moment.',
  'consent.ended': 'Withdrawn. Exercises that needed this consent have stopped.',
} as const;
