/** What bounds a person: the limits of the record, and of the person's other records where two were merged. */
import { endedByOwn } from '#core/decision/dose/limits.ts';
import type { Limit } from '#core/record/limit.ts';
import type { Access } from '../access.ts';
import { mergedWith } from '../patients/merges.ts';
import { limitsOf } from './limits-and-pre-approvals.ts';

/** An entry of kind "none" ends what stands on its own record and nothing of the other. */
export const limitsOfPerson = async (access: Access, patientId: string): Promise<readonly Limit[]> => {
  const others = await mergedWith(access, patientId);
  const own = await limitsOf(access, patientId);
  if (others.length === 0) return own;
  const beside = await Promise.all(others.map((id) => limitsOf(access, id)));
  return [own, ...beside].flatMap(endedByOwn);
};
