import { say } from '#messages/en/staff/care.ts';

/** An entry in error that counts beside the one in its place. */
export const stillCounts = (row: { readonly correctedPending?: true }): string =>
  row.correctedPending ? ` ${say('entered-in-error')}` : '';
