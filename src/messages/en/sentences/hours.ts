/** The hours in which the clinic reads what is sent. */
export const hours = {
  Mon: 'Monday',
  Tue: 'Tuesday',
  Wed: 'Wednesday',
  Thu: 'Thursday',
  Fri: 'Friday',
  Sat: 'Saturday',
  Sun: 'Sunday',
  span: '{first} to {last}',
  hours: '{days}, {from} to {to}',
} as const;
