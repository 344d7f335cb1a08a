/**
 * What is typed on the first-visit page, as flat text, so that the same words are the draft on the
 * server. Nothing is filled in that nobody has said; a number left out is not given, never zero.
 */

import { screeningSheetVersion } from '#core/screening/items.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import {
  type Asking,
  answersFrom,
  type ItemState,
  type ScreeningFormState,
  stateFromAnswer,
  unanswered,
} from '#ui/clinician/screening/screening-form-state.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import type { FirstVisitPage } from '../episode/answers.ts';

export type Typed = Readonly<Record<string, string>>;

const itemKey = (id: string): string => `item:${id}`;

export const stateOf = (typed: Typed, id: string): ItemState => {
  const text = typed[itemKey(id)];
  return text ? { ...unanswered, ...(JSON.parse(text) as Partial<ItemState>) } : unanswered;
};

export const withItem = (typed: Typed, id: string, state: ItemState): Typed => ({
  ...typed,
  [itemKey(id)]: JSON.stringify(state),
});

const screeningOf = (typed: Typed, items: readonly Asking[]): ScreeningFormState =>
  Object.fromEntries(items.map((item) => [item.id, stateOf(typed, item.id)]));

export const answered = (typed: Typed, items: readonly Asking[]): readonly ScreeningItemAnswer[] =>
  answersFrom(items, screeningOf(typed, items));

/** Said by the clinician in one act: all others were asked and answered no. */
export const restNo = (typed: Typed, items: readonly Asking[]): Typed =>
  items
    .filter((item) => stateOf(typed, item.id).answer === null)
    .reduce((known, item) => withItem(known, item.id, { ...unanswered, answer: 'no' }), typed);

/** What the patient answered at home stands in place of what nobody has answered here yet. */
export const fromHome = (
  typed: Typed,
  items: readonly Asking[],
  answers: readonly ScreeningItemAnswer[],
): Typed =>
  items.reduce((known, item) => {
    const answer = answers.find((one) => one.item === item.id);
    if (!answer || stateOf(known, item.id).answer !== null) return known;
    return withItem(known, item.id, stateFromAnswer(answer));
  }, typed);

/** What is on record stands in the fields at first; a draft stands above it. */
export const startFrom = ({ profile, draft }: FirstVisitPage): Typed => ({
  ...(profile
    ? {
        'profile.diagnosis': profile.diagnosis,
        'profile.inflammatoryArthritis': profile.inflammatoryArthritis ? 'yes' : 'no',
        'profile.followedJoints': profile.followedJoints[0] ?? '',
        'profile.ownedLoadsKg': profile.ownedLoadsKg.join(' '),
      }
    : {}),
  ...(draft?.typed ?? {}),
});

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
      if (Number.isNaN(value)) problems.push({ field: name, text: 'Type a number, such as 7.5.' });
      return value;
    },
  };
};

/** Both or neither: half of a pair is asked for. */
const pair = (read: Reading, first: string, second: string, why: string) => {
  const [a, b] = [read.numberOrNull(first), read.numberOrNull(second)];
  if ((a === null) !== (b === null)) read.problems.push({ field: a === null ? first : second, text: why });
  return a === null || b === null ? null : ([a, b] as const);
};

const loadsOf = (read: Reading, typed: Typed): readonly number[] => {
  const parts = (typed['profile.ownedLoadsKg'] ?? '').split(/[\s;]+/).filter((part) => part !== '');
  const values = parts.map(readNumber);
  if (parts.length === 0 || values.some((value) => value === null || Number.isNaN(value))) {
    read.problems.push({
      field: 'profile.ownedLoadsKg',
      text: 'Enter the loads at home in kg, separated by spaces, such as 1 2 3.',
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
    'Enter both blood pressure numbers, or neither.',
  );
  const test = pair(
    read,
    'test.loadKg',
    'test.repetitions',
    'Enter the load and the repetitions of the test.',
  );
  const known = read.numberOrNull('request.knownOneRepMaxKg');
  if (!test && known === null && read.problems.length === 0)
    read.problems.push({ field: 'test.loadKg', text: 'Enter a test to failure or a known maximum.' });
  return {
    pressure: pressure && { systolicMmhg: pressure[0], diastolicMmhg: pressure[1] },
    test: test && { loadKg: test[0], repetitions: test[1] },
    known: test ? null : known,
  };
};

/** What is sent, or what stands in the way. Bounds are the server's to refuse. */
export const visitFrom = (typed: Typed, items: readonly Asking[], page: FirstVisitPage) => {
  const read = reading(typed);
  const template = page.templates.find((one) => one.id === typed.exerciseId);
  const diagnosis = read.text('profile.diagnosis', 'Enter the diagnosis in a few words.');
  const inflammatory = read.text(
    'profile.inflammatoryArthritis',
    'Say whether the arthritis is inflammatory.',
  );
  const joint = read.text('profile.followedJoints', 'Choose the joint to follow.');
  const ownedLoadsKg = loadsOf(read, typed);
  const answers = answered(typed, items);
  const open = items.find((item) => !answers.some((answer) => answer.item === item.id));
  if (open)
    read.problems.push({
      field: open.id,
      text: 'Answer each question, or press “All others: asked, answered no”.',
    });
  read.text('exerciseId', 'Choose the exercise to begin with.');
  const side = template?.limbsAtOnce === 'both' ? 'both' : read.text('request.side', 'Choose the side.');
  const { pressure, test, known } = measuredFrom(read);
  // A second joint on record stays followed.
  const others = (page.profile?.followedJoints ?? []).filter((one) => one !== joint);
  const visit = {
    profile: {
      diagnosis,
      inflammatoryArthritis: inflammatory === 'yes',
      followedJoints: [joint, ...others].slice(0, 2),
      ownedLoadsKg,
      formulaSex: page.profile?.formulaSex ?? null,
    },
    screening: { sheetVersion: screeningSheetVersion, answers },
    pressure,
    test,
    request: { ...template?.request, side, ...(known === null ? {} : { knownOneRepMaxKg: known }) },
    goal: (typed.goal ?? '').trim() || null,
  };
  return { visit, problems: read.problems };
};
