/** Freezing the usual values of a joint; each freeze is a new row and the newest counts. */
import { randomUUID } from 'node:crypto';
import type { Baseline } from '#core/model/record.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { touchMatters } from './matters.ts';
import { baseline } from './schema/schema.ts';

export type FrozenValues = Omit<Baseline, 'frozenOn' | 'frozenBy' | 'latched' | 'usualFatigue'>;

export const freezeBaseline = (
  access: Access,
  patientId: string,
  values: FrozenValues,
  reason: string,
): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(baseline).values({
      id,
      clinicId: access.clinicId,
      patientId,
      ...values,
      usualFatigue: null,
      frozenOn: access.day,
      latched: false,
      byName: access.actorName,
      reason,
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'baseline',
      subjectId: id,
      patientId,
      detail: { joint: values.joint },
    });
    return id;
  });

/** Sets the latch on the newest frozen values; only a new freeze by a clinician clears it. */
export const latchBaseline = (access: Access, patientId: string, standing: Baseline): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    const { frozenBy, ...values } = standing;
    await tx.insert(baseline).values({
      id,
      clinicId: access.clinicId,
      patientId,
      ...values,
      latched: true,
      byName: frozenBy,
      reason: 'The mornings lie well under the frozen usual pain.',
      recordedAt: access.now,
      recordedBy: access.actorId,
    });
    touchMatters(access, patientId);
    await sealed(tx, access, {
      act: 'write',
      subject: 'baseline-latch',
      subjectId: id,
      patientId,
      detail: { joint: standing.joint },
    });
    return id;
  });
