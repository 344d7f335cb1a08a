/** What is entered of one joint of an appointment at a distance: each part with how it was judged and what was found. */
import type { Field } from '../../calculations/describe.ts';
import type { Refusal } from '../../outcome.ts';
import { type GuidePart, type GuideStep, type JudgedBy, partsOfGuide } from './guide.ts';

const titles: Readonly<Record<GuidePart, string>> = {
  look: 'Look',
  press: 'Press',
  move: 'Move',
  task: 'Task',
};

/** Of what a limit leaves out nothing is asked; ways are narrowed by the line. */
export const fieldsOfGuide = (steps: readonly Pick<GuideStep, 'part' | 'ways'>[]): readonly Field[] =>
  steps.flatMap(({ part, ways }): readonly Field[] => [
    { name: `${part}By`, kind: 'enum', values: ways, about: titles[part] },
    {
      name: `${part}Found`,
      kind: 'text',
      minLength: 1,
      maxLength: 200,
      nullable: true,
      about: `${titles[part]}: what you found, or why not done`,
    },
  ]);

export interface Finding {
  readonly part: GuidePart;
  readonly by: JudgedBy;
  readonly found: string | null;
}

type Entered = Readonly<Record<string, unknown>>;

export const findingsFrom = (
  row: Entered,
  steps: readonly Pick<GuideStep, 'part' | 'locked'>[],
): readonly Finding[] =>
  steps.map(({ part, locked }) => ({
    part,
    by: locked ? 'not-done' : (row[`${part}By`] as JudgedBy),
    found: locked ?? (row[`${part}Found`] as string | null | undefined) ?? null,
  }));

/** What was judged says what was found; a blank would read as "nothing wrong". */
export const guideRefusals = (row: Entered): readonly Refusal[] =>
  partsOfGuide
    .map((part) => ({ part, by: row[`${part}By`], found: row[`${part}Found`] ?? null }))
    .filter(({ by, found }) => by !== undefined && by !== 'not-done' && found === null)
    .map(({ part }) => ({
      field: `input.${part}Found`,
      code: 'missing',
      reason: `Say what you found under “${titles[part]}”, or choose “Not done”.`,
    }));
