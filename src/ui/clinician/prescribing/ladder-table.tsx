'use client';
/** The ladder for this body; any exercise on it can be taken. */
import { say } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import { DataTable } from '#ui/design-system/data-table.tsx';
import type { LadderRow } from './ladder-rows.ts';

const columns = [
  { key: 'exercise', title: say('ladder.exercise') },
  { key: 'measure', title: say('ladder.ordered-by') },
  { key: 'step', title: 'Step', isNumber: true },
  { key: 'load', title: say('ladder.load'), isNumber: true },
  { key: 'moments', title: say('ladder.moments') },
  { key: 'measured', title: say('ladder.measured') },
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
        caption={say('ladder')}
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
                Choose
                <span className="visually-hidden"> {row.title}</span>
              </Button>
            ),
          ],
        }))}
      />
      {remark ? <p className="soft">{say('ladder.remark', { remark })}</p> : null}
    </div>
  );
};
