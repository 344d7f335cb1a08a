/**
 * The three sentences of a summary. Each says what was counted and names what was not; none says how it will go on.
 */
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { sentenceOf } from '#core/worklist/sentences.ts';
import { leftOutInWords } from '../dose/left-out-words.ts';
import { counted, dayInWords, jointInWords, listed } from '../plain-words.ts';
import type { AtUsualFact } from './at-usual.ts';
import type { LastStepFact } from './last-step.ts';
import type { ComingKind, OpenFact } from './open-question.ts';

export interface SummaryFacts {
  readonly atUsual: AtUsualFact;
  readonly lastStep: LastStepFact;
  readonly open: OpenFact;
}

const exerciseOf = ({ exerciseId, side }: Dose): string =>
  side === 'both' ? exerciseTitle(exerciseId) : `${exerciseTitle(exerciseId)}, ${side}`;

/** "3 × 12, 4.5 kg (Straighten the knee, sitting, left)". */
const named = (dose: Dose): string => `${doseInShort(dose)} (${exerciseOf(dose)})`;

type Counted = Extract<AtUsualFact, { is: 'counted' }>;

/** With the days of what is counted: it may lie before a flare. */
const countedWords = (
  { atUsual, of, days }: Pick<Counted, 'atUsual' | 'of' | 'days'>,
  joint: string,
  today: Day,
): string => {
  const when =
    days === null
      ? ''
      : days.from === days.to
        ? ` (${dayInWords(days.from, today)})`
        : ` (${dayInWords(days.from, today)} to ${dayInWords(days.to, today)})`;
  return of === 1
    ? `after the one session counted${when} the ${joint} was ${atUsual === 1 ? 'at' : 'over'} its usual the next morning`
    : `after ${atUsual} of the last ${of} sessions counted${when} the ${joint} was at its usual the next morning`;
};

const leftOutSentence = ({ leftOut }: Pick<Counted, 'leftOut'>): string =>
  leftOutInWords(leftOut)
    .map((sentence) => ` ${sentence}`)
    .join('');

const atUsualSentence = (fact: AtUsualFact, today: Day): string => {
  if (fact.is === 'no-dose') return 'No dose is in force, so no session can be counted.';
  const { before, of, leftOut } = fact;
  const dose = named(fact.dose);
  const joint = jointInWords(fact.joint);
  if (of > 0) return `${dose}: ${countedWords(fact, joint, today)}.${leftOutSentence(fact)}`;
  const none =
    leftOut.length > 0
      ? `${dose}: no session at this dose can be counted.${leftOutSentence(fact)}`
      : `${dose}: no session at this dose is on record in the time that was read.`;
  return before
    ? `${none} Before it, ${named(before.dose)}: ${countedWords(before, joint, today)}.${leftOutSentence(before)}`
    : none;
};

type Step = Extract<LastStepFact, { is: 'step' }>;

const answeredWords = ({ mornings }: Step, today: Day): string => {
  const { answered, atUsual, highest, lastOver } = mornings;
  if (answered === 0) return 'no morning has been answered';
  const were = `${counted(answered, 'morning')} ${answered === 1 ? 'was' : 'were'} answered`;
  if (atUsual === null) return `${were}, pain up to ${highest}; usual pain was not set on every one of them`;
  if (!lastOver) return `${were}, none over usual pain; the highest was ${highest}`;
  return `${were}: ${atUsual} at or under usual pain, ${answered - atUsual} over it, the last at ${lastOver.pain} on ${dayInWords(lastOver.day, today)}`;
};

const morningsSentence = (step: Step, today: Day): string => {
  const { from, missing, flareDays } = step.mornings;
  const since = from === addDays(step.on, 1) ? 'Since then' : `From ${dayInWords(from, today)} on`;
  return [
    `${since} ${answeredWords(step, today)}.`,
    ...(missing > 0
      ? [`${counted(missing, 'morning')} after a session ${missing === 1 ? 'is' : 'are'} missing.`]
      : []),
    ...(flareDays > 0 ? [`A flare was reported on ${counted(flareDays, 'morning')}.`] : []),
  ].join(' ');
};

const lastStepSentence = (fact: LastStepFact, today: Day): string => {
  if (fact.is === 'no-dose') return 'No dose is in force, so there is no step to tell.';
  if (fact.is === 'no-step')
    return `No step yet: ${named(fact.dose)} is the first signed dose, of ${dayInWords(fact.since, today)}.`;
  const { from, to, on, changes } = fact;
  const day = dayInWords(on, today);
  const before = from.exerciseId === to.exerciseId ? doseInShort(from) : named(from);
  const step =
    changes.length === 0
      ? `Written anew on ${day}: ${named(to)}.`
      : `From ${before} to ${named(to)} on ${day}.`;
  return `${step} ${morningsSentence(fact, today)}`;
};

const about = (joint: Joint | null): string => (joint ? ` for the ${jointInWords(joint)}` : '');

const comingWords: Readonly<Record<ComingKind, (joint: Joint | null) => string>> = {
  'screening-due': () => 'Screening is due again',
  'pressure-due': () => 'Occlusion pressure is to be measured again',
  'retest-due': () => 'A re-test is due',
  'baseline-due': (joint) => `The baseline${about(joint)} is due again`,
  'phase-due': (joint) => `A phase${about(joint)} is due`,
  'limit-ended': (joint) => `A limit${about(joint)} is to be looked at`,
  'review-day': () => 'A review is booked',
};

const openSentence = (fact: OpenFact, today: Day): string => {
  switch (fact.is) {
    case 'item': {
      const { doses, others } = fact;
      const first =
        doses.length > 0 ? `Sign ${listed(doses.map(named), doses.length)}?` : sentenceOf(fact, today);
      return others === 0 ? first : `${first} ${others} more ${others === 1 ? 'item is' : 'items are'} open.`;
    }
    case 'coming':
      return `${comingWords[fact.kind](fact.joint)} on ${dayInWords(fact.on, today)}.`;
    case 'not-screened':
      return 'No screening is on record.';
    case 'not-asked':
      return fact.lastOn === null
        ? 'Medicines have not been asked about.'
        : `Medicines were last asked about on ${dayInWords(fact.lastOn, today)}.`;
    case 'nothing':
      return `Nothing is open in what was looked at: the worklist, what comes due by ${dayInWords(fact.until, today)}, and when medicines were last asked about (${dayInWords(fact.medicinesAskedOn, today)}). What was not entered was not looked at.`;
  }
};

export const summaryInWords = ({ atUsual, lastStep, open }: SummaryFacts, today: Day) => ({
  atUsual: atUsualSentence(atUsual, today),
  lastStep: lastStepSentence(lastStep, today),
  open: openSentence(open, today),
});
