/** Agreements, breaks and events: what each closes, and what rests under way. */

import { describe, expect, it } from 'vitest';
import { type CareAround, careReasons, stopsStepsAhead, withCare } from '#core/episode/care-eligibility.ts';
import {
  type ConsentKind,
  type ConsentRow,
  hangsOn,
  isGiven,
  missingConsents,
  proposedWording,
} from '#core/episode/consent.ts';
import type { EpisodeChange } from '#core/episode/episode.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import type { RecordedEvent } from '#core/episode/event-effects.ts';
import { asksNothing, hasWithdrawnLately, suspensionOn } from '#core/episode/suspensions.ts';
import type { OcclusionDose } from '#core/prescribing/dose.ts';
import { methods } from '#core/prescribing/methods.ts';
import { methodOutcomes } from '#core/screening/outcomes.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { outcomesInput } from '../screening/answers.ts';
import { change, episode } from './episodes.ts';

const today = '2026-03-20';
const at = (day: string) => Date.parse(`${day}T09:00:00Z`);

const said = (kind: ConsentKind, act: ConsentRow['act'], day = '2026-03-01'): ConsentRow => ({
  kind,
  act,
  ...proposedWording,
  at: at(day),
  by: 'Patient',
  reason: null,
});
const bothGiven = [said('occlusion-supervised', 'given'), said('occlusion-unsupervised', 'given')];

const cuffDose = (supervised: boolean): OcclusionDose => ({
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'right',
  sets: 4,
  scheme: [30, 15, 15, 15],
  restSeconds: 30,
  secondsPerRepetition: 3,
  sessionsPerWeek: 2,
  loadKg: 3,
  oneRepMaxKg: 10,
  cuff: { kind: 'elastic-wrap', tightness: 7 },
  inflation: 'continuous',
  capSeconds: 480,
  supervised,
});

const care = (over: Partial<CareAround> = {}): CareAround => ({
  episodeStatus: episodeStatusOn(
    [episode(change('open', '2026-03-01'), change('active', '2026-03-02'))],
    today,
  ),
  consents: bothGiven,
  events: [],
  screening: { day: '2026-03-02', recordedAt: at('2026-03-02') },
  ...over,
});

const happened = (kind: RecordedEvent['kind'], day: string): RecordedEvent => ({
  id: kind,
  kind,
  day,
  joint: null,
  recordedAt: at(day),
  remark: null,
  medicine: null,
  courseForm: null,
});

describe('agreement', () => {
  it('nobody asked is not agreed; given, taken back and given again: the last word counts', () => {
    expect(isGiven([], 'occlusion-supervised')).toBe(false);
    const rows = [said('sharing', 'given', '2026-03-01'), said('sharing', 'withdrawn', '2026-03-03')];
    expect(isGiven(rows.slice(0, 1), 'sharing')).toBe(true);
    expect(isGiven(rows, 'sharing')).toBe(false);
    expect(isGiven([...rows, said('sharing', 'given', '2026-03-05')], 'sharing')).toBe(true);
    expect(isGiven(rows, 'export')).toBe(false);
  });

  it.each([
    ['low load', lowLoadDose, [], []],
    ['a cuff with a clinician present', cuffDose(true), [], ['occlusion-supervised']],
    ['a cuff alone', cuffDose(false), [], ['occlusion-supervised', 'occlusion-unsupervised']],
    [
      'a cuff alone, agreed with a clinician present only',
      cuffDose(false),
      bothGiven.slice(0, 1),
      ['occlusion-unsupervised'],
    ],
    ['a cuff alone, both agreed', cuffDose(false), bothGiven, []],
  ])('%s misses', (_name, dose, rows, kinds) => {
    expect(missingConsents(rows, dose).map(({ kind }) => kind)).toEqual(kinds);
  });

  it('taking back work with a clinician present ends work alone as well; the other way round it does not', () => {
    expect(hangsOn(cuffDose(false), 'occlusion-supervised')).toBe(true);
    expect(hangsOn(cuffDose(true), 'occlusion-unsupervised')).toBe(false);
    expect(hangsOn(lowLoadDose, 'occlusion-supervised')).toBe(false);
  });

  it('taken back within the last week is told on the phone; after seven days it is not', () => {
    const rows = [...bothGiven, said('occlusion-unsupervised', 'withdrawn', '2026-03-10')];
    expect(hasWithdrawnLately(rows, at('2026-03-16'))).toBe(true);
    expect(hasWithdrawnLately(rows, at('2026-03-17'))).toBe(false);
    expect(hasWithdrawnLately(bothGiven, at('2026-03-02'))).toBe(false);
  });
});

const ineligibleMethods = (around: CareAround) =>
  methods.filter((method) => careReasons(around, method).length > 0);
const restsFor = (around: CareAround) => ({
  lowLoad: suspensionOn(around, lowLoadDose)?.code ?? null,
  cuff: suspensionOn(around, cuffDose(true))?.code ?? null,
});
const open = change('open', '2026-03-01');
const broken = (breakKind: 'holiday' | 'illness' | 'hospital') =>
  change('on-break', '2026-03-10', { breakKind });
const active = change('active', '2026-03-15');
const ended = (state: 'discharged' | 'transferred' | 'died') => change(state, '2026-03-10');

const without = (act: 'refused' | 'withdrawn') => care({ consents: [...bothGiven, said('treatment', act)] });
const neverRecorded = care({ episodeStatus: episodeStatusOn([], today) });
/** Opened on the first of the month, and then. */
const careOnce = (...changes: readonly EpisodeChange[]): CareAround =>
  care({ episodeStatus: episodeStatusOn([episode(open, ...changes)], today) });

describe('a break, the return, the end of care', () => {
  it.each([
    ['in care', care(), [], null, null],
    ['nobody agreed to a cuff', care({ consents: [] }), ['occlusion'], null, 'no-consent'],
    [
      'treatment consented to',
      care({ consents: [...bothGiven, said('treatment', 'given')] }),
      [],
      null,
      null,
    ],
    ['treatment refused', without('refused'), methods, 'no-consent', 'no-consent'],
    ['treatment withdrawn', without('withdrawn'), methods, 'no-consent', 'no-consent'],
    ['never recorded', neverRecorded, [], null, null],
    ['on a break', careOnce(broken('holiday')), methods, 'on-break', 'on-break'],
    ['back from a holiday', careOnce(broken('holiday'), active), methods, null, 'returned'],
    ['back from an illness', careOnce(broken('illness'), active), methods, 'returned', 'returned'],
    ['back from hospital', careOnce(broken('hospital'), active), methods, 'returned', 'returned'],
    ['discharged', careOnce(ended('discharged')), methods, 'care-closed', 'care-closed'],
    ['transferred', careOnce(ended('transferred')), methods, 'care-closed', 'care-closed'],
    ['died', careOnce(ended('died')), methods, 'care-closed', 'care-closed'],
  ] as const)('%s', (_name, around, contraindicates, lowLoad, cuff) => {
    expect(ineligibleMethods(around)).toEqual(contraindicates);
    expect(restsFor(around)).toEqual({ lowLoad, cuff });
  });

  it.each([
    ['the day before the return', '2026-03-14', true],
    ['the day of the return', '2026-03-15', false],
  ])('screened on %s', (_name, day, isClosed) => {
    const around = { ...careOnce(broken('illness'), active), screening: { day, recordedAt: at(day) } };
    expect(ineligibleMethods(around).length > 0).toBe(isClosed);
    expect(restsFor(around).lowLoad).toBe(isClosed ? 'returned' : null);
  });

  it('asks for nothing on a break and after the end, and goes on asking otherwise', () => {
    const silent = [careOnce(broken('holiday')), careOnce(ended('discharged')), care(), neverRecorded];
    expect(silent.map(asksNothing)).toEqual([true, true, false, false]);
  });
});

describe('something that happened', () => {
  it.each([
    ['medicine-change', ['occlusion'], null, 'after-event'],
    ['joint-injection', [], null, null],
    ['surgery', ['variation', 'low-load', 'occlusion'], 'after-event', 'after-event'],
    ['fall', ['occlusion'], null, 'after-event'],
    ['illness', ['variation', 'low-load', 'occlusion'], 'after-event', 'after-event'],
  ] as const)('%s closes %s until the screening is asked again', (kind, contraindicates, lowLoad, cuff) => {
    const around = care({ events: [happened(kind, '2026-03-10')] });
    expect(ineligibleMethods(around)).toEqual(contraindicates);
    expect(restsFor(around)).toEqual({ lowLoad, cuff });
    const asked = { ...around, screening: { day: '2026-03-11', recordedAt: at('2026-03-11') } };
    expect(ineligibleMethods(asked)).toEqual([]);
    expect(restsFor(asked)).toEqual({ lowLoad: null, cuff: null });
  });

  it('a screening of the same day counts only when it was recorded after the event', () => {
    const event = happened('illness', '2026-03-10');
    const screenedAt = (recordedAt: number) =>
      care({ events: [event], screening: { day: '2026-03-10', recordedAt } });
    expect(ineligibleMethods(screenedAt(event.recordedAt - 1))).toHaveLength(3);
    expect(ineligibleMethods(screenedAt(event.recordedAt))).toEqual([]);
  });
});

describe('beside what screening leaves', () => {
  const outcomes = methodOutcomes(outcomesInput());

  it('nothing opens by it, every reason is told, and all twelve outcomes are there', () => {
    const around = care({ consents: [], events: [happened('illness', '2026-03-10')] });
    const left = withCare(outcomes, around);
    expect(left).toHaveLength(12);
    for (const outcome of left) {
      expect(outcome.eligibility).toBe('closed');
      const codes = outcome.reasons.map(({ code }) => code);
      expect(codes).toContain('after-illness');
      expect(codes.includes('no-consent-occlusion-supervised')).toBe(outcome.method === 'occlusion');
      expect(outcome.reasons.every(({ clearedBy }) => clearedBy === null)).toBe(true);
    }
  });

  it('changes nothing while care goes on and agreement stands', () => {
    expect(withCare(outcomes, care())).toEqual(outcomes);
  });

  it.each([
    ['an illness', care({ events: [happened('illness', '2026-03-10')] }), true, true],
    ['a fall', care({ events: [happened('fall', '2026-03-10')] }), false, true],
    ['a return', careOnce(broken('holiday'), active), true, true],
    ['an agreement that is missing', care({ consents: [] }), false, false],
    ['a refusal of treatment', without('refused'), true, true],
    ['nothing', care(), false, false],
  ])('after %s no step approved ahead acts by itself until asked again', (_name, around, light, cuff) => {
    const left = withCare(outcomes, around);
    expect(stopsStepsAhead(left, 'low-load')).toBe(light);
    expect(stopsStepsAhead(left, 'occlusion')).toBe(cuff);
  });
});
