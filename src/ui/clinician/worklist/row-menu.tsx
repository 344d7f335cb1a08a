'use client';
/**
 * The rest of what can be done about an item, without settling it. Danger is never snoozed. A list has fifty of
 * these buttons and one menu is open at a time, so the library draws a menu only once it is asked for.
 */
import { type RefObject, useEffect, useRef, useState } from 'react';
import { Menu, MenuItem, Popover } from 'react-aria-components';
import { say } from '#messages/en/staff/worklist.ts';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';
import type { OpenForm, RowProps } from './row-state.ts';
import { undoOf } from './undo-handling.ts';

type MenuProps = RowProps & { readonly setOpen: (open: OpenForm) => void };

const useActs = ({ row, onDone }: MenuProps, id: string) => {
  const { patientId } = row;
  const { key } = row.item;
  const submit = useSubmit('', id);
  const act = (name: 'acknowledge' | 'assign', text: string, call: () => Promise<unknown>) =>
    void submit.send([], async () => {
      await call();
      onDone({ id: `${name} ${patientId} ${key}`, text, ...undoOf(row, name) });
    });
  return {
    problems: submit.problems,
    acknowledge: () =>
      act('acknowledge', say('acknowledge-done'), () =>
        client.clinician.worklist.acknowledge.mutate({ patientId, key }),
      ),
    take: () => act('assign', say('taken'), () => client.clinician.worklist.take.mutate({ patientId, key })),
  };
};

type Acts = ReturnType<typeof useActs>;

const Choices = (props: MenuProps & { readonly acts: Acts; readonly close: () => void }) => {
  const { row, setOpen, acts, close } = props;
  const { patientId } = row;
  const menu = useRef<HTMLDivElement>(null);
  // The library has the focus on the menu while its items are still to come; Enter would then do nothing.
  useEffect(() => {
    const frame = requestAnimationFrame(() =>
      menu.current?.querySelector<HTMLElement>('[role="menuitem"]')?.focus(),
    );
    return () => cancelAnimationFrame(frame);
  }, []);
  return (
    <Menu
      ref={menu}
      className="menu"
      aria-label={say('menu', { name: row.name })}
      autoFocus="first"
      onClose={close}
    >
      <MenuItem onAction={acts.acknowledge}>{say('acknowledge')}</MenuItem>
      <MenuItem onAction={acts.take}>{say('take')}</MenuItem>
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
  );
};

interface OpenedProps extends MenuProps {
  readonly id: string;
  readonly button: RefObject<HTMLButtonElement | null>;
  readonly isOpen: boolean;
  readonly setIsOpen: (isOpen: boolean) => void;
}

/** Stays once it was opened: what could not be done is said where the menu was. */
const Opened = ({ id, button, isOpen, setIsOpen, ...props }: OpenedProps) => {
  const acts = useActs(props, id);
  return (
    <>
      <ErrorSummary problems={acts.problems} />
      {isOpen ? (
        <Popover
          className="menu-popover"
          aria-label={say('menu', { name: props.row.name })}
          triggerRef={button}
          isOpen
          onOpenChange={setIsOpen}
        >
          <Choices {...props} acts={acts} close={() => setIsOpen(false)} />
        </Popover>
      ) : null}
    </>
  );
};

export const RowMenu = (props: MenuProps) => {
  const { row } = props;
  const id = `menu-${row.patientId}`;
  const button = useRef<HTMLButtonElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const [wasOpened, setWasOpened] = useState(false);
  const open = () => {
    // Not every browser moves the focus to a pressed button, and the menu gives it back to where it was.
    button.current?.focus();
    setWasOpened(true);
    setIsOpen(true);
  };
  return (
    <>
      {wasOpened ? <Opened {...props} id={id} button={button} isOpen={isOpen} setIsOpen={setIsOpen} /> : null}
      <button
        type="button"
        ref={button}
        id={id}
        className="menu-button"
        aria-label={say('menu', { name: row.name })}
        aria-haspopup="menu"
        aria-expanded={isOpen}
        data-menu
        data-keys
        onClick={open}
      >
        …
      </button>
    </>
  );
};
