/** What a step of a first visit sends of what is typed, and what it makes of the answer. */
import { screeningSheetVersion } from '#core/screening/items.ts';
import { say } from '#messages/en/staff/first-visit.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import type { FirstVisitPage, SavedVisit } from '../episode/answers.ts';
import type { RefusedField } from '../forms/submit-problems.ts';
import {
  answered,
  equipmentOf,
  followedIn,
  listIn,
  noLoads,
  notAsked,
  type Typed,
  type TypedStep,
} from './first-visit-state.ts';
import { pair, type Reading, reading, whole } from './read-typed-step.ts';

export interface Sent {
  readonly visit: Readonly<Record<string, unknown>>;
  readonly problems: readonly Problem[];
}

const consentsFrom = (typed: Typed, { consents }: FirstVisitPage): Sent => ({
  visit: {
    consents: consents.flatMap(({ kind, state, wordingSource, wordingVersion }) => {
      const said = typed[`consents.${kind}`];
      const known = state === 'not-asked' ? undefined : state === 'given' ? 'given' : 'refused';
      if (!said || said === known) return [];
      const act = said === 'refused' && state === 'given' ? 'withdrawn' : said;
      return [{ kind, act, wordingSource, wordingVersion }];
    }),
  },
  problems: [],
});

const usualNames = ['usualPain', 'acceptablePainLimit', 'usualStiffnessMinutes', 'usualSwelling'] as const;

/** What the patient says of a joint that is followed; left out where nothing of it was typed. */
const usualFrom = (read: Reading, joint: string) => {
  const at = (name: (typeof usualNames)[number]) => `joints.${joint}.${name}`;
  if (usualNames.every((name) => !read.isTyped(at(name)))) return [];
  const usualPain = read.numberOrNull(at('usualPain'));
  const acceptablePainLimit = read.numberOrNull(at('acceptablePainLimit'));
  const usualStiffnessMinutes = read.numberOrNull(at('usualStiffnessMinutes'));
  if (usualStiffnessMinutes === null)
    read.problems.push({ field: at('usualStiffnessMinutes'), text: say('enter-the-stiffness') });
  const swelling = read.text(at('usualSwelling'), say('choose-the-usual-swelling'));
  const usualSwelling = swelling === notAsked ? 'none' : swelling;
  return [{ joint, usualPain, acceptablePainLimit, usualStiffnessMinutes, usualSwelling }];
};

const reasonFrom = (typed: Typed): Sent => {
  const read = reading(typed);
  const reason = whole(read, () => ({
    diagnosis: read.text('reason.diagnosis', say('enter-the-diagnosis')),
    inflammatoryArthritis:
      read.text('reason.inflammatoryArthritis', say('say-whether-inflammatory')) === 'yes',
    followedJoints:
      read.text('reason.followedJoints', say('choose-the-joint-to-follow')) && followedIn(typed),
    swellingNotAsked: followedIn(typed).filter(
      (joint) => typed[`joints.${joint}.usualSwelling`] === notAsked,
    ),
    errorGroup: typed['reason.errorGroup'] || null,
    ...(typed['reason.asksFatigue'] ? { asksFatigue: typed['reason.asksFatigue'] === 'yes' } : {}),
  }));
  const joints = followedIn(typed).map((joint) => whole(read, () => usualFrom(read, joint)) ?? []);
  const goal = (typed.goal ?? '').trim();
  return {
    visit: { ...(reason ? { reason } : {}), joints: joints.flat(), ...(goal ? { goal } : {}) },
    problems: read.problems,
  };
};

const screeningFrom = (typed: Typed, { items, screening, states }: FirstVisitPage): Sent => {
  const all = answered(typed, items);
  const isDone = states.some(({ step, state }) => step === 'screening' && state === 'done');
  const same = (one: unknown, other: unknown) => JSON.stringify(one) === JSON.stringify(other);
  const onRecord = (id: string) => screening?.answers.find(({ item }) => item === id);
  // An answer that stands as it was asked is not asked again by saving another one.
  const answers = isDone
    ? all.filter((answer) => {
        const { askedOn: _, ...known } = onRecord(answer.item) ?? { item: '' };
        return !same(Object.entries(known).sort(), Object.entries(answer).sort());
      })
    : all;
  return {
    visit: answers.length > 0 ? { screening: { sheetVersion: screeningSheetVersion, answers } } : {},
    problems: [],
  };
};

const measuredFrom = (typed: Typed, { profile }: FirstVisitPage): Sent => {
  const read = reading(typed);
  const pressure = pair(
    read,
    'pressure.systolicMmhg',
    'pressure.diastolicMmhg',
    say('enter-both-blood-pressure'),
  );
  const one = (name: string) => whole(read, () => read.numberOrNull(name));
  const [massKg, statureCm] = [one('mass.massKg'), one('stature.statureCm')];
  const { formulaSex } = typed;
  return {
    visit: {
      ...(pressure ? { pressure: { systolicMmhg: pressure[0], diastolicMmhg: pressure[1] } } : {}),
      ...(massKg === null ? {} : { mass: { massKg } }),
      ...(statureCm === null ? {} : { stature: { statureCm } }),
      ...(formulaSex && formulaSex !== profile?.formulaSex ? { formulaSex } : {}),
    },
    problems: read.problems,
  };
};

const loadsFrom = (read: Reading, typed: Typed): readonly number[] => {
  const parts = (typed['home.ownedLoadsKg'] ?? '').split(/[\s;]+/).filter((part) => part !== '');
  const values = parts.map(readNumber);
  const isNone = typed['home.noLoads'] === noLoads;
  const problem =
    parts.length === 0 && !isNone
      ? say('enter-the-loads-at-home')
      : values.some((value) => value === null || Number.isNaN(value))
        ? say('loads-not-read')
        : parts.length > 0 && isNone
          ? say('loads-or-none')
          : null;
  if (problem) read.problems.push({ field: 'home.ownedLoadsKg', text: problem });
  return problem ? [] : (values as readonly number[]);
};

const homeFrom = (typed: Typed): Sent => {
  const read = reading(typed);
  const home = whole(read, () => ({
    ownedLoadsKg: loadsFrom(read, typed),
    ownedEquipment:
      read.text('home.ownedEquipment', say('choose-what-is-at-home')) &&
      equipmentOf(listIn(typed, 'home.ownedEquipment')),
  }));
  return { visit: home ? { home } : {}, problems: read.problems };
};

/** A test of the exercise chosen; both numbers or neither. */
const testFrom = (typed: Typed): Sent => {
  const read = reading(typed);
  const test = pair(read, 'test.loadKg', 'test.repetitions', say('enter-the-load'));
  const { exerciseId, side } = typed;
  return {
    visit:
      test && exerciseId && side ? { test: { exerciseId, side, loadKg: test[0], repetitions: test[1] } } : {},
    problems: read.problems,
  };
};

const sentBy: Readonly<Record<TypedStep, (typed: Typed, page: FirstVisitPage) => Sent>> = {
  consents: consentsFrom,
  reason: reasonFrom,
  screening: screeningFrom,
  measurements: measuredFrom,
  home: homeFrom,
  exercise: testFrom,
};

/** A step in which nothing was typed is passed by: it stays open and says so. */
const isUntouched = (typed: Typed): boolean => Object.values(typed).every((text) => text.trim() === '');

/** Every part that can be read. `problems` stand in the way of going on, never of saving the other parts. */
export const visitFrom = (step: TypedStep, typed: Typed, page: FirstVisitPage): Sent =>
  isUntouched(typed) ? { visit: {}, problems: [] } : sentBy[step](typed, page);

export const hasParts = ({ visit }: Sent): boolean =>
  Object.values(visit).some((part) => !Array.isArray(part) || part.length > 0);

/** What was not saved, in the form that the page reads of a refusal. */
class NotAllSaved extends Error {
  constructor(
    readonly data: {
      readonly refusals: readonly RefusedField[];
      readonly questions: readonly string[];
    },
  ) {
    super(say('not-all-was-saved'));
  }
}

/** Stops before going on where a part was refused, is asked about, or could not be read here. */
export const requireAllSaved = (saved: SavedVisit | null, problems: readonly Problem[]): void => {
  const parts = saved?.parts ?? [];
  const refusals = [
    ...problems.map(({ field, text }) => ({ field, reason: text })),
    ...parts.flatMap(({ refused }) => refused),
  ];
  const questions = parts.flatMap((part) => part.questions);
  if (refusals.length > 0) throw new NotAllSaved({ refusals, questions: [] });
  if (questions.length > 0) throw new NotAllSaved({ refusals: [], questions });
};
