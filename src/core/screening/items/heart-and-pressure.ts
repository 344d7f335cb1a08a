/** Screening questions about the heart, blood pressure, head and eyes, and being unwell today. */
import {
  everyMethod,
  precaution,
  review,
  type ScreeningItem,
  stopAll,
  stopOcclusion,
  withoutCuff,
} from '../item.ts';

export const heartAndPressureItems = [
  {
    id: 'told-to-hold-off',
    clinicianLabel: 'Told by a doctor not to exercise',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      stopAll('told-to-hold-off', 'A doctor has asked for no exercise; that doctor or another must lift it.'),
    ],
    support: 'clinic',
    mark: 'design',
  },
  {
    id: 'new-chest-faint-or-breath',
    clinicianLabel: 'New or worsening chest discomfort, fainting or breathlessness',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      stopAll(
        'new-chest-faint-or-breath',
        'New or worsening chest discomfort, fainting or breathlessness: medical review before any loading.',
      ),
    ],
    askBeforeOcclusion: true,
    support: 'heart-failure-exercise-2023',
    mark: 'seen',
  },
  {
    id: 'heart-condition',
    clinicianLabel: 'Heart failure, rhythm or valve disease, implanted device',
    asks: {
      details: ['unstable', 'stable-heart-failure', 'rhythm-problem', 'valve-disease', 'implanted-device'],
    },
    minimumFor: everyMethod,
    effects: [
      stopAll(
        'unstable-heart-condition',
        'Unstable heart condition: closed until the treating physician clears it.',
        {
          detail: 'unstable',
        },
      ),
      review('heart-condition', 'Heart condition: occlusion waits for the treating physician.', {
        clearedBy: 'physician',
      }),
      review(
        'heart-condition-loading',
        'Heart condition: sets near failure wait for a clinician who has checked that it is stable.',
        { methods: withoutCuff },
      ),
    ],
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'heart-event',
    clinicianLabel: 'Heart attack, angina, stent or bypass',
    asks: {
      details: [
        'within-three-weeks',
        'unstable-angina',
        'stable-angina',
        'heart-attack',
        'stent-or-bypass',
        'cleared-since',
      ],
      lastDay: { withinDays: 21, detail: 'within-three-weeks' },
    },
    minimumFor: everyMethod,
    effects: [
      // Heart attack within three weeks: cardiac-rehabilitation page; stent and bypass alike by choice.
      stopAll(
        'recent-heart-event',
        'Heart attack, stent or bypass within three weeks: no loading until the treating physician clears it.',
        { detail: 'within-three-weeks', support: 'cardiac-rehabilitation-page' },
      ),
      stopAll('unstable-angina', 'Unstable angina: no loading until the treating physician clears it.', {
        detail: 'unstable-angina',
      }),
      // A choice of this project: silence about a clearance is none.
      stopAll(
        'heart-event-not-cleared',
        'Nobody has said that a physician allowed exercise since the heart event: no loading until one does.',
        { unlessDetail: 'cleared-since', support: 'clinic' },
      ),
      // Stable disease counts as a heart condition, with the same two effects.
      review('coronary-disease', 'Coronary heart disease: occlusion waits for the treating physician.', {
        clearedBy: 'physician',
        support: 'occlusion-screening-2022',
      }),
      review(
        'coronary-disease-loading',
        'Coronary heart disease: sets near failure wait for a clinician who has checked that it is stable.',
        { methods: withoutCuff, support: 'occlusion-screening-2022' },
      ),
    ],
    support: 'heart-failure-exercise-2023',
    mark: 'seen',
    alsoSee: ['cardiac-rehabilitation-page', 'blood-pressure-exercise-2024', 'occlusion-screening-2022'],
  },
  {
    id: 'aneurysm-dissection-or-marfan',
    clinicianLabel: 'Aneurysm of the aorta or in the head, aortic dissection, Marfan syndrome',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      stopAll(
        'aneurysm-dissection-or-marfan',
        'Aneurysm, aortic dissection or Marfan syndrome: straining may do harm; no loading until the physician clears it.',
      ),
    ],
    support: 'blood-pressure-exercise-2024',
    mark: 'seen',
    alsoSee: ['resistance-contraindications-table'],
  },
  {
    id: 'stroke-or-tia',
    clinicianLabel: 'Stroke or transient ischaemic attack (from memory)',
    asks: { details: ['stroke', 'tia', 'cleared-since'] },
    minimumFor: everyMethod,
    effects: [
      // A recent bleed in the head is on the resistance table; clots and attacks are from memory.
      stopAll(
        'stroke-not-cleared',
        'Nobody has said that a physician allowed exercise since the stroke or attack: no loading until one does.',
        { unlessDetail: 'cleared-since' },
      ),
      review('stroke', 'Stroke or attack in the past: occlusion waits for a physician.', {
        clearedBy: 'physician',
      }),
      precaution(
        'stroke-loading',
        'Stroke or attack in the past: read the blood pressure first, no holding of the breath, mind a weak side.',
      ),
    ],
    support: 'clinic',
    mark: 'memory',
    alsoSee: ['resistance-contraindications-table'],
  },
  {
    id: 'high-blood-pressure',
    clinicianLabel: 'Diagnosed high blood pressure, treated or not',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      review(
        'diagnosed-high-blood-pressure',
        'Diagnosed high blood pressure keeps occlusion closed, even when treated and in range, until a clinician clears it.',
      ),
      precaution(
        'diagnosed-high-blood-pressure-loading',
        'Diagnosed high blood pressure: read it before the session and avoid holding the breath.',
      ),
    ],
    support: 'common-practice',
    mark: 'common-practice',
    alsoSee: ['occlusion-screening-2022', 'occlusion-course-summary'],
  },
  {
    id: 'fever-or-unwell',
    clinicianLabel: 'Fever, chest infection or acute illness',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      {
        code: 'fever-or-unwell',
        methods: everyMethod,
        scope: 'everywhere',
        eligibility: 'closed',
        clearedBy: null,
        text: 'Fever or acute illness: no session today; ask again when well.',
      },
    ],
    askBeforeOcclusion: true,
    support: 'heart-failure-exercise-2023',
    mark: 'seen',
    alsoSee: ['cardiac-rehabilitation-page'],
  },
  {
    id: 'head-pressure-or-eye',
    clinicianLabel: 'Raised intracranial pressure, retinal detachment or recent eye surgery',
    asks: {
      details: ['raised-head-pressure', 'retina-or-eye-operation'],
    },
    minimumFor: everyMethod,
    effects: [
      stopAll('head-pressure-or-eye', 'Straining may do harm here: closed until the physician clears it.'),
      stopOcclusion('raised-head-pressure', 'Raised pressure inside the skull: no occlusion work.', {
        detail: 'raised-head-pressure',
      }),
    ],
    support: 'resistance-contraindications-table',
    mark: 'seen',
  },
] as const satisfies readonly ScreeningItem[];
