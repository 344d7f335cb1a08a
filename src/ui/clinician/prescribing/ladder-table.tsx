'use client';
/** The ladder for this body; any exercise on it can be taken. */
import { Button } from '#ui/design-system/button.tsx';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { LadderRow } from './ladder-rows.ts';

const columns = [
  { key: 'exercise', title: 'Exercise, easiest first' },
  { key: 'measure', title: 'Ordered by' },
  { key: 'step', title: 'Step', isNumber: true },
  { key: 'load', title: 'Effective load', isNumber: true },
  { key: 'moments', title: 'Moment at each joint' },
  { key: 'measured', title: 'Measured share' },
  { key: 'choose', title: <span className="visually-hidden">Choose</span> },
];

export const LadderTable = (props: {
  readonly rows: readonly LadderRow[];
  readonly chosen: string;
  readonly onChoose: (exerciseId: string) => void;
}) => {
  const remark = props.rows.find((row) => row.exerciseId === props.chosen)?.remark;
  return (
    <div className="stack-close">
      <DataTable
        caption="Levels for this patient, computed from weight and height"
        columns={columns}
        rows={props.rows.map((row) => ({
          key: row.exerciseId,
          cells: [
            row.title,
            row.measure,
            row.step,
            row.effectiveLoad,
            row.moments,
            row.measured,
            row.exerciseId === props.chosen ? (
              <strong key="chosen">Chosen</strong>
            ) : (
              <Button key="take" tone="quiet" onClick={() => props.onChoose(row.exerciseId)}>
                Choose<span className="visually-hidden"> {row.title}</span>
              </Button>
            ),
          ],
        }))}
      />
      {remark ? <p className="soft">For the chosen level: {remark}</p> : null}
    </div>
  );
};
