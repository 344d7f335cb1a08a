/** Which clinics the file, or what was kept of it, has ever had a chain for. */

import type { Store } from '../database/store.ts';
import { audit, auditSegment, clinic } from '../schema/schema.ts';
import type { ChainHead } from './verify-chain.ts';

export interface KnownChains {
  readonly clinicIds: readonly string[];
  /** Of these the clinic's own row is gone, or never was. */
  readonly withoutClinic: readonly string[];
}

export const knownChains = async (store: Store, heads: readonly ChainHead[]): Promise<KnownChains> => {
  const clinics = (await store.read.select({ id: clinic.id }).from(clinic)).map(({ id }) => id);
  const chained = await store.read.selectDistinct({ id: audit.clinicId }).from(audit);
  const moved = await store.read.selectDistinct({ id: auditSegment.clinicId }).from(auditSegment);
  const others = [...chained, ...moved].map(({ id }) => id);
  const all = [...new Set([...clinics, ...others, ...heads.map(({ clinicId }) => clinicId)])].sort();
  return { clinicIds: all, withoutClinic: all.filter((id) => !clinics.includes(id)) };
};
