/** Cautions by class of medicine. The classes are general knowledge, from memory, and never a reason to change a medicine. */

import type { Screening } from '#core/screening/screening.ts';
import type { Caution } from './caution.ts';

interface MedicineWords {
  readonly class: string;
  readonly text: string;
  readonly patientText: string;
}

const medicines: readonly MedicineWords[] = [
  {
    class: 'blood-thinner',
    text: 'Blood thinner (from memory): bruising and bleeding; a fall or a blow to the head needs care the same day.',
    patientText:
      'You take a blood thinner. Tell us about new bruises, and get help the same day after a fall or a knock on the head.',
  },
  {
    class: 'hormone-pill-or-patch',
    text: 'Oestrogen: clot risk is raised; know the signs of a clot in calf and lung.',
    patientText:
      'Your hormone medicine can make clots more likely. Ring us the same day if a calf hurts or swells.',
  },
  {
    class: 'testosterone',
    text: 'Testosterone or anabolic steroid: clot risk may be raised; tendons may lag behind muscle (from memory).',
    patientText: 'Your hormone medicine can make clots more likely. Add load in small steps only.',
  },
  {
    class: 'blood-pressure-tablet',
    text: 'Blood-pressure or heart tablet (from memory): heart rate misleads, pressure may drop after a set; sit down between sets.',
    patientText: 'Your tablet can make you dizzy after a set. Sit down, and get up slowly.',
  },
  {
    class: 'insulin-or-sulfonylurea',
    text: 'Insulin or sulfonylurea: sugar may fall during and hours after; measure before, keep fast carbohydrate at hand.',
    patientText: 'Measure your sugar before you start, and keep something sweet beside you.',
  },
  {
    class: 'long-term-steroid',
    text: 'Long-term steroid (from memory): fragile skin, bone and tendon; pad cuffs and straps, small steps.',
    patientText: 'Your skin and bones may be fragile. Pad straps, and look at the skin afterwards.',
  },
  {
    class: 'jak-inhibitor',
    text: 'JAK inhibitor (from memory): clot and infection risk may be raised.',
    patientText: 'Ring us the same day if a calf hurts or swells, or if you have a fever.',
  },
  {
    class: 'biologic',
    text: 'Biologic (from memory): infection may show little; no session with fever or an infected wound.',
    patientText: 'Do not exercise with a fever or an infected wound. Ring us.',
  },
  {
    class: 'recent-quinolone',
    text: 'Recent quinolone (from memory): tendons may be weak; no jerks, stop at sudden tendon pain.',
    patientText: 'No jerky moves. Stop and ring us if a tendon, such as the heel cord, hurts suddenly.',
  },
];

const medicineItems = ['medicines', 'arthritis-medicines'];
const classesOf: Readonly<Record<string, readonly string[]>> = {
  medicines: [
    'blood-thinner',
    'hormone-pill-or-patch',
    'testosterone',
    'blood-pressure-tablet',
    'insulin-or-sulfonylurea',
    'long-term-steroid',
  ],
  'arthritis-medicines': ['jak-inhibitor', 'biologic', 'recent-quinolone'],
};

/** Classes named by the answers; every class of the question when none was named or it is not known. */
export const medicineCautions = (screening: Screening | null): readonly Caution[] => {
  const taken = new Set(
    (screening?.answers ?? [])
      .filter((answer) => medicineItems.includes(answer.item) && answer.answer !== 'no')
      .flatMap((answer) =>
        answer.answer === 'not-known' || answer.details === undefined
          ? classesOf[answer.item]!
          : answer.details,
      ),
  );
  return medicines
    .filter((medicine) => taken.has(medicine.class))
    .map((medicine) => ({
      id: `medicine-${medicine.class}`,
      text: medicine.text,
      patientText: medicine.patientText,
      from: 'medicines',
      support: 'clinic',
    }));
};
