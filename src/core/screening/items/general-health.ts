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
    clinicianLabel: 'Pregnant, perhaps pregnant, or birth within 12 weeks',
    asks: { notApplicable: true },
    askedAtAges: { from: 18, to: 55 },
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
    clinicianLabel: 'Diabetes, with its nerves, eyes and control',
    asks: {
      limbs: true,
      details: ['numbness', 'eye-bleeding-or-laser', 'poorly-controlled'],
    },
    minimumFor: everyMethod,
    effects: [
      review(
        'diabetes',
        'Diabetes: a clinician decides on occlusion; a normal ankle-brachial index can be false here.',
      ),
      precaution(
        'diabetes-loading',
        'Diabetes: with insulin or a sulfonylurea, check glucose before the session and keep fast sugar at hand.',
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
    clinicianLabel: 'Loss of feeling, or unable to report symptoms (from memory)',
    asks: {
      limbs: true,
      details: ['numbness', 'cannot-say'],
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
    clinicianLabel: 'Medicines by class',
    asks: {
      details: [
        'blood-thinner',
        'hormone-pill-or-patch',
        'testosterone',
        'blood-pressure-tablet',
        'insulin-or-sulfonylurea',
        'long-term-steroid',
        'statin',
        'colchicine',
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
      // The alert for muscle breakdown is higher on a statin and after work near failure.
      precaution('statin', 'Statin: ask about muscle pain and dark urine on the three mornings after.', {
        methods: everyMethod,
        detail: 'statin',
        support: 'scalco-2016',
      }),
      precaution(
        'colchicine',
        'Colchicine: muscles may weaken, more so with a statin or kidney disease (from memory).',
        { methods: everyMethod, detail: 'colchicine', support: 'clinic' },
      ),
    ],
    askBeforeOcclusion: true,
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'arthritis-medicines',
    clinicianLabel: 'JAK inhibitor, biologic or recent quinolone (from memory)',
    asks: {
      details: ['jak-inhibitor', 'biologic', 'recent-quinolone'],
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
    clinicianLabel: 'Unwanted weight loss or trouble with eating',
    asks: {},
    minimumFor: [],
    effects: [],
    locksNutrition: true,
    support: 'clinic',
    mark: 'design',
  },
] as const satisfies readonly ScreeningItem[];
