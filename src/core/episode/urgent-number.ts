/** The number to ring when nobody answers at the clinic, which is not the number for danger to life. */

/** Numbers as the clinic entered them; `urgentNumber` is null until it does. */
export interface ClinicNumbers {
  readonly emergencyNumber: string;
  readonly urgentNumber: string | null;
}

/** What patients are told to ring: until the clinic has entered one, the number for emergencies. */
export const urgentNumberOf = ({ emergencyNumber, urgentNumber }: ClinicNumbers): string =>
  urgentNumber ?? emergencyNumber;
