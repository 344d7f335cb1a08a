/** What to mind after an answer about health, and with a medicine. */
import type { MedicineCautionId } from '#core/prescribing/cautions/ids.ts';
import type { ScreeningItemId } from '#core/screening/items.ts';

export const screeningCautions = {
  'screening-told-to-hold-off':
    'Your doctor asked you not to exercise. Wait until a doctor says that you may.',
  'screening-new-chest-faint-or-breath':
    'If chest discomfort, faintness or breathlessness comes back, stop and call emergency care.',
  'screening-heart-condition':
    'Do not strain or hold your breath. Ring us if you are more breathless, or your legs swell.',
  'screening-heart-event':
    'Do not strain or hold your breath. If your chest feels tight or you cannot get your breath, stop and call emergency care.',
  'screening-aneurysm-dissection-or-marfan':
    'Do not strain or hold your breath. Sudden strong pain in the chest, back, belly or head: call emergency care.',
  'screening-stroke-or-tia':
    'If your face droops, your speech changes or one side goes weak, call emergency care at once.',
  'screening-high-blood-pressure':
    'Measure your blood pressure before you start. If it is high, do not start, and ring us.',
  'blood-pressure-numbers':
    'Measure your blood pressure before you start. From {systolic} over {diastolic}, ring us first. From {stopsystolic} over {stopdiastolic}, do not exercise. One of the two numbers is enough.',
  'screening-fever-or-unwell': 'Do not exercise while you have a fever or feel ill.',
  'screening-head-pressure-or-eye':
    'Do not strain, and keep your head up. Stop if your sight changes or your head hurts badly.',
  'screening-past-clot': 'A swollen or sore calf, or sudden breathlessness, is urgent: stop and get help.',
  'screening-clotting-or-bleeding-disorder':
    'Ring us the same day about a large bruise, a swollen joint, or a swollen arm or leg.',
  'screening-antiphospholipid-antibodies': 'Do not put a cuff or tight band on your arms or legs.',
  'screening-sickle-cell':
    'Drink enough and rest well between sets. Stop if an arm, a leg or your chest hurts.',
  'screening-arterial-disease':
    'Rest when the arm or leg cramps. If it is cold, paler than the other side or hurts at rest, that is urgent: get help.',
  'screening-dialysis-access': 'Put nothing tight on the arm or leg with your fistula or port.',
  'screening-lymph': 'Put no cuff on that arm or leg. Tell us if it feels heavier or swells.',
  'screening-veins': 'Stop and ring us if a vein turns red, warm or sore.',
  'screening-swollen-calf': 'Do not exercise. Get medical help today for the calf.',
  'screening-raynaud-or-systemic-sclerosis':
    'Keep hands and feet warm. Stop if your nails turn pale, grey or bluish.',
  'screening-vasculitis': 'Ring us about new skin spots, or new pain or numbness in an arm or leg.',
  'screening-after-covid':
    'Ring us the same day if a calf hurts or swells. Call for help if you cannot get your breath.',
  'screening-pregnancy-or-birth': 'Stop and ring your maternity team for bleeding, dizziness or cramps.',
  'screening-operation-plaster-or-bed':
    'Keep to what your surgeon allowed. Ring us the same day if a calf hurts or swells.',
  'screening-cancer': 'Stop and ring us about new pain in a bone. Keep to what your cancer team allows.',
  'screening-diabetes': 'Look at your feet after the session, and tell us about any sore place.',
  'screening-kidney-disease': 'Dark urine or very bad soreness is urgent: ring us the same day.',
  'screening-no-feeling-or-cannot-say':
    'Do this with somebody beside you who looks at your skin and its colour.',
  'screening-medicines': 'Tell us about every change of your medicines. Do not stop one by yourself.',
  'screening-arthritis-medicines':
    'Tell us about every change of your medicines. Do not stop one by yourself.',
  'screening-weight-loss-or-eating':
    'Talk to your clinician about your weight and eating. We set no target for you.',
  'screening-wound-break-or-infection':
    'Keep pressure off the sore place. Ring us the same day if redness spreads or you have a fever.',
  'screening-skin-or-joint-under-cuff': 'Do not put a cuff there until we have looked at it.',
  'screening-hot-joint': 'Do not load the hot joint. Have a doctor look at it.',
  'screening-artificial-joint-or-metalwork':
    'Keep to what your surgeon allowed. Ring us the same day if that joint turns hot or swells.',
  'screening-rhabdomyolysis-or-muscle-disease':
    'Dark urine, or muscles that hurt far more than usual or go weak, are urgent: ring us the same day.',
  'screening-rheumatoid-arthritis':
    'In a flare, do less and tell us. Ring us the same day if a calf hurts or swells.',
  'screening-neck-in-rheumatoid-arthritis':
    'Keep your neck relaxed. Tingling, clumsy hands or unsteady legs are urgent: ring us.',
  'screening-osteoporosis':
    'Move from your hips and keep your back long. Stop and ring us if your back suddenly hurts.',
} as const satisfies Readonly<Record<`screening-${ScreeningItemId}` | 'blood-pressure-numbers', string>>;

export const medicineCautions = {
  'medicine-not-said':
    'We do not know yet which medicines you take. Tell us, and ring us about dizziness, new bruises, dark urine or a swollen calf.',
  'medicine-blood-thinner':
    'You take a blood thinner. Tell us about new bruises, and get help the same day after a fall or a knock on the head.',
  'medicine-hormone-pill-or-patch':
    'Your hormone medicine can make clots more likely. Ring us the same day if a calf hurts or swells.',
  'medicine-testosterone': 'Your hormone medicine can make clots more likely. Add load in small steps only.',
  'medicine-blood-pressure-tablet':
    'Your tablet can make you dizzy after a set. Sit down, and get up slowly.',
  'medicine-insulin-or-sulfonylurea':
    'You take insulin, or a tablet that can bring your sugar too low. Measure it before you start, and keep something sweet beside you.',
  'medicine-long-term-steroid':
    'Your skin and bones may be fragile. Pad straps, and look at the skin afterwards.',
  'medicine-statin':
    'You take a statin. Dark urine, or muscles that hurt far more than usual, are urgent: ring us the same day.',
  'medicine-colchicine': 'You take colchicine. Tell us if your muscles feel weak or hurt for no reason.',
  'medicine-jak-inhibitor': 'Ring us the same day if a calf hurts or swells, or if you have a fever.',
  'medicine-biologic': 'Do not exercise with a fever or an infected wound. Ring us.',
  'medicine-recent-quinolone':
    'No jerky moves. Stop and ring us if a tendon, such as the heel cord, hurts suddenly.',
} as const satisfies Readonly<Record<MedicineCautionId, string>>;
