/** What stands in a calendar of the patient’s own. It may be seen by others: nothing of the health in it. */
export const calendar = {
  name: 'My exercise plan',
  session: 'Exercise session',
  'session-note': 'A reminder. Any time of this day will do. Look at your plan first: it may have changed.',
  morning: 'Morning questions',
  'morning-note': 'A reminder to answer the questions on your phone.',
  review: 'Appointment at the clinic',
  'review-note': 'As it was booked when this file was made.',
  retest: 'Something is due to be measured',
  'retest-note': 'From this day on. Your clinic says when.',
} as const;
