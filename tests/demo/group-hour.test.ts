/** The group hour of the demo's today: people of the stories, each where the own story left them. */
import { expect, it } from 'vitest';
import { loadDemoClinic } from '#demo/load.ts';
import { asClinician } from '#tests/support/callers.ts';
import { freshStore } from '#tests/support/store.ts';
import { accessTo, target } from './told.ts';

it('shows seven people with their plans of today, one of them stopped, and lists the one that was cancelled', async () => {
  const store = freshStore();
  await loadDemoClinic(target(store));
  const { groupHours, groupSessions } = asClinician(accessTo(store)).clinician;
  const hours = await groupHours.list();
  expect(hours.map(({ entry, ended, people }) => [entry.when, ended, people])).toEqual([
    ['2026-04-06T10:00', 'cancelled', 0],
    ['2026-04-20T10:00', null, 7],
  ]);
  const people = await groupSessions.people({ hourId: hours[1]!.id });
  const shown = people.flatMap((one) => (one.name === null ? [] : [one]));
  expect(shown.map(({ name, today }) => [name, today.stop])).toEqual([
    ['Maeve Tarrowby', null],
    ['Desmond Aklavi', null],
    ['Chidi Varrenholt', null],
    ['Yewande Coldrick', 'warning-sign'],
    ['Anselm Thistlewood', null],
    ['Philippa Norregate', null],
    ['Thaddea Wrenfield', null],
  ]);
  const hip = shown.find(({ patientId }) => patientId === 'kidney-lock')!.today.exercises;
  expect(hip.map(({ isPlanned }) => isPlanned)).toEqual(hip.map(() => false));
  store.close();
}, 120_000);
