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

/** Every kind of thing the catalogue asks for, for a form. */
export const equipmentKinds: readonly string[] = [
  ...new Set(exercises.flatMap((exercise) => exercise.equipment.map((need) => parts(need).thing))),
]
  .filter((thing) => thing !== 'none')
  .sort();

export const hasEquipmentFor = (
  exerciseId: string,
  owned: { readonly equipment: readonly string[]; readonly loadsKg: readonly number[] },
): boolean => {
  const exercise = exerciseById(exerciseId);
  if (!exercise) return false;
  return exercise.equipment.every((need) => {
    if (need === 'none') return true;
    const { thing, kg } = parts(need);
    return owned.equipment.includes(thing) && (kg === null || owned.loadsKg.includes(kg));
  });
};
