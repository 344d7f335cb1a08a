/** How much a dose is: repetitions asked times the load moved, so that two doses can be compared. */
import type { Dose, VariationDose } from '#core/prescribing/dose.ts';
import { isSamePlace } from '#core/prescribing/place-of-dose.ts';

/** A rise of load over so many percent is a large step and named as one: common practice, no source. */
export const largeStepPercent = 10;

/** Repetitions asked in one session: the floor of the band for each set, or the scheme. */
export const repetitionsAsked = (dose: Dose): number =>
  dose.method === 'occlusion'
    ? dose.scheme.reduce((sum, repetitions) => sum + repetitions, 0)
    : dose.sets * dose.repetitions.low;

/** Weight the patient picks up or adds, kg. */
export const prescribedLoadKg = (dose: Dose): number =>
  dose.method === 'variation' ? dose.addedKg : dose.loadKg;

/** Done with the body alone, or with what is held at hand: nothing is picked up and no mark is worked against. */
export const isWithoutWeight = (dose: Dose): boolean =>
  dose.method === 'variation' && dose.addedKg === 0 && (dose.mark ?? null) === null;

/** How long each is held; null where the exercise moves. */
export const heldSeconds = (dose: Dose): number | null =>
  dose.method === 'variation' ? (dose.hold?.seconds ?? null) : null;

/** Number on the putty, ring or band; null where none was named. */
export const markOf = (dose: Dose): number | null =>
  dose.method === 'variation' ? (dose.mark ?? null) : null;

/** Seconds held over those of another; 1 where both move, null where one of them does. */
const heldRatio = (dose: Dose, reference: Dose): number | null => {
  const [seconds, of] = [heldSeconds(dose), heldSeconds(reference)];
  if (seconds === null || of === null) return seconds === of ? 1 : null;
  return of > 0 ? seconds / of : null;
};

/** Load moved, kg; null where no figure is known. */
const loadMovedKg = (dose: Dose): number | null =>
  dose.method === 'variation'
    ? dose.effectiveLoadKg === null
      ? null
      : dose.effectiveLoadKg + dose.addedKg
    : dose.loadKg;

/**
 * A dose as a share of another, 1 = as much. Null where it cannot be known: two places, two exercises of which
 * one has no figure, two marks, or a hold beside a movement. The same exercise with the same added load compares by
 * its repetitions; a hold counts by its seconds.
 */
export const shareOf = (dose: Dose, reference: Dose): number | null => {
  if (!isSamePlace(dose, reference)) return null;
  const asked = repetitionsAsked(reference);
  const held = heldRatio(dose, reference);
  if (asked === 0 || held === null || markOf(dose) !== markOf(reference)) return null;
  const repetitions = (repetitionsAsked(dose) / asked) * held;
  const load = loadMovedKg(dose);
  const referenceLoad = loadMovedKg(reference);
  if (load !== null && referenceLoad !== null && referenceLoad > 0)
    return (repetitions * load) / referenceLoad;
  if (dose.exerciseId !== reference.exerciseId) return null;
  return prescribedLoadKg(dose) === prescribedLoadKg(reference) ? repetitions : null;
};

interface OrderedDose {
  readonly itemId: string;
  readonly version: number;
  readonly dose: Dose;
}

/** Signed versions, oldest first, each with its dose as a share of the first signed one of its prescription item. */
export const withShareOfFirst = <V extends OrderedDose>(
  signed: readonly V[],
): readonly (V & { readonly share: number | null })[] => {
  const ordered = signed.toSorted((a, b) => a.version - b.version);
  return ordered.map((one) => {
    const first = ordered.find(({ itemId }) => itemId === one.itemId)!;
    return { ...one, share: shareOf(one.dose, first.dose) };
  });
};

export interface DoseChange {
  readonly variable: 'repetitions' | 'holds' | 'sets' | 'load' | 'rung' | 'hold' | 'mark';
  readonly from: string | number;
  readonly to: string | number;
  readonly unit: string;
  /** Change in percent; null where it is not known. */
  readonly percent: number | null;
}

const percentChange = (from: number, to: number): number | null => (from > 0 ? (to / from - 1) * 100 : null);

const repetitionsText = (dose: Dose): string =>
  dose.method === 'occlusion' ? dose.scheme.join(', ') : `${dose.repetitions.low}–${dose.repetitions.high}`;

/** What is not told by repetitions, sets and load: from one that moves to a hold nothing can be compared. */
const heldChanges = (from: Dose, to: Dose): readonly DoseChange[] => {
  const [before, after] = [heldSeconds(from), heldSeconds(to)];
  const [mark, next] = [markOf(from), markOf(to)];
  return [
    ...(before === after
      ? []
      : [
          {
            variable: 'hold',
            from: before ?? 'none',
            to: after ?? 'none',
            unit: 's',
            percent: before === null || after === null ? null : percentChange(before, after),
          } as const,
        ]),
    ...(mark === next
      ? []
      : [{ variable: 'mark', from: mark ?? 'none', to: next ?? 'none', unit: '1', percent: null } as const]),
  ];
};

const isSameWork = (from: Dose, to: Dose): boolean => repetitionsText(from) === repetitionsText(to);

/** Every variable in which two doses differ, in words and figures. */
export const changesBetween = (from: Dose, to: Dose): readonly DoseChange[] => {
  const changes: DoseChange[] = [];
  if (from.exerciseId !== to.exerciseId) {
    const before = loadMovedKg(from);
    const after = loadMovedKg(to);
    const percent = before !== null && after !== null ? percentChange(before, after) : null;
    changes.push({ variable: 'rung', from: from.exerciseId, to: to.exerciseId, unit: '', percent });
  }
  const [loadFrom, loadTo] = [prescribedLoadKg(from), prescribedLoadKg(to)];
  if (loadFrom !== loadTo) {
    const percent = isSamePlace(from, to) ? percentChange(loadFrom, loadTo) : null;
    changes.push({ variable: 'load', from: loadFrom, to: loadTo, unit: 'kg', percent });
  }
  changes.push(...heldChanges(from, to));
  if (from.sets !== to.sets) {
    const percent = percentChange(from.sets, to.sets);
    changes.push({ variable: 'sets', from: from.sets, to: to.sets, unit: '1', percent });
  }
  if (!isSameWork(from, to)) {
    const percent = percentChange(repetitionsAsked(from), repetitionsAsked(to));
    const unit = '{rep}';
    changes.push({
      variable: heldSeconds(to) === null ? 'repetitions' : 'holds',
      from: repetitionsText(from),
      to: repetitionsText(to),
      unit,
      percent,
    });
  }
  return changes;
};

/** The same dose held so long; what lies between two holds stays as it is. */
export const heldFor = (dose: VariationDose, seconds: number): VariationDose =>
  dose.hold
    ? {
        ...dose,
        hold: { ...dose.hold, seconds },
        secondsPerRepetition: dose.secondsPerRepetition - dose.hold.seconds + seconds,
      }
    : dose;

const lowerBand = <D extends Exclude<Dose, { method: 'occlusion' }>>(dose: D, bound: Dose): D => {
  if (bound.method === 'occlusion') return dose;
  const low = Math.min(dose.repetitions.low, bound.repetitions.low);
  const high = Math.max(low, Math.min(dose.repetitions.high, bound.repetitions.high));
  return { ...dose, sets: Math.min(dose.sets, bound.sets), repetitions: { low, high } };
};

/** After a step down to another exercise the harder one is no easier session any more. */
export const easierSession = (badDay: Dose, from: Dose, to: Dose, isReduction: boolean): Dose =>
  isReduction && from.exerciseId !== to.exerciseId && badDay.exerciseId !== to.exerciseId
    ? to
    : notAbove(badDay, to);

/** The easier session, brought down wherever it would now ask for more than the dose itself. */
const notAbove = (badDay: Dose, dose: Dose): Dose => {
  if (badDay.method !== dose.method || badDay.exerciseId !== dose.exerciseId) return badDay;
  if (badDay.method === 'occlusion' && dose.method === 'occlusion') {
    const scheme = badDay.scheme
      .slice(0, dose.scheme.length)
      .map((repetitions, set) => Math.min(repetitions, dose.scheme[set]!));
    return { ...badDay, scheme, sets: scheme.length, loadKg: Math.min(badDay.loadKg, dose.loadKg) };
  }
  if (badDay.method === 'low-load' && dose.method === 'low-load') {
    return { ...lowerBand(badDay, dose), loadKg: Math.min(badDay.loadKg, dose.loadKg) };
  }
  if (badDay.method === 'variation' && dose.method === 'variation') {
    const lower = { ...lowerBand(badDay, dose), addedKg: Math.min(badDay.addedKg, dose.addedKg) };
    const marked =
      dose.mark === undefined || badDay.mark === undefined
        ? lower
        : { ...lower, mark: Math.min(badDay.mark, dose.mark) };
    return dose.hold && badDay.hold
      ? heldFor(marked, Math.min(badDay.hold.seconds, dose.hold.seconds))
      : marked;
  }
  return badDay;
};
