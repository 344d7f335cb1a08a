/**
 * The doses of an exercise and how a joint answered them, in words: counts of what was logged in the time that was
 * read. Nothing here says how it will go on.
 */
import type { Day } from '#core/time/day.ts';
import { stepsWithin } from '../chart-steps.ts';
import { dayInWords, listed, shareInWords } from '../plain-words.ts';
import type { LeftOutCount } from './answers-by-dose.ts';
import type { DoseAnswers, DoseCorridor } from './corridor.ts';
import type { DoseStep, StepWay } from './dose-course.ts';
import { leftOutInWords } from './left-out-words.ts';

/** "7 of 7" sessions at usual. */
export const countInWords = ({ atUsual, overUsual }: DoseAnswers): string =>
  `${atUsual} of ${atUsual + overUsual}`;

const doseCounted = (one: DoseAnswers): string =>
  `${shareInWords(one.share)} (at usual ${countInWords(one)})`;

/** Why there is no corridor, or between which doses it lies. */
export const corridorInWords = ({ highestAtUsual, lowestOverUsual, noneBecause }: DoseCorridor): string => {
  switch (noneBecause) {
    case 'nothing-counted':
      return 'No corridor: no session could be counted.';
    case 'none-at-usual':
      return 'No corridor: no dose was at usual twice, and more often than over it.';
    case 'none-over-usual':
      return `No corridor: highest at usual is ${doseCounted(highestAtUsual!)}, and no dose was over usual as often as at it.`;
    case 'overlap':
      return `No corridor: ${doseCounted(lowestOverUsual!)} was mostly over usual, and yet the higher ${doseCounted(highestAtUsual!)} was not.`;
    case null:
      return `Corridor from ${doseCounted(highestAtUsual!)}, the highest at usual, to ${doseCounted(lowestOverUsual!)}, the lowest over it.`;
  }
};

interface Answers {
  readonly doses: readonly DoseAnswers[];
  readonly leftOut: readonly LeftOutCount[];
  readonly corridor: DoseCorridor;
}

/** Each dose with its sessions at usual, the corridor, and what was not counted. */
export const byDoseInWords = ({ doses, leftOut, corridor }: Answers, from: Day): readonly string[] => [
  ...(doses.length > 0
    ? [
        `Sessions with the joint at usual the next morning, by dose, from ${dayInWords(from)} on: ${listed(
          doses.map((one) => `${shareInWords(one.share)} ${countInWords(one)}`),
          doses.length,
        )}.`,
      ]
    : []),
  corridorInWords(corridor),
  ...leftOutInWords(leftOut),
];

const wayWords: Readonly<Record<StepWay, string>> = {
  signed: 'signed',
  'within-band': 'within the signed band',
  'approved-ahead': 'approved ahead',
  'eased-back': 'eased back',
};

interface Shown {
  readonly since: Day;
  readonly today: Day;
}

type SaidStep = Pick<DoseStep, 'from' | 'to' | 'share' | 'inShort' | 'way'>;

/** Every step that the picture draws, also one whose name has no room in it. */
export const stepsInWords = (steps: readonly SaidStep[], { since, today }: Shown): readonly string[] => {
  const shown = stepsWithin(steps, { since, today });
  if (shown.length === 0) return [];
  const said = shown.map(
    ({ from, share, inShort, way }) =>
      `${share === null ? 'load not known' : shareInWords(share)} from ${dayInWords(from, today)} (${inShort}, ${wayWords[way]})`,
  );
  return [`Doses in force: ${listed(said, said.length)}.`];
};
