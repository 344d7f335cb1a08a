/** Published check rows, or parts of them, that the table in force answers otherwise, each with its reason. */
export interface LeftOutRow {
  readonly sheet: 'symptoms';
  readonly row: number;
  readonly reason: string;
}

export const leftOut: readonly LeftOutRow[] = [
  {
    sheet: 'symptoms',
    row: 61,
    reason:
      'During 8 was a pause; it now eases back with a call the same day, and pauses only far over usual or twice running.',
  },
  {
    sheet: 'symptoms',
    row: 62,
    reason:
      'Before 5 was an ease-back; the trial swapped the session and not the plan, so it now holds with the easier session today.',
  },
  {
    sheet: 'symptoms',
    row: 63,
    reason:
      'A next morning 2 over usual eased back; in version 2 it holds, and eases back when a morning before the session was 2 over as well.',
  },
  {
    sheet: 'symptoms',
    row: 68,
    reason:
      'Stiffness 76 over a usual 45 eased back at 30 over usual; the offset is now 45 minutes and twice usual, so it holds.',
  },
  {
    sheet: 'symptoms',
    row: 69,
    reason:
      'A flare of 8 days was a pause; in version 2 the easier session goes on, which keeps the joint moving, and the clinic is asked to look.',
  },
  {
    sheet: 'symptoms',
    row: 70,
    reason:
      'Half the repetitions eased back for any reason, now only for the joint or an unknown one; a shortfall in reserve counts from 2; one session on target allows repetitions.',
  },
  {
    sheet: 'symptoms',
    row: 71,
    reason: 'Adherence held under 80 %; it now holds under 75 % and only with two or more sessions missed.',
  },
];
