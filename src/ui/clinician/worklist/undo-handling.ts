'use client';
/** Taking back an acknowledgement or an assignment; of danger neither is taken back. */
import { say } from '#messages/en/staff/worklist.ts';
import { client } from '../client.ts';
import type { BenchRow } from './row-props.ts';
import type { Done } from './row-state.ts';

export const undoOf = (
  { patientId, item, canSnooze }: BenchRow,
  act: 'acknowledge' | 'assign',
): Pick<Done, 'note' | 'undo'> =>
  canSnooze
    ? { note: '', undo: () => client.clinician.worklist.takeBack.mutate({ patientId, key: item.key, act }) }
    : { note: say('danger-stays-handled'), undo: null };
