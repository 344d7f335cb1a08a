'use client';
/** The rest of what can be done about an item, without settling it. Danger is never snoozed. */
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { say } from '#messages/en/staff/worklist.ts';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';
import type { OpenForm, RowProps } from './row-state.ts';
import { undoOf } from './undo-handling.ts';

export const RowMenu = (props: RowProps & { readonly setOpen: (open: OpenForm) => void }) => {
  const { row, setOpen, onDone } = props;
  const { patientId } = row;
  const { key } = row.item;
  const id = `menu-${patientId}`;
  const submit = useSubmit('', id);
  const act = (name: 'acknowledge' | 'assign', text: string, call: () => Promise<unknown>) =>
    void submit.send([], async () => {
      await call();
      onDone({ id: `${name} ${patientId} ${key}`, text, ...undoOf(row, name) });
    });
  const acknowledge = () => client.clinician.worklist.acknowledge.mutate({ patientId, key });
  const take = () => client.clinician.worklist.take.mutate({ patientId, key });
  return (
    <>
      <ErrorSummary problems={submit.problems} />
      <MenuTrigger>
        <Button
          id={id}
          className="menu-button"
          aria-label={say('menu', { name: row.name })}
          data-menu
          data-keys
        >
          …
        </Button>
        <Popover className="menu-popover">
          <Menu className="menu" aria-label={say('menu', { name: row.name })}>
            <MenuItem onAction={() => act('acknowledge', say('acknowledge-done'), acknowledge)}>
              {say('acknowledge')}
            </MenuItem>
            <MenuItem onAction={() => act('assign', say('taken'), take)}>{say('take')}</MenuItem>
            {props.colleagues.length > 1 ? (
              <MenuItem onAction={() => setOpen('assign')}>{say('assign-to')}</MenuItem>
            ) : null}
            {row.canSnooze ? (
              <MenuItem onAction={() => setOpen('snooze')}>{say('snooze-until-day')}</MenuItem>
            ) : null}
            <MenuItem href={`/patients/${patientId}`}>{say('open-record')}</MenuItem>
            <MenuItem href={`/patients/${patientId}/data-entry`}>{say('go.type-in')}</MenuItem>
            <MenuItem href={`/patients/${patientId}/warning-signs`}>{say('signs-and-pauses')}</MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
    </>
  );
};
