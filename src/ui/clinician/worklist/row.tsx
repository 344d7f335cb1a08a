'use client';
/** One patient of the worklist: who, the fact, four weeks, telephone, one action, and a menu of the rest. */
import { useEffect, useRef, useState } from 'react';
import { say } from '#messages/en/staff/worklist.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { useSubmit } from '../forms/use-submit.ts';
import { TelephoneLink } from '../telephone-link.tsx';
import { PrimaryAction } from './primary-action.tsx';
import { AssignForm, ReplyForm, RowContact, SnoozeForm } from './row-forms.tsx';
import { RowMenu } from './row-menu.tsx';
import type { BenchRow, RowItem } from './row-props.ts';
import type { Done, OpenForm, RowProps } from './row-state.ts';
import { SignDoses } from './sign-doses.tsx';
import { SignLifeLine } from './sign-life-line.tsx';
import { StripPicture } from './strip-picture.tsx';

const OtherItem = ({ item }: { readonly item: RowItem }) => (
  <li>
    <StatusTag shape={item.shape} tone={item.tone}>
      {item.word}
    </StatusTag>{' '}
    {item.sentence} <span className="soft">{[item.ago, item.handled].filter(Boolean).join(' · ')}</span>
  </li>
);

const DoneLine = ({
  done,
  name,
  onUndone,
}: {
  readonly done: Done;
  readonly name: string;
  readonly onUndone: RowProps['onUndone'];
}) => {
  const id = `undo-${done.id}`;
  const submit = useSubmit('', id);
  const undo = (call: () => Promise<void>) =>
    void submit.send([], call).then((taken) => {
      if (taken) onUndone(done);
    });
  const call = done.isUndone ? null : done.undo;
  return (
    <div className="row-done">
      <ErrorSummary problems={submit.problems} />
      <p>
        {done.isUndone ? say('undone', { text: done.text }) : done.text}{' '}
        <span className="soft">{done.isUndone ? say('both-stay') : done.note}</span>
      </p>
      {call ? (
        <Button
          tone="plain"
          id={id}
          className="row-undo"
          data-undo
          data-item
          data-keys
          aria-disabled={submit.isBusy || undefined}
          onClick={() => undo(call)}
        >
          {say('undo')}
          <span className="visually-hidden">
            : {done.text}, {name}
          </span>
        </Button>
      ) : null}
    </div>
  );
};

const Facts = ({ row }: { readonly row: BenchRow }) => (
  <div className="row-why">
    <p className="row-fact">{row.fact}</p>
    {row.second ? <p className="row-second">{row.second}</p> : null}
    {row.item.handled ? <p className="row-second">{row.item.handled}</p> : null}
    {row.others.length > 0 ? (
      <ul className="row-others" aria-label={say('more-of', { name: row.name })}>
        {row.others.map((item) => (
          <OtherItem key={item.key} item={item} />
        ))}
      </ul>
    ) : null}
  </div>
);

const Opened = ({
  open,
  close,
  ...props
}: RowProps & { readonly open: OpenForm; readonly close: () => void }) => {
  const form = { ...props, close };
  const box = useRef<HTMLDivElement>(null);
  // The button that opened it is gone: who works by keys goes on in what it opened.
  useEffect(() => {
    const first = ':is(input:not([type="hidden"]),textarea,select,button)';
    box.current?.querySelector<HTMLElement>(first)?.focus();
  }, []);
  return (
    <div className="row-opened screen-only" ref={box}>
      {open === 'contact' ? <RowContact {...form} /> : null}
      {open === 'sign' ? (
        <SignDoses {...form} patientId={props.row.patientId} doses={props.row.doses} />
      ) : null}
      {open === 'reply' ? <ReplyForm {...form} /> : null}
      {open === 'snooze' ? <SnoozeForm {...form} /> : null}
      {open === 'assign' ? <AssignForm {...form} /> : null}
      <Button tone="quiet" onClick={close}>
        {say('close')}
      </Button>
    </div>
  );
};

export const Row = (props: RowProps) => {
  const { row, done, isListed } = props;
  const [open, setOpen] = useState<OpenForm | null>(null);
  const status = row.item;
  return (
    <li
      className={isListed ? 'worklist-row keep-together' : 'worklist-row row-settled keep-together'}
      data-row={row.patientId}
    >
      <div className="row-who">
        <h3 className="worklist-name">
          <a href={row.href} data-keys>
            {row.name}
          </a>
        </h3>
        <p className="row-second">{row.who}</p>
      </div>
      <Facts row={row} />
      <div className="row-strip">{row.strip ? <StripPicture drawing={row.strip} /> : null}</div>
      <div className="row-phone">
        {row.phone ? <TelephoneLink phone={row.phone} /> : null}
        <p className="row-second">{status.ago}</p>
      </div>
      <div className="row-action screen-only">
        {/* While a form is open nothing beside it takes its place: what was typed would be gone. */}
        {isListed && open === null ? <PrimaryAction {...props} setOpen={setOpen} /> : null}
      </div>
      <div className="row-menu screen-only">
        {isListed && open === null ? <RowMenu {...props} setOpen={setOpen} /> : null}
      </div>
      {row.life ? <SignLifeLine {...row.life} /> : null}
      {done.map((one) => (
        <DoneLine key={one.id} done={one} name={row.name} onUndone={props.onUndone} />
      ))}
      {open ? <Opened {...props} open={open} close={() => setOpen(null)} /> : null}
    </li>
  );
};
