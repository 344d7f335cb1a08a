/** What the page of prescribing was asked for, as it stands in its address: a search, and what was chosen. */
import { type Muscle, muscles } from '#core/exercises/exercise.ts';
import { type Joint, joints, type Limb, limbs, sides } from '#core/exercises/joints.ts';
import { type TemplateSide, templateSides } from '#core/prescribing/clinic-template.ts';
import { type Method, methods } from '#core/prescribing/methods.ts';
import type { Patient } from '../../answers.ts';

export const regions: readonly (Limb | 'trunk')[] = [...limbs, 'trunk'];

export interface ChoiceAddress {
  readonly words: string;
  readonly method?: Method;
  readonly region?: Limb | 'trunk';
  readonly joint?: Joint;
  readonly trains?: Muscle;
  readonly isAtHome: boolean;
  /** All that is possible, and not only its first page. */
  readonly isAll: boolean;
  readonly exerciseId?: string;
  readonly side?: 'left' | 'right' | 'both';
  /** The line a new version is written for. */
  readonly line?: string;
  /** A template of the clinic, on which side it is used, and which of its doses fills in the form. */
  readonly template?: string;
  readonly on?: TemplateSide;
  readonly place?: number;
}

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

const oneOf = <V extends string>(values: readonly V[], text: unknown): V | undefined =>
  values.find((value) => value === text);

const given = <K extends string, V>(name: K, value: V | undefined) =>
  (value === undefined ? {} : { [name]: value }) as Partial<Record<K, V>>;

const textOf = (value: Asked[string]): string | undefined =>
  typeof value === 'string' && value !== '' ? value : undefined;

const placeOf = (value: Asked[string]): number | undefined =>
  /^\d{1,2}$/.test(textOf(value) ?? '') ? Number(value) : undefined;

/** Before anything was searched: the joint that is followed, with what is at home. */
export const choiceAddress = (asked: Asked, profile: Patient['profile']): ChoiceAddress => {
  const isSearched = asked.find !== undefined;
  const joint = isSearched ? oneOf(joints, asked.joint) : profile?.followedJoints[0];
  return {
    words: (textOf(asked.words) ?? '').slice(0, 100),
    isAtHome: isSearched ? asked.home === '1' : profile !== null,
    isAll: asked.all === '1',
    ...given('method', oneOf(methods, asked.method)),
    ...given('region', oneOf(regions, asked.region)),
    ...given('joint', joint),
    ...given('trains', oneOf(muscles, asked.trains)),
    ...given('exerciseId', textOf(asked.exercise)?.slice(0, 60)),
    ...given('side', oneOf([...sides, 'both'] as const, asked.side)),
    ...given('line', textOf(asked.line)?.slice(0, 64)),
    ...given('template', textOf(asked.template)?.slice(0, 64)),
    ...given('on', oneOf(templateSides, asked.on)),
    ...given('place', placeOf(asked.place)),
  };
};

/** The search goes with every link, so that the list stands as it was. */
export const addressOf = (patientId: string, at: ChoiceAddress): string => {
  const values: Readonly<Record<string, string | undefined>> = {
    method: at.method,
    line: at.line,
    exercise: at.exerciseId,
    side: at.side,
    template: at.template,
    on: at.template ? at.on : undefined,
    place: at.template && at.place !== undefined ? String(at.place) : undefined,
    find: '1',
    words: at.words,
    joint: at.joint,
    region: at.region,
    trains: at.trains,
    home: at.isAtHome ? '1' : undefined,
    all: at.isAll ? '1' : undefined,
  };
  const text = new URLSearchParams(
    Object.entries(values).flatMap(([name, value]) => (value ? [[name, value]] : [])),
  );
  return `/patients/${patientId}/prescribe?${text}`;
};

/** The same search with nothing chosen. */
export const searchOf = (at: ChoiceAddress): ChoiceAddress => {
  const { exerciseId: _, side: __, line: ___, template: ____, on: _____, place: ______, ...search } = at;
  return search;
};
