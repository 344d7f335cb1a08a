/** What may be right and often is not: asked before a file is taken, by name, and answered by name. */
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { unlikely } from '#core/assessment/measurements/measurement-checks.ts';
import type { ImportedThing } from '#core/record/imported.ts';
import { addDays, type Day } from '#core/time/day.ts';

export const questionIds = ['unlikely', 'same-day-twice', 'long-ago', 'day-order', 'other-person'] as const;
export type QuestionId = (typeof questionIds)[number];

export interface Question {
  readonly id: QuestionId;
  readonly about: string;
  readonly count: number;
  /** The first few. */
  readonly examples: readonly string[];
}

const abouts: Readonly<Record<QuestionId, string>> = {
  unlikely: 'Figures far from the last one, or from what is usual. Are they right?',
  'same-day-twice': 'The same was written twice for one day. Were both meant?',
  'long-ago': 'Days more than ten years ago. Are they right?',
  'day-order': 'Every day could be read with day and month the other way round. Is it read the right way?',
  'other-person': 'The file does not say that it is of this person. Is it?',
};

const mostExamples = 3;
/** Choices of this project: a day written twice lies near in a diary, and older ones are slips of the year. */
const daysLookedBack = 400;
const subjectsLookedBack = 500;
const longAgoDays = 3653;

/** What is the same thing on two days. */
const subjectOf = ({ kind, value }: ImportedThing): string => {
  if ('text' in value) return value.text;
  if (!('what' in value)) return 'exercise' in value ? `${value.exercise}\n${value.joint}` : value.joint;
  if (value.what === 'pain') return `${kind}\n${value.place}`;
  return value.what === 'grip' ? value.side : value.what;
};

/** Whether the same was seen for the day, among the last days of it. */
const sameDays = () => {
  const bySubject = new Map<string, Set<Day>>();
  return (thing: ImportedThing, day: Day): boolean => {
    const subject = subjectOf(thing);
    const days = bySubject.get(subject) ?? new Set();
    if (days.size === 0) bySubject.set(subject, days);
    if (days.has(day)) return true;
    days.add(day);
    if (days.size > daysLookedBack) days.delete(days.values().next().value!);
    if (bySubject.size > subjectsLookedBack) bySubject.delete(bySubject.keys().next().value!);
    return false;
  };
};

const measured = ({ kind, day, value }: ImportedThing): Measurement | null => {
  if (kind !== 'measurement' || !('what' in value) || value.what === 'pain') return null;
  const { what, ...figures } = value;
  return { kind: what, day, ...figures } as unknown as Measurement;
};

export interface Questions {
  readonly see: (place: number, thing: ImportedThing) => void;
  readonly ask: (id: QuestionId, example: string) => void;
  readonly all: () => readonly Question[];
}

/** `mayBeSwapped`: days were written so that day and month look alike. */
export const questionsOf = (today: Day, mayBeSwapped: boolean): Questions => {
  const asked = new Map<QuestionId, { count: number; examples: string[] }>();
  const last = new Map<string, Measurement>();
  const isSeen = sameDays();
  const oldest = addDays(today, -longAgoDays);
  let days = 0;
  let swappable = 0;
  let firstDay = '';
  const ask = (id: QuestionId, example: string): void => {
    const found = asked.get(id) ?? { count: 0, examples: [] };
    asked.set(id, found);
    found.count += 1;
    if (found.examples.length < mostExamples) found.examples.push(example);
  };
  const seeFigure = (place: number, thing: ImportedThing): void => {
    const row = measured(thing);
    if (!row) return;
    const subject = `${row.kind} ${'side' in row ? row.side : ''}`;
    const before = last.get(subject);
    for (const question of unlikely(row, before ? [before] : []))
      ask('unlikely', `Row ${place}: ${question}`);
    last.set(subject, row);
  };
  const see = (place: number, thing: ImportedThing): void => {
    seeFigure(place, thing);
    if (thing.day === null) return;
    days += 1;
    // The day of the month is read only where it may be a month.
    if (mayBeSwapped && Number(thing.day.slice(8)) <= 12) swappable += 1;
    if (days === 1) firstDay = thing.day;
    if (thing.day < oldest) ask('long-ago', `Row ${place}: ${thing.day}`);
    if (isSeen(thing, thing.day)) ask('same-day-twice', `Row ${place}: ${thing.day}`);
  };
  const all = (): readonly Question[] => {
    if (mayBeSwapped && days > 0 && swappable === days && !asked.has('day-order'))
      ask('day-order', `The first is read as ${firstDay}.`);
    return [...asked].map(([id, found]) => ({ id, about: abouts[id], ...found }));
  };
  return { see, ask, all };
};
