/** The page for the colleague who takes over, for paper. */
import type { Joint } from '#core/exercises/joints.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import { handoverFor } from '#data/episode/handover.ts';
import { clinicOf, type Patient } from '#data/patients/people.ts';
import { inForce, type Prescription, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import type { HandoverPaper } from '#papers/handover/handover-paper.ts';

type Handover = Awaited<ReturnType<typeof handoverFor>>;

const dosesIn = (
  { inForce: named, plan }: Handover,
  versions: readonly Prescription[],
): HandoverPaper['inForce'] =>
  named.map(({ id, dose, signedName }) => {
    const item = plan.items.find(({ prescriptionId }) => prescriptionId === id);
    const badDay = versions.find((row) => row.id === id)?.badDay ?? dose;
    return {
      dose: item?.dose ?? dose,
      easierSession: item?.easierSession ?? badDay,
      signedName,
      today: item?.today ?? 'none',
    };
  });

const dangersIn = ({ dangers, plan }: Handover, access: Access, zone: string): HandoverPaper['dangers'] =>
  dangers.map(({ kind, joint, facts, since, acknowledgedBy, assignedName }) => ({
    kind,
    joint: joint as Joint | null,
    facts,
    sentence: sentenceOf({ kind, joint: joint as Joint | null, facts }, access.day),
    flags: plan.signs.find(({ sign }) => sign.id === facts.signId)?.sign.flags ?? [],
    since: dayAt(since, zone),
    acknowledgedBy,
    assignedName,
  }));

const pausesIn = (
  { plan, pauses }: Handover,
  zone: string,
): Pick<HandoverPaper, 'clinicianPauses' | 'pauses'> => ({
  clinicianPauses: plan.pauses.map(({ pause: { joint, cause, by, reason, at } }) => ({
    joint,
    cause,
    by,
    reason,
    since: dayAt(at, zone),
  })),
  pauses: pauses.map((line) => ({ ...line, since: dayAt(line.since, zone) })),
});

export const handoverPaperFor = async (access: Access, patient: Patient): Promise<HandoverPaper> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!clinic) throw new Error('The account names a clinic that does not exist.');
  const { name, zone, phone, emergencyNumber, urgentNumber } = clinic;
  const handover = await handoverFor(access, patient);
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const { episodeStatus, coveringClinician, limits, closed, overrides, unsigned } = handover;
  return {
    clinic: { name, phone, emergencyNumber, urgentNumber },
    patient: { name: `${patient.givenName} ${patient.familyName}`, birthDay: patient.birthDay },
    episodeStatus,
    dangers: dangersIn(handover, access, zone),
    coveringClinician,
    ...pausesIn(handover, zone),
    limits,
    closed,
    decisions: handover.decisions.map(({ joint, decision, evaluatedAt, reasons, answer }) => ({
      joint,
      decision,
      day: dayAt(evaluatedAt, zone),
      reasons,
      answeredName: answer?.answeredName ?? null,
    })),
    overrides,
    unsigned,
    inForce: dosesIn(handover, versions),
    cautions: versions.flatMap((row) => row.cautions),
  };
};
