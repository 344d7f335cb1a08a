/** Pre-approvals that act now. What is approved ahead is signed ahead, so it waits while signing does. */
import type { Access } from '../access.ts';
import { preApprovalsOf } from '../episode/limits-and-pre-approvals.ts';
import { signingStopped } from '../patients/merges.ts';

export const usablePreApprovals = async (access: Access, patientId: string) => {
  const approved = await preApprovalsOf(access, patientId);
  if (approved.length === 0) return approved;
  return (await signingStopped(access, patientId)) === null ? approved : [];
};
