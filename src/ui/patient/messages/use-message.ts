'use client';
/** A message being typed, kept on this phone until it is sent; it goes the way of every entry, also without signal. */
import { useCallback } from 'react';
import { messageDraftKey } from '#ui/on-device/phone-store.ts';
import { messageEntry } from '../outbox/entry-kinds.ts';
import { type OutboxHandle, type Owner, useOutbox } from '../outbox/use-outbox.ts';
import { useSavedValue } from '../phone/use-saved-reducer.ts';
import { phoneDay } from '../view-on-day.ts';

const isText = (value: unknown): value is string => typeof value === 'string';

export interface MessageHandle {
  readonly text: string;
  /** The phone has been read. */
  readonly isReady: boolean;
  readonly type: (text: string) => void;
  /** Whether it is kept on this phone: only then is the field emptied. */
  readonly send: () => Promise<boolean>;
  readonly outbox: OutboxHandle;
}

export const useMessage = (owner: Owner, clock: () => number): MessageHandle => {
  const outbox = useOutbox(owner, clock);
  const draft = useSavedValue<string>({ ownerId: owner.id, key: messageDraftKey(owner.id) }, isText);
  const { state, begin, drop } = draft;
  const { save } = outbox;
  const text = state ?? '';
  const send = useCallback(async () => {
    const entry = messageEntry({ entryId: crypto.randomUUID(), day: phoneDay(clock()) }, text);
    const isKept = await save('message', entry);
    if (isKept) drop();
    return isKept;
  }, [clock, text, save, drop]);
  // An empty field is no message that was begun.
  const type = useCallback((next: string) => (next === '' ? drop() : begin(next)), [drop, begin]);
  return { text, isReady: state !== undefined, type, send, outbox };
};
