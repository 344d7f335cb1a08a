/**
 * Made and tested, and not used by the product yet: kept on purpose, each with what will use it. An entry
 * that is used by now, or is gone, fails the test of dead code; then it leaves this list.
 */
export interface Waiting {
  /** A file, or "file: export", or "package.json: package", as the tool names it. */
  readonly finding: string;
  readonly usedBy: string;
}

export const waitingToBeWired: readonly Waiting[] = [
  {
    finding: 'src/core/screening/items.ts: itemsBeforeOcclusion',
    usedBy: 'The check before a session with a cuff: the items of the screening asked again.',
  },
  {
    finding: 'src/core/prescribing/occlusion/checks.ts',
    usedBy: 'The phone’s pages of a session with a cuff: what to look at, and the signs that take it off.',
  },
  {
    finding: 'src/messages/cautions.ts: occlusionCheckText',
    usedBy: 'The same pages: what to look at, in the patient’s words.',
  },
  {
    finding: 'src/core/prescribing/occlusion/arthritis-evidence.ts',
    usedBy: 'The wording of consent to occlusion: what trials in arthritis found.',
  },
];
