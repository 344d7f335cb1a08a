/** Screening questions about the heart, blood pressure, head and eyes, and being unwell today. */
import { everyMethod, precaution, review, type ScreeningItem, stopAll, stopOcclusion } from '../item.ts';

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
        { methods: ['variation', 'low-load'] },
      ),
    ],
    support: 'occlusion-screening-2022',
    mark: 'seen',
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
