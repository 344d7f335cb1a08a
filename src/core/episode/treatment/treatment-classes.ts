/**
 * Kinds of medicine a change or a missed dose is recorded by, and which screening questions each asks again.
 * The classes are those of the screening sheet and two it does not ask about. Which questions hang on a class
 * is general knowledge of the trade: common practice, no source; a clinician confirms it.
 */
import type { ScreeningItemId } from '../../screening/items.ts';
import { medicineClasses } from '../../screening/medicine-classes.ts';

export const treatmentClasses: readonly string[] = [
  ...medicineClasses.map(({ id }) => id),
  'disease-modifying',
  'other',
];

const titles: Readonly<Record<string, string>> = {
  'disease-modifying': 'Conventional disease-modifying medicine',
  other: 'Another medicine',
};

export const treatmentTitle = (id: string): string =>
  medicineClasses.find((one) => one.id === id)?.title ?? titles[id] ?? id;

type Items = readonly ScreeningItemId[];

const infection: Items = ['fever-or-unwell', 'wound-break-or-infection', 'hot-joint'];
const clot: Items = ['past-clot', 'swollen-calf'];

const byClass: Readonly<Record<string, Items>> = {
  'blood-thinner': ['medicines', ...clot, 'clotting-or-bleeding-disorder'],
  'hormone-pill-or-patch': ['medicines', ...clot, 'high-blood-pressure'],
  testosterone: ['medicines', ...clot, 'high-blood-pressure'],
  'blood-pressure-tablet': [
    'medicines',
    'high-blood-pressure',
    'heart-condition',
    'new-chest-faint-or-breath',
  ],
  'insulin-or-sulfonylurea': ['medicines', 'diabetes'],
  'long-term-steroid': [
    'medicines',
    'diabetes',
    'high-blood-pressure',
    'osteoporosis',
    'skin-or-joint-under-cuff',
    ...infection,
  ],
  statin: ['medicines', 'rhabdomyolysis-or-muscle-disease'],
  colchicine: ['medicines', 'rhabdomyolysis-or-muscle-disease', 'kidney-disease'],
  'jak-inhibitor': ['arthritis-medicines', ...clot, ...infection],
  biologic: ['arthritis-medicines', ...infection],
  'recent-quinolone': ['arthritis-medicines'],
  'disease-modifying': ['arthritis-medicines', ...infection],
};

/** null = the whole sheet: what the medicine is was not said, or is none of the classes. */
export const askedAgainForClass = (medicineClass: string | null): Items | null =>
  medicineClass === null ? null : (byClass[medicineClass] ?? null);

/** A course of steroid raises sugar and pressure, and may hide an infection. */
export const askedAgainForCourse: Items = ['diabetes', 'high-blood-pressure', ...infection];

/** An injected joint may be infected, and its skin was broken. */
export const askedAgainForInjection: Items = ['hot-joint', 'fever-or-unwell', 'skin-or-joint-under-cuff'];
