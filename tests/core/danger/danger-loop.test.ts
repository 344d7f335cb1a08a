/**
 * The life of a warning sign and of its pause: every event in every state. The states and what each event
 * may do are this project's own rule, proposed, to be confirmed by a licensed clinician.
 */
import { describe, expect, it } from 'vitest';
import type { DangerRecord } from '#core/danger/danger.ts';
import { pausesAt, signStatesAt } from '#core/danger/danger-state.ts';
import { planFor } from '#core/plan/plan-for.ts';
import { hoursAfter, inputs, noon, versions } from '../plan/plan-inputs.ts';

const by = 'P. Okonma';
const base: DangerRecord = {
  signs: [],
  acknowledgements: [],
  contacts: [],
  pauses: [],
  resumptions: [],
};

type Event = (record: DangerRecord, at: number) => DangerRecord;

const report =
  (id = 'sign'): Event =>
  (record, at) => ({
    ...record,
    signs: [
      ...record.signs,
      {
        id,
        source: 'patient',
        flags: ['calf-pain-swelling'],
        joint: null,
        urgency: 'same-day',
        reportedAt: at,
        reportedBy: 'Ana',
      },
    ],
    pauses: [
      ...record.pauses,
      {
        id: `pause-${id}`,
        cause: 'warning-sign',
        signId: id,
        joint: null,
        reason: 'A warning sign was reported.',
        until: null,
        at,
        by,
      },
    ],
  });
const acknowledge: Event = (record, at) => ({
  ...record,
  acknowledgements: [...record.acknowledgements, { signId: 'sign', at, by }],
});
const contact =
  (reached: 'patient' | 'carer' | 'nobody', signIds: readonly string[] = ['sign']): Event =>
  (record, at) => ({
    ...record,
    contacts: [
      ...record.contacts,
      {
        id: `contact-${at}`,
        signIds,
        decisionIds: [],
        at,
        by,
        reached,
        found: reached === 'nobody' ? null : 'Calf soft, not swollen.',
        advised: reached === 'nobody' ? null : 'Ring if it swells.',
        referredTo: null,
        nextAt: reached === 'nobody' ? at + 2 * 3_600_000 : null,
      },
    ],
  });
const resume =
  (itemId: string | null): Event =>
  (record, at) => ({
    ...record,
    resumptions: [...record.resumptions, { pauseId: 'pause-sign', itemId, reason: 'Seen today.', at, by }],
  });

/** Events one hour apart from noon on. */
const told = (...events: readonly Event[]): DangerRecord =>
  events.reduce((record, event, place) => event(record, hoursAfter(place)), base);

const states = {
  nothing: [],
  reported: [report()],
  acknowledged: [report(), acknowledge],
  attempted: [report(), acknowledge, contact('nobody')],
  'reached, paused': [report(), acknowledge, contact('patient')],
  'partly resumed': [report(), acknowledge, contact('patient'), resume('curl')],
  resumed: [report(), acknowledge, contact('patient'), resume(null)],
} as const satisfies Readonly<Record<string, readonly Event[]>>;

const events = {
  'the same sign again': report('again'),
  'it is acknowledged': acknowledge,
  'an attempt reaches nobody': contact('nobody'),
  'a contact reaches the patient': contact('patient'),
  'a contact reaches the carer': contact('carer'),
  'a contact that names another sign': contact('patient', ['other']),
  'one exercise is resumed': resume('curl'),
  'the whole pause is resumed': resume(null),
} as const satisfies Readonly<Record<string, Event>>;

type State = keyof typeof states;
type EventName = keyof typeof events;

/** State of the first sign, exercises that may be done, open signs. */
type Cell = readonly [sign: string, doable: number, open: number];

const none = (...[sign, doable, open]: Cell): Readonly<Record<EventName, Cell>> => {
  const same: Cell = [sign, doable, open];
  return {
    'the same sign again': ['-', 0, open + 1],
    'it is acknowledged': same,
    'an attempt reaches nobody': same,
    'a contact reaches the patient': same,
    'a contact reaches the carer': same,
    'a contact that names another sign': same,
    'one exercise is resumed': same,
    'the whole pause is resumed': same,
  };
};

const table: Readonly<Record<State, Readonly<Record<EventName, Cell>>>> = {
  nothing: { ...none('-', 3, 0), 'the same sign again': ['reported', 0, 1] },
  reported: {
    ...none('reported', 0, 1),
    'the same sign again': ['reported', 0, 2],
    'it is acknowledged': ['acknowledged', 0, 1],
    'an attempt reaches nobody': ['attempted', 0, 1],
    'a contact reaches the patient': ['ended', 0, 0],
    'a contact reaches the carer': ['ended', 0, 0],
  },
  acknowledged: {
    ...none('acknowledged', 0, 1),
    'the same sign again': ['acknowledged', 0, 2],
    'an attempt reaches nobody': ['attempted', 0, 1],
    'a contact reaches the patient': ['ended', 0, 0],
    'a contact reaches the carer': ['ended', 0, 0],
  },
  attempted: {
    ...none('attempted', 0, 1),
    'the same sign again': ['attempted', 0, 2],
    'a contact reaches the patient': ['ended', 0, 0],
    'a contact reaches the carer': ['ended', 0, 0],
  },
  'reached, paused': {
    ...none('ended', 0, 0),
    'the same sign again': ['ended', 0, 1],
    'one exercise is resumed': ['ended', 1, 0],
    'the whole pause is resumed': ['ended', 3, 0],
  },
  'partly resumed': {
    ...none('ended', 1, 0),
    'the same sign again': ['ended', 0, 1],
    'the whole pause is resumed': ['ended', 3, 0],
  },
  resumed: { ...none('ended', 3, 0), 'the same sign again': ['ended', 0, 1] },
};

const cellOf = (record: DangerRecord): Cell => {
  const plan = planFor(inputs({ danger: record, at: { instant: hoursAfter(10), day: '2026-03-09' } }));
  return [
    plan.signs[0]?.state ?? '-',
    plan.items.filter(({ today }) => today === 'as-planned').length,
    plan.signs.filter(({ endedBy }) => endedBy === null).length,
  ];
};

describe('a warning sign', () => {
  const cells = Object.keys(states).flatMap((state) =>
    Object.keys(events).map((event) => [state as State, event as EventName] as const),
  );

  it('is told in a table of every state with every event', () => {
    expect(cells).toHaveLength(Object.keys(states).length * Object.keys(events).length);
    for (const state of Object.keys(states) as State[])
      expect(Object.keys(table[state]).sort()).toEqual(Object.keys(events).sort());
  });

  it.each(cells)(
    '%s, then %s: the sign, what may be done and what stays open are as the table says',
    (state, event) => {
      expect(cellOf(told(...states[state], events[event]))).toEqual(table[state][event]);
    },
  );

  it('ends by no contact from before it was reported', () => {
    const early = contact('patient')(base, noon - 1);
    expect(cellOf(report()(early, noon))[0]).toBe('reported');
    expect(cellOf(contact('patient')(report()(base, noon), noon))[0]).toBe('ended');
  });

  it('is what it is whatever the order in which its records are read', () => {
    const record = told(report(), acknowledge, contact('nobody'), contact('patient'), resume('curl'));
    const turned: DangerRecord = {
      signs: record.signs.toReversed(),
      acknowledgements: record.acknowledgements.toReversed(),
      contacts: record.contacts.toReversed(),
      pauses: record.pauses.toReversed(),
      resumptions: record.resumptions.toReversed(),
    };
    expect(signStatesAt(turned, hoursAfter(9))).toEqual(signStatesAt(record, hoursAfter(9)));
    expect(cellOf(turned)).toEqual(cellOf(record));
  });

  it('counts up the attempts that reached nobody and takes the next due time from the last', () => {
    const [state] = signStatesAt(told(report(), contact('nobody'), contact('nobody')), hoursAfter(5));
    expect([state?.failedAttempts, state?.contactDueAt]).toEqual([2, hoursAfter(4)]);
  });

  it.each([
    ['emergency', 0],
    ['same-day', 4],
    ['routine', 48],
  ] as const)('of class %s is due for a contact %i hours after it was reported', (urgency, hours) => {
    const record = told(report());
    const signs = record.signs.map((sign) => ({ ...sign, urgency }));
    expect(signStatesAt({ ...record, signs }, noon)[0]?.contactDueAt).toBe(hoursAfter(hours));
  });

  it('keeps what was resumed while it was open paused', () => {
    const record = told(report(), resume(null), contact('patient'));
    expect(cellOf(record)).toEqual(['ended', 0, 0]);
  });
});

describe('a pause for another cause', () => {
  const holiday = (joint: 'right-knee' | null): DangerRecord => ({
    ...base,
    pauses: [
      {
        id: 'pause-sign',
        cause: 'holiday',
        signId: null,
        joint,
        reason: 'Two weeks by the sea.',
        until: '2026-03-23',
        at: noon,
        by,
      },
    ],
  });

  it('holds everything, or the exercises of one joint, and is resumed without a contact', () => {
    expect(cellOf(holiday(null))).toEqual(['-', 0, 0]);
    expect(cellOf(holiday('right-knee'))).toEqual(['-', 1, 0]);
    expect(cellOf(resume('chair')(holiday('right-knee'), hoursAfter(1)))).toEqual(['-', 2, 0]);
    expect(cellOf(resume(null)(holiday(null), hoursAfter(1)))).toEqual(['-', 3, 0]);
  });

  it('opens nothing by its day: it is asked about, and stays', () => {
    const at = { instant: hoursAfter(24 * 20), day: '2026-03-29' };
    expect(planFor(inputs({ danger: holiday(null), at })).items.map(({ today }) => today)).toEqual(
      versions.map(() => 'none'),
    );
    expect(pausesAt(holiday(null), [], at.instant)).toHaveLength(1);
  });
});
