/** The roster as it was taken along, and each person of it as the parts of the hour's page read one. */
import type { createCaller } from '#api/root.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { GroupPerson } from '../../answers.ts';
import type { Typed } from '../group-answers.ts';
import { answerKey, type SealedAnswer } from './answers-kept.ts';

export type TakenAlong = Awaited<
  ReturnType<ReturnType<typeof createCaller>['clinician']['groupSessions']['takeAlong']>
>;
type TakenPerson = TakenAlong['people'][number];

export interface SealedRoster extends Omit<TakenAlong, 'people' | 'begun'> {
  readonly people: readonly (TakenPerson & {
    /** A word that tells two of one first name apart; left out where the name does. */
    readonly mark?: string;
  })[];
  /** What answers are sealed to. */
  readonly clinicKey: string;
  readonly sealedAt: number;
}

/** "finished": what was pressed is sealed to the clinic and stands here no more; told signs stay, for whom to ring. */
export type PersonState =
  | { readonly state: 'begun'; readonly typed: Typed }
  | { readonly state: 'finished'; readonly flags: readonly RedFlag[] };

export type States = Readonly<Record<string, PersonState>>;

export const nameOf = ({
  firstName,
  mark,
}: Pick<SealedRoster['people'][number], 'firstName' | 'mark'>): string =>
  mark === undefined ? firstName : `${firstName} · ${mark}`;

/** Nothing that was left at the clinic is made up: reasons and what changed are empty here, and the page says so. */
export const personOf = (taken: SealedRoster['people'][number]): GroupPerson => ({
  patientId: taken.patientId,
  name: nameOf(taken),
  entryId: taken.entryId,
  session: null,
  earlierSessions: [],
  typed: null,
  today: {
    ...taken.today,
    told: [],
    decided: [],
    exercises: taken.today.exercises.map((exercise) => ({
      ...exercise,
      signedName: '',
      reasons: [],
      cautions: exercise.cautions.map((caution, place) => ({ ...caution, id: String(place) })),
    })),
  },
});

/** Finished, and not waiting here any more: the clinic has it. Known when the hour is opened, before anything new. */
export const arrivedBefore = (
  { people, takenBy, sealedAt }: Pick<SealedRoster, 'people' | 'takenBy' | 'sealedAt'>,
  states: States,
  waiting: readonly Pick<SealedAnswer, 'takenBy' | 'sealedAt' | 'entryId'>[],
): readonly string[] => {
  const here = waiting.map(answerKey);
  return people
    .filter(({ patientId }) => states[patientId]?.state === 'finished')
    .map(({ entryId }) => answerKey({ takenBy, sealedAt, entryId }))
    .filter((key) => !here.includes(key));
};

/** Of whom an answer waits here is not taken along again: the plan of a person who told a sign would not know of it. */
export const withoutWaiting = <P extends { readonly patientId: string }>(
  people: readonly P[],
  waiting: readonly Pick<SealedAnswer, 'patientId'>[],
): { readonly people: readonly P[]; readonly left: readonly P[] } => {
  const waits = ({ patientId }: P) => waiting.some((one) => one.patientId === patientId);
  return { people: people.filter((one) => !waits(one)), left: people.filter(waits) };
};
