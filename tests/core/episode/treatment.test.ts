/** Treatment on record: what is refused, how it reads, and which screening questions each kind asks again. */
import { describe, expect, it } from 'vitest';
import type { InputOf } from '#core/calculations/describe.ts';
import {
  type AskedScreening,
  isAskedAgain,
  type RecordedEvent,
  stillToAskAfter,
} from '#core/episode/event-effects.ts';
import { eventConsistent, type eventFields } from '#core/episode/event-fields.ts';
import { eventInWords } from '#core/episode/event-words.ts';
import {
  askedAgainForClass,
  treatmentClasses,
  treatmentTitle,
} from '#core/episode/treatment/treatment-classes.ts';
import { treatmentLines, treatmentOf } from '#core/episode/treatment/treatment-timeline.ts';
import { itemsAskedAt } from '#core/screening/items.ts';

const today = '2026-03-09';
const at = (day: string): number => Date.parse(`${day}T10:00:00Z`);

const row = (over: object): InputOf<typeof eventFields> =>
  ({ day: today, kind: 'medicine-change', joint: null, remark: null, ...over }) as InputOf<
    typeof eventFields
  >;
const refused = (over: object) => eventConsistent(row(over), today).map(({ field }) => field);

const event = (over: Partial<RecordedEvent>): RecordedEvent => ({
  id: 'event',
  day: '2026-03-02',
  kind: 'medicine-change',
  joint: null,
  recordedAt: at('2026-03-02'),
  remark: null,
  medicine: null,
  courseForm: null,
  ...over,
});
const biologic = event({ medicine: { act: 'start', medicineClass: 'biologic' } });

describe('what is entered of a treatment', () => {
  const course = { kind: 'steroid-course', lastDay: '2026-03-20', courseForm: 'taper' };
  it.each([
    ['a course with its last day and form', course, []],
    ['of one day', { ...course, lastDay: today }, []],
    ['that ends before it begins', { ...course, lastDay: '2026-03-08' }, ['input.lastDay']],
    ['of 182 days', { ...course, lastDay: '2026-09-07' }, []],
    ['of 183 days', { ...course, lastDay: '2026-09-08' }, ['input.lastDay']],
    ['without its last day', { ...course, lastDay: undefined }, ['input.lastDay']],
    ['without its form', { ...course, courseForm: undefined }, ['input.courseForm']],
    ['a last day of a fall', { ...course, kind: 'fall' }, ['input.lastDay']],
    ['a missed dose of a kind', { kind: 'missed-dose', medicineClass: 'biologic' }, []],
    ['a missed dose of nothing', { kind: 'missed-dose' }, ['input.medicineClass']],
    [
      'a missed dose that changed a medicine',
      { kind: 'missed-dose', medicineClass: 'biologic', medicineAct: 'stop' },
      ['input.medicineAct'],
    ],
    ['an injection of no named joint', { kind: 'joint-injection' }, []],
    ['tomorrow’s', { kind: 'joint-injection', day: '2026-03-10' }, ['input.day']],
  ])('%s', (_name, over, fields) => {
    expect(refused(over)).toEqual(fields);
  });

  it('reads by its kind of medicine, its days and its form', () => {
    const missed = { act: null, medicineClass: 'disease-modifying' } as const;
    const taper = { kind: 'steroid-course', lastDay: '2026-03-20', courseForm: 'taper' } as const;
    expect([
      eventInWords(biologic),
      eventInWords(event({ kind: 'missed-dose', medicine: missed })),
      eventInWords(event(taper)),
      eventInWords(event({ kind: 'joint-injection' })),
      eventInWords(event({})),
    ]).toEqual([
      'Biologic: started',
      'Conventional disease-modifying medicine: a dose was missed',
      'Course of steroid to 20 Mar 2026, tapered',
      'A joint was injected',
      'A medicine was changed',
    ]);
  });
});

describe('the questions a change asks again', () => {
  it('stand on the sheet at every adult age, are fewer than all of it, and are known of every class but another', () => {
    for (const age of [18, 64, 90]) {
      const sheet = itemsAskedAt(age).map(({ id }) => id);
      for (const medicineClass of treatmentClasses) {
        const items = askedAgainForClass(medicineClass);
        expect(items === null, medicineClass).toBe(medicineClass === 'other');
        expect(sheet, medicineClass).toEqual(expect.arrayContaining([...(items ?? [])]));
        expect((items ?? []).length, medicineClass).toBeLessThan(sheet.length / 2);
        expect(treatmentTitle(medicineClass)).not.toBe(medicineClass);
      }
    }
  });

  it.each([
    ['another medicine', event({ medicine: { act: 'start', medicineClass: 'other' } })],
    ['a medicine nobody named', event({})],
    ['an illness', event({ kind: 'illness' })],
    ['an operation', event({ kind: 'surgery' })],
    ['a fall', event({ kind: 'fall' })],
  ])('of %s are the whole sheet', (_name, happened) => {
    expect(stillToAskAfter(happened, null)).toBeNull();
    const parts = { day: '2026-02-01', recordedAt: at('2026-03-05'), answers: [] };
    expect(stillToAskAfter(happened, parts)).toBeNull();
    expect(isAskedAgain(happened, { ...parts, day: '2026-03-02' })).toBe(true);
  });

  const asked = askedAgainForClass('biologic')!;
  const old = (askedOn: string, left: readonly string[] = []): AskedScreening => ({
    day: '2026-02-01',
    recordedAt: at('2026-03-02') + 1,
    answers: asked.filter((item) => !left.includes(item)).map((item) => ({ item, askedOn })),
  });

  it.each([
    ['2026-03-01', asked.length],
    ['2026-03-02', 0],
    ['2026-03-03', 0],
  ])('answered on %s leave %i of a change of 2 March', (askedOn, left) => {
    expect(stillToAskAfter(biologic, old(askedOn))).toHaveLength(left);
  });

  it('left out or answered before are still to be asked; the rest are not', () => {
    expect(stillToAskAfter(biologic, old('2026-03-03', ['hot-joint']))).toEqual(['hot-joint']);
    expect(stillToAskAfter(biologic, null)).toEqual(asked);
  });

  it('answered the same day before the change was written down are asked once more', () => {
    expect(stillToAskAfter(biologic, { ...old('2026-03-02'), recordedAt: at('2026-03-02') - 1 })).toEqual(
      asked,
    );
  });

  it('a missed dose asks nothing', () => {
    const missed = event({ kind: 'missed-dose', medicine: { act: null, medicineClass: 'biologic' } });
    expect(isAskedAgain(missed, null)).toBe(true);
  });
});

describe('the line of days', () => {
  const course = event({
    id: 'course',
    day: '2026-02-20',
    kind: 'steroid-course',
    lastDay: '2026-03-01',
    courseForm: 'same-dose',
  });
  const injected = event({ id: 'injection', kind: 'joint-injection', joint: 'left-wrist' });
  const lines = treatmentLines([injected, event({ kind: 'fall' }), biologic, course]);
  const of = (joint: Parameters<typeof treatmentOf>[1], since: string) =>
    treatmentOf(lines, joint, since, today).map(({ id }) => id);

  it('holds treatment alone, oldest first', () => {
    expect(lines.map(({ kind }) => kind)).toEqual(['steroid-course', 'joint-injection', 'medicine-change']);
  });

  it.each([
    ['2026-02-28', ['course', 'injection', 'event']],
    ['2026-03-01', ['course', 'injection', 'event']],
    ['2026-03-02', ['injection', 'event']],
    ['2026-03-03', []],
  ])('since %s: a course counts to its last day', (since, ids) => {
    expect(of(null, since)).toEqual(ids);
  });

  it('of another joint leaves out the injection, and keeps what names no joint', () => {
    expect(of('right-knee', '2026-02-01')).toEqual(['course', 'event']);
  });
});
