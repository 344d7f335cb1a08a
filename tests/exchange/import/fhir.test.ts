/** A FHIR file of another system: what is taken of it, and a line with the reason for everything that is not. */
import { describe, expect, it } from 'vitest';
import type { Asked } from '#exchange/import/prepare.ts';
import { readThrough, thingsIn, whose } from './read-through.ts';

type Json = Readonly<Record<string, unknown>>;

const person = {
  ...{ resourceType: 'Patient', id: 'p', birthDate: '1958-06-01' },
  name: [{ family: 'PERSON', given: ['Test'] }],
};
const subject = { reference: 'Patient/p' };
const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
const amount = (value: number, code: string) => ({ value, code, system: 'http://unitsofmeasure.org' });
const observed = (over: Json): Json => ({
  ...{ resourceType: 'Observation', id: 'o', status: 'final', subject, effectiveDateTime: '2026-02-01' },
  ...over,
});
const weight = observed({ code: loinc('29463-7'), valueQuantity: amount(80, 'kg') });
const bundle = (...resources: readonly unknown[]): string =>
  JSON.stringify({
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  });

const asBundle: Asked = { format: 'fhir', isLines: false };
const asLines: Asked = { format: 'fhir', isLines: true };
const read = (...resources: readonly unknown[]) => readThrough(bundle(...resources), asBundle);
const taken = async (over: Json) => (await thingsIn(await read(person, observed(over))))[0]?.value;
const why = async (over: Json) => (await read(person, observed(over))).faults.at(-1);

describe('what is taken of a FHIR file', () => {
  it.each<[string, Json, object]>([
    [
      'weight',
      { code: loinc('29463-7'), valueQuantity: amount(80, 'kg') },
      { what: 'body-mass', massKg: 80 },
    ],
    [
      'weight in pounds',
      { code: loinc('29463-7'), valueQuantity: amount(180, '[lb_av]') },
      { what: 'body-mass', massKg: 81.6466266 },
    ],
    [
      'height',
      { code: loinc('8302-2'), valueQuantity: amount(1.75, 'm') },
      { what: 'stature', statureCm: 175 },
    ],
    [
      'blood pressure',
      {
        code: loinc('85354-9'),
        component: [
          { code: loinc('8462-4'), valueQuantity: amount(80, 'mm[Hg]') },
          { code: loinc('8480-6'), valueQuantity: amount(120, 'mm[Hg]') },
        ],
      },
      { what: 'blood-pressure', systolicMmhg: 120, diastolicMmhg: 80 },
    ],
    [
      'pain as a whole number',
      { code: loinc('72514-3'), valueInteger: 0 },
      { what: 'pain', pain: 0, place: null },
    ],
    [
      'pain with its place',
      { code: loinc('72514-3'), valueQuantity: amount(4, '{score}'), bodySite: { text: 'right knee' } },
      { what: 'pain', pain: 4, place: 'right knee' },
    ],
    [
      'grip of the right hand',
      { code: loinc('83174-3'), valueQuantity: amount(31, 'kg') },
      { what: 'grip', side: 'right', forceKg: 31 },
    ],
  ])('is %s', async (_, over, value) => {
    expect(await taken(over)).toEqual(value);
  });

  it('is the text of a condition, and no day where none is whole', async () => {
    const condition = { resourceType: 'Condition', id: 'c', subject, code: { text: 'Knee osteoarthritis' } };
    const things = await thingsIn(
      await read(
        person,
        condition,
        { ...condition, onsetDateTime: '2019-05-04' },
        { ...condition, onsetDateTime: '2019' },
      ),
    );
    expect(things.map(({ day }) => day)).toEqual([null, '2019-05-04', null]);
    expect(things[0]).toMatchObject({ kind: 'condition', value: { text: 'Knee osteoarthritis' } });
  });

  it('is on the day of the clinic on which its instant falls', async () => {
    const at = await read(person, observed({ ...weight, effectiveDateTime: '2026-02-01T23:30:00-05:00' }));
    expect((await thingsIn(at))[0]?.day).toBe('2026-02-02');
  });

  it('is the same from lines, one resource a line', async () => {
    const lines = await readThrough([person, weight].map((one) => JSON.stringify(one)).join('\n'), asLines);
    expect(await thingsIn(lines)).toEqual(await thingsIn(await read(person, weight)));
  });
});

describe('what is not taken is told with its place and the reason', () => {
  it.each<[string, Json, string]>([
    ['a unit without its code', { ...weight, valueQuantity: { value: 80, unit: 'kg' } }, 'a UCUM code of kg'],
    ['a weight nobody has', { ...weight, valueQuantity: amount(8000, 'kg') }, 'from 25 to 350 kg'],
    [
      'a weight that is only at most so much',
      { ...weight, valueQuantity: { ...amount(80, 'kg'), comparator: '<' } },
      'A weight',
    ],
    ['pain over the scale', { code: loinc('72514-3'), valueInteger: 11 }, 'from 0 to 10'],
    ['what is preliminary', { ...weight, status: 'preliminary' }, 'Only what is final'],
    ['what was entered in error', { ...weight, status: 'entered-in-error' }, 'Only what is final'],
    ['a month alone', { ...weight, effectiveDateTime: '2026-02' }, 'A whole day'],
    ['a day after today', { ...weight, effectiveDateTime: '2026-03-03' }, 'no later than today'],
    ['somebody else’s', { ...weight, subject: { reference: 'Patient/q' } }, 'It is of somebody else'],
    ['nobody’s', { ...weight, subject: undefined }, 'says of nobody'],
    ['another measure', { code: loinc('8310-5'), valueQuantity: amount(37, 'Cel') }, 'Only weight, height'],
    [
      'a grip without its side',
      {
        code: {
          coding: [{ system: 'https://loadgate.invalid/fhir/CodeSystem/loadgate', code: 'measure.grip' }],
        },
      },
      'The side of the hand',
    ],
  ])('%s', async (_, over, words) => {
    expect(await why(over)).toMatchObject({ place: 2, write: expect.stringContaining(words) });
  });

  it.each<[string, Json, string | null]>([
    ['provisional', { verificationStatus: loinc('provisional') }, 'verificationStatus'],
    ['differential', { verificationStatus: loinc('differential') }, 'verificationStatus'],
    ['unconfirmed', { verificationStatus: loinc('unconfirmed') }, 'verificationStatus'],
    ['refuted', { verificationStatus: loinc('refuted') }, 'verificationStatus'],
    ['uncertain in words alone', { verificationStatus: { text: 'maybe' } }, 'verificationStatus'],
    ['resolved', { clinicalStatus: loinc('resolved') }, 'clinicalStatus'],
    ['in remission', { clinicalStatus: loinc('remission') }, 'clinicalStatus'],
    ['over since a day', { abatementDateTime: '2020-01-01' }, 'abatementDateTime'],
    [
      'active and confirmed',
      { clinicalStatus: loinc('active'), verificationStatus: loinc('confirmed') },
      null,
    ],
  ])('a condition that is %s, since its text alone would read as one that is there', async (_, over, at) => {
    const condition = { resourceType: 'Condition', id: 'c', subject, code: { text: 'Gout' }, ...over };
    const { faults, report } = await read(person, condition);
    expect(report.taken).toBe(at === null ? 1 : 0);
    expect(faults.map((fault) => fault.at)).toEqual(['Patient', ...(at === null ? [] : [`Condition.${at}`])]);
  });

  it('a resource of another type, a place without one, and a line that is no JSON', async () => {
    const { faults } = await read(person, { resourceType: 'Encounter' }, null, 'x');
    expect(faults.map(({ place, at }) => [place, at])).toEqual([
      [1, 'Patient'],
      [2, 'Encounter'],
      [3, ''],
      [4, ''],
    ]);
    const lines = await readThrough(
      `${JSON.stringify(person)}\n{"broken"\n${JSON.stringify(weight)}\n`,
      asLines,
    );
    expect(lines.faults.map(({ place }) => place)).toEqual([1, 2]);
    expect(lines.report.taken).toBe(1);
  });
});

describe('whose a file is', () => {
  it('is asked where name or birth differ, and where it holds no Patient', async () => {
    const asked = async (...resources: readonly unknown[]) =>
      (await read(...resources)).report.questions.map(({ id }) => id);
    expect(await asked(person, weight)).toEqual([]);
    expect(await asked({ ...person, birthDate: '1958-06-02' }, weight)).toEqual(['other-person']);
    expect(await asked({ ...person, name: [{ family: 'Other' }] }, weight)).toEqual(['other-person']);
    expect(await asked(weight)).toEqual(['other-person']);
  });

  it('of several Patients is the one that is this person, and only what is of them is taken', async () => {
    const other = { ...person, id: 'q', name: [{ family: 'Other' }] };
    const read2 = await read(other, person, weight, { ...weight, subject: { reference: 'Patient/q' } });
    expect(read2.report).toMatchObject({ taken: 1, questions: [] });
    await expect(read(other, { ...other, id: 'r' }, weight)).rejects.toThrow('None of the Patients');
    await expect(read(person, { ...person, id: 's' }, weight)).rejects.toThrow('Two Patients');
  });
});

describe('whose a resource is', () => {
  const { id: _id, ...withoutId } = person;
  const other = { ...withoutId, name: [{ family: 'Other' }] };
  const [own, others] = ['urn:uuid:0a', 'urn:uuid:0b'];
  const of = (reference: string, kg: number): Json => ({
    ...weight,
    ...{ subject: { reference }, valueQuantity: amount(kg, 'kg') },
  });
  const entries = (...list: readonly (readonly [string | undefined, Json])[]) =>
    readThrough(
      JSON.stringify({
        resourceType: 'Bundle',
        entry: list.map(([fullUrl, resource]) => ({ fullUrl, resource })),
      }),
      asBundle,
    );
  const rest = [
    [undefined, of(own, 80)],
    [undefined, of(others, 99)],
  ] as const;

  it('is told by the fullUrl of a Patient without an id, and only one of two is said to be compared', async () => {
    const found = await entries([own, withoutId], [others, other], ...rest);
    expect(await thingsIn(found)).toMatchObject([{ value: { massKg: 80 } }]);
    expect(found.report.questions).toEqual([]);
    expect(found.faults.map(({ place, write }) => [place, write.split(' ').slice(0, 4).join(' ')])).toEqual([
      [1, 'Name and birth date'],
      [2, 'It is somebody else.'],
      [4, 'It is of somebody'],
    ]);
  });

  it.each([
    ['https://x.example/fhir/Patient/1', 'Patient/1'],
    ['https://x.example/fhir/Patient/1', 'https://x.example/fhir/Patient/1/_history/2'],
    [undefined, 'https://x.example/fhir/Patient/p'],
  ])('is of the Patient at %s where it names %s', async (fullUrl, reference) => {
    const named = fullUrl === undefined ? person : withoutId;
    expect((await entries([fullUrl, named], [undefined, of(reference, 80)])).report.taken).toBe(1);
  });

  it.each(['https://y.example/fhir/Patient/1', 'Group/1', '#1', 'Patient/2'])(
    'is of somebody else where it names %s',
    async (reference) => {
      const at = ['https://x.example/fhir/Patient/1', withoutId] as const;
      expect((await entries(at, [undefined, of(reference, 80)])).report.taken).toBe(0);
    },
  );

  it('is never guessed: people who cannot be told apart are refused, one is asked about', async () => {
    await expect(entries([undefined, withoutId], [others, other], ...rest)).rejects.toThrow('told apart');
    await expect(entries([own, withoutId], [own, other], ...rest)).rejects.toThrow('told apart');
    await expect(entries([undefined, withoutId], ...rest)).rejects.toThrow('of several people');
    await expect(entries(...rest)).rejects.toThrow('of several people');
    const one = await entries([undefined, withoutId], [undefined, of(own, 80)]);
    expect(one.report.questions.map(({ id }) => id)).toEqual(['other-person']);
  });
});

it('is not read as a Bundle where it is none, and says how it could be read', async () => {
  for (const text of ['', '{}', '[1]', '{"resourceType":"Patient"}', '{"a":1}\n{"b":2}'])
    await expect(readThrough(text, asBundle, whose)).rejects.toThrow('say that it is of lines');
});
