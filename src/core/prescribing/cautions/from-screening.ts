/** The caution each screening item brings when it was answered yes or not known. Own wording; the clinic approves it. */

import { type ScreeningItemId, screeningItems } from '#core/screening/items.ts';
import type { Screening } from '#core/screening/screening.ts';
import type { Method } from '../methods.ts';
import type { Caution } from './caution.ts';

interface Words {
  readonly text: string;
  readonly patientText: string;
}

export const screeningWords: Readonly<Record<ScreeningItemId, Words>> = {
  'told-to-hold-off': {
    text: 'A doctor asked for no exercise: lifted only by a physician.',
    patientText: 'Your doctor asked you not to exercise. Wait until a doctor says that you may.',
  },
  'new-chest-faint-or-breath': {
    text: 'Chest discomfort, fainting or breathlessness: reviewed before loading; any return stops the session.',
    patientText: 'If chest discomfort, faintness or breathlessness comes back, stop and call emergency care.',
  },
  'heart-condition': {
    text: 'Heart condition: avoid straining and breath holding; breathlessness, swelling of both legs or weight gain over days needs contact.',
    patientText: 'Do not strain or hold your breath. Ring us if you are more breathless, or your legs swell.',
  },
  'high-blood-pressure': {
    text: 'High blood pressure: read it before the session; the gate holds even when treated.',
    patientText: 'Measure your blood pressure before you start. If it is high, do not start, and ring us.',
  },
  'fever-or-unwell': {
    text: 'Acute illness: no session until well.',
    patientText: 'Do not exercise while you have a fever or feel ill.',
  },
  'head-pressure-or-eye': {
    text: 'Raised intracranial pressure or eye condition: no straining, no head-down position.',
    patientText: 'Do not strain, and keep your head up. Stop if your sight changes or your head hurts badly.',
  },
  'past-clot': {
    text: 'Past or present clot: know the signs; one-sided swelling or breathlessness is urgent.',
    patientText: 'A swollen or sore calf, or sudden breathlessness, is urgent: stop and get help.',
  },
  'clotting-or-bleeding-disorder': {
    text: 'Clotting or bleeding disorder: bruising, bleeding into a joint or one-sided swelling needs contact the same day.',
    patientText: 'Ring us the same day about a large bruise, a swollen joint or a swollen limb.',
  },
  'antiphospholipid-antibodies': {
    text: 'Antiphospholipid antibodies (from memory): clot risk; no cuff or wrap.',
    patientText: 'Do not put a cuff or tight band on your arms or legs.',
  },
  'sickle-cell': {
    text: 'Sickle-cell disease or trait: no cuff unless cleared; avoid exhaustion, heat and thirst.',
    patientText: 'Drink enough and rest well between sets. Stop if a limb or your chest hurts.',
  },
  'arterial-disease': {
    text: 'Arterial disease: cramp-like pain stops the set; a cold, pale or painful limb at rest is urgent.',
    patientText: 'Rest when the limb cramps. A cold, pale limb that hurts at rest is urgent: get help.',
  },
  'dialysis-access': {
    text: 'Dialysis access: nothing tight on that limb; no blood-pressure reading there.',
    patientText: 'Put nothing tight on the limb with your fistula or port.',
  },
  lymph: {
    text: 'Impaired lymph drainage: no cuff on that limb; new heaviness or swelling needs contact.',
    patientText: 'Put no cuff on that limb. Tell us if it feels heavier or swells.',
  },
  veins: {
    text: 'Veins: pain along a vein, redness or warmth stops the work on that limb.',
    patientText: 'Stop and ring us if a vein turns red, warm or sore.',
  },
  'swollen-calf': {
    text: 'Calf newly swollen, warm or tender: no session, medical contact the same day.',
    patientText: 'Do not exercise. Get medical help today for the calf.',
  },
  'raynaud-or-systemic-sclerosis': {
    text: 'Raynaud or systemic sclerosis (from memory): warm hands and feet; colour change stops the set.',
    patientText: 'Keep hands and feet warm. Stop if fingers or toes turn white or blue.',
  },
  vasculitis: {
    text: 'Vasculitis (from memory): new skin spots, limb pain or numbness needs contact.',
    patientText: 'Ring us about new skin spots, or new pain or numbness in a limb.',
  },
  'after-covid': {
    text: 'Clotting risk after COVID-19: know the signs of a clot.',
    patientText:
      'Ring us the same day if a calf hurts or swells. Call for help if you cannot get your breath.',
  },
  'pregnancy-or-birth': {
    text: 'Pregnancy or recent birth: no occlusion; bleeding, dizziness or contractions stop the session.',
    patientText: 'Stop and ring your maternity team for bleeding, dizziness or cramps.',
  },
  'operation-plaster-or-bed': {
    text: 'Recent operation, plaster or bed rest: keep the limits of the surgeon; clot signs are asked each time.',
    patientText: 'Keep to what your surgeon allowed. Ring us the same day if a calf hurts or swells.',
  },
  cancer: {
    text: 'Cancer: new bone pain stops loading of that part; keep to what the treating team allows.',
    patientText: 'Stop and ring us about new pain in a bone. Keep to what your cancer team allows.',
  },
  diabetes: {
    text: 'Diabetes: glucose before the session; look at the feet afterwards.',
    patientText: 'Check your sugar before you start, and look at your feet afterwards.',
  },
  'kidney-disease': {
    text: 'Kidney disease: dark urine or marked soreness after a session is urgent; the protein target is locked.',
    patientText: 'Dark urine or very bad soreness is urgent: ring us the same day.',
  },
  'no-feeling-or-cannot-say': {
    text: 'Reduced feeling or reporting (from memory): somebody present; skin and colour looked at, not asked about.',
    patientText: 'Do this with somebody beside you who looks at your skin and its colour.',
  },
  medicines: {
    text: 'Medicines are recorded by class; ask again for changes before each session.',
    patientText: 'Tell us about every change of your medicines. Do not stop one by yourself.',
  },
  'arthritis-medicines': {
    text: 'Medicines for arthritis are recorded by class (from memory); ask again for changes.',
    patientText: 'Tell us about every change of your medicines. Do not stop one by yourself.',
  },
  'weight-loss-or-eating': {
    text: 'Unwanted weight loss or trouble with eating: no nutrition target; ask and refer.',
    patientText: 'Talk to your clinician about your weight and eating. We set no target for you.',
  },
  'wound-break-or-infection': {
    text: 'Wound, fracture or infection: nothing presses on it; spreading redness or fever needs contact the same day.',
    patientText:
      'Keep pressure off the sore place. Ring us the same day if redness spreads or you have a fever.',
  },
  'skin-or-joint-under-cuff': {
    text: 'Fragile skin or inflammation under the cuff (from memory): no cuff there.',
    patientText: 'Do not put a cuff there until we have looked at it.',
  },
  'hot-joint': {
    text: 'Hot or clearly swollen joint: it is not loaded until a physician has judged it.',
    patientText: 'Do not load the hot joint. Have a doctor look at it.',
  },
  'rheumatoid-arthritis': {
    text: 'Inflammatory arthritis: clot risk is above the general population; a flare eases the session early.',
    patientText: 'In a flare, do less and tell us. Ring us the same day if a calf hurts or swells.',
  },
  'neck-in-rheumatoid-arthritis': {
    text: 'Neck involvement (from memory): neutral neck, nothing on the shoulders or head; tingling or clumsiness is urgent.',
    patientText: 'Keep your neck at ease. Tingling, clumsy hands or unsteady legs are urgent: ring us.',
  },
  osteoporosis: {
    text: 'Fragile bone (from memory): no loaded bending or twisting of the spine; sudden back pain stops the work.',
    patientText: 'Do not bend or twist your back under load. Stop and ring us if your back hurts suddenly.',
  },
};

/** Cautions of the answers that bear on this method: its closings, its precautions, or a joint it may not load. */
export const screeningCautions = (screening: Screening | null, method: Method): readonly Caution[] => {
  const raised = new Set(
    (screening?.answers ?? []).filter((answer) => answer.answer !== 'no').map((answer) => answer.item),
  );
  return screeningItems
    .filter((item) => raised.has(item.id))
    .filter(
      (item) =>
        item.blocksJoints !== undefined ||
        item.locksNutrition === true ||
        item.effects.some((effect) => effect.methods.includes(method)),
    )
    .map((item) => ({
      id: `screening-${item.id}`,
      ...screeningWords[item.id],
      from: item.id,
      support: item.support,
    }));
};
