/**
 * Four weeks of one joint and one of its exercises: the dose as a share of the first signed one, and the pain
 * of each morning against the usual. A day with no answer is missing and never 0; before the first dose or
 * answer nothing was due, and today may still be answered.
 */
import { withShareOfFirst } from '../decision/dose/volume.ts';
import { type Joint, joints } from '../exercises/joints.ts';
import type { Dose } from '../prescribing/dose.ts';
import { addDays, type Day } from '../time/day.ts';

export const stripDays = 28;

/** First day of the four weeks that end today. */
export const stripFrom = (today: Day): Day => addDays(today, 1 - stripDays);

/** One signed version, by civil days of the clinic. */
export interface SignedVersion {
  readonly itemId: string;
  readonly version: number;
  readonly dose: Dose;
  readonly joints: readonly Joint[];
  readonly signedOn: Day;
  readonly endedOn: Day | null;
}

/** The same as four weeks need it: its dose as a share of the first signed one. */
export interface StripVersion extends Omit<SignedVersion, 'dose' | 'version'> {
  readonly exerciseId: string;
  /** null = not to be compared with the first. */
  readonly share: number | null;
}

/** Oldest version first. */
export const stripVersions = (versions: readonly SignedVersion[]): readonly StripVersion[] =>
  withShareOfFirst(versions).map(({ itemId, dose, joints, signedOn, endedOn, share }) => ({
    itemId,
    joints,
    signedOn,
    endedOn,
    exerciseId: dose.exerciseId,
    share,
  }));

export interface StripMorning {
  readonly day: Day;
  readonly joint: Joint;
  /** null = asked and not answered. */
  readonly pain: number | null;
}

export interface StripUsual {
  readonly joint: Joint;
  /** null = not set. */
  readonly usual: number | null;
  readonly usualTop: number | null;
}

/** What is kept of a patient: facts with their days, so that nothing goes stale at midnight. */
export interface StripFacts {
  readonly versions: readonly StripVersion[];
  readonly mornings: readonly StripMorning[];
  readonly usuals: readonly StripUsual[];
}

/**
 * What four weeks from a day on show of what is kept, so that it does not matter when it was written: of each
 * exercise what was in force then or later, with all that came earlier on the day before.
 */
export const stripFactsFrom = ({ versions, mornings, usuals }: StripFacts, from: Day): StripFacts => {
  const notEarlier = (day: Day): Day => (day < from ? addDays(from, -1) : day);
  const isReplaced = ({ itemId }: StripVersion, place: number): boolean =>
    versions.some((later, at) => at > place && later.itemId === itemId && later.signedOn <= from);
  return {
    versions: versions
      .filter((row, place) => !isReplaced(row, place))
      .map((row) => ({
        ...row,
        signedOn: notEarlier(row.signedOn),
        endedOn: row.endedOn && notEarlier(row.endedOn),
      })),
    mornings: mornings.filter(({ day }) => day >= from),
    usuals,
  };
};

export interface StripInput extends StripFacts {
  readonly today: Day;
  /** Joint the item is about; null = none. */
  readonly about: Joint | null;
}

interface StripDay {
  readonly day: Day;
  /** Of the first signed dose; null = nothing in force, or not to be compared. */
  readonly share: number | null;
  readonly pain: number | null;
  readonly isMissing: boolean;
}

export interface Strip extends Omit<StripUsual, 'joint'> {
  readonly joint: Joint | null;
  readonly exerciseId: string | null;
  readonly days: readonly StripDay[];
}

const topOf = ({ usual, usualTop }: Pick<StripUsual, 'usual' | 'usualTop'>): number | null =>
  usualTop ?? usual;

/** Pain over the usual; null where no usual is set. */
export const overUsual = (pain: number, strip: Pick<StripUsual, 'usual' | 'usualTop'>): number | null => {
  const top = topOf(strip);
  return top === null ? null : Math.max(0, pain - top);
};

/** The answer of each day: of several that stand, the highest; a day on which none came is not there. */
const painsByDay = (mornings: readonly StripMorning[]): ReadonlyMap<Day, number | null> => {
  const pains = new Map<Day, number | null>();
  for (const { day, pain } of mornings) {
    const known = pains.get(day) ?? null;
    pains.set(day, known === null ? pain : Math.max(known, pain ?? known));
  }
  return pains;
};

/** Of the joints that answered, the one that lies furthest over its usual in the newest answers. */
const sorest = ({ mornings, usuals }: StripInput): Joint | null => {
  const answered = joints.filter((joint) => mornings.some((one) => one.joint === joint));
  const over = (joint: Joint): number => {
    const own = mornings.filter((one) => one.joint === joint && one.pain !== null);
    const last = own.toSorted((a, b) => (a.day < b.day ? -1 : 1)).at(-1)?.pain ?? 0;
    const usual = usuals.find((one) => one.joint === joint);
    return last - ((usual && topOf(usual)) ?? 0);
  };
  return answered.toSorted((a, b) => over(b) - over(a))[0] ?? usuals[0]?.joint ?? null;
};

/** The exercise of the joint whose dose changed last. */
const lastChanged = (versions: readonly StripVersion[], joint: Joint | null): readonly StripVersion[] => {
  const own = versions.filter((one) => joint === null || one.joints.includes(joint));
  const newest = own.toSorted((a, b) => (a.signedOn === b.signedOn ? 0 : a.signedOn < b.signedOn ? -1 : 1));
  return own.filter(({ itemId }) => itemId === newest.at(-1)?.itemId);
};

const inForceOn = (versions: readonly StripVersion[], day: Day): StripVersion | null => {
  const found = versions.findLast(({ signedOn }) => signedOn <= day);
  return found && (found.endedOn === null || found.endedOn > day) ? found : null;
};

export const stripOf = (input: StripInput): Strip => {
  const joint = input.about ?? sorest(input);
  const versions = lastChanged(input.versions, joint);
  const mornings = input.mornings.filter((one) => one.joint === joint);
  const usual = input.usuals.find((one) => one.joint === joint);
  const begun = [
    ...input.versions.map(({ signedOn }) => signedOn),
    ...mornings.map(({ day }) => day),
  ].sort()[0];
  const from = stripFrom(input.today);
  const pains = painsByDay(mornings);
  return {
    joint,
    usual: usual?.usual ?? null,
    usualTop: usual?.usualTop ?? null,
    exerciseId: versions.at(-1)?.exerciseId ?? null,
    days: Array.from({ length: stripDays }, (_, place): StripDay => {
      const day = addDays(from, place);
      const pain = pains.get(day);
      return {
        day,
        share: inForceOn(versions, day)?.share ?? null,
        pain: pain ?? null,
        isMissing:
          pain === null || (pain === undefined && begun !== undefined && begun < day && day < input.today),
      };
    }),
  };
};
