/** The figures of the picture, one row a mark. */
import { say } from '#messages/en/staff/rules.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { MarkShape } from './mark-shape.tsx';
import type { TrialPoint } from './trial-points.ts';

const columns = [
  { key: 'arm', title: say('column-arm') },
  { key: 'strength', title: say('column-strength'), isNumber: true },
  { key: 'bad', title: say('column-bad-days'), isNumber: true },
  { key: 'load', title: say('column-by-load'), isNumber: true },
  { key: 'actions', title: say('column-actions'), isNumber: true },
  { key: 'dose', title: say('column-dose'), isNumber: true },
];

export const TrialTable = ({
  points,
  caption,
}: {
  readonly points: readonly TrialPoint[];
  readonly caption: string;
}) => (
  <DataTable
    caption={caption}
    columns={columns}
    rows={points.map((point) => ({
      key: point.arm,
      cells: [
        <span className="trial-name" key="name">
          <MarkShape kind={point.kind} /> {point.name}
        </span>,
        point.strengthPercent.toFixed(1),
        point.badDays.toFixed(1),
        point.loadCausedBadDays.toFixed(1),
        point.clinicianActions.toFixed(1),
        point.finalDose.toFixed(2),
      ],
    }))}
  />
);
