/** The caution each screening item brings when it was answered yes or not known. Own wording; the clinic approves it. */

import type { Joint } from '#core/exercises/joints.ts';
import { type ScreeningItemId, screeningItems } from '#core/screening/items.ts';
import { counts } from '#core/screening/reasons-from-answers.ts';
import type { Screening } from '#core/screening/screening.ts';
import { screeningSettings } from '#core/screening/settings.ts';
import { defaultsOf, type SettingValues } from '#core/sources/clinic-setting.ts';
import type { Method } from '../methods.ts';
import type { Caution } from './caution.ts';
import type { BloodPressureNumbers } from './patient-caution.ts';

const screeningWords: Readonly<Record<ScreeningItemId, string>> = {
  'told-to-hold-off': 'A doctor asked for no exercise: lifted only by a physician.',
  'new-chest-faint-or-breath':
    'Chest discomfort, fainting or breathlessness: reviewed before loading; any return stops the session.',
  'heart-condition':
    'Heart condition: avoid straining and breath holding; breathlessness, swelling of both legs or weight gain over days needs contact.',
  'heart-event':
    'Heart attack, angina, stent or bypass: no straining or breath holding; chest tightness or breathlessness is an emergency.',
  'aneurysm-dissection-or-marfan':
    'Aneurysm, dissection or Marfan syndrome: no straining or breath holding; sudden strong pain is an emergency.',
  'stroke-or-tia':
    'Stroke or attack in the past (from memory): blood pressure first; face, speech or one-sided weakness is an emergency.',
  'high-blood-pressure':
    'High blood pressure: read it before the session; the limits hold even when treated.',
  'fever-or-unwell': 'Acute illness: no session until well.',
  'head-pressure-or-eye':
    'Raised intracranial pressure or eye condition: no straining, no head-down position.',
  'past-clot': 'Past or present clot: know the signs; one-sided swelling or breathlessness is urgent.',
  'clotting-or-bleeding-disorder':
    'Clotting or bleeding disorder: bruising, bleeding into a joint or one-sided swelling needs contact the same day.',
  'antiphospholipid-antibodies': 'Antiphospholipid antibodies (from memory): clot risk; no cuff or wrap.',
  'sickle-cell': 'Sickle-cell disease or trait: no cuff unless cleared; avoid exhaustion, heat and thirst.',
  'arterial-disease':
    'Arterial disease: cramp-like pain stops the set; a limb that is cold, paler than the other or painful at rest is urgent.',
  'dialysis-access': 'Dialysis access: nothing tight on that limb; no blood-pressure reading there.',
  lymph: 'Impaired lymph drainage: no cuff on that limb; new heaviness or swelling needs contact.',
  veins: 'Veins: pain along a vein, redness or warmth stops the work on that limb.',
  'swollen-calf': 'Calf newly swollen, warm or tender: no session, medical contact the same day.',
  'raynaud-or-systemic-sclerosis':
    'Raynaud or systemic sclerosis (from memory): warm hands and feet; pale or bluish nails stop the set.',
  vasculitis: 'Vasculitis (from memory): new skin spots, limb pain or numbness needs contact.',
  'after-covid': 'Clotting risk after COVID-19: know the signs of a clot.',
  'pregnancy-or-birth':
    'Pregnancy or recent birth: no occlusion; bleeding, dizziness or contractions stop the session.',
  'operation-plaster-or-bed':
    'Recent operation, plaster or bed rest: keep the limits of the surgeon; clot signs are asked each time.',
  cancer: 'Cancer: new bone pain stops loading of that part; keep to what the treating team allows.',
  diabetes:
    'Diabetes: look at the feet afterwards; glucose before the session only with insulin or a sulfonylurea.',
  'kidney-disease':
    'Kidney disease: dark urine or marked soreness after a session is urgent; the protein target is locked.',
  'no-feeling-or-cannot-say':
    'Reduced feeling or reporting (from memory): somebody present; skin and colour looked at, not asked about.',
  medicines: 'Medicines are recorded by class; ask again for changes before each session.',
  'arthritis-medicines':
    'Medicines for arthritis are recorded by class (from memory); ask again for changes.',
  'weight-loss-or-eating': 'Unwanted weight loss or trouble with eating: no nutrition target; ask and refer.',
  'wound-break-or-infection':
    'Wound, fracture or infection: nothing presses on it; spreading redness or fever needs contact the same day.',
  'skin-or-joint-under-cuff': 'Fragile skin or inflammation under the cuff (from memory): no cuff there.',
  'hot-joint': 'Hot or clearly swollen joint: it is not loaded until a physician has judged it.',
  'artificial-joint-or-metalwork':
    'Artificial joint or metalwork (from memory): limits of the surgeon; a hot joint goes to the surgeon the same day.',
  'rhabdomyolysis-or-muscle-disease':
    'Rhabdomyolysis before, or muscle disease (from memory): dark urine or pain out of proportion is urgent.',
  'rheumatoid-arthritis':
    'Inflammatory arthritis: clot risk is above the general population; a flare eases the session early.',
  'neck-in-rheumatoid-arthritis':
    'Neck involvement (from memory): neutral neck, nothing on the shoulders or head; tingling or clumsiness is urgent.',
  osteoporosis:
    'Fragile bone (from memory): movement from the hips with a long back, no loaded bending or twisting; sudden back pain stops the work.',
};

const bloodPressureNumbers = (settings: SettingValues): BloodPressureNumbers => {
  const limits = { ...defaultsOf(screeningSettings), ...settings };
  return {
    reviewSystolic: limits['hold-occlusion-systolic']!,
    reviewDiastolic: limits['hold-occlusion-diastolic']!,
    stopSystolic: limits['hold-all-systolic']!,
    stopDiastolic: limits['hold-all-diastolic']!,
  };
};

/** With the clinic's own numbers in place of "high". */
const withNumbers = (caution: Caution, settings: SettingValues): Caution => {
  if (caution.from !== 'high-blood-pressure') return caution;
  const numbers = bloodPressureNumbers(settings);
  const review = `${numbers.reviewSystolic}/${numbers.reviewDiastolic}`;
  const stop = `${numbers.stopSystolic}/${numbers.stopDiastolic}`;
  return {
    ...caution,
    text: `${caution.text} From ${review} no cuff, and other work only after a clinician has seen the reading; from ${stop} no session. Either number counts.`,
    patient: { key: 'blood-pressure-numbers', ...numbers },
  };
};

/** A caution about the back goes with work that loads the back, and no other. */
const bearsOn = (item: ScreeningItemId, joints: readonly Joint[]): boolean =>
  item !== 'osteoporosis' || joints.includes('low-back');

/** Cautions of the answers that bear on this method: its closings, its precautions, or a joint it may not load. */
export const screeningCautions = (
  screening: Screening | null,
  method: Method,
  joints: readonly Joint[],
  settings: SettingValues,
): readonly Caution[] => {
  const raised = new Set((screening?.answers ?? []).filter(counts).map((answer) => answer.item));
  return screeningItems
    .filter((item) => raised.has(item.id) && bearsOn(item.id, joints))
    .filter(
      (item) =>
        item.blocksJoints !== undefined ||
        item.locksNutrition === true ||
        item.effects.some((effect) => effect.methods.includes(method)),
    )
    .map((item) =>
      withNumbers(
        {
          id: `screening-${item.id}`,
          text: screeningWords[item.id],
          patient: { key: `screening-${item.id}` },
          from: item.id,
          support: item.support,
        },
        settings,
      ),
    );
};
