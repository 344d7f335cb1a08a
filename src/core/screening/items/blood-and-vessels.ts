/** Screening questions about clotting, bleeding, arteries, veins and lymph. Lists differ; the stricter reading is used and said. */
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

export const bloodAndVesselItems = [
  {
    id: 'past-clot',
    clinicianLabel: 'Past or present deep-vein thrombosis or pulmonary embolism',
    asks: {
      details: ['within-four-weeks', 'being-treated', 'earlier-not-treated', 'when-not-known'],
      lastDay: { withinDays: 28, detail: 'within-four-weeks' },
    },
    minimumFor: everyMethod,
    effects: [
      // Whenever it was: on most lists of stops for occlusion work.
      stopOcclusion('past-clot', 'Past or present clot: most lists stop occlusion work.'),
      // Under four weeks: on the list of the cardiac-rehabilitation page.
      stopAll(
        'clot-within-four-weeks',
        'Clot within the last four weeks: no loading until the physician clears it.',
        { methods: withoutCuff, detail: 'within-four-weeks', support: 'cardiac-rehabilitation-page' },
      ),
      // No list speaks of a clot past four weeks that is still treated: a choice of this project.
      stopAll(
        'clot-being-treated',
        'Clot still being treated: no loading until the physician who treats it clears it; note the medicine.',
        { methods: withoutCuff, detail: 'being-treated', support: 'clinic' },
      ),
      // An earlier clot is no stop for loading on any list seen: a choice of this project.
      precaution(
        'clot-earlier',
        'Earlier clot, not treated now: tell the signs of a new one before loading.',
        {
          detail: 'earlier-not-treated',
          support: 'clinic',
        },
      ),
      // Not known is not "long ago": a choice of this project.
      stopAll(
        'clot-when-not-known',
        'When the clot was, or whether it is still treated, is not known: no loading until a physician has settled it.',
        { methods: withoutCuff, detail: 'when-not-known', support: 'clinic' },
      ),
    ],
    support: 'occlusion-screening-2022',
    mark: 'seen',
    alsoSee: ['cardiac-rehabilitation-page', 'occlusion-list-statement'],
  },
  {
    id: 'clotting-or-bleeding-disorder',
    clinicianLabel: 'Clotting or bleeding disorder, own or family',
    asks: {
      details: ['own-clotting', 'own-bleeding', 'family'],
    },
    minimumFor: cuffOnly,
    effects: [
      stopOcclusion(
        'own-clotting-disorder',
        'Own clotting tendency: one list allows it once cleared, the stricter is used.',
        {
          detail: 'own-clotting',
        },
      ),
      stopOcclusion(
        'own-bleeding-disorder',
        'Own bleeding disorder: lists differ between stop and precaution, the stricter is used.',
        {
          detail: 'own-bleeding',
        },
      ),
      review(
        'family-clotting-disorder',
        'Clotting or bleeding disorder in the family: a clinician decides.',
        {
          detail: 'family',
        },
      ),
    ],
    support: 'occlusion-list-statement',
    mark: 'second-hand',
  },
  {
    id: 'antiphospholipid-antibodies',
    clinicianLabel: 'Antiphospholipid antibodies (from memory)',
    asks: {},
    minimumFor: cuffOnly,
    effects: [
      stopOcclusion(
        'antiphospholipid-antibodies',
        'Antiphospholipid antibodies raise clot risk: no occlusion work.',
      ),
    ],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'sickle-cell',
    clinicianLabel: 'Sickle-cell disease or trait',
    asks: {
      details: ['disease', 'trait'],
    },
    minimumFor: cuffOnly,
    effects: [
      stopOcclusion('sickle-cell-disease', 'Sickle-cell disease: no occlusion work.', { detail: 'disease' }),
      review(
        'sickle-cell-trait',
        'Sickle-cell trait: more clots under tourniquets than controls in one study; lean to stop.',
        {
          detail: 'trait',
          clearedBy: 'physician',
        },
      ),
    ],
    support: 'sickle-trait-tourniquet-2025',
    mark: 'seen',
  },
  {
    id: 'arterial-disease',
    clinicianLabel: 'Arterial disease, arterial surgery, or walking pain that eases with rest',
    asks: {
      limbs: true,
      details: ['known-or-operated', 'walking-pain'],
    },
    minimumFor: cuffOnly,
    effects: [
      stopLimb('arterial-disease', 'Arterial disease or arterial surgery: no occlusion on that limb.', {
        detail: 'known-or-operated',
      }),
      review(
        'walking-pain',
        'Walking pain that eases with rest: ankle-brachial index and a physician first.',
        {
          detail: 'walking-pain',
          limb: 'leg',
          clearedBy: 'physician',
        },
      ),
      precaution(
        'arterial-disease-loading',
        'Arterial disease may limit the limb: stop at cramp-like pain and let it settle.',
        {
          scope: 'answered-limbs',
        },
      ),
    ],
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
  {
    id: 'dialysis-access',
    clinicianLabel: 'Dialysis access in a limb',
    asks: { limbs: true },
    minimumFor: cuffOnly,
    effects: [
      stopLimb('dialysis-access', 'Dialysis access: no cuff or wrap on that limb.'),
      precaution('dialysis-access-loading', 'Dialysis access: no strap or weight may press on it.', {
        scope: 'answered-limbs',
      }),
    ],
    support: 'occlusion-course-summary',
    mark: 'second-hand',
  },
  {
    id: 'lymph',
    clinicianLabel: 'Lymph nodes removed or irradiated, lymphoedema',
    asks: { limbs: true },
    minimumFor: cuffOnly,
    effects: [
      stopLimb(
        'lymph',
        'Lymph drainage of the limb is impaired: no cuff or wrap there; ordinary loading is not the problem.',
      ),
    ],
    support: 'occlusion-course-summary',
    mark: 'second-hand',
    alsoSee: ['lymphoedema-exercise-review'],
  },
  {
    id: 'veins',
    clinicianLabel: 'Aching varicose veins or past phlebitis',
    asks: {
      limbs: true,
      details: ['aching-veins', 'inflamed-vein'],
    },
    minimumFor: cuffOnly,
    effects: [
      review('aching-veins', 'Aching varicose veins: a clinician decides for that limb.', {
        detail: 'aching-veins',
        scope: 'answered-limbs',
      }),
      review('inflamed-vein', 'Past vein inflammation: a clinician decides.', { detail: 'inflamed-vein' }),
    ],
    support: 'occlusion-course-summary',
    mark: 'second-hand',
  },
  {
    id: 'swollen-calf',
    clinicianLabel: 'One calf newly swollen, warm or tender',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      stopAll(
        'swollen-calf',
        'One calf newly swollen, warm or tender: no session, medical contact the same day, whatever any score says.',
      ),
    ],
    askBeforeOcclusion: true,
    support: 'clot-score-2003',
    mark: 'seen',
    alsoSee: ['clot-score-1997', 'resistance-contraindications-table'],
  },
  {
    id: 'raynaud-or-systemic-sclerosis',
    clinicianLabel: 'Raynaud or systemic sclerosis (from memory)',
    asks: {},
    minimumFor: cuffOnly,
    effects: [
      review(
        'raynaud-or-systemic-sclerosis',
        'Small vessels may close too readily: the physician clears it first.',
        { clearedBy: 'physician' },
      ),
    ],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'vasculitis',
    clinicianLabel: 'Vasculitis (from memory)',
    asks: {},
    minimumFor: cuffOnly,
    effects: [review('vasculitis', 'Vasculitis: the physician clears it first.', { clearedBy: 'physician' })],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'after-covid',
    clinicianLabel: 'Clotting risk after COVID-19',
    asks: {},
    minimumFor: cuffOnly,
    effects: [review('after-covid', 'Clotting risk after COVID-19: a clinician decides.')],
    support: 'occlusion-screening-2022',
    mark: 'seen',
  },
] as const satisfies readonly ScreeningItem[];
