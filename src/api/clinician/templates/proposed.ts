/** A template for one person: each dose proposed as one typed by hand would be, or left out with every reason. */

import { exerciseById } from '#core/exercises/catalogue.ts';
import { isSameLine } from '#core/prescribing/beside.ts';
import {
  askedTwice,
  sideOn,
  type TemplateDose,
  type TemplateSide,
  templateDoseTitle,
} from '#core/prescribing/clinic-template.ts';
import { notAtHome } from '#core/prescribing/exercise-choice.ts';
import type { ProposedPrescription } from '#core/prescribing/propose.ts';
import type { Access } from '#data/access.ts';
import type { Patient } from '#data/patients/people.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import { inForce, type Prescription, prescriptionsOf, unsigned } from '#data/prescribing/prescriptions.ts';
import { Problem } from '../../errors.ts';
import { withPatientWords } from '../caution-words.ts';
import { propose } from '../propose.ts';

type Request = Readonly<Record<string, unknown>>;

const requestFor = (dose: TemplateDose, on: TemplateSide): Request => {
  const { method, exerciseId, values } = dose;
  const limb = method === 'occlusion' ? exerciseById(exerciseId)?.limb : undefined;
  return { method, exerciseId, side: sideOn(dose, on), ...(limb ? { limb } : {}), ...values };
};

interface Left {
  readonly reasons: readonly string[];
  /** Something is missing that may be recorded or typed; nothing found stands against it. */
  readonly mayBeTyped: boolean;
}

const refusedBy = (error: unknown): Left => {
  if (!(error instanceof Problem) || error.problem !== 'refused') throw error;
  const { refusals } = error;
  return {
    reasons: refusals.length > 0 ? [...new Set(refusals.map(({ reason }) => reason))] : [error.message],
    mayBeTyped: refusals.length > 0 && refusals.every(({ code }) => code === 'missing'),
  };
};

/** With a clinician beside, the things are the clinic's own. */
const isDoneAtHome = (request: Request): boolean => request.supervised !== true;

const waitsAlready = (waiting: readonly Prescription[], proposed: ProposedPrescription): boolean =>
  waiting.some(({ dose }) => isSameLine(dose, proposed.dose));

const alreadyWaits: Left = {
  reasons: ['A dose of this exercise waits to be signed already, under “To sign together”.'],
  mayBeTyped: false,
};
const otherSide: Left = {
  reasons: ['The template has this exercise for each side; once is enough for the side chosen.'],
  mayBeTyped: false,
};

export const proposedFrom = async (
  access: Access,
  patient: Patient,
  doses: readonly TemplateDose[],
  on: TemplateSide,
) => {
  const context = await prescribingContextFor(access, patient);
  const versions = await prescriptionsOf(access, patient.id);
  const twice = askedTwice(doses, on);
  const waiting = unsigned(versions);
  const one = async (dose: TemplateDose, place: number) => {
    const request = requestFor(dose, on);
    const about = { place, title: templateDoseTitle(dose), method: dose.method, request };
    const left = (why: Left) => ({ ...about, isPossible: false as const, ...why });
    if (twice.has(place)) return left(otherSide);
    const lacking =
      patient.profile && isDoneAtHome(request)
        ? notAtHome(dose.exerciseId, { context, ownedEquipment: patient.profile.ownedEquipment })
        : [];
    try {
      const proposed = await propose(access, patient, request);
      if (lacking.length > 0) return left({ reasons: lacking, mayBeTyped: true });
      if (waitsAlready(waiting, proposed)) return left(alreadyWaits);
      const before = inForce(versions).find((version) => isSameLine(version.dose, proposed.dose)) ?? null;
      return {
        ...about,
        isPossible: true as const,
        /** The line in force it becomes a new version of. */
        itemId: before?.itemId ?? null,
        proposed: withPatientWords(proposed),
      };
    } catch (error) {
      const refused = refusedBy(error);
      return left({ ...refused, reasons: [...refused.reasons, ...lacking] });
    }
  };
  return Promise.all(doses.map(one));
};
