/** A whole record as a Bundle: accepted by the table and by two other libraries, and nothing said that was not. */
import type { Bundle, Observation } from 'fhir/r4';
import { describe, expect, it } from 'vitest';
import { bundleOf, checkedBundleOf, NotValid } from '#exchange/fhir/bundle.ts';
import { loincCodes } from '#exchange/fhir/codes/loinc.ts';
import { isUnit } from '#exchange/fhir/codes/units.ts';
import { resourceTypes } from '#exchange/fhir/definitions/table.ts';
import { loincNotice } from '#exchange/fhir/names.ts';
import { personLines, sharedLines } from '#exchange/fhir/ndjson.ts';
import { faultsOfBundle } from '#exchange/fhir/walker/references.ts';
import { wholeRecord } from '../whole-record.ts';
import { faultsByCodes, faultsByTypes } from './opinions.ts';

const bundle = bundleOf(wholeRecord());
const found = <T>(type: string, id: string, of: Bundle = bundle): T =>
  of.entry!.find(({ resource }) => resource?.resourceType === type && resource.id === id)!.resource as T;
const observation = (id: string) => found<Observation>('Observation', id);

describe('a record as a Bundle', () => {
  it('is accepted by the table of the standard and by both other libraries [exchange 119]', () => {
    expect(faultsOfBundle(bundle)).toEqual([]);
    expect(faultsByCodes(bundle)).toEqual([]);
    expect(faultsByTypes(bundle)).toEqual([]);
  });

  it('holds every kind of resource that is written at all', () => {
    const made = new Set(bundle.entry!.map(({ resource }) => resource!.resourceType));
    expect(resourceTypes.filter((type) => type !== 'Bundle' && !made.has(type as never))).toEqual([]);
  });

  it('is a collection, names the licence of its codes and claims to be no patient summary', () => {
    expect(bundle.type).toBe('collection');
    const text = JSON.stringify(bundle);
    expect(text).toContain(JSON.stringify(loincNotice).slice(1, -1));
    expect(text).not.toMatch(/uv\/ips|Composition/);
    expect(text).toContain('no International Patient Summary');
  });

  it('names the profiles of vital signs, each on the day it was measured', () => {
    const pressure = observation('m-bp');
    expect(pressure.meta?.profile).toEqual(['http://hl7.org/fhir/StructureDefinition/bp']);
    expect(pressure.effectiveDateTime).toBe('2026-03-02');
    const parts = pressure.component!.flatMap(({ code, valueQuantity }) => [
      [code.coding?.[0]?.code, valueQuantity?.value, valueQuantity?.code],
    ]);
    expect(parts.slice(0, 2)).toEqual([
      ['8480-6', 126, 'mm[Hg]'],
      ['8462-4', 78, 'mm[Hg]'],
    ]);
    expect(observation('m-weight').valueQuantity).toMatchObject({ value: 71.5, code: 'kg' });
  });

  it('gives the right hand its free code and the left, which has none that is known, the own one alone', () => {
    const codes = (id: string) => observation(id).code.coding?.map(({ code }) => code);
    expect(codes('m-grip-r')).toEqual(['83174-3', 'measure.grip']);
    expect(codes('m-grip-l')).toEqual(['measure.grip']);
  });

  it('never writes what was not answered, and never as zero; a zero that was said stays', () => {
    expect(bundle.entry!.some(({ resource }) => resource?.id === 'session-1-right-knee-after')).toBe(false);
    expect(observation('session-1-right-knee-during').valueQuantity?.value).toBe(0);
    const unanswered = observation('morning-1-left-knee-morning');
    expect([unanswered.valueQuantity, unanswered.component]).toEqual([undefined, undefined]);
    expect(observation('set-1').component?.some(({ code }) => code.coding?.[0]?.code === 'set.reserve')).toBe(
      false,
    );
    expect(
      observation('baseline-1').component?.some(({ code }) => code.coding?.[0]?.code === 'baseline.pain'),
    ).toBe(false);
  });

  it('says of what was entered in error that it was, and of an amended session', () => {
    expect(observation('m-grip-l').status).toBe('entered-in-error');
    expect(found<{ status: string }>('Procedure', 'session-1').status).toBe('entered-in-error');
  });

  it('says of a session that a warning sign ended whether anything of it was done', () => {
    const statusIn = (of: Bundle) => found<{ status: string }>('Procedure', 'session-2', of).status;
    expect(statusIn(bundle)).toBe('not-done');
    const record = wholeRecord();
    const sets = record.rows.set_log.map((set) => ({ ...set, sessionId: 'session-2' }));
    const rows = new Proxy(record.rows, {
      get: (tables, name) => (name === 'set_log' ? sets : Reflect.get(tables, name)),
    });
    const worked = { ...record, rows };
    expect(statusIn(bundleOf(worked))).toBe('stopped');
  });

  it('carries each prescription with its whole dose and every caution; an unsigned one is a draft', () => {
    interface Request {
      readonly status: string;
      readonly intent: string;
      readonly note: readonly { readonly text: string }[];
    }
    expect(found<Request>('ServiceRequest', 'dose-2')).toMatchObject({ status: 'active', intent: 'order' });
    expect(found<Request>('ServiceRequest', 'dose-1').status).toBe('completed');
    const draft = found<Request>('ServiceRequest', 'dose-3');
    expect([draft.status, draft.intent]).toEqual(['draft', 'proposal']);
    expect(draft.note.map(({ text }) => text)).toContain('Caution: Stop at chest pain.');
    expect(JSON.stringify(draft)).toContain('"text":"15 to 25"');
  });

  it('estimates a maximum once for each equation, names it as the method and never gives one figure', () => {
    const estimates = bundle
      .entry!.map(({ resource }) => resource as Observation)
      .filter(({ id }) => id?.startsWith('m-rtf-'));
    expect(estimates.length).toBeGreaterThan(3);
    expect(new Set(estimates.map(({ method }) => method?.coding?.[0]?.code)).size).toBe(estimates.length);
  });

  it('gives the same resources as lines', () => {
    const record = wholeRecord();
    const lines = [...sharedLines(record), ...personLines(record)].map(({ text }) => JSON.parse(text));
    expect(lines).toEqual(bundle.entry!.map(({ resource }) => JSON.parse(JSON.stringify(resource))));
  });

  it('is not handed on where a row cannot be written as the standard asks, and says where', () => {
    const record = wholeRecord();
    const [weight] = record.rows.measurement;
    const broken = { ...record, rows: { ...record.rows, measurement: [{ ...weight!, day: '2026-02-31' }] } };
    const rows = new Proxy(broken.rows, { get: (all, name) => Reflect.get(all, name) ?? [] });
    expect(() => checkedBundleOf({ ...broken, rows } as never)).toThrow(NotValid);
    expect(() => checkedBundleOf({ ...broken, rows } as never)).toThrow(/effectiveDateTime/);
  });
});

/** Modulus 10 over every second digit doubled, as LOINC publishes it. */
const checkDigit = (number: string): number => {
  const digits = [...number].reverse().map(Number);
  const doubled =
    Number(
      digits
        .filter((_, place) => place % 2 === 0)
        .reverse()
        .join(''),
    ) * 2;
  const sum = [...`${doubled}`, ...digits.filter((_, place) => place % 2 === 1)]
    .map(Number)
    .reduce((total, digit) => total + digit, 0);
  return (10 - (sum % 10)) % 10;
};

const isLoinc = (code: string): boolean => {
  const [number = '', digit] = code.split('-');
  return checkDigit(number) === Number(digit);
};

describe('codes', () => {
  it.each([
    ['[exchange 84]', '72514-3', true],
    ['[exchange 85]', '29463-7', true],
    ['[exchange 86]', '85354-9', true],
    ['[exchange 87]', '8302-2', true],
    ['[exchange 88]', '8480-6', true],
    ['[exchange 89]', '8462-4', true],
    ['[exchange 90]', '8867-4', true],
    ['[exchange 91]', '29463-8', false],
  ])('%s: %s has the check digit of its number: %s', (_row, code, expected) => {
    expect(isLoinc(code)).toBe(expected);
  });

  it('that are written all have theirs', () => {
    expect([...loincCodes].filter((code) => !isLoinc(code))).toEqual([]);
  });

  it.each([
    ['[exchange 92]', 'kg', true],
    ['[exchange 93]', 'mm[Hg]', true],
    ['[exchange 94]', '{score}', true],
    ['[exchange 95]', '%', true],
    ['[exchange 97]', 'mmHg', false],
    ['[exchange 98]', 'kgs', false],
    ['[exchange 99]', 'Kg', false],
    ['[exchange 100]', 'bpm', false],
  ])('%s: the unit %s may be written: %s', (_row, unit, expected) => {
    expect(isUnit(unit)).toBe(expected);
  });
});
