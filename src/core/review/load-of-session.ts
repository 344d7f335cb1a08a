/**
 * What one session did of one prescribed exercise, as one figure. A set whose count or load was not
 * given makes the figure unknown: a sum over what was given would read as less work done.
 */
import { exertionFromReserve } from '../assessment/strength/reserve-scale.ts';
import { heldSeconds } from '../decision/dose/volume.ts';
import { wasEasier } from '../decision/facts/item-work.ts';
import type { Dose } from '../prescribing/dose.ts';
import { restrictionSeconds } from '../prescribing/occlusion/restriction-time.ts';
import type { PrescriptionVersion, SessionRecord, SetRecord } from '../record/record.ts';
import type { Day } from '../time/day.ts';
import { doseDone, firstDoseOf } from './dose/dose-done.ts';
import { shareInWords, withUnit } from './plain-words.ts';

const loadMeasures = [
  'dose',
  'load',
  'volume',
  'repetitions',
  'held',
  'sets',
  'effort',
  'restriction',
] as const;
export type LoadMeasure = (typeof loadMeasures)[number];

interface MeasureTitle {
  readonly title: string;
  readonly unit: string;
  /** What the figure is measured against, where a title alone leaves it open. */
  readonly against?: string;
  /** Why a session may have no figure, where it is not for a count or a load left out alone. */
  readonly unknown?: string;
}

export const measureTitles: Readonly<Record<LoadMeasure, MeasureTitle>> = {
  dose: {
    title: 'Dose',
    unit: '',
    against: 'first signed = 1.00',
    unknown:
      'a count or a load was not given, it was a test, or it cannot be compared with the first signed dose',
  },
  load: { title: 'Load', unit: 'kg' },
  volume: { title: 'Load × repetitions', unit: 'kg' },
  repetitions: { title: 'Repetitions', unit: '' },
  held: { title: 'Time held', unit: 's' },
  sets: { title: 'Sets', unit: '' },
  effort: { title: 'Effort of the hardest set, 0 to 10', unit: '' },
  restriction: { title: 'Time under restriction', unit: 'min' },
};

/** A figure of a measure as it is said everywhere: "1.17", "4.5 kg". */
export const measuredInWords = (value: number, measure: LoadMeasure): string =>
  measure === 'dose' ? shareInWords(value) : withUnit(value, measureTitles[measure].unit);

/** "Load, kg"; "Dose, first signed = 1.00". */
export const measureInFull = (measure: LoadMeasure): string => {
  const { title, unit, against } = measureTitles[measure];
  return [title, against ?? unit].filter(Boolean).join(', ');
};

/** Measures that mean something for a method; the first is shown unless another is chosen. */
export const measuresOf = (dose: Dose): readonly LoadMeasure[] => {
  switch (dose.method) {
    case 'low-load':
      return ['dose', 'load', 'volume', 'repetitions', 'sets', 'effort'];
    case 'variation':
      if (dose.hold) return ['dose', 'held', 'sets', 'effort'];
      return dose.effectiveLoadKg === null
        ? ['dose', 'repetitions', 'sets', 'effort']
        : ['dose', 'load', 'repetitions', 'sets', 'effort'];
    case 'occlusion':
      return ['dose', 'load', 'volume', 'repetitions', 'sets', 'effort', 'restriction'];
  }
};

export interface SessionLoad {
  readonly day: Day;
  readonly sessionId: string;
  /** Of this exercise: one alone may have been done as the easier session. */
  readonly kind: SessionRecord['kind'];
  /** null = the session was done and the figure cannot be told. */
  readonly value: number | null;
  /** Version of the prescription followed; null when it is not among the versions given. */
  readonly version: number | null;
  /** The entry was corrected after it was sent. */
  readonly amended: boolean;
}

/** The sum, or null as soon as one part is missing. */
const sumKnown = (values: readonly (number | null)[]): number | null =>
  values.reduce<number | null>((sum, value) => (sum === null || value === null ? null : sum + value), 0);

const highestKnown = (values: readonly (number | null)[]): number | null =>
  values.length === 0 || values.includes(null) ? null : Math.max(...(values as readonly number[]));

const doseFollowed = (
  set: SetRecord,
  session: SessionRecord,
  versions: ReadonlyMap<string, PrescriptionVersion>,
): Dose | null => {
  const version = versions.get(set.prescriptionId);
  if (!version) return null;
  return (set.easier ?? session.kind === 'bad-day') ? version.badDay : version.dose;
};

/** Load of a set: what was picked up, or for a variation the effective load of what was prescribed. */
const loadOfSet = (set: SetRecord, dose: Dose | null): number | null =>
  dose?.method === 'variation' ? dose.effectiveLoadKg : set.loadKg;

const minutesRestricted = (sets: readonly SetRecord[], dose: Dose | null): number | null => {
  if (dose?.method !== 'occlusion') return null;
  const repetitions = sets.map((set) => set.repetitions);
  if (repetitions.includes(null)) return null;
  const { restrictedSeconds } = restrictionSeconds({
    repetitions: repetitions as readonly number[],
    secondsPerRepetition: dose.secondsPerRepetition,
    restSeconds: dose.restSeconds,
    inflation: dose.inflation,
  });
  return restrictedSeconds / 60;
};

/** Only holds that were held to their end are counted, so each lasted what was asked. */
const secondsHeld = ({ repetitions }: SetRecord, dose: Dose | null): number | null => {
  const seconds = dose && heldSeconds(dose);
  return repetitions === null || seconds === null ? null : repetitions * seconds;
};

/** From the repetitions left in reserve; a reserve the scale has no effort for leaves it unknown. */
const effortOf = ({ reserve }: SetRecord): number | null => {
  const outcome = reserve === null ? null : exertionFromReserve({ reserve });
  return outcome?.ok ? outcome.result.exertionHigh : null;
};

/** Rounded, so that a hair of a quotient is no step. */
const shareOfFirst = (
  session: SessionRecord,
  itemId: string,
  versions: ReadonlyMap<string, PrescriptionVersion>,
): number | null => {
  const own = [...versions.values()].filter((version) => version.itemId === itemId);
  const share = doseDone(session, itemId, versions, firstDoseOf(own))?.share ?? null;
  return share === null ? null : Math.round(share * 1e4) / 1e4;
};

const figureOf = (
  measure: Exclude<LoadMeasure, 'dose'>,
  sets: readonly SetRecord[],
  doses: readonly (Dose | null)[],
): number | null => {
  const loads = sets.map((set, place) => loadOfSet(set, doses[place] ?? null));
  switch (measure) {
    case 'load':
      return highestKnown(loads);
    case 'volume':
      return sumKnown(
        sets.map(({ repetitions }, place) => {
          const load = loads[place] ?? null;
          return repetitions === null || load === null ? null : repetitions * load;
        }),
      );
    case 'repetitions':
      return sumKnown(sets.map((set) => set.repetitions));
    case 'held':
      return sumKnown(sets.map((set, place) => secondsHeld(set, doses[place] ?? null)));
    case 'sets':
      return sets.filter((set) => set.repetitions !== 0).length;
    case 'effort':
      return highestKnown(sets.map(effortOf));
    case 'restriction':
      return minutesRestricted(sets, doses[0] ?? null);
  }
};

const kindOf = (session: SessionRecord, sets: readonly SetRecord[]): SessionRecord['kind'] =>
  session.kind === 'test' ? 'test' : wasEasier(session, sets) ? 'bad-day' : 'full';

/** The session's figure for one prescribed exercise; null when the session held none of it. */
export const loadOfSession = (
  session: SessionRecord,
  itemId: string,
  versions: ReadonlyMap<string, PrescriptionVersion>,
  measure: LoadMeasure,
): SessionLoad | null => {
  const sets = session.sets.filter((set) => set.itemId === itemId);
  if (sets.length === 0) return null;
  const doses = sets.map((set) => doseFollowed(set, session, versions));
  return {
    day: session.day,
    sessionId: session.id,
    kind: kindOf(session, sets),
    value: measure === 'dose' ? shareOfFirst(session, itemId, versions) : figureOf(measure, sets, doses),
    version: versions.get(sets[0]!.prescriptionId)?.version ?? null,
    amended: session.amended === true,
  };
};
