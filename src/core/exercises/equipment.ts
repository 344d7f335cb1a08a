/** What an exercise needs, held against what the patient has at home. */
import { exerciseById, exercises } from './catalogue.ts';

/** Things of an ordinary home; had by everybody until a clinician writes a list. A choice of this project. */
export const householdEquipment: readonly string[] = [
  'wall',
  'mat',
  'mat or bed',
  'firm chair',
  'firm support',
  'table',
  'heavy table',
  'towel',
  'rolled towel',
  'pillow',
];

/** "hand weight, 2 kg" needs a hand weight and a load of 2 kg. */
const parts = (need: string): { readonly thing: string; readonly kg: number | null } => {
  const weighed = /^(.*), (\d+(?:\.\d+)?) kg\b/.exec(need);
  return weighed ? { thing: weighed[1]!, kg: Number(weighed[2]) } : { thing: need, kg: null };
};

/** Every kind of thing at home the catalogue asks for, for a form: machines are the clinic's. */
export const equipmentKinds: readonly string[] = [
  ...new Set(
    exercises
      .filter(({ machine }) => !machine)
      .flatMap((exercise) => exercise.equipment.map((need) => parts(need).thing)),
  ),
]
  .filter((thing) => thing !== 'none')
  .sort();

/** Whether an exercise is done with a weight: of a size the catalogue fixes, of one it leaves open, or with none. */
export const namesOwnWeight = (exerciseId: string): 'fixed' | 'open' | 'none' => {
  const needs = (exerciseById(exerciseId)?.equipment ?? []).map(parts);
  if (needs.some(({ kg }) => kg !== null)) return 'fixed';
  return needs.some(({ thing }) => /\bweights?$/.test(thing)) ? 'open' : 'none';
};

interface Owned {
  readonly equipment: readonly string[];
  readonly loadsKg: readonly number[];
}

const isOwned = (need: string, owned: Owned): boolean => {
  const { thing, kg } = parts(need);
  return owned.equipment.includes(thing) && (kg === null || owned.loadsKg.includes(kg));
};

/** What an exercise of the catalogue needs and is not owned, in its words: "ankle weight, 1 kg". */
export const equipmentMissing = (exerciseId: string, owned: Owned): readonly string[] =>
  (exerciseById(exerciseId)?.equipment ?? []).filter((need) => need !== 'none' && !isOwned(need, owned));

export const hasEquipmentFor = (exerciseId: string, owned: Owned): boolean =>
  exerciseById(exerciseId) !== undefined && equipmentMissing(exerciseId, owned).length === 0;
