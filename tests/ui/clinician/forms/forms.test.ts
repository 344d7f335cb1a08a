/** What is typed is what is sent: nothing typed is never a zero, and a refusal comes back to its field. */
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import type { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import type { Field } from '#core/calculations/describe.ts';
import { limitFields } from '#core/episode/care-fields.ts';
import { ownRule } from '#simulation/kept/kept-trial.ts';
import { DescriptorFields } from '#ui/clinician/forms/descriptor-fields.tsx';
import { labelOf, nameInWords } from '#ui/clinician/forms/field-words.ts';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';
import { isAsked, noneOfThese, notAnswered, readTyped, typedFrom } from '#ui/clinician/forms/typed.ts';

const pain: Field = {
  name: 'pain',
  kind: 'integer',
  unit: '{score}',
  min: 0,
  max: 10,
  nullable: true,
  also: ['not-applicable'],
};
const load: Field = { name: 'loadKg', kind: 'number', unit: 'kg', about: 'Load' };
const rest: Field = { name: 'restSeconds', kind: 'integer', unit: 's', optional: true };

describe('a field asked only with the answer before it', () => {
  const fields: readonly Field[] = [
    { name: 'kind', kind: 'enum', values: ['range', 'load'] },
    { ...load, onlyWhen: { field: 'kind', is: ['load'] } },
    { ...rest, onlyWhen: { field: 'kind', is: ['range'] } },
  ];
  const typed = { loadKg: '3', restSeconds: '60' };

  it.each([
    ['load', { kind: 'load', loadKg: 3 }],
    ['range', { kind: 'range', restSeconds: 60 }],
  ])('is sent with “%s” and left out otherwise, whatever was typed before', (kind, value) => {
    const isOptional = fields.map((field) => ({ ...field, optional: field.name !== 'kind' }));
    expect(readTyped(isOptional, { ...typed, kind })).toEqual({ value, problems: [] });
  });

  it.each([
    ['', false, false],
    ['load', true, false],
    ['range', false, true],
  ])('with “%s” chosen the load is shown: %s, the rest: %s', (kind, hasLoad, hasRest) => {
    const html = renderToStaticMarkup(
      createElement(DescriptorFields, {
        fields,
        typed: { ...typed, kind },
        onType: () => undefined,
        errorOf: () => undefined,
      }),
    );
    expect([html.includes('name="loadKg"'), html.includes('name="restSeconds"')]).toEqual([hasLoad, hasRest]);
  });

  it('in the form of a limit, degrees go with a range and kilograms with a load', () => {
    const asked = (kind: string) =>
      limitFields.filter((field) => isAsked(field, { kind }, '')).map(({ name }) => name);
    const always = ['joint', 'kind', 'from', 'to', 'author', 'remark'];
    expect(asked('weight-bearing')).toEqual(always);
    expect(asked('range').filter((name) => !always.includes(name))).toEqual([
      'movement',
      'fromDegrees',
      'toDegrees',
    ]);
    expect(asked('load-limit').filter((name) => !always.includes(name))).toEqual(['limitKg']);
  });
});

describe('reading a form', () => {
  it('leaves out an optional field and sends null for an unanswered score', () => {
    expect(readTyped([pain, rest], {})).toEqual({ value: { pain: null }, problems: [] });
  });

  it('asks for a needed field in its own words instead of sending a zero', () => {
    expect(readTyped([load], {})).toEqual({
      value: {},
      problems: [{ field: 'loadKg', text: 'Enter “Load”.' }],
    });
  });

  it.each([
    ['0', 0],
    ['7', 7],
    ['7,5', 7.5],
    [' 7.5 ', 7.5],
    ['not-applicable', 'not-applicable'],
  ])('reads “%s”', (text, value) => {
    expect(readTyped([pain], { pain: text }).value.pain).toBe(value);
  });

  it('says of what is no number which field it is, and sends nothing for it', () => {
    const read = readTyped([load], { loadKg: 'heavy' });
    expect(read.problems).toEqual([{ field: 'loadKg', text: 'Type a number for “Load”, such as 7.5.' }]);
    expect(read.value).toEqual({});
  });

  it.each([
    [19, true],
    [20, true],
    [21, false],
  ])(
    'keeps a text of %i characters where 20 are kept: %s; of a longer one it says by how much before it is sent',
    (length, isKept) => {
      const message: Field = { name: 'text', kind: 'text', minLength: 1, maxLength: 20, about: 'Message' };
      const { value, problems } = readTyped([message], { text: 'x'.repeat(length) });
      expect('text' in value).toBe(isKept);
      expect(problems.map(({ text }) => text)).toEqual(
        isKept ? [] : ['“Message” has 21 characters; at most 20 are kept. Shorten it and send again.'],
      );
    },
  );

  it('takes yes and no as answers and nothing as none', () => {
    const flag: Field = { name: 'flare', kind: 'flag' };
    expect(readTyped([flag], { flare: 'no' }).value).toEqual({ flare: false });
    expect(readTyped([flag], {}).problems).toHaveLength(1);
    expect(readTyped([{ ...flag, nullable: true }], {}).value).toEqual({ flare: null });
  });

  it('tells “none of these” from “asked and not answered” and from nothing ticked', () => {
    const flags: Field = {
      name: 'redFlags',
      kind: 'list',
      nullable: true,
      of: { name: 'flag', kind: 'enum', values: ['chest-pain', 'fainting'] },
    };
    expect(readTyped([flags], { redFlags: noneOfThese }).value.redFlags).toEqual([]);
    expect(readTyped([flags], { redFlags: notAnswered }).value.redFlags).toBeNull();
    expect(readTyped([flags], {}).value.redFlags).toBeNull();
    expect(readTyped([flags], { redFlags: 'chest-pain\nfainting' }).value.redFlags).toEqual([
      'chest-pain',
      'fainting',
    ]);
  });

  it('sends the only value there is without asking', () => {
    const kind: Field = { name: 'kind', kind: 'enum', values: ['grip'] };
    expect(readTyped([kind], {})).toEqual({ value: { kind: 'grip' }, problems: [] });
  });

  it('keeps the spaces inside a thing of a list', () => {
    const things: Field = {
      name: 'things',
      kind: 'list',
      of: { name: 'thing', kind: 'text', maxLength: 60 },
    };
    const typed = typedFrom({ things: ['firm chair', 'rolled towel'] });
    expect(readTyped([things], typed).value.things).toEqual(['firm chair', 'rolled towel']);
  });

  it('reads lists of figures and of rows; a dash is “not given”', () => {
    const kilograms: Field = { name: 'ownedKg', kind: 'list', of: load };
    const sets: Field = {
      name: 'sets',
      kind: 'list',
      of: {
        name: 'set',
        kind: 'record',
        fields: [{ ...load, name: 'repetitions', about: 'Repetitions' }, load],
      },
    };
    expect(readTyped([kilograms], { ownedKg: '1 2,5  4.5' }).value.ownedKg).toEqual([1, 2.5, 4.5]);
    expect(readTyped([sets], { sets: '20 4\n18 -' }).value.sets).toEqual([
      { repetitions: 20, loadKg: 4 },
      { repetitions: 18, loadKg: null },
    ]);
    expect(readTyped([sets], { sets: '20' }).problems).toHaveLength(1);
  });

  it('leaves out an optional group nothing was typed into, and reads it once something was', () => {
    const home: Field = { name: 'home', kind: 'record', nullable: true, fields: [rest] };
    expect(readTyped([home], {}).value).toEqual({ home: null });
    expect(readTyped([home], { 'home.restSeconds': '30' }).value).toEqual({ home: { restSeconds: 30 } });
  });

  it('reads back what stands for a value', () => {
    const value = { loadKg: 4.5, nested: { deep: true }, sets: [{ a: 1, b: null }], none: [] };
    expect(typedFrom(value)).toEqual({ loadKg: '4.5', 'nested.deep': 'yes', sets: '1 -', none: 'none' });
  });
});

describe('labels', () => {
  it.each([
    ['painNextMorning', '', 'Pain next morning'],
    ['circumferenceCm', 'cm', 'Circumference'],
    ['sessionsPerWeek', '1', 'Sessions per week'],
    ['missedSessions14', '1', 'Missed sessions 14'],
  ])('%s reads as words', (name, unit, words) => {
    expect(nameInWords(name, unit)).toBe(words);
  });

  it('a field’s own words come first', () => {
    expect(labelOf(load)).toBe('Load');
  });
});

const error = (data: object, message = '') => Object.assign(new Error(message), { data });

describe('what the server refuses comes back to its field', () => {
  it('with the form’s prefix, in the server’s words; an element of a list belongs to its list', () => {
    const refusals = [
      { field: 'input.massKg', reason: 'At most 350 kg.' },
      { field: 'input.home.observedSessions', reason: 'At most 50.' },
      { field: 'input.ownedLoadsKg.2', reason: 'Over 0 kg.' },
      { field: 'input.brachialMmhg[0]', reason: 'At least 50.' },
    ];
    expect(refusedBy(error({ refusals }), 'x-', 'x-send').problems.map(({ field }) => field)).toEqual([
      'x-massKg',
      'x-home.observedSessions',
      'x-ownedLoadsKg',
      'x-brachialMmhg',
    ]);
  });

  it.each([
    [
      { mostPain: 11 },
      /^“Highest pain in a session that is still in order”: 0 to 10\. Type .* send again\.$/,
    ],
    [
      { mostPain: -1 },
      /^“Highest pain in a session that is still in order”: 0 to 10\. Type .* send again\.$/,
    ],
    [{ mostPain: 4.5 }, /^Type a whole number for “Highest pain in a session that is still in order”/],
    [{ mostPain: undefined }, /^Enter “Highest pain in a session that is still in order”\.$/],
  ])(
    'a figure of the clinic’s own rule, %o, by the label on the page and with what to do',
    (changed, text) => {
      const { fields, usual } = ownRule;
      const refused = (): unknown => {
        try {
          return checked(fields, { ...usual, ...changed });
        } catch (problem) {
          return error({ refusals: (problem as Problem).refusals });
        }
      };
      expect(refusedBy(refused(), 'own-', 'own-send', fields).problems).toEqual([
        { field: 'own-mostPain', text: expect.stringMatching(text) },
      ]);
    },
  );

  it('a field inside another by its own label, and what the form has no field for as it was said', () => {
    const fields: readonly Field[] = [{ name: 'home', kind: 'record', fields: [{ ...load, max: 50 }] }];
    const at = (field: string, reason: string) => [{ field: `input.${field}`, code: 'too-high', reason }];
    const told = (field: string, reason = 'loadKg is at most 50 kg.') =>
      refusedBy(error({ refusals: at(field, reason) }), '', 'send', fields).problems;
    expect(told('home.loadKg')).toEqual([{ field: 'home.loadKg', text: expect.stringContaining('“Load”') }]);
    expect(told('other.loadKg', 'As it was said.')).toEqual([
      { field: 'other.loadKg', text: 'As it was said.' },
    ]);
  });

  it('an unlikely value is a question and not an error', () => {
    const refused = refusedBy(error({ questions: ['Is 210 mmHg right?'], refusals: [] }), '', 'send');
    expect(refused).toEqual({ problems: [], questions: ['Is 210 mmHg right?'] });
  });

  it('a refusal without a field, and no answer at all, lead to the button and say what to do', () => {
    expect(refusedBy(error({ refusals: [] }, 'It is already signed.'), '', 'send').problems).toEqual([
      { field: 'send', text: 'It is already signed.' },
    ]);
    expect(refusedBy(new TypeError('fetch failed'), '', 'send').problems[0]?.text).toMatch(
      /still on this page/,
    );
  });
});

describe('all that is wrong with a form', () => {
  const load = { name: 'loadKg', kind: 'number', unit: 'kg', min: 1, max: 100 } as const;
  const repetitions = { name: 'repetitions', kind: 'integer', unit: '1', min: 1, max: 30 } as const;
  const share = { name: 'share', kind: 'number', unit: '1', min: 0, exclusiveMin: true } as const;
  const textsFor = (typed: Readonly<Record<string, string>>): readonly string[] =>
    readTyped([load, repetitions, share], typed).problems.map(({ text }) => text);

  it('is said at once, each with its label, its bound and the way out', () => {
    expect(textsFor({ loadKg: 'heavy', repetitions: '31', share: '' })).toEqual([
      'Type a number for “Load”, such as 7.5.',
      '“Repetitions”: 1 to 30. Type a number within that and send again.',
      expect.stringContaining('“Share”'),
    ]);
  });

  it.each([
    ['0.99', 1],
    ['1', 0],
    ['100', 0],
    ['100.01', 1],
  ])('counts a bound itself as within: %s', (loadKg, problems) => {
    expect(textsFor({ loadKg, repetitions: '8', share: '1' })).toHaveLength(problems);
  });

  it('leaves out a bound that is itself refused', () => {
    expect(textsFor({ loadKg: '5', repetitions: '8', share: '0' })).toHaveLength(1);
  });
});
