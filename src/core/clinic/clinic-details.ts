/** What a clinic says of itself to patients, on phones and on paper, each entered by itself. */
export const clinicDetails = [
  'name',
  'phone',
  'urgent-number',
  'emergency-number',
  'monitoring-hours',
] as const;
export type ClinicDetail = (typeof clinicDetails)[number];

/** Those that are a line of text; hours are entered by day. */
export type ClinicText = Exclude<ClinicDetail, 'monitoring-hours'>;
