/** Sentences a clinician may start a message to a patient from. */
export const ready = {
  stay: 'Stay with what you are doing now. I have looked at your answers.',
  less: 'Do a little less next time. Your joint was sorer than usual for you.',
  harder: 'You can try the next harder version. Tell us in the morning how the joint is.',
  'stop-ring': 'Stop your exercises for now, and ring us. We would like to talk first.',
  answers:
    'We have not had your morning answers for some days. Tell us how the joint is, or ring if something is wrong.',
  'pause-over': 'You can start again with the dose on your page. Stop and ring if the joint gets worse.',
  review: 'We will look at it together when you come next.',
  measure: 'We would like to measure again how strong you are. Bring shoes you walk well in.',
} as const;
