/**
 * What is typed into a step of a first visit, as flat text, so that the same words are the draft on the
 * server. Nothing is filled in that nobody has said; a number left out is not given, never zero.
 */
import type { FirstVisitStep } from '#core/episode/first-visit/first-visit-steps.ts';
import { equipmentKinds, householdEquipment } from '#core/exercises/equipment.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { linesOf, noneOfThese } from '#ui/clinician/forms/typed.ts';
import {
  type Asking,
  answersFrom,
  type ItemState,
  type ScreeningFormState,
  stateFromAnswer,
  unanswered,
} from '#ui/clinician/screening/screening-form-state.ts';
import type { FirstVisitPage } from '../episode/answers.ts';

export type Typed = Readonly<Record<string, string>>;

/** Steps that are typed into; the others press buttons of their own. */
export type TypedStep = Exclude<FirstVisitStep, 'week' | 'invitation'>;

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

export const unansweredItems = <I extends Asking>(typed: Typed, items: readonly I[]): readonly I[] =>
  items.filter((item) => stateOf(typed, item.id).answer === null);

/** Said by the clinician in one act: all others were asked and answered no. */
export const restNo = (typed: Typed, items: readonly Asking[]): Typed =>
  unansweredItems(typed, items).reduce(
    (known, item) => withItem(known, item.id, { ...unanswered, answer: 'no' }),
    typed,
  );

/** Answers stand in place of what nobody has answered here yet. */
export const beside = (
  typed: Typed,
  items: readonly Asking[],
  answers: readonly ScreeningItemAnswer[],
): Typed =>
  items.reduce((known, item) => {
    const answer = answers.find((one) => one.item === item.id);
    if (!answer || stateOf(known, item.id).answer !== null) return known;
    return withItem(known, item.id, stateFromAnswer(answer));
  }, typed);

/** One box for all of an ordinary household: it is had once somebody has asked. */
export const household = 'household';
export const noLoads = noneOfThese;

export const thingsOf = (equipment: readonly string[]): readonly string[] => {
  const hasAll = householdEquipment.every((thing) => equipment.includes(thing));
  const rest = hasAll ? equipment.filter((thing) => !householdEquipment.includes(thing)) : equipment;
  return hasAll ? [household, ...rest] : rest;
};

export const equipmentOf = (things: readonly string[]): readonly string[] => [
  ...new Set(things.flatMap((thing) => (thing === household ? householdEquipment : thing))),
];

/** Beyond an ordinary household. */
export const furtherThings = equipmentKinds.filter((thing) => !householdEquipment.includes(thing));

const consentsOnRecord = ({ consents }: FirstVisitPage): Typed =>
  Object.fromEntries(
    consents.flatMap(({ kind, state }) =>
      state === 'not-asked' ? [] : [[`consents.${kind}`, state === 'given' ? 'given' : 'refused']],
    ),
  );

/** One field a joint, in the order in which they are followed. */
export const jointFields = [
  'reason.followedJoints',
  'reason.secondJoint',
  'reason.thirdJoint',
  'reason.fourthJoint',
  'reason.fifthJoint',
  'reason.sixthJoint',
] as const;

/** Swelling that cannot be seen or felt on a joint is not asked about. */
export const notAsked = 'not-asked';

const usualOnRecord = ({ profile, baselines }: FirstVisitPage): Typed =>
  Object.fromEntries(
    (profile?.followedJoints ?? []).flatMap((joint) => {
      const row = baselines.findLast((one) => one.joint === joint);
      if (!row) return [];
      return (
        ['usualPain', 'acceptablePainLimit', 'usualStiffnessMinutes', 'usualSwelling'] as const
      ).flatMap((name) => {
        const isNotAsked = name === 'usualSwelling' && profile?.swellingNotAsked.includes(joint);
        const value = isNotAsked ? notAsked : row[name];
        return value === null ? [] : [[`joints.${joint}.${name}`, String(value)]];
      });
    }),
  );

const reasonOnRecord = (page: FirstVisitPage): Typed => {
  const { profile } = page;
  if (!profile) return {};
  return {
    'reason.diagnosis': profile.diagnosis,
    'reason.inflammatoryArthritis': profile.inflammatoryArthritis ? 'yes' : 'no',
    ...Object.fromEntries(jointFields.map((name, place) => [name, profile.followedJoints[place] ?? ''])),
    ...(profile.errorGroup ? { 'reason.errorGroup': profile.errorGroup } : {}),
    ...(profile.asksFatigue ? { 'reason.asksFatigue': 'yes' } : {}),
    ...usualOnRecord(page),
  };
};

const homeOnRecord = ({ profile }: FirstVisitPage): Typed => {
  if (!profile || profile.ownedEquipment.length + profile.ownedLoadsKg.length === 0) return {};
  const isNone = profile.ownedLoadsKg.length === 0;
  return {
    'home.ownedLoadsKg': profile.ownedLoadsKg.join(' '),
    ...(isNone ? { 'home.noLoads': noLoads } : {}),
    'home.ownedEquipment': thingsOf(profile.ownedEquipment).join('\n'),
  };
};

export const listIn = (typed: Typed, name: string): readonly string[] => linesOf(typed[name] ?? '');

/** Where the sheet on record has run out its answers are shown beside each question, and asked again. */
const answersOnRecord = ({ screening, items, states }: FirstVisitPage): Typed => {
  const isOver = states.find(({ step }) => step === 'screening')?.state === 'open';
  const isWhole = items.every(({ id }) => screening?.answers.some(({ item }) => item === id));
  return screening && !(isOver && isWhole) ? beside({}, items, screening.answers) : {};
};

const onRecord: Readonly<Record<TypedStep, (page: FirstVisitPage) => Typed>> = {
  consents: consentsOnRecord,
  reason: reasonOnRecord,
  screening: answersOnRecord,
  // What is measured or tested is a new row each time; what is on record stands beside its field.
  measurements: ({ profile }): Typed => (profile?.formulaSex ? { formulaSex: profile.formulaSex } : {}),
  home: homeOnRecord,
  exercise: () => ({}),
};

/** What is on record stands in the fields at first; a draft stands above it. */
export const recordedIn = (step: TypedStep, page: FirstVisitPage): Typed => onRecord[step](page);

/** The joints chosen, each once. */
export const followedIn = (typed: Typed): readonly string[] => [
  ...new Set(jointFields.flatMap((name) => typed[name] || [])),
];
