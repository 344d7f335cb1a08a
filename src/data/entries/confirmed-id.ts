/** The id of the copy that stands for an entry whose time was confirmed: what was done is the same in both. */
export const confirmedIdOf = (entryId: string): string => `confirmed-${entryId}`;

/** Its time was confirmed, and nothing was corrected by it. */
export const isConfirmation = ({
  entryId,
  amends,
}: {
  readonly entryId: string;
  readonly amends: string | null;
}) => amends !== null && entryId === confirmedIdOf(amends);
