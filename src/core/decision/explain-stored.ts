/** One stored decision in full: what it was taken from, by which rules and sources, under which choices. */
import type { SettingValues } from '../sources/clinic-setting.ts';
import type { Day } from '../time/day.ts';
import type { Answers } from './answers.ts';
import { explainToClinician, factInWords, factName } from './explain.ts';
import type { Facts } from './facts/facts.ts';
import { isSame, replay } from './replay.ts';
import { engineDefaults } from './settings.ts';

export interface DecisionInFull extends Answers {
  readonly id: string;
  readonly joint: string;
  readonly day: Day;
  readonly cause: string;
  readonly engineVersion: string;
  readonly facts: Facts;
  readonly settings: SettingValues;
}

const answersInWords = ({ decision, largestStep, today, contact }: Omit<Answers, 'reasons'>): string =>
  [
    `decision ${decision}`,
    largestStep && `largest step ${largestStep}`,
    `today ${today}`,
    `contact ${contact}`,
  ]
    .filter(Boolean)
    .join(', ');

/** Choices are told where they are the clinic's own; what it left alone is counted. */
const choicesInWords = (settings: SettingValues): readonly string[] => {
  const defaults: SettingValues = engineDefaults;
  const own = Object.entries(settings).filter(([id, value]) => value !== defaults[id]);
  const left = Object.keys(settings).length - own.length;
  return [
    ...own.map(([id, value]) => `  ${id}: ${value} (default ${defaults[id] ?? 'none'})`),
    `  ${left} more stand at their defaults`,
  ];
};

const againInWords = (stored: DecisionInFull): string => {
  const again = replay(stored);
  if (!again) return `This release does not know version ${stored.engineVersion} of the rules.`;
  return isSame(stored, again)
    ? 'Taken again from these facts it comes out the same.'
    : `Taken again from these facts it comes out otherwise: ${answersInWords(again)}.`;
};

/** Lines for whoever has to account for it. */
export const explainInFull = (stored: DecisionInFull): readonly string[] => [
  `decision ${stored.id}: ${stored.joint}, ${stored.day}, after a ${stored.cause}, version ${stored.engineVersion} of the rules`,
  `answers: ${answersInWords(stored)}`,
  'rules that fired, in their published order:',
  ...(stored.reasons.length > 0 ? stored.reasons : [null]).map((reason) =>
    reason ? `  ${explainToClinician(reason)}` : '  none',
  ),
  'facts:',
  ...Object.entries(stored.facts).map(([name, value]) => `  ${factName(name)}: ${factInWords(value)}`),
  'choices of the clinic:',
  ...choicesInWords(stored.settings),
  againInWords(stored),
];
