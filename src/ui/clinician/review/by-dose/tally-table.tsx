/** The counts by dose as a table, with the ends of the corridor. */
import { shareInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/chart.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { ReviewAnswer } from '../../answers.ts';

/** The counts alone: what became of each session is not shown. */
export type Answers = Pick<NonNullable<ReviewAnswer['dose']>['answers'], 'doses' | 'corridor' | 'leftOut'>;

const columns = [
  { key: 'dose', title: 'Dose' },
  { key: 'at-usual', title: say('by-dose.at-usual'), isNumber: true },
  { key: 'over-usual', title: say('by-dose.over-usual'), isNumber: true },
  { key: 'which', title: say('by-dose.end') },
];

export const TallyTable = ({
  caption,
  answers: { doses, corridor },
}: {
  readonly caption: string;
  readonly answers: Answers;
}) => (
  <DataTable
    caption={caption}
    hidesCaption
    columns={columns}
    rows={doses.toReversed().map((row) => ({
      key: String(row.share),
      cells: [
        shareInWords(row.share),
        row.atUsual,
        row.overUsual,
        [
          row.share === corridor.highestAtUsual?.share ? say('by-dose.highest') : '',
          row.share === corridor.lowestOverUsual?.share ? say('by-dose.lowest') : '',
        ]
          .filter(Boolean)
          .join(', '),
      ],
    }))}
  />
);
