/** What was typed from paper or from a call, as an entry's answers. What was left empty stays open, never zero. */
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type Dose, repetitionsOfSet } from '#core/prescribing/dose.ts';
import { type News, newsKinds } from '#core/record/entry-words.ts';
import { morningQuestions, type QuestionId } from '#core/record/morning-questions.ts';
import { type StopReason, stopReasons } from '#core/record/record.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/data-entry.ts';
import { numberAt } from '#ui/clinician/forms/typed.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';

export interface TypedExercise {
  readonly itemId: string;
  readonly prescriptionId: string;
  readonly title: string;
  readonly dose: Dose;
  readonly badDay: Dose;
}

/** By the name of the field. */
export type Typed = Readonly<Record<string, string>>;

export const yes = (text: string | undefined): boolean | null =>
  text === 'yes' ? true : text === 'no' ? false : null;

export const score = (text: string | undefined): number | null => {
  const read = readNumber(text ?? '');
  return read === null || Number.isNaN(read) ? null : read;
};

/** "15, 14, –": a dash is a set whose count is not known. null where something else stands there. */
const countsIn = (text: string): readonly (number | null)[] | null => {
  const parts = text.split(/[,;\s]+/).filter((part) => part !== '');
  const counts = parts.map((part) => (/^[-–?]$/.test(part) ? null : Number(part)));
  return counts.every((count) => count === null || (Number.isInteger(count) && count >= 0 && count <= 500))
    ? counts
    : null;
};

/** Repetitions in reserve, one for each set; a dash where it was not said. */
const reservesOf = (itemId: string, typed: Typed) => countsIn(typed[`reserve-${itemId}`] ?? '');

const mostReserve = 10;

const reserveProblem = ({ itemId, title }: TypedExercise, typed: Typed): readonly Problem[] =>
  reservesOf(itemId, typed)?.every((one) => one === null || one <= mostReserve)
    ? []
    : [
        {
          field: `reserve-${itemId}`,
          text: say('one-reserve-a-set', { exercise: title, most: mostReserve }),
        },
      ];

/** A weight on paper, within what an entry may hold. */
const weight = { name: 'load', kind: 'number', unit: 'kg', min: 0, max: 500 } as const;

/** In kilograms, also where another unit was written out. */
const weightIn = (text = ''): number | null => {
  if (text.trim() === '') return null;
  const { value } = numberAt({ ...weight, about: '' }, '', text.trim());
  return typeof value === 'number' ? value : null;
};

const loadProblems = ({ itemId, title }: TypedExercise, typed: Typed): readonly Problem[] => {
  const name = `load-${itemId}`;
  const text = (typed[name] ?? '').trim();
  const about = `${say('weight-used')}, ${title}`;
  return text === '' ? [] : numberAt({ ...weight, about }, name, text).problems;
};

/** What stands in a morning that cannot be read: said with the joint, and never left out in silence. */
export const unreadableMorning = (joints: readonly Joint[], typed: Typed): readonly Problem[] =>
  joints.flatMap((joint) =>
    morningQuestions.flatMap(({ id, answer, label }) => {
      const name = `${id}-${joint}`;
      const text = (typed[name] ?? '').trim();
      if (answer.kind !== 'integer' || text === '') return [];
      return numberAt({ ...answer, about: `${label}, ${jointInWords(joint)}` }, name, text).problems;
    }),
  );

export const unreadable = (exercises: readonly TypedExercise[], typed: Typed): readonly Problem[] =>
  exercises.flatMap((exercise): readonly Problem[] => {
    const { itemId, title } = exercise;
    const counts = countsIn(typed[`counts-${itemId}`] ?? '');
    return [
      ...reserveProblem(exercise, typed),
      ...(counts === null
        ? [
            {
              field: `counts-${itemId}`,
              text: say('enter-the-repetitions', { exercise: title }),
            },
          ]
        : []),
      ...loadProblems(exercise, typed),
    ];
  });

/** As on a phone: the reason is asked of a set that fell short or was not counted, and else there is none. */
const reasonOf = (
  dose: Dose,
  set: number,
  repetitions: number | null,
  said: string | undefined,
): StopReason =>
  repetitions !== null && repetitions >= repetitionsOfSet(dose, set).low
    ? 'none'
    : (stopReasons.find((reason) => reason === said) ?? 'unknown');

const setsOf = ({ itemId, prescriptionId, ...exercise }: TypedExercise, typed: Typed) => {
  const isEasier = typed.kind === 'bad-day';
  const dose = isEasier ? exercise.badDay : exercise.dose;
  const reserves = reservesOf(itemId, typed) ?? [];
  return (countsIn(typed[`counts-${itemId}`] ?? '') ?? []).map((repetitions, place) => ({
    prescriptionId,
    itemId,
    set: place + 1,
    repetitions,
    loadKg: prescribedLoadKg(dose) > 0 ? weightIn(typed[`load-${itemId}`]) : prescribedLoadKg(dose),
    reserve: reserves[place] ?? null,
    stopReason: reasonOf(dose, place + 1, repetitions, typed[`stop-${itemId}`]),
    easier: isEasier,
  }));
};

const newsOf = (said: string | undefined): readonly News[] | null =>
  said === 'none' ? [] : said ? newsKinds.filter((kind) => kind === said) : null;

/** Paper asks everything but the swelling of a joint that is left out. */
export const isAskedOnPaper = (id: QuestionId, joint: Joint, swellingNotAsked: readonly Joint[]): boolean =>
  id !== 'swelling' || !swellingNotAsked.includes(joint);

/** Warning signs are taken by a call to the clinic, not by this form; "none" has to be said. */
export const flagsOf = (typed: Typed) => (typed.flags === 'none' ? [] : null);

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
  news: newsOf(typed.news),
  otherJointWorse: yes(typed['other-joint']),
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
