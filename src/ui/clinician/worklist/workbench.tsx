'use client';
/**
 * The list as a place to work at. What was done stays in its row, with its undo, until the page is left; the
 * arrows move from action to action, Enter does it, M opens the rest and Z undoes, while the list has the focus.
 */
import { useRouter } from 'next/navigation';
import { type KeyboardEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { say } from '#messages/en/staff/worklist.ts';
import { Mark, type Shape } from '#ui/design-system/mark.tsx';
import { type AsText, fromText } from '../as-text.ts';
import { Row } from './row.tsx';
import type { BenchRow } from './row-props.ts';
import type { Done, RowProps } from './row-state.ts';

type Work = BenchRow['work'];

const heads: Readonly<Record<Work, { readonly text: string; readonly shape: Shape }>> = {
  danger: { text: say('work.danger'), shape: 'stop' },
  speak: { text: say('work.speak'), shape: 'back' },
  sign: { text: say('work.sign'), shape: 'pen' },
  'no-answers': { text: say('work.no-answers'), shape: 'unknown' },
  reply: { text: say('work.reply'), shape: 'note' },
  look: { text: say('work.look'), shape: 'care' },
  due: { text: say('work.due'), shape: 'waiting' },
};
const order = Object.keys(heads) as readonly Work[];

interface Kept {
  readonly row: BenchRow;
  /** Patient it stood under; null = it stood first. */
  readonly after: string | null;
  readonly done: readonly Done[];
}

/** What was done stays where it stood, also when nothing of the patient is listed any more. */
const withKept = (rows: readonly BenchRow[], kept: ReadonlyMap<string, Kept>): readonly BenchRow[] => {
  const shown = [...rows];
  for (const [patientId, { row, after }] of kept) {
    if (shown.some((one) => one.patientId === patientId)) continue;
    shown.splice(shown.findIndex((one) => one.patientId === after) + 1, 0, row);
  }
  return shown;
};

/** The last of them: what was done last is undone first. */
const click = (within: Element | null, selector: string): boolean => {
  const found = [...(within?.querySelectorAll<HTMLElement>(selector) ?? [])].at(-1);
  found?.click();
  return found != null;
};

const onKey = (event: KeyboardEvent<HTMLElement>) => {
  const at = event.target as HTMLElement;
  const list = event.currentTarget;
  const row = at.closest('[data-row]');
  // A key held down is one press: it would sign and undo by turns.
  if (event.repeat && event.key === 'Enter') event.preventDefault();
  if (!row || !at.closest('[data-keys]') || event.ctrlKey || event.metaKey || event.altKey) return;
  const by = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (by !== undefined) {
    const rows = [...list.querySelectorAll('[data-row]')].filter((one) => one.querySelector('[data-item]'));
    rows[rows.indexOf(row) + by]?.querySelector<HTMLElement>('[data-item]')?.focus();
    event.preventDefault();
  }
  const key = event.key.toLowerCase();
  if (key === 'm' && click(row, '[data-menu]')) event.preventDefault();
  if (key === 'z' && click(row, '[data-undo]')) event.preventDefault();
};

export interface WorkbenchProps
  extends Pick<RowProps, 'colleagues' | 'signer' | 'againHours' | 'mostAgainHours' | 'readAt'> {
  readonly rows: AsText<readonly BenchRow[]>;
}

/** A group of work: its name stands once, beside its rows. */
const Group = ({ work, children }: { readonly work: Work; readonly children: ReactNode }) => (
  <section className={`work work-${work}`} aria-labelledby={`work-${work}`}>
    <div className="work-head">
      <h2 id={`work-${work}`}>
        <Mark shape={heads[work].shape} /> {heads[work].text}
      </h2>
      {work === 'danger' ? <p>{say('danger-means')}</p> : null}
    </div>
    <ol className="work-rows">{children}</ol>
  </section>
);

const useKept = (rows: readonly BenchRow[]) => {
  const [kept, setKept] = useState<ReadonlyMap<string, Kept>>(new Map());
  const shown = withKept(rows, kept);
  const keep = (row: BenchRow, change: (done: readonly Done[]) => readonly Done[]) =>
    setKept((before) => {
      const known = before.get(row.patientId);
      const place = shown.findIndex((one) => one.patientId === row.patientId);
      const after = known ? known.after : (shown[place - 1]?.patientId ?? null);
      return new Map(before).set(row.patientId, { row, after, done: change(known?.done ?? []) });
    });
  return { shown, keep, doneOf: (patientId: string) => kept.get(patientId)?.done ?? [] };
};

/** Where the pressed button is gone with what it did, the focus goes on in the same row. */
const useFocusKept = () => {
  const list = useRef<HTMLDivElement>(null);
  const row = useRef<string | null>(null);
  useEffect(() => {
    if (row.current === null || document.activeElement !== document.body) return;
    const at = [...(list.current?.querySelectorAll<HTMLElement>('[data-row]') ?? [])].find(
      (one) => one.dataset.row === row.current,
    );
    // To the name: on a button, a second press would undo what the first one did.
    at?.querySelector<HTMLElement>('a[data-keys]')?.focus();
  });
  return {
    list,
    track: (patientId: string) => {
      row.current = patientId;
    },
  };
};

export const Workbench = ({ rows: sent, ...shared }: WorkbenchProps) => {
  const router = useRouter();
  const rows = useMemo(() => fromText(sent), [sent]);
  const { shown, keep, doneOf } = useKept(rows);
  const { list, track } = useFocusKept();
  const [said, setSaid] = useState('');
  const tell = (row: BenchRow, text: string, change: (done: readonly Done[]) => readonly Done[]) => {
    keep(row, change);
    setSaid(`${row.name}: ${text}`);
    router.refresh();
  };
  const propsOf = (row: BenchRow): RowProps => ({
    ...shared,
    row,
    done: doneOf(row.patientId),
    isListed: rows.some(({ patientId }) => patientId === row.patientId),
    onDone: (done) => tell(row, done.text, (before) => [...before, done]),
    onUndone: ({ id, text }) =>
      tell(row, say('undone', { text }), (before) =>
        before.map((one) => (one.id === id ? { ...one, isUndone: true } : one)),
      ),
  });
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys belong to the buttons and links inside, which can be used without them.
    <div
      className="worklist"
      ref={list}
      onKeyDown={onKey}
      onFocus={({ target }) => track(target.closest<HTMLElement>('[data-row]')?.dataset.row ?? '')}
    >
      <p role="status" className="visually-hidden">
        {said}
      </p>
      {order
        .filter((work) => shown.some((row) => row.work === work))
        .map((work) => (
          <Group key={work} work={work}>
            {shown
              .filter((row) => row.work === work)
              .map((row) => (
                <Row key={row.patientId} {...propsOf(row)} />
              ))}
          </Group>
        ))}
    </div>
  );
};
