/** Counts of sore joints with the two global ratings, told as the clinical disease activity index. */
import { worked } from '#core/calculations/working.ts';
import { figure } from '#core/review/plain-words.ts';
import { amount, nothingToCompare, type OutcomeLine, unjudged } from '../course/judgement.ts';
import { cdaiRow } from '../disease-activity/cdai.ts';
import { distanceOf } from '../measurements/at-distance.ts';
import { number, whole } from './fields.ts';
import { measure } from './measure.ts';

interface Counted {
  readonly day: string;
  readonly tender: number;
  readonly swollen: number;
  readonly patientGlobal: number;
  readonly clinicianGlobal: number;
}

const lines = (rows: readonly Counted[]): readonly OutcomeLine[] => {
  const scored = rows.map(({ day, tender, swollen, patientGlobal, clinicianGlobal, ...row }) => ({
    ...distanceOf(row),
    day,
    ...worked(cdaiRow, { tender, swollen, patientGlobal, clinicianGlobal }),
  }));
  const results = scored.flatMap(({ outcome }) => (outcome.ok ? [outcome.result] : []));
  const [first, last] = [results[0], results.at(-1)];
  if (!first || !last) return [];
  return [
    {
      key: 'joint-counts',
      kind: 'joint-counts',
      title: 'Clinical disease activity index',
      readings: scored.map(({ day, outcome, ...row }) => ({
        ...distanceOf(row),
        day,
        text: outcome.ok ? `${amount(outcome.result.score)}, ${outcome.result.band}` : 'not worked out',
      })),
      drawn: {
        courses: [
          {
            name: null,
            points: scored.flatMap(({ day, outcome }) =>
              outcome.ok ? [{ day, figure: outcome.result.score }] : [],
            ),
          },
        ],
        unit: '',
        error: null,
        cut: null,
        better: 'lower',
      },
      norm: {
        sentence: `${amount(last.score)} is ${last.band}: remission up to 2.8, low to 10, moderate to 22. For rheumatoid arthritis.`,
        workings: [scored.at(-1)!.working],
      },
      change:
        results.length < 2
          ? nothingToCompare
          : unjudged(last.score - first.score, '', 'No error of measuring this index is on file.'),
    },
  ];
};

export const jointCounts = measure({
  kind: 'joint-counts',
  title: 'Joint counts for an activity index',
  fields: [
    whole('tender', '{joint}', 0, 28, 'Tender joints of 28'),
    whole('swollen', '{joint}', 0, 28, 'Swollen joints of 28'),
    number('patientGlobal', '{score}', 0, 10, 'Patient’s global rating'),
    number('clinicianGlobal', '{score}', 0, 10, 'Clinician’s global rating'),
  ],
  figure: (row) => row.tender + row.swollen + row.patientGlobal + row.clinicianGlobal,
  inWords: (row) =>
    `tender ${row.tender}, swollen ${row.swollen} of 28; globals ${figure(row.patientGlobal)} and ${figure(row.clinicianGlobal)}`,
  course: { area: 'joints', lines },
});
