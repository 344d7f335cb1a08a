/** What consent to a cuff is tried with: a measured patient, a wrap, its draft and its signature. */
import { type ConsentKind, proposedWording } from '#core/episode/consent.ts';
import { type CareSetting, careSetting } from './setting.ts';

export const measuredSetting = async (): Promise<CareSetting> => {
  const at = await careSetting();
  const measurement = {
    kind: 'blood-pressure',
    day: at.accessOn(0).day,
    systolicMmhg: 124,
    diastolicMmhg: 76,
    position: 'seated',
  };
  await at.clinician().clinician.measurements.record({ patientId: at.patientId, measurement });
  return at;
};

export const wrap = (supervised: boolean) => ({
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'right',
  schemeId: 'thirty-then-fifteens',
  cuffKind: 'elastic-wrap',
  tightness: 7,
  loadKg: 2,
  knownOneRepMaxKg: 10,
  secondsPerRepetition: 3,
  restSeconds: 30,
  sessionsPerWeek: 2,
  supervised,
});

export const cuffActs = (at: CareSetting) => ({
  saveDraft: (supervised: boolean, day = 0) =>
    at.clinician(day).clinician.prescriptions.saveDraft({
      patientId: at.patientId,
      request: wrap(supervised),
    }),
  sign: (prescriptionId: string, day = 0) =>
    at.clinician(day).clinician.prescriptions.sign({ patientId: at.patientId, prescriptionId }),
  agree: (kind: ConsentKind) => at.patient().patient.consents.give({ kind, ...proposedWording }),
});
