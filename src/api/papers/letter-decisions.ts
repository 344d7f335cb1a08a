/** The decisions in force as a letter tells them: of a dose that was set anew since, that it was. */
import type { Plan } from '#core/plan/plan.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { decisionById } from '#data/decision/replayable-decisions.ts';
import { inForce, type Prescription } from '#data/prescribing/prescriptions.ts';
import type { LetterPaper } from '#papers/letter/letter-paper.ts';

export const decisionsToldIn = async (
  access: Access,
  patientId: string,
  plan: Plan,
  versions: readonly Prescription[],
  zone: string,
): Promise<LetterPaper['decisions']> => {
  const now = inForce(versions);
  return Promise.all(
    [...plan.joints.values()].map(async ({ joint, decision, decisionId }) => {
      const made = await decisionById(access, patientId, decisionId);
      const anew = now.filter(
        ({ joints, origin, signedAt }) =>
          joints.includes(joint) &&
          origin === 'clinician' &&
          signedAt !== null &&
          signedAt > (made?.evaluatedAt ?? 0),
      );
      const last = Math.max(0, ...anew.map(({ signedAt }) => signedAt ?? 0));
      // A pause stands whatever was signed.
      return { joint, decision, setAnewOn: last > 0 && decision !== 'pause' ? dayAt(last, zone) : null };
    }),
  );
};
