/**
 * What a session did of a prescription item, as a share of the first signed dose and by the share of the engine:
 * repetitions, sets, load and level together. As there a band is one dose, so repetitions over its foot add
 * nothing; a set left out, or another load than prescribed, does count. What is not known gives no figure.
 */
import { repetitionsAsked, shareOf } from '#core/decision/dose/volume.ts';
import { floorOfSet, wasEasier } from '#core/decision/facts/item-work.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { PrescriptionVersion, SessionRecord, SetRecord } from '#core/record/record.ts';

export type DoseNotKnown =
  /** A count or a load was not given. */
  | 'work-not-given'
  /** The load of one of the two exercises is not known. */
  | 'not-comparable'
  /** A test goes as far as it can; no dose was meant. */
  | 'test'
  /** Done at a version that is not among those signed. */
  | 'version-not-known';

export interface DoseDone {
  /** 1 = as much as the first signed dose. */
  readonly share: number | null;
  readonly notKnown: DoseNotKnown | null;
  /** The dose meant for that session: the prescribed one or the signed easier session. */
  readonly meant: Dose | null;
  readonly isEasier: boolean;
  /** Done as meant, neither less nor with another load. */
  readonly isAsMeant: boolean;
}

/** Load of a set over the load prescribed; null where either is not known. */
const loadRatio = ({ loadKg }: SetRecord, dose: Dose): number | null => {
  const prescribedKg = dose.method === 'variation' ? dose.addedKg : dose.loadKg;
  if (loadKg === null) return prescribedKg === 0 ? 1 : null;
  return shareOf(dose.method === 'variation' ? { ...dose, addedKg: loadKg } : { ...dose, loadKg }, dose);
};

/** Share of a dose that its sets did; null where one of them does not say. */
const shareDone = (sets: readonly SetRecord[], dose: Dose): number | null => {
  const asked = repetitionsAsked(dose);
  const credited = new Map<number, number>();
  for (const set of sets) {
    const ratio = loadRatio(set, dose);
    if (set.repetitions === null || ratio === null) return null;
    const done = Math.min(floorOfSet(dose, set.set), set.repetitions) * ratio;
    credited.set(set.set, Math.max(credited.get(set.set) ?? 0, done));
  }
  return asked === 0 ? null : [...credited.values()].reduce((sum, done) => sum + done, 0) / asked;
};

const hair = 1e-9;

/** The first signed dose of an item; null without one. */
export const firstDoseOf = (versions: readonly PrescriptionVersion[]): Dose | null =>
  versions.toSorted((a, b) => a.version - b.version)[0]?.dose ?? null;

/** null = the session held none of the item. `first` is its first signed dose. */
export const doseDone = (
  session: SessionRecord,
  itemId: string,
  versions: ReadonlyMap<string, PrescriptionVersion>,
  first: Dose | null,
): DoseDone | null => {
  const sets = session.sets.filter((set) => set.itemId === itemId);
  if (sets.length === 0) return null;
  const isEasier = wasEasier(session, sets);
  const ids = new Set(sets.map(({ prescriptionId }) => prescriptionId));
  const version = ids.size === 1 ? versions.get(sets[0]!.prescriptionId) : undefined;
  const meant = version ? (isEasier ? version.badDay : version.dose) : null;
  const unknown = (notKnown: DoseNotKnown): DoseDone => ({
    share: null,
    notKnown,
    meant,
    isEasier,
    isAsMeant: false,
  });
  if (meant === null || first === null) return unknown('version-not-known');
  if (session.kind === 'test') return unknown('test');
  const ofFirst = shareOf(meant, first);
  if (ofFirst === null) return unknown('not-comparable');
  const done = shareDone(sets, meant);
  if (done === null) return unknown('work-not-given');
  return { share: ofFirst * done, notKnown: null, meant, isEasier, isAsMeant: Math.abs(done - 1) < hair };
};
