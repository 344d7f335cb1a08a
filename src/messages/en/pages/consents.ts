/** What a patient consents to. */
export const words = {
  'consent.lead': 'You can take each one back at any time. You need give no reason.',
  'consent.monitored': 'The clinic looks at what you send: {hours}. Nobody looks at other times.',
  'consent.not-monitored': 'You have not agreed that the clinic looks at what you send. Do not count on it.',
  'consent.call': 'If you feel in danger, ring {number}. To reach the clinic, ring {phone}.',
  'consent.occlusion-supervised': 'The cuff, with a clinician beside you',
  'consent.occlusion-unsupervised': 'The cuff at home, alone',
  'consent.remote-monitoring': 'The clinic looks at what you send',
  'consent.sharing': 'Telling others who treat you',
  'consent.export': 'Handing on your record as a file',
  'consent.given': 'You have agreed.',
  'consent.not-given': 'You have not agreed.',
  'consent.give': 'I agree',
  'consent.withdraw': 'Take it back',
  'consent.proposal': 'Your clinic has not yet looked at these words.',
  'consent.ended': 'Taken back. What hung on it has ended.',
} as const;
