/** Medicines by class, with what each means for loading and for a cuff. General knowledge unless a source key stands beside it. */
import type { Citation } from '../sources/citation.ts';

export interface MedicineClass {
  /** The detail id of the screening question. */
  readonly id: string;
  readonly title: string;
  readonly forLoading: string;
  readonly forOcclusion: string;
  readonly citation: Citation;
}

const memory = (remark: string): Citation => ({
  source: 'occlusion-screening-2022',
  locator: 'not in its tables',
  mark: 'memory',
  remark,
});

export const medicineClasses: readonly MedicineClass[] = [
  {
    id: 'blood-thinner',
    title: 'Anticoagulant or antiplatelet medicine',
    forLoading: 'Bruising and bleeding; mind falls.',
    forOcclusion:
      'A clinician decides; it also points to the reason it is taken. One trial left these people out.',
    citation: {
      source: 'acl-occlusion-trial-2019',
      locator: 'registry entry: exclusions',
      mark: 'second-hand',
    },
  },
  {
    id: 'hormone-pill-or-patch',
    title: 'Oestrogen contraceptive or hormone therapy',
    forLoading: 'No limit known from it alone.',
    forOcclusion: 'Clot risk: a clinician decides.',
    citation: { source: 'occlusion-screening-2022', locator: 'table 1: contraceptive use', mark: 'seen' },
  },
  {
    id: 'testosterone',
    title: 'Testosterone or anabolic steroid',
    forLoading: 'Tendon may lag behind muscle; small steps.',
    forOcclusion: 'Clot risk: a clinician decides.',
    citation: {
      source: 'occlusion-list-statement',
      locator: 'clot-promoting medicines',
      mark: 'second-hand',
    },
  },
  {
    id: 'blood-pressure-tablet',
    title: 'Beta-blocker, other blood-pressure medicine, diuretic',
    forLoading: 'Heart-rate targets mislead; pressure may drop after a set.',
    forOcclusion: 'Suggests diagnosed high blood pressure, which keeps occlusion closed until cleared.',
    citation: memory('effects of the class'),
  },
  {
    id: 'insulin-or-sulfonylurea',
    title: 'Insulin or sulfonylurea',
    forLoading:
      'Type 1: under 2.9 mmol/L, or helped low sugar within 24 h, no session; 2.9-3.9 treat first and measure again.',
    forOcclusion: 'The same, and diabetes itself waits for a clinician.',
    citation: {
      source: 'diabetes-exercise-2019',
      locator: 'limits before a session',
      mark: 'seen',
      remark: 'medicine names from memory',
    },
  },
  {
    id: 'long-term-steroid',
    title: 'Long-term corticosteroid',
    forLoading: 'Skin, bone and glucose.',
    forOcclusion: 'Fragile skin under the cuff.',
    citation: memory('effects of the class'),
  },
  {
    id: 'statin',
    title: 'Statin',
    forLoading: 'Muscle pain out of proportion or dark urine after a session is urgent.',
    forOcclusion: 'The same; the alert is higher after occlusion and after sets near failure.',
    citation: {
      source: 'scalco-2016',
      locator: 'abstract',
      mark: 'seen',
      remark: 'the higher alert with statins from memory',
    },
  },
  {
    id: 'colchicine',
    title: 'Colchicine',
    forLoading: 'Muscles may weaken, more so with a statin or kidney disease.',
    forOcclusion: 'The same.',
    citation: memory('effects of the class'),
  },
  {
    id: 'jak-inhibitor',
    title: 'JAK inhibitor',
    forLoading: 'Infection risk.',
    forOcclusion: 'Clot risk may be raised: a clinician decides.',
    citation: memory('effects of the class'),
  },
  {
    id: 'biologic',
    title: 'Biologic',
    forLoading: 'Infection may show little.',
    forOcclusion: 'Look at the skin under the cuff.',
    citation: memory('effects of the class'),
  },
  {
    id: 'recent-quinolone',
    title: 'Quinolone antibiotic in recent weeks',
    forLoading: 'Tendon may be weak: small steps, no jerks.',
    forOcclusion: 'The same.',
    citation: memory('effects of the class'),
  },
];
