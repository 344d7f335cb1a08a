/**
 * Every difference of a dose from the one in force, a sentence each, and which of them ask more of a person beside
 * what repetitions, sets and load come to: effort, rest, sessions a week and the cuff.
 */
import { changesBetween, heldSeconds, shareOf } from '../decision/dose/volume.ts';
import { changeText, sameAgain } from './changes-in-words.ts';
import type { Cuff, Dose, OcclusionDose } from './dose.ts';
import { machineOf } from './place-of-dose.ts';

export interface DoseDifference {
  readonly text: string;
  /** It asks more than the dose in force, or nobody knows that it does not. */
  readonly asksMore: boolean;
}

const difference = (
  what: string,
  [from, to]: readonly [string, string],
  asks: boolean | 'not-known',
): readonly DoseDifference[] => {
  if (from === to) return [];
  const more = asks === 'not-known' ? ', which may ask more' : asks ? ', which asks more' : '';
  return [{ text: `${what}: ${from} → ${to}${more}.`, asksMore: asks !== false }];
};

const reserveOf = (dose: Dose): number | null => (dose.method === 'occlusion' ? null : dose.reserve);

/** Whoever leaves fewer in reserve goes nearer to failure. */
const reserveDifference = (from: Dose, to: Dose): readonly DoseDifference[] => {
  const [before, after] = [reserveOf(from), reserveOf(to)];
  const isNearer = before !== null && after !== null && after < before;
  return difference('Left in reserve', [String(before ?? 'none'), String(after ?? 'none')], isNearer);
};

const cuffText = (cuff: Cuff): string =>
  cuff.kind === 'elastic-wrap'
    ? `wrap at tightness ${cuff.tightness}`
    : `${Math.round(cuff.pressureMmhg)} mmHg, ${cuff.widthCm} cm, ${cuff.position}`;

/** Of two cuffs of one width in one position more pressure is more; of two different ones nobody knows. */
const pressesMore = (from: Cuff, to: Cuff): boolean | 'not-known' => {
  if (from.kind === 'elastic-wrap')
    return to.kind === 'elastic-wrap' ? to.tightness > from.tightness : 'not-known';
  if (to.kind === 'elastic-wrap') return 'not-known';
  const isSameCuff = from.widthCm === to.widthCm && from.position === to.position;
  return isSameCuff ? to.pressureMmhg > from.pressureMmhg : 'not-known';
};

const placeOf = (dose: OcclusionDose): string => (dose.supervised ? 'with a clinician present' : 'at home');
const minutesOf = (dose: OcclusionDose): string => `${Math.round(dose.capSeconds / 6) / 10} min`;

/** What a proposal for work with a cuff says of the cuff beside its figures. */
const cuffDifferences = (from: Dose, to: Dose): readonly DoseDifference[] => {
  if (from.method !== 'occlusion' || to.method !== 'occlusion') return [];
  return [
    ...difference('Cuff', [cuffText(from.cuff), cuffText(to.cuff)], pressesMore(from.cuff, to.cuff)),
    ...difference('Cuff in the rests', [from.inflation, to.inflation], to.inflation === 'continuous'),
    ...difference(
      'Longest time under restriction',
      [minutesOf(from), minutesOf(to)],
      to.capSeconds > from.capSeconds,
    ),
    ...difference('Where', [placeOf(from), placeOf(to)], !to.supervised),
  ];
};

const whereOf = (dose: Dose): string => machineOf(dose)?.name ?? 'at home';

/** The same dose says so. */
export const changesFromInForce = (from: Dose, to: Dose): readonly DoseDifference[] => {
  const seconds = (value: number) => `${value} s`;
  const changes = [
    ...changesBetween(from, to).map((change) => ({ text: changeText(change), asksMore: false })),
    ...difference('Where', [whereOf(from), whereOf(to)], 'not-known'),
    ...difference('Side', [from.side, to.side], false),
    ...reserveDifference(from, to),
    ...difference(
      'Rest',
      [seconds(from.restSeconds), seconds(to.restSeconds)],
      to.restSeconds < from.restSeconds,
    ),
    ...(heldSeconds(to) === null
      ? difference(
          'One repetition',
          [seconds(from.secondsPerRepetition), seconds(to.secondsPerRepetition)],
          to.secondsPerRepetition > from.secondsPerRepetition,
        )
      : []),
    ...difference(
      'Sessions a week',
      [String(from.sessionsPerWeek), String(to.sessionsPerWeek)],
      to.sessionsPerWeek > from.sessionsPerWeek,
    ),
  ];
  const all = [...changes, ...cuffDifferences(from, to)];
  return all.length > 0 ? all : [{ text: sameAgain, asksMore: false }];
};

/** Work of a week as a share of the week in force, 1 = as much; null where it is not known. */
export const shareOfWeek = (dose: Dose, reference: Dose): number | null => {
  const share = shareOf(dose, reference);
  return share === null || reference.sessionsPerWeek === 0
    ? null
    : (share * dose.sessionsPerWeek) / reference.sessionsPerWeek;
};
