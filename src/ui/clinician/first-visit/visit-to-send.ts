/** What the first-visit page sends of what is typed, and what it makes of the answer. */
import { screeningSheetVersion } from '#core/screening/items.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import type { Asking } from '#ui/clinician/screening/screening-form-state.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import type { FirstVisitPage, SavedVisit } from '../episode/answers.ts';
import { answered, type Typed } from './first-visit-state.ts';

interface Reading {
  readonly problems: Problem[];
  readonly text: (name: string, why: string) => string;
  readonly numberOrNull: (name: string) => number | null;
}

const reading = (typed: Typed): Reading => {
  const problems: Problem[] = [];
  return {
    problems,
    text: (name, why) => {
      const value = (typed[name] ?? '').trim();
      if (value === '') problems.push({ field: name, text: why });
      return value;
    },
    numberOrNull: (name) => {
      const value = readNumber(typed[name] ?? '');
      if (Number.isNaN(value)) problems.push({ field: name, text: say('type-a-number') });
      return value;
    },
  };
};

/** Both or neither: half of a pair is asked for. */
const pair = (read: Reading, first: string, second: string, why: string) => {
  const [a, b] = [read.numberOrNull(first), read.numberOrNull(second)];
  if ((a === null) !== (b === null)) read.problems.push({ field: a === null ? first : second, text: why });
  return a === null || b === null || Number.isNaN(a + b) ? null : ([a, b] as const);
};

const loadsOf = (read: Reading, typed: Typed): readonly number[] => {
  const parts = (typed['profile.ownedLoadsKg'] ?? '').split(/[\s;]+/).filter((part) => part !== '');
  const values = parts.map(readNumber);
  if (parts.length === 0 || values.some((value) => value === null || Number.isNaN(value))) {
    read.problems.push({
      field: 'profile.ownedLoadsKg',
      text: say('enter-the-loads-at-home'),
    });
    return [];
  }
  return values as readonly number[];
};

/** Both numbers of the pressure, and the test or a maximum already known. */
const measuredFrom = (read: Reading) => {
  const pressure = pair(
    read,
    'pressure.systolicMmhg',
    'pressure.diastolicMmhg',
    say('enter-both-blood-pressure'),
  );
  const test = pair(read, 'test.loadKg', 'test.repetitions', say('enter-the-load'));
  const known = read.numberOrNull('request.knownOneRepMaxKg');
  if (!test && known === null && read.problems.length === 0)
    read.problems.push({ field: 'test.loadKg', text: say('enter-a-test-to-failure') });
  return {
    pressure: pressure && { systolicMmhg: pressure[0], diastolicMmhg: pressure[1] },
    test: test && { loadKg: test[0], repetitions: test[1] },
    known: test ? null : known,
  };
};

/** What the patient says of the joint that is followed; left out where nothing of it was typed. */
const usualFrom = (read: Reading, typed: Typed, joint: string) => {
  const names = ['usualPain', 'acceptablePainLimit', 'usualStiffnessMinutes', 'usualSwelling'] as const;
  if (names.every((name) => (typed[`usual.${name}`] ?? '').trim() === '')) return [];
  const usualPain = read.numberOrNull('usual.usualPain');
  const acceptablePainLimit = read.numberOrNull('usual.acceptablePainLimit');
  const usualStiffnessMinutes = read.numberOrNull('usual.usualStiffnessMinutes');
  if (usualStiffnessMinutes === null)
    read.problems.push({
      field: 'usual.usualStiffnessMinutes',
      text: say('enter-the-stiffness'),
    });
  const usualSwelling = read.text('usual.usualSwelling', say('choose-the-usual-swelling'));
  return [{ joint, usualPain, acceptablePainLimit, usualStiffnessMinutes, usualSwelling }];
};

/** Runs one part; null when something in it could not be read, so that the part is left out. */
const whole = <T>(read: Reading, part: () => T): T | null => {
  const before = read.problems.length;
  const value = part();
  return read.problems.length === before ? value : null;
};

const profileFrom = (read: Reading, typed: Typed, page: FirstVisitPage) => {
  const diagnosis = read.text('profile.diagnosis', say('enter-the-diagnosis'));
  const inflammatory = read.text('profile.inflammatoryArthritis', say('say-whether-inflammatory'));
  const joint = read.text('profile.followedJoints', say('choose-the-joint-to-follow'));
  // A second joint on record stays followed.
  const others = (page.profile?.followedJoints ?? []).filter((one) => one !== joint);
  return {
    diagnosis,
    inflammatoryArthritis: inflammatory === 'yes',
    followedJoints: [joint, ...others].slice(0, 2),
    ownedLoadsKg: loadsOf(read, typed),
    formulaSex: page.profile?.formulaSex ?? null,
  };
};

/**
 * What is sent: every part that can be read. `problems` stand in the way of a proposal, never of saving
 * the other parts. Bounds are the server's to refuse.
 */
export const visitFrom = (typed: Typed, items: readonly Asking[], page: FirstVisitPage) => {
  const read = reading(typed);
  const template = page.templates.find((one) => one.id === typed.exerciseId);
  const profile = whole(read, () => profileFrom(read, typed, page));
  const answers = answered(typed, items);
  const open = items.find((item) => !answers.some((answer) => answer.item === item.id));
  if (open)
    read.problems.push({
      field: open.id,
      text: say('answer-each-question'),
    });
  read.text('exerciseId', say('choose-the-exercise'));
  const side = template?.limbsAtOnce === 'both' ? 'both' : read.text('request.side', say('choose-the-side'));
  const joint = profile?.followedJoints[0];
  const usualValues = joint ? whole(read, () => usualFrom(read, typed, joint)) : null;
  const { pressure, test, known } = measuredFrom(read);
  const goal = (typed.goal ?? '').trim();
  const visit = {
    ...(profile ? { profile } : {}),
    ...(answers.length > 0 ? { screening: { sheetVersion: screeningSheetVersion, answers } } : {}),
    joints: usualValues ?? [],
    ...(pressure ? { pressure } : {}),
    ...(test && template && side ? { test: { exerciseId: template.request.exerciseId, side, ...test } } : {}),
    ...(goal ? { goal } : {}),
  };
  const request = { ...template?.request, side, ...(known === null ? {} : { knownOneRepMaxKg: known }) };
  return { visit, request, problems: read.problems };
};

/** What was not saved, in the form that the page reads of a refusal. */
class NotAllSaved extends Error {
  constructor(
    readonly data: {
      readonly refusals: readonly { readonly field: string; readonly reason: string }[];
      readonly questions: readonly string[];
    },
  ) {
    super(say('not-all-was-saved'));
  }
}

/** Stops before the proposal where a part was refused, is asked about, or could not be read here. */
export const requireAllSaved = ({ parts }: SavedVisit, problems: readonly Problem[]): void => {
  const refusals = [
    ...problems.map(({ field, text }) => ({ field, reason: text })),
    ...parts
      .flatMap(({ refused }) => refused)
      .map(({ field, reason }) => ({
        field: field.replace(/^input\.joints\.[a-z-]+/, 'input.usual'),
        reason,
      })),
  ];
  const questions = parts.flatMap((part) => part.questions);
  if (refusals.length > 0) throw new NotAllSaved({ refusals, questions: [] });
  if (questions.length > 0) throw new NotAllSaved({ refusals: [], questions });
};
