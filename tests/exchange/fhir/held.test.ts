/** A plan that rests says so: under a pause, and during a break of care. */
import type { CarePlan, ServiceRequest } from 'fhir/r4';
import { describe, expect, it } from 'vitest';
import { bundleOf } from '#exchange/fhir/bundle.ts';
import { faultsOfBundle } from '#exchange/fhir/walker/references.ts';
import type { PersonRecord } from '#exchange/person-record.ts';
import { own } from '../rows/begin.ts';
import { wholeRecord } from '../whole-record.ts';

const pause = (joint: string | null) => ({
  ...own('pause-9'),
  ...{ cause: 'clinician', signId: null, joint, reason: 'Surgery', until: null },
});
const resumed = (itemId: string | null) => ({
  ...own('resumed-9'),
  pauseId: 'pause-9',
  itemId,
  reason: 'Seen',
});
const change = (state: string) => ({ ...own('change-9'), episodeId: 'episode-9', state, on: '2026-03-02' });

/** The whole record with other rows in some of its tables. */
const statesWith = (over: Readonly<Record<string, readonly object[]>>) => {
  const record = wholeRecord();
  const rows = new Proxy(record.rows, { get: (all, name) => over[name as string] ?? Reflect.get(all, name) });
  const bundle = bundleOf({ ...record, rows } as PersonRecord);
  expect(faultsOfBundle(bundle)).toEqual([]);
  const all = bundle.entry!.map(({ resource }) => resource);
  const of = <T>(type: string) => all.filter((one) => one?.resourceType === type) as unknown as T[];
  return [
    of<CarePlan>('CarePlan')[0]!.status,
    of<ServiceRequest>('ServiceRequest').find(({ id }) => id === 'dose-2')!.status,
  ];
};

describe('a plan in force', () => {
  it.each<[string, Readonly<Record<string, readonly object[]>>, string]>([
    ['with nothing paused', { pause: [] }, 'active'],
    ['with everything paused', { pause: [pause(null)], pause_resumption: [] }, 'on-hold'],
    ['with its joint paused', { pause: [pause('right-knee')], pause_resumption: [] }, 'on-hold'],
    ['with another joint paused', { pause: [pause('left-hip')], pause_resumption: [] }, 'active'],
    ['resumed as a whole', { pause: [pause(null)], pause_resumption: [resumed(null)] }, 'active'],
    ['its exercise resumed', { pause: [pause(null)], pause_resumption: [resumed('item-1')] }, 'active'],
    ['another exercise resumed', { pause: [pause(null)], pause_resumption: [resumed('item-9')] }, 'on-hold'],
  ])('%s', (_, over, state) => {
    expect(statesWith(over)).toEqual([state, state]);
  });

  it('rests during a break of care, unless another episode of care goes on', () => {
    const begun = {
      ...own('episode-9'),
      diagnoses: ['Pain'],
      joints: [],
      followedJoints: [],
      goals: [],
      contacts: [],
    };
    const broken = {
      episode: [{ ...begun, referrer: null }],
      episode_change: [change('on-break')],
      pause: [],
    };
    expect(statesWith(broken)).toEqual(['on-hold', 'on-hold']);
    expect(statesWith({ ...broken, episode_change: [change('active')] })).toEqual(['active', 'active']);
  });
});

it('gender is said to be not known: what the clinic keeps for its formulas is something else', () => {
  const patient = bundleOf(wholeRecord()).entry!.find(({ resource }) => resource?.resourceType === 'Patient');
  expect(patient?.resource).toMatchObject({ gender: 'unknown' });
});
