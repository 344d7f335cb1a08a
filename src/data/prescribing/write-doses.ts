/** Writes what follows an evaluation: the proposals, the versions they became, what fell away. */
import type { Access } from '../access.ts';
import { type NewProposal, storeProposals } from '../decision/decisions.ts';
import { addVersions, carrySignatures, endPrescriptions, type NewVersion } from './prescribing.ts';

/** What is written for one line. */
export interface WrittenDose {
  readonly proposal: NewProposal;
  /** Waits unsigned and falls away: the later answer no longer carries it. */
  readonly withdrawn: readonly string[];
  readonly version: NewVersion | null;
  /** Who signed the dose it lies inside, where it acts at once. */
  readonly signedName: string | null;
}

/** Every line's rows together: a statement for each table, however many lines there are. */
export const writeDoses = async (
  access: Access,
  patientId: string,
  all: readonly WrittenDose[],
): Promise<void> => {
  const withdrawn = all.flatMap((one) => one.withdrawn);
  await endPrescriptions(access, patientId, withdrawn, 'A later answer no longer carries this change.');
  const becoming = all.filter(({ version }) => version !== null);
  const ids = await addVersions(
    access,
    patientId,
    becoming.map(({ version }) => version!),
  );
  const becameOf = new Map(becoming.map((one, place) => [one, ids[place]!]));
  const carried = becoming.flatMap((one) =>
    one.signedName === null ? [] : [{ prescriptionId: becameOf.get(one)!, signedName: one.signedName }],
  );
  await carrySignatures(access, patientId, carried);
  await storeProposals(
    access,
    patientId,
    all.map((one) => ({ ...one.proposal, becameId: becameOf.get(one) ?? one.proposal.becameId })),
  );
};
