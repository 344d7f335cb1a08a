/** What was typed from paper or from a call, as an entry's answers. What was left empty stays open, never zero. */
import type { Joint } from '#core/joints.ts';
import type { Dose } from '#core/model/dose.ts';
import type { Problem } from '#ui/shared/error-summary.tsx';
import { readNumber } from '#ui/shared/read-number.ts';

export interface TypedExercise {
  readonly lineId: string;
  readonly prescriptionId: string;
  readonly title: string;
  readonly dose: Dose;
}

/** By the name of the field. */
export type Typed = Readonly<Record<string, string>>;

export const yesNoUnknown = ['yes', 'no'] as const;

const yes = (text: string | undefined): boolean | null =>
  text === 'yes' ? true : text === 'no' ? false : null;

const score = (text: string | undefined): number | null => {
  const read = readNumber(text ?? '');
  return read === null || Number.isNaN(read) ? null : read;
};

/** "15, 14, –": a dash is a set whose count is not known. null where something else stands there. */
export const countsIn = (text: string): readonly (number | null)[] | null => {
  const parts = text.split(/[,;\s]+/).filter((part) => part !== '');
  const counts = parts.map((part) => (/^[-–?]$/.test(part) ? null : Number(part)));
  return counts.every((count) => count === null || (Number.isInteger(count) && count >= 0 && count <= 500))
    ? counts
    : null;
};

const loadOf = (dose: Dose): number => (dose.method === 'variation' ? dose.addedKg : dose.loadKg);

export const unreadable = (exercises: readonly TypedExercise[], typed: Typed): readonly Problem[] =>
  exercises.flatMap(({ lineId }): readonly Problem[] => {
    const counts = countsIn(typed[`counts-${lineId}`] ?? '');
    const load = readNumber(typed[`load-${lineId}`] ?? '');
    return [
      ...(counts === null
        ? [
            {
              field: `counts-${lineId}`,
              text: 'Enter the counts of the sets with commas between, such as 15, 14, 12.',
            },
          ]
        : []),
      ...(load !== null && Number.isNaN(load)
        ? [{ field: `load-${lineId}`, text: 'Enter the weight as a number, such as 2.5.' }]
        : []),
    ];
  });

const setsOf = ({ lineId, prescriptionId, dose }: TypedExercise, typed: Typed) =>
  (countsIn(typed[`counts-${lineId}`] ?? '') ?? []).map((repetitions, place) => ({
    prescriptionId,
    lineId,
    set: place + 1,
    repetitions,
    loadKg: loadOf(dose) > 0 ? score(typed[`load-${lineId}`]) : loadOf(dose),
    reserve: null,
    stopReason: 'unknown' as const,
    easier: typed.kind === 'bad-day',
  }));

/** Warning signs are taken by a call to the clinic, not by this form; "none" has to be said. */
const flagsOf = (typed: Typed) => (typed.flags === 'none' ? [] : null);

export const sessionAnswers = (
  entryId: string,
  exercises: readonly TypedExercise[],
  joints: readonly Joint[],
  typed: Typed,
) => ({
  entryId,
  redFlags: flagsOf(typed),
  extraPainRelief: yes(typed.relief),
  kind: typed.kind === 'bad-day' ? 'bad-day' : 'full',
  didExtra: yes(typed.extra),
  stoppedByFlag: false,
  news: null,
  otherJointWorse: null,
  sets: exercises.flatMap((exercise) => setsOf(exercise, typed)),
  joints: joints.map((joint) => ({
    joint,
    painBefore: score(typed[`before-${joint}`]),
    painDuring: score(typed[`during-${joint}`]),
    painAfter: score(typed[`after-${joint}`]),
    twoHoursState: 'not-applicable',
    muscleBurn: null,
    cuffDiscomfort: null,
    gaveWay: yes(typed[`gave-way-${joint}`]),
  })),
});

export const morningAnswers = (entryId: string, joints: readonly Joint[], typed: Typed) => ({
  entryId,
  redFlags: flagsOf(typed),
  extraPainRelief: yes(typed.relief),
  fatigue: null,
  fatigueState: 'not-applicable',
  joints: joints.map((joint) => ({
    joint,
    pain: score(typed[`pain-${joint}`]),
    stiffnessMinutes: score(typed[`stiffness-${joint}`]),
    stiffnessState: 'asked',
    swelling: typed[`swelling-${joint}`] || null,
    swellingState: 'asked',
    flare: yes(typed[`flare-${joint}`]),
  })),
});
