/**
 * Clinical score for deep-vein thrombosis of the leg, in its 1997 and 2003 forms.
 *
 * For a clinician, about a person who has leg symptoms; never shown to the patient. A low score
 * clears nothing here: it does not open occlusion work, and a newly swollen or painful calf after a
 * session is seen the same day whatever it says. The forms disagree at exactly 3 cm, exactly three
 * days and surgery four to twelve weeks ago, so the form is stored with the score.
 */
import { calculation } from '../calculations/calculation.ts';
import type { FlagField } from '../calculations/describe.ts';
import { answer, type Note, type Refusal } from '../outcome.ts';

const clotScoreForms = ['1997', '2003'] as const;
type ClotScoreForm = (typeof clotScoreForms)[number];

interface ScoreItem {
  readonly id: string;
  readonly points: number;
  readonly forms: readonly ClotScoreForm[];
  readonly about: string;
}

const both = clotScoreForms;

const clotScoreItems = [
  {
    id: 'activeCancer',
    points: 1,
    forms: both,
    about: 'Cancer treated within 6 months, under treatment, or palliative.',
  },
  {
    id: 'paralysisOrPlaster',
    points: 1,
    forms: both,
    about: 'Paralysis, paresis, or recent plaster of a leg.',
  },
  {
    id: 'bedriddenOrSurgery',
    points: 1,
    forms: both,
    about:
      '2003: in bed 3 days or more, or major surgery within 12 weeks. 1997: more than 3 days, or surgery within 4 weeks.',
  },
  { id: 'deepVeinTenderness', points: 1, forms: both, about: 'Tender along the deep veins.' },
  { id: 'wholeLegSwollen', points: 1, forms: both, about: 'The whole leg is swollen.' },
  {
    id: 'calfLarger',
    points: 1,
    forms: both,
    about:
      '2003: calf at least 3 cm larger than the other. 1997: more than 3 cm, 10 cm below the tibial tuberosity.',
  },
  {
    id: 'pittingOedema',
    points: 1,
    forms: both,
    about: '2003: confined to the symptomatic leg. 1997: greater in the symptomatic leg.',
  },
  { id: 'collateralVeins', points: 1, forms: both, about: 'Superficial side veins that are not varicose.' },
  {
    id: 'previousClot',
    points: 1,
    forms: ['2003'],
    about: '2003 form only: an earlier documented deep-vein thrombosis.',
  },
  {
    id: 'otherDiagnosisAsLikely',
    points: -2,
    forms: both,
    about: 'Another diagnosis is at least as likely.',
  },
] as const satisfies readonly ScoreItem[];

type ScoreItemId = (typeof clotScoreItems)[number]['id'];

const flag = <N extends ScoreItemId>(name: N) => {
  const about = clotScoreItems.find((item) => item.id === name)!.about;
  return { name, kind: 'flag', about } as const satisfies FlagField;
};

/** Lower bounds, from the highest band down. */
const bands: Readonly<Record<ClotScoreForm, readonly { readonly from: number; readonly band: string }[]>> = {
  '2003': [
    { from: 2, band: 'likely' },
    { from: Number.NEGATIVE_INFINITY, band: 'unlikely' },
  ],
  '1997': [
    { from: 3, band: 'high' },
    { from: 1, band: 'moderate' },
    { from: Number.NEGATIVE_INFINITY, band: 'low' },
  ],
};

const clearsNothing: Note = {
  code: 'clears-nothing',
  text: 'A low score clears nothing: it opens no method, and new one-sided calf pain or swelling is seen the same day.',
};
const notInForm: Note = {
  code: 'not-in-form',
  text: 'An earlier clot is not part of the 1997 form and was not counted; it closes occlusion work all the same.',
};

export const wellsDvt = calculation({
  id: 'wells-dvt',
  title: 'Clinical score for deep-vein thrombosis of the leg',
  area: 'screening',
  input: [
    { name: 'form', kind: 'enum', values: clotScoreForms },
    {
      name: 'items',
      kind: 'record',
      fields: [
        flag('activeCancer'),
        flag('paralysisOrPlaster'),
        flag('bedriddenOrSurgery'),
        flag('deepVeinTenderness'),
        flag('wholeLegSwollen'),
        flag('calfLarger'),
        flag('pittingOedema'),
        flag('collateralVeins'),
        { ...flag('previousClot'), optional: true },
        flag('otherDiagnosisAsLikely'),
      ],
    },
  ],
  result: [
    { name: 'score', unit: '1' },
    { name: 'band', unit: '', about: '1997: low, moderate, high; 2003: unlikely, likely' },
  ],
  citations: [
    { source: 'clot-score-2003', locator: 'two-level table', mark: 'seen' },
    { source: 'clot-score-1997', locator: 'three-level table, restated as table 1', mark: 'second-hand' },
  ],
  consistent: ({ form, items }): readonly Refusal[] =>
    form === '2003' && items.previousClot === undefined
      ? [
          {
            field: 'input.items.previousClot',
            code: 'missing',
            reason: 'The 2003 form asks for an earlier clot: answer true or false.',
          },
        ]
      : [],
  calculate: ({ form, items }) => {
    const counted = clotScoreItems.filter((item) => (item.forms as readonly string[]).includes(form));
    const score = counted.reduce((sum, item) => sum + (items[item.id] ? item.points : 0), 0);
    const band = bands[form].find((row) => score >= row.from)!.band;
    const left = form === '1997' && items.previousClot ? [clearsNothing, notInForm] : [clearsNothing];
    return answer({ score, band }, left);
  },
  example: {
    form: '2003',
    items: {
      activeCancer: false,
      paralysisOrPlaster: false,
      bedriddenOrSurgery: true,
      deepVeinTenderness: false,
      wholeLegSwollen: false,
      calfLarger: true,
      pittingOedema: false,
      collateralVeins: false,
      previousClot: false,
      otherDiagnosisAsLikely: false,
    },
  },
});
