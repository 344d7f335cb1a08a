/** Screening questions about skin, bones and joints. */
import {
  cuffOnly,
  everyMethod,
  precaution,
  review,
  type ScreeningItem,
  stopAll,
  stopLimb,
  withoutCuff,
} from '../item.ts';

export const limbAndJointItems = [
  {
    id: 'wound-break-or-infection',
    clinicianLabel: 'Wound, stitches, recent fracture, skin graft or infection of a limb',
    asks: {
      limbs: true,
      details: ['sore-stitches-or-graft', 'recent-break', 'infection'],
    },
    minimumFor: everyMethod,
    effects: [
      stopLimb(
        'wound-break-or-infection',
        'Wound, fracture, graft or infection at or below the cuff: no occlusion on that limb until healed.',
      ),
      stopAll(
        'recent-break-loading',
        'Recent fracture: no loading of that limb until the physician clears it.',
        {
          methods: withoutCuff,
          scope: 'answered-limbs',
          detail: 'recent-break',
        },
      ),
      stopAll('infection-loading', 'Infection of the limb: no loading there until the physician clears it.', {
        methods: withoutCuff,
        scope: 'answered-limbs',
        detail: 'infection',
      }),
      precaution('wound-loading', 'Open skin: keep straps and weights off it.', {
        scope: 'answered-limbs',
        detail: 'sore-stitches-or-graft',
      }),
    ],
    askBeforeOcclusion: true,
    support: 'occlusion-list-statement',
    mark: 'second-hand',
  },
  {
    id: 'skin-or-joint-under-cuff',
    clinicianLabel: 'Fragile or broken skin, or active joint inflammation under the cuff (from memory)',
    asks: { limbs: true },
    minimumFor: cuffOnly,
    effects: [
      stopLimb(
        'skin-or-joint-under-cuff',
        'Fragile skin or active inflammation under the cuff: no occlusion on that limb until settled.',
      ),
    ],
    askBeforeOcclusion: true,
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'hot-joint',
    clinicianLabel: 'Acutely hot or swollen joint',
    asks: { joints: true },
    minimumFor: everyMethod,
    effects: [],
    blocksJoints: 'answered',
    askBeforeOcclusion: true,
    support: 'resistance-contraindications-table',
    mark: 'seen',
  },
  {
    id: 'artificial-joint-or-metalwork',
    clinicianLabel: 'Artificial joint, or metalwork in a bone (from memory)',
    asks: { limbs: true },
    minimumFor: cuffOnly,
    effects: [
      review(
        'artificial-joint-or-metalwork',
        'Artificial joint or metalwork: a clinician decides on a cuff for that limb.',
        { scope: 'answered-limbs' },
      ),
      precaution(
        'artificial-joint-or-metalwork-loading',
        'Artificial joint or metalwork: keep the limits of the surgeon; a hot joint goes to the surgeon the same day.',
        { scope: 'answered-limbs' },
      ),
    ],
    support: 'clinic',
    mark: 'memory',
    alsoSee: ['coakley-2006'],
  },
  {
    id: 'rhabdomyolysis-or-muscle-disease',
    clinicianLabel: 'Previous rhabdomyolysis, or a muscle disease (from memory)',
    asks: { details: ['rhabdomyolysis', 'muscle-disease'] },
    minimumFor: everyMethod,
    effects: [
      review(
        'previous-rhabdomyolysis',
        'Rhabdomyolysis before: sets near failure and occlusion wait for a physician who knows why it happened.',
        { methods: everyMethod, clearedBy: 'physician', detail: 'rhabdomyolysis' },
      ),
      review('muscle-disease', 'Muscle disease: loading waits for the physician who treats it.', {
        methods: everyMethod,
        clearedBy: 'physician',
        detail: 'muscle-disease',
      }),
    ],
    support: 'clinic',
    mark: 'memory',
    alsoSee: ['scalco-2016'],
  },
  {
    id: 'rheumatoid-arthritis',
    clinicianLabel: 'Rheumatoid or other inflammatory arthritis',
    asks: {},
    minimumFor: [],
    effects: [
      precaution(
        'rheumatoid-arthritis',
        'Rheumatoid arthritis: clot risk is above the general population, yet a 12-week trial reported no such harm; a precaution, no stop.',
        { methods: cuffOnly },
      ),
      precaution(
        'inflammatory-arthritis-loading',
        'Inflammatory arthritis: ask about flares early and let the joint set the load.',
      ),
    ],
    support: 'occlusion-screening-2022',
    mark: 'seen',
    alsoSee: ['rheumatoid-occlusion-trial-2020'],
  },
  {
    id: 'neck-in-rheumatoid-arthritis',
    clinicianLabel: 'Neck involvement in rheumatoid arthritis (from memory)',
    asks: {},
    minimumFor: everyMethod,
    effects: [
      review(
        'neck-in-rheumatoid-arthritis',
        'Neck involvement: work of the arms waits until a physician has judged the neck.',
        {
          methods: everyMethod,
          limb: 'arm',
          clearedBy: 'physician',
        },
      ),
      precaution(
        'neck-in-rheumatoid-arthritis-legs',
        'Neck involvement: positions that leave the neck unloaded and neutral.',
        {
          methods: everyMethod,
          limb: 'leg',
        },
      ),
    ],
    blocksJoints: ['neck'],
    support: 'clinic',
    mark: 'memory',
  },
  {
    id: 'osteoporosis',
    clinicianLabel: 'Osteoporosis or fragility fracture (from memory)',
    asks: {},
    minimumFor: [],
    effects: [
      precaution(
        'osteoporosis',
        'Fragile bone: no loaded bending or twisting of the spine, small steps, mind falls.',
        {
          methods: everyMethod,
        },
      ),
    ],
    support: 'clinic',
    mark: 'memory',
  },
] as const satisfies readonly ScreeningItem[];
