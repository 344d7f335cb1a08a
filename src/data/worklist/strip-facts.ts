/** Four weeks of a patient as the worklist keeps them: facts with days, read through what a write has read already. */
import type { Baseline } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import {
  type SignedVersion,
  type StripFacts,
  type StripMorning,
  type StripUsual,
  stripDays,
  stripFactsFrom,
  stripFrom,
  stripVersions,
} from '#core/worklist/strip.ts';
import type { Access } from '../access.ts';
import { midnightOf } from '../civil-time.ts';
import { morningsOf } from '../entries/logs.ts';
import { baselinesOf } from '../patients/baselines.ts';
import { clinicOf } from '../patients/people.ts';
import { type Prescription, prescriptionsOf } from '../prescribing/prescriptions.ts';

type DayOf = (instant: number) => Day;

/** Days of the four weeks by instant, from their midnights alone; whatever came earlier falls on the day before them. */
const dayIn = (today: Day, zone: string): DayOf => {
  const from = stripFrom(today);
  const midnights = Array.from({ length: stripDays }, (_, place) => midnightOf(addDays(from, place), zone));
  return (instant) =>
    addDays(
      from,
      midnights.findLastIndex((midnight) => midnight <= instant),
    );
};

/** The newest of each joint. */
const usualsFrom = (baselines: readonly Baseline[]): readonly StripUsual[] => [
  ...new Map(
    baselines.map(({ joint, usualPain, usualPainTop }) => [
      joint,
      { joint, usual: usualPain, usualTop: usualPainTop },
    ]),
  ).values(),
];

const signedFrom = (rows: readonly Prescription[], dayOf: DayOf): readonly SignedVersion[] =>
  rows.flatMap(({ itemId, version, dose, joints, signedAt, endedAt }) =>
    signedAt === null
      ? []
      : [
          {
            itemId,
            version,
            dose,
            joints,
            signedOn: dayOf(signedAt),
            endedOn: endedAt === null ? null : dayOf(endedAt),
          },
        ],
  );

/** An entry whose time nobody has confirmed counts as missing, as it does to the rules. */
const morningsSince = async (
  access: Access,
  patientId: string,
  since: Day,
): Promise<readonly StripMorning[]> =>
  (await morningsOf(access, patientId, since))
    .filter(({ clockDoubtful }) => !clockDoubtful)
    .flatMap(({ day, joints }) => joints.map(({ joint, pain }) => ({ day, joint, pain })));

export const stripFactsOf = async (access: Access, patientId: string): Promise<StripFacts> => {
  const { store, clinicId, day } = access;
  const since = stripFrom(day);
  const dayOf = dayIn(day, (await clinicOf(store, clinicId))?.zone ?? 'UTC');
  const facts: StripFacts = {
    versions: stripVersions(signedFrom(await prescriptionsOf(access, patientId), dayOf)),
    mornings: await morningsSince(access, patientId, since),
    usuals: usualsFrom(await baselinesOf(access, patientId)),
  };
  return stripFactsFrom(facts, since);
};
