/** What a calculation refused keeps its own words. */
import { expect, it } from 'vitest';
import type { Field } from '#core/calculations/describe.ts';
import { refusedBy } from '#ui/clinician/forms/submit-problems.ts';

const load: Field = { name: 'loadKg', kind: 'number', unit: 'kg', about: 'Load', max: 200 };

it('keeps what a calculation says of a figure within the bounds of its field', () => {
  const reason = '40 kg is 80 % of the maximum. The heaviest owned within it: 25 kg.';
  const refusals = [{ field: 'input.loadKg', code: 'too-high', reason }];
  const error = Object.assign(new Error(''), { data: { refusals } });
  expect(refusedBy(error, '', 'send', [load]).problems).toEqual([{ field: 'loadKg', text: reason }]);
});
