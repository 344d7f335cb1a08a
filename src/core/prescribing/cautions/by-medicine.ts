/** Cautions by class of medicine. The classes are general knowledge, from memory, and never a reason to change a medicine. */

import { counts } from '#core/screening/reasons-from-answers.ts';
import type { Screening } from '#core/screening/screening.ts';
import type { Caution } from './caution.ts';
import { type CautionedMedicineId, cautionedMedicineIds } from './ids.ts';

const medicineWords: Readonly<Record<CautionedMedicineId, string>> = {
  'blood-thinner':
    'Blood thinner (from memory): bruising and bleeding; a fall or a blow to the head needs care the same day.',
  'hormone-pill-or-patch': 'Oestrogen: clot risk is raised; know the signs of a clot in calf and lung.',
  testosterone:
    'Testosterone or anabolic steroid: clot risk may be raised; tendons may lag behind muscle (from memory).',
  'blood-pressure-tablet':
    'Blood-pressure or heart tablet (from memory): heart rate misleads, pressure may drop after a set; sit down between sets.',
  'insulin-or-sulfonylurea':
    'Insulin or sulfonylurea: sugar may fall during and hours after; measure before, keep fast carbohydrate at hand.',
  'long-term-steroid':
    'Long-term steroid (from memory): fragile skin, bone and tendon; pad cuffs and straps, small steps.',
  statin:
    'Statin: muscle pain out of proportion or dark urine is urgent; the higher alert with a statin is from memory.',
  colchicine: 'Colchicine (from memory): muscles may weaken, more so with a statin or kidney disease.',
  'jak-inhibitor': 'JAK inhibitor (from memory): clot and infection risk may be raised.',
  biologic: 'Biologic (from memory): infection may show little; no session with fever or an infected wound.',
  'recent-quinolone':
    'Recent quinolone (from memory): tendons may be weak; no jerks, stop at sudden tendon pain.',
};

const medicineItems = ['medicines', 'arthritis-medicines'];
/** One caution in place of classes that were not said: it claims none of them. */
const notSaid: Caution = {
  id: 'medicine-not-said',
  text: 'Which of these medicines are taken was not said or is not known: ask; until then each is taken as possible.',
  patient: { key: 'medicine-not-said' },
  from: 'medicines',
  support: 'clinic',
};

const answerTo = (screening: Screening | null, item: string) =>
  screening?.answers.find((answer) => answer.item === item);

/**
 * Whether a medicine may bring the sugar too low: the class is named; or nobody has said which medicines are
 * taken and diabetes was not answered with no. Other medicines for diabetes do not count.
 */
const maySugarDrop = (screening: Screening | null): boolean => {
  const medicines = answerTo(screening, 'medicines');
  if (medicines?.answer === 'no') return false;
  if (medicines?.answer === 'yes' && medicines.details !== undefined)
    return medicines.details.includes('insulin-or-sulfonylurea');
  const diabetes = answerTo(screening, 'diabetes');
  return diabetes ? diabetes.answer !== 'no' : medicines !== undefined;
};

/**
 * Classes named by the answers; every class of the question when none was named or it is not known, but for
 * the one about sugar where there is no diabetes.
 */
export const medicineCautions = (screening: Screening | null): readonly Caution[] => {
  const told = (screening?.answers ?? []).filter(
    (answer) => medicineItems.includes(answer.item) && counts(answer),
  );
  const isUnsaid = told.some((answer) => answer.answer === 'not-known' || !answer.details?.length);
  const taken = new Set(told.flatMap((answer) => answer.details ?? []));
  return [
    ...cautionedMedicineIds
      .filter((medicine) =>
        medicine === 'insulin-or-sulfonylurea' ? maySugarDrop(screening) : taken.has(medicine),
      )
      .map((medicine) => ({
        id: `medicine-${medicine}`,
        text: medicineWords[medicine],
        patient: { key: `medicine-${medicine}` as const },
        from: 'medicines',
        support: 'clinic',
      })),
    ...(isUnsaid ? [notSaid] : []),
  ];
};
