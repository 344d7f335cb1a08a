/** A waiting dose beside the one it takes the place of: only what changes, old → new. */
import { changesBetween, type DoseChange, largeStepPercent } from '#core/decision/dose/volume.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { changesFromInForce } from '#core/prescribing/changes-from-in-force.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { setsInShort } from '#core/prescribing/dose-in-short.ts';
import { figure, massInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/worklist.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { daysApartInWords } from '../programme/days-apart-words.ts';

/** A range of one figure is that figure. */
const inWords = (value: string | number): string =>
  typeof value === 'number' ? figure(value) : value.replace(/^(\d+)–\1$/, '$1');

/** The unit is said once where it is the same. */
const loadsInWords = (fromKg: number, toKg: number) => {
  const [from, to] = [massInWords(fromKg), massInWords(toKg)];
  const [figureFrom, unitFrom] = from.split(' ');
  return { from: to.endsWith(` ${unitFrom}`) ? figureFrom! : from, to };
};

const changeInWords = ({ variable, from, to }: DoseChange): string => {
  switch (variable) {
    case 'rung':
      return say('step.exercise', { from: exerciseTitle(String(from)), to: exerciseTitle(String(to)) });
    case 'load':
      return say('step.load', loadsInWords(Number(from), Number(to)));
    case 'hold':
      return say('step.hold', { from: inWords(from), to: inWords(to) });
    case 'mark':
      return say('step.mark', { from: inWords(from), to: inWords(to) });
    case 'sets':
      return say('step.sets', { from: inWords(from), to: inWords(to) });
    case 'holds':
      return say('step.holds', { from: inWords(from), to: inWords(to) });
    case 'repetitions':
      return say('step.repetitions', { from: inWords(from), to: inWords(to) });
  }
};

/** "Seated knee extension, right: 23–25 → 25 repetitions". */
export const stepInWords = (before: Dose | null, dose: Dose): string => {
  if (before === null) return say('step.new', { title: doseTitle(dose) });
  const changes = changesBetween(before, dose);
  if (changes.length === 0) return say('step.rewritten', { title: doseTitle(dose) });
  return say('step', { title: doseTitle(before), changes: changes.map(changeInWords).join(', ') });
};

/** What makes a step more than one of many: it is over 10 %, or nobody knows its size. null = neither. */
export const largeStepInWords = (before: Dose | null, dose: Dose): string | null => {
  if (before === null) return say('step.first');
  const sizes = changesBetween(before, dose)
    .filter(({ variable }) => ['load', 'rung', 'hold', 'mark'].includes(variable))
    .map(({ percent }) => percent);
  if (sizes.includes(null)) return say('step.size-unknown');
  const largest = Math.max(0, ...sizes.map(Number));
  // 10 to 11 kg is 10 %, and a hair more as a quotient.
  return largest - largeStepPercent > 1e-9 ? say('step.large', { percent: figure(largest) }) : null;
};

/** The same exercise that stays in force beside it, and would be done as well. */
export const besideInWords = (beside: readonly Dose[]): readonly string[] =>
  beside.map((dose) => say('step.beside', { title: doseTitle(dose), dose: doseInWords(dose) }));

/** All that is read of a dose before it is signed, beside its figures. */
export const namedOfStep = (
  before: Dose | null,
  dose: Dose,
  beside: readonly Dose[],
  plannedDays: number | null,
): readonly string[] => {
  const large = largeStepInWords(before, dose);
  const more = before === null ? [] : changesFromInForce(before, dose).filter(({ asksMore }) => asksMore);
  const apart = daysApartInWords(dose, plannedDays);
  return [
    ...(large ? [large] : []),
    ...more.map(({ text }) => text),
    ...besideInWords(beside),
    ...(apart ? [apart] : []),
  ];
};

/** "3 × 25", for a button; of work with a cuff the weight, since its scheme is long. */
export const shortDose = (dose: Dose): string =>
  dose.method === 'occlusion' ? massInWords(dose.loadKg) : setsInShort(dose);
