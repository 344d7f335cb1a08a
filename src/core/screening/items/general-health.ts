/** Screening questions about pregnancy, illness, feeling, weight and medicines. */
import {
  cuffOnly,
  everyMethod,
  precaution,
  review,
  type ScreeningItem,
  stopAll,
  stopLimb,
  stopOcclusion,
  withoutCuff,
} from '../item.ts';

export const generalHealthItems = [
  {
    id: 'pregnancy-or-birth',
    question: 'Are you pregnant, might you be, or did you give birth in the last 12 weeks?',
    clinicianLabel: 'Pregnant, perhaps pregnant, or birth within 12 weeks',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      stopOcclusion(
        'pregnancy-or-birth',
        'Pregnancy or recent birth: no occlusion work; the 12 weeks are a choice of this project.',
      ),
      review('pregnancy-or-birth-loading', 'Pregnancy or recent birth: a clinician decides on loading.', {
        methods: withoutCuff,
      }),
    ],
    locksNutrition: true,
    askBeforeOcclusion: true,
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'operation-plaster-or-bed',
    question:
      'In the last 12 weeks, have you had an operation, a plaster, or more than three days mostly in bed?',
    clinicianLabel: 'Operation, plaster or bed rest within 12 weeks',
    asks: {},
    minimumFor: cuffOnly,
    effects: [
      review(
        'operation-plaster-or-bed',
        'Recent operation, plaster or bed rest: needs the surgeon or physician; no number of weeks is published.',
        {
          clearedBy: 'physician',
        },
      ),
      precaution(
        'operation-plaster-or-bed-loading',
        'Recent operation, plaster or bed rest: enter the limits the surgeon set before loading.',
      ),
    ],
    askBeforeOcclusion: true,
    support: 'occlusion-course-summary',
    mark: 'second-hand',
  },
  {
    id: 'cancer',
    question: 'Do you have cancer now, or have you had treatment for it in the last six months?',
    clinicianLabel: 'Active cancer or treatment within six months',
    asks: {},
    minimumFor: cuffOnly,
    effects: [
      review(
        'cancer',
        'Active cancer: listed as a stop by one list, as review by another; the oncologist clears it.',
        {
          clearedBy: 'physician',
        },
      ),
      precaution(
        'cancer-loading',
        'Active cancer: ask the treating team about bone and blood counts before loading.',
      ),
    ],
    support: 'occlusion-list-statement',
    mark: 'second-hand',
  },
  {
    id: 'diabetes',
    question: 'Do you have diabetes?',
    clinicianLabel: 'Diabetes, with its nerves, eyes and control',
    asks: {
      limbs: true,
      details: [
        { id: 'numbness', label: 'Numb feet or hands' },
        { id: 'eye-bleeding-or-laser', label: 'Bleeding in the eye, or laser treatment' },
        { id: 'poorly-controlled', label: 'Sugar often far out of range' },
      ],
    },
    minimumFor: everyMethod,
    effects: [
      review(
        'diabetes',
        'Diabetes: a clinician decides on occlusion; a normal ankle-brachial index can be false here.',
      ),
      precaution(
        'diabetes-loading',
        'Diabetes: check glucose before the session and keep fast sugar at hand.',
      ),
      stopLimb('diabetes-numbness', 'Loss of feeling in the limb: no occlusion there (rule from memory).', {
        detail: 'numbness',
      }),
      stopAll(
        'diabetes-eye',
        'Bleeding in the eye or laser treatment: closed until the eye doctor clears it.',
        {
          detail: 'eye-bleeding-or-laser',
        },
      ),
      stopAll('diabetes-uncontrolled', 'Uncontrolled diabetes: closed until the physician clears it.', {
        detail: 'poorly-controlled',
      }),
    ],
    support: 'resistance-contraindications-table',
    mark: 'seen',
    alsoSee: ['tourniquet-nerve-review-2020', 'diabetes-exercise-2019'],
  },
  {
    id: 'kidney-disease',
    question: 'Do you have kidney disease?',
    clinicianLabel: 'Kidney disease',
    asks: {},
    minimumFor: cuffOnly,
    effects: [
      review(
        'kidney-disease',
        'Kidney disease: a clinician decides; a normal ankle-brachial index can be false here.',
      ),
    ],
    locksNutrition: true,
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'no-feeling-or-cannot-say',
    question:
      'Is there numbness in an arm or leg, or would it be hard for you to say that something feels wrong?',
    clinicianLabel: 'Loss of feeling, or unable to report symptoms (from memory)',
    asks: {
      limbs: true,
      details: [
        { id: 'numbness', label: 'Numbness in a limb' },
        { id: 'cannot-say', label: 'Hard to notice or say that something is wrong' },
      ],
    },
    minimumFor: cuffOnly,
    effects: [
      review('numb-limb', 'Loss of feeling: a clinician decides, and never without somebody watching.', {
        detail: 'numbness',
        scope: 'answered-limbs',
      }),
      review(
        'cannot-report',
        'Symptoms may not be reported in time: a clinician decides, and never without somebody watching.',
        {
          detail: 'cannot-say',
        },
      ),
      precaution('cannot-report-loading', 'Feeling or reporting is reduced: load with somebody present.'),
    ],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'medicines',
    question: 'Do you take any of these medicines?',
    clinicianLabel: 'Medicines by class',
    asks: {
      details: [
        { id: 'blood-thinner', label: 'Blood thinner, or aspirin-like tablet against clots' },
        { id: 'hormone-pill-or-patch', label: 'Hormone pill or patch with oestrogen' },
        { id: 'testosterone', label: 'Testosterone or anabolic steroid' },
        { id: 'blood-pressure-tablet', label: 'Tablet for blood pressure or the heart, or water tablet' },
        { id: 'insulin-or-sulfonylurea', label: 'Insulin, or a tablet that can bring sugar too low' },
        { id: 'long-term-steroid', label: 'Cortisone-like steroid for months' },
      ],
    },
    minimumFor: cuffOnly,
    effects: [
      review(
        'blood-thinner',
        'Blood thinner: bruising, and the reason it is taken; a clinician decides (from memory).',
        { detail: 'blood-thinner' },
      ),
      review('hormone-pill-or-patch', 'Oestrogen raises clot risk: a clinician decides.', {
        detail: 'hormone-pill-or-patch',
      }),
      review('testosterone', 'Testosterone or anabolic steroid may raise clot risk: a clinician decides.', {
        detail: 'testosterone',
      }),
      review(
        'blood-pressure-tablet',
        'A blood-pressure tablet suggests a diagnosis: occlusion waits until a clinician has asked why it is taken.',
        {
          detail: 'blood-pressure-tablet',
        },
      ),
      precaution(
        'blood-pressure-tablet-loading',
        'Blood-pressure tablet: heart rate misleads, and pressure may drop after a set (from memory).',
        {
          detail: 'blood-pressure-tablet',
        },
      ),
      precaution('blood-thinner-loading', 'Blood thinner: report bruises and any fall (from memory).', {
        detail: 'blood-thinner',
      }),
      precaution('insulin-or-sulfonylurea', 'Sugar may fall during or after a session (from memory).', {
        methods: everyMethod,
        detail: 'insulin-or-sulfonylurea',
      }),
      precaution('long-term-steroid', 'Long-term steroid: fragile skin and bone (from memory).', {
        methods: everyMethod,
        detail: 'long-term-steroid',
      }),
    ],
    askBeforeOcclusion: true,
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'arthritis-medicines',
    question:
      'Do you take a JAK inhibitor or a biologic, or have you had a quinolone antibiotic in recent weeks?',
    clinicianLabel: 'JAK inhibitor, biologic or recent quinolone (from memory)',
    asks: {
      details: [
        { id: 'jak-inhibitor', label: 'JAK inhibitor' },
        { id: 'biologic', label: 'Biologic' },
        { id: 'recent-quinolone', label: 'Quinolone antibiotic in recent weeks' },
      ],
    },
    minimumFor: cuffOnly,
    effects: [
      review('jak-inhibitor', 'JAK inhibitor: clot risk may be raised; a clinician decides.', {
        detail: 'jak-inhibitor',
      }),
      precaution('biologic', 'Biologic: infection may show little; ask about fever and skin.', {
        methods: everyMethod,
        detail: 'biologic',
      }),
      precaution('recent-quinolone', 'Recent quinolone: tendons may be weak; small steps, no jerks.', {
        methods: everyMethod,
        detail: 'recent-quinolone',
      }),
    ],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'weight-loss-or-eating',
    question:
      'Have you lost weight without trying, or do you worry that eating or weight has become a struggle?',
    clinicianLabel: 'Unwanted weight loss or trouble with eating',
    asks: {},
    minimumFor: [],
    effects: [],
    locksNutrition: true,
    support: 'clinic',
    mark: 'design',
  },
] as const satisfies readonly ScreeningItem[];
