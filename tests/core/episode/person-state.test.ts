/** The one word for where a person stands. The order of states is a choice of this project. */
import { describe, expect, it } from 'vitest';
import type { Pause, WarningSign } from '#core/danger/danger.ts';
import { pausesAt, signStatesAt } from '#core/danger/danger-state.ts';
import type { EpisodeStatus } from '#core/episode/episode-status.ts';
import { personStateOf } from '#core/episode/person-state.ts';

const sign: WarningSign = {
  id: 's1',
  source: 'patient',
  flags: [],
  joint: null,
  urgency: 'same-day',
  reportedAt: 10,
  reportedBy: 'Maeve',
};
const contact = {
  id: 'c1',
  signIds: ['s1'],
  decisionIds: [],
  at: 20,
  by: 'Nuala',
  reached: 'patient' as const,
  found: 'nothing new',
  advised: 'rest',
  referredTo: null,
  nextAt: null,
};
const pause = (over: Partial<Pause>): Pause => ({
  id: `p${over.at}`,
  cause: 'other',
  signId: null,
  joint: null,
  reason: 'Travelling',
  until: null,
  at: 30,
  by: 'Nuala',
  ...over,
});
const inCare = { state: 'in-care', change: null, returned: null } as EpisodeStatus;
const change = { on: '2026-02-20', to: 'discharged' } as EpisodeStatus['change'];
const closed = { state: 'closed', change, returned: null } as EpisodeStatus;

const stateOf = (
  { signs = [] as WarningSign[], contacts = [] as (typeof contact)[], pauses = [] as Pause[] },
  status: EpisodeStatus = inCare,
) => {
  const record = { signs, acknowledgements: [], contacts, pauses, resumptions: [] };
  const states = signStatesAt(record, 100);
  return personStateOf(states, pausesAt(record, states, 100), status);
};

describe('where a person stands', () => {
  it('an open sign outweighs everything, also the end of care', () => {
    const danger = { signs: [sign], pauses: [pause({ joint: 'left-knee' })] };
    expect(stateOf(danger)).toEqual({ state: 'warning-sign', since: 10 });
    expect(stateOf(danger, closed)).toMatchObject({ state: 'warning-sign' });
  });

  it('after a contact that reached the patient the pause it left is named, with its cause', () => {
    const left = pause({ cause: 'warning-sign', signId: 's1', at: 10, reason: '' });
    expect(stateOf({ signs: [sign], contacts: [contact], pauses: [left] })).toEqual({
      state: 'paused',
      cause: 'warning-sign',
      reason: '',
      until: null,
      since: 10,
    });
  });

  it('a contact that reached nobody leaves the sign', () => {
    const nobody = { ...contact, reached: 'nobody' as never, nextAt: 90 as never };
    expect(stateOf({ signs: [sign], contacts: [nobody] })).toMatchObject({ state: 'warning-sign' });
  });

  it('a pause of everything outweighs a joint and the end of care; a joint does not outweigh the end of care', () => {
    const joint = pause({ joint: 'left-knee', at: 31 });
    expect(stateOf({ pauses: [joint, pause({})] })).toMatchObject({ state: 'paused', since: 30 });
    expect(stateOf({ pauses: [pause({})] }, closed)).toMatchObject({ state: 'paused' });
    expect(stateOf({ pauses: [joint] })).toMatchObject({ state: 'joint-paused', joint: 'left-knee' });
    expect(stateOf({ pauses: [joint] }, closed)).toEqual({
      state: 'closed',
      on: '2026-02-20',
      to: 'discharged',
    });
  });

  it('says that no course of care was opened rather than that care goes on', () => {
    expect(stateOf({})).toEqual({ state: 'in-care' });
    expect(stateOf({}, { state: 'not-recorded', change: null, returned: null })).toEqual({
      state: 'not-recorded',
    });
  });
});
