/** What lets a cuff go home with the patient: agreements, supervised sessions, and what the patient can do alone. */
import type { Access } from '#data/access.ts';
import { recordConsent, wordingsOf } from '#data/episode/consents.ts';
import { recordHomeCheck, recordObservedSession } from '#data/episode/home-eligibility.ts';
import type { Act } from './story.ts';

type Did<D extends Act['does']> = Extract<Act, { does: D }>;

/** The whole of what lets a cuff go home with the patient, as recorded per limb. */
export const lookAtCuff = async (
  access: Access,
  patientId: string,
  { does, limb, side }: Did<'watch'> | Did<'check-alone'>,
): Promise<void> => {
  if (does === 'watch') {
    await recordObservedSession(access, patientId, {
      limb,
      side,
      day: access.day,
      supervisedThroughout: true,
      remoteReason: null,
      remark: null,
    });
    return;
  }
  await recordHomeCheck(access, patientId, {
    limb,
    side,
    releasesWithLeftHand: true,
    releasesWithRightHand: true,
    feelingIntact: true,
    knowsToRelease: true,
    wrapOpened: false,
    reason: null,
  });
};

export const consentsTo = async (access: Access, patientId: string, { to }: Did<'agree'>): Promise<void> => {
  const wordings = await wordingsOf(access);
  for (const kind of to) {
    const { wordingSource, wordingVersion } = wordings.find((one) => one.kind === kind)!;
    await recordConsent(access, patientId, {
      kind,
      act: 'given',
      wordingSource,
      wordingVersion,
      recordedVia: 'clinician',
      reason: null,
    });
  }
};
