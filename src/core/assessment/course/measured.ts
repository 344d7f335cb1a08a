/** Measurements as the course of care reads them, and the lines of those that are told alike. */
import type { ErrorGroup } from '../change/error-group.ts';
import { type AtDistance, distanceOf } from '../measurements/at-distance.ts';
import type { Figure, HowDrawn } from './drawn.ts';
import { type Judgement, nothingToCompare, type OutcomeLine } from './judgement.ts';

export type Measured<M> = M & AtDistance & { readonly recordedBy: string };

export interface Person {
  readonly sex: 'female' | 'male' | null;
  readonly birthDay: string;
  /** Whose error of measuring holds; null = nobody has said. */
  readonly errorGroup: ErrorGroup | null;
}

/** What the course of care asks of a person, from what is on record of a patient. */
export const personMeasured = ({
  profile,
  birthDay,
}: {
  readonly birthDay: string;
  readonly profile: { readonly formulaSex: Person['sex']; readonly errorGroup: ErrorGroup | null } | null;
}): Person => ({
  sex: profile?.formulaSex ?? null,
  birthDay,
  errorGroup: profile?.errorGroup ?? null,
});

export const sexNeeded = 'No cut-off: the sex used in formulas is not in the care profile.';
export const people = { female: 'a woman', male: 'a man' } as const;

/** The order in which the course of care is told. */
export const courseAreas = ['patient', 'joints', 'function', 'strength', 'size'] as const;
type Area = (typeof courseAreas)[number];

/** A line for each limb, side or exercise measured. */
export interface CourseBySubject<R> {
  readonly area: Area;
  /** What the rows of one line have in common; left out = there is one line. */
  readonly subject?: (row: R) => string;
  /** Left out = the measure's title. */
  readonly title?: (subject: string) => string;
  /** Left out = the row in words. */
  readonly reading?: (row: R) => string;
  /** The newest row against a norm or cut. */
  readonly norm: (row: Measured<R>, person: Person) => Judgement;
  readonly change: (first: Measured<R>, last: Measured<R>, person: Person) => OutcomeLine['change'];
  /** null = no figure comes of this row. */
  readonly drawnAt: (row: R) => Figure | null;
  /** By the first and the newest row, which are one where it was measured once. */
  readonly drawn: (first: Measured<R>, last: Measured<R>, person: Person) => HowDrawn;
}

/** Lines of a measure whose rows are read together. */
export interface CourseLines<R> {
  readonly area: Area;
  readonly lines: (rows: readonly Measured<R>[], person: Person) => readonly OutcomeLine[];
}

interface Told<R> {
  readonly kind: string;
  readonly title: string;
  readonly inWords: (row: R) => string;
}

/** Rows stand oldest first, and so do those of each line. */
export const linesBySubject = <R extends { readonly day: string }>(
  told: Told<R>,
  course: CourseBySubject<R>,
  rows: readonly Measured<R>[],
  person: Person,
): readonly OutcomeLine[] => {
  const { subject: subjectOf = () => '', title = () => told.title, reading = told.inWords } = course;
  const groups = new Map<string, Measured<R>[]>();
  for (const row of rows) groups.set(subjectOf(row), [...(groups.get(subjectOf(row)) ?? []), row]);
  const pointsOf = (own: readonly Measured<R>[]) =>
    own.flatMap((row) => {
      const figure = course.drawnAt(row);
      return figure === null ? [] : [{ day: row.day, figure }];
    });
  return [...groups].map(([subject, own]) => ({
    key: subject === '' ? told.kind : `${told.kind} ${subject}`,
    kind: told.kind,
    title: title(subject),
    readings: own.map((row) => ({ day: row.day, text: reading(row), ...distanceOf(row) })),
    drawn: {
      courses: [{ name: null, points: pointsOf(own) }],
      ...course.drawn(own[0]!, own.at(-1)!, person),
    },
    norm: course.norm(own.at(-1)!, person),
    change: own.length < 2 ? nothingToCompare : course.change(own[0]!, own.at(-1)!, person),
  }));
};
