/**
 * Acute and chronic load as two moving averages: a picture of what was done.
 *
 * Weight 2/(N + 1), started from the first recorded day. No ratio is formed, no band and no verdict: dividing one
 * by the other was shown to predict no better than dividing by chance. A rest day is 0; a day without a record
 * has no point, and the line goes on from the last known one.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer, type Note } from '#core/outcome.ts';
import { daily } from '#core/statistics/series-fields.ts';

export const loadWeight = (days: number): number => 2 / (days + 1);

/** The moving average on each day; null on a day without a record and before the first one. */
export const loadLine = (loads: readonly (number | null)[], days: number): readonly (number | null)[] => {
  const weight = loadWeight(days);
  let known: number | null = null;
  return loads.map((load) => {
    if (load === null) return null;
    known = known === null ? load : weight * load + (1 - weight) * known;
    return known;
  });
};

const days = <const N extends string>(name: N) =>
  ({ name, kind: 'integer', unit: 'd', min: 2, max: 84 }) as const;

export const acuteAndChronicLoadRow = calculation({
  id: 'acute-and-chronic-load',
  title: 'Acute and chronic load, as a picture',
  area: 'series',
  input: [
    daily('loads', 'One load a day; a rest day is 0, a day without a record is null.'),
    days('acuteDays'),
    days('chronicDays'),
  ],
  result: [
    { name: 'acute', unit: '1', about: 'null on a day without a record' },
    { name: 'chronic', unit: '1', about: 'null on a day without a record' },
    { name: 'acuteWeight', unit: '1' },
    { name: 'chronicWeight', unit: '1' },
    { name: 'daysWithoutRecord', unit: 'd' },
  ],
  citations: [
    { source: 'williams-2017', locator: 'weight 2/(N + 1), 7 and 28 days', mark: 'seen' },
    {
      source: 'impellizzeri-2021',
      locator: 'abstract: the ratio only rescales the acute load',
      mark: 'seen',
      remark: 'Reason why no ratio is given.',
    },
  ],
  calculate: (input) => {
    const daysWithoutRecord = input.loads.filter((load) => load === null).length;
    const notes: Note[] = [
      {
        code: 'picture-only',
        text: 'A picture of what was done. No ratio and no verdict; it drives nothing.',
      },
    ];
    if (daysWithoutRecord > 0) {
      notes.push({
        code: 'days-without-record',
        text: `${daysWithoutRecord} days have no record; the lines go on from the last known point and may be wrong.`,
      });
    }
    return answer(
      {
        acute: loadLine(input.loads, input.acuteDays),
        chronic: loadLine(input.loads, input.chronicDays),
        acuteWeight: loadWeight(input.acuteDays),
        chronicWeight: loadWeight(input.chronicDays),
        daysWithoutRecord,
      },
      notes,
    );
  },
  example: { loads: [100, 0, 120, 0, 130, 0, 0, 110, 0, 140, 0, 150, 0, 0], acuteDays: 7, chronicDays: 28 },
});
