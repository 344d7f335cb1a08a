/** What one session did of each line that loads a joint, against the prescription version it was done at. */
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion, SessionRecord, SetRecord } from '#core/record/record.ts';
import { prescribedLoadKg } from '../dose/volume.ts';
import type { ItemWork, JointSession } from './indexed-record.ts';

export const floorOfSet = (dose: Dose, set: number): number =>
  dose.method === 'occlusion' ? (dose.scheme[set - 1] ?? 0) : set <= dose.sets ? dose.repetitions.low : 0;

/**
 * Share of the floor of the band that was done, at most 100. An unanswered count is credited in full:
 * if that still falls short the shortfall is certain, otherwise the share is unknown. Work whose load
 * was not said is unknown too.
 */
const repetitionsDonePercent = (dose: Dose, sets: readonly SetRecord[]): number | null => {
  let asked = 0;
  for (let set = 1; set <= dose.sets; set++) asked += floorOfSet(dose, set);
  const credit = new Map<number, number>();
  let isUnknown = false;
  for (const one of sets) {
    const floor = floorOfSet(dose, one.set);
    if (one.repetitions === null || (one.loadKg === null && prescribedLoadKg(dose) > 0)) isUnknown = true;
    const done = Math.min(floor, one.repetitions ?? floor);
    credit.set(one.set, Math.max(credit.get(one.set) ?? 0, done));
  }
  let done = 0;
  for (const repetitions of credit.values()) done += repetitions;
  const percent = asked === 0 ? 100 : (100 * done) / asked;
  return percent >= 100 && isUnknown ? null : percent;
};

/**
 * Whether a line was done as the easier session. Said per set, every set has to say so: with one set of
 * the full dose the line is measured against the full dose. Where no set says it, the session speaks.
 */
export const wasEasier = (
  session: Pick<SessionRecord, 'kind'>,
  sets: readonly Pick<SetRecord, 'easier'>[],
): boolean =>
  sets.length > 0 && sets.every((set) => typeof set.easier === 'boolean')
    ? sets.every((set) => set.easier === true)
    : session.kind === 'bad-day';

/** Work of a session by prescription version. */
const itemWork = (
  session: SessionRecord,
  versions: ReadonlyMap<string, PrescriptionVersion>,
): readonly ItemWork[] => {
  const byVersion = new Map<string, SetRecord[]>();
  for (const set of session.sets) {
    const list = byVersion.get(set.prescriptionId);
    if (list) list.push(set);
    else byVersion.set(set.prescriptionId, [set]);
  }
  const found: ItemWork[] = [];
  for (const [id, sets] of byVersion) {
    const version = versions.get(id);
    if (!version) continue;
    const isEasier = wasEasier(session, sets);
    const dose = isEasier ? version.badDay : version.dose;
    found.push({ version, dose, isEasier, sets, donePercent: repetitionsDonePercent(dose, sets) });
  }
  return found;
};

/** Work on the lines that load the joint. Worked out once: a run on target looks at each session several times. */
export const workOf = (
  one: JointSession,
  joint: Joint,
  versions: ReadonlyMap<string, PrescriptionVersion>,
): readonly ItemWork[] => {
  one.whole.work ??= itemWork(one.session, versions);
  one.work ??= one.whole.work.filter(({ version }) => version.joints.includes(joint));
  return one.work;
};
