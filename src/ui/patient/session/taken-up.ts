/** What a session keeps for being left and taken up again. All of it is absent in drafts of an earlier release. */
export interface TakenUp {
  /** Instant of the last answer. */
  readonly answeredAt?: number;
  /** What the phone's clock lacked when it began, ms: its times go by one clock, whatever is measured meanwhile. */
  readonly clockLacksMs?: number;
  /** Step to come back to once warning signs and pain now, asked again, are answered. */
  readonly backTo?: string | null;
  /** Pain before, as it was said the first time; the higher of all answers goes into the record. */
  readonly earlierPain?: Readonly<Record<string, number | 'unknown'>>;
}
