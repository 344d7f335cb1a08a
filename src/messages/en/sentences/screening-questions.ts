/** What is asked about health. */
import type { ScreeningItemId } from '#core/screening/items.ts';

export const screeningQuestions = {
  'told-to-hold-off': 'Has a doctor told you not to exercise for now?',
  'new-chest-faint-or-breath':
    'In the last four weeks, have you had chest discomfort, fainting or breathlessness that is new or getting worse?',
  'heart-condition':
    'Do you have heart failure, a rhythm problem, valve disease, a pacemaker or a defibrillator?',
  'heart-event': 'Have you ever had a heart attack, angina, a stent in the heart or a bypass?',
  'aneurysm-dissection-or-marfan':
    'Have you been told of a bulging or torn main artery? Or of a bulging artery in the head (aneurysm)? Or of Marfan syndrome?',
  'stroke-or-tia': 'Have you ever had a stroke, or a passing attack with signs of one (TIA)?',
  'high-blood-pressure':
    'Has anyone ever told you that you have high blood pressure, even if it is treated and fine now?',
  'fever-or-unwell': 'Do you have a fever or a chest infection, or feel unwell today?',
  'head-pressure-or-eye':
    'Do you have raised pressure inside the skull, a detached retina, or have you had an eye operation recently?',
  'past-clot': 'Have you ever had a blood clot in a leg, an arm or a lung?',
  'clotting-or-bleeding-disorder':
    'Has a doctor named a clotting or bleeding disorder for you, or does one run in your close family?',
  'antiphospholipid-antibodies': 'Have you been told that you have antiphospholipid antibodies?',
  'sickle-cell': 'Do you have sickle-cell disease, or could you carry the trait?',
  'arterial-disease':
    'Have you had an operation, stent or graft on the arteries of an arm or leg? Or do you have leg pain on walking that eases with rest?',
  'dialysis-access': 'Is there a fistula, graft or port for dialysis in an arm or leg?',
  lymph:
    'Were lymph nodes taken out or treated with radiation, or does an arm or leg swell because of lymph fluid?',
  veins: 'Do you have bulging veins that ache, or have you had an inflamed vein?',
  'swollen-calf': 'Is one calf newly swollen, warm or tender?',
  'raynaud-or-systemic-sclerosis':
    'Do your fingers or toes turn white and numb in the cold, or have you been told of systemic sclerosis?',
  vasculitis: 'Have you been told that you have inflamed blood vessels (vasculitis)?',
  'after-covid': 'Since a COVID-19 infection, has a doctor spoken of a raised risk of clots?',
  'pregnancy-or-birth': 'Are you pregnant, might you be, or did you give birth in the last 12 weeks?',
  'operation-plaster-or-bed':
    'In the last 12 weeks, have you had an operation, a plaster, or more than three days mostly in bed?',
  cancer: 'Do you have cancer now, or have you had treatment for it in the last six months?',
  diabetes: 'Do you have diabetes?',
  'kidney-disease': 'Do you have kidney disease?',
  'no-feeling-or-cannot-say':
    'Is there numbness in an arm or leg? Or would it be hard for you to say that something feels wrong?',
  medicines: 'Do you take any of these medicines?',
  'arthritis-medicines':
    'Do you take a JAK inhibitor or a biologic, or have you had a quinolone antibiotic in recent weeks?',
  'weight-loss-or-eating':
    'Have you lost weight without trying, or do you worry that eating or weight has become a struggle?',
  'wound-break-or-infection':
    'Is there an open sore, stitches, a recent break, a skin graft or an infection in an arm or leg?',
  'skin-or-joint-under-cuff':
    'Where a cuff or wrap would sit, is the skin thin or easily torn, or is a joint inflamed?',
  'hot-joint': 'Is a joint hot, or clearly more swollen than usual, today?',
  'artificial-joint-or-metalwork':
    'Do you have an artificial joint, or plates, screws, nails or rods in a bone?',
  'rhabdomyolysis-or-muscle-disease':
    'Have your muscles ever broken down after hard effort, with dark urine? Or do you have a muscle disease?',
  'rheumatoid-arthritis': 'Do you have rheumatoid or another inflammatory arthritis?',
  'neck-in-rheumatoid-arthritis':
    'With rheumatoid arthritis, has your neck been affected, or does moving it bring tingling in arms or legs?',
  osteoporosis: 'Do you have osteoporosis, or did you break a bone in a small fall?',
} as const satisfies Readonly<Record<ScreeningItemId, string>>;
