/** What is wrong with a field goes as soon as something else stands in it, and nothing else goes with it. */
import { expect, it } from 'vitest';
import { withoutProblem } from '#ui/clinician/forms/use-submit.ts';

const before = {
  problems: [
    { field: 'f-reached', text: 'Choose an answer for Reached.' },
    { field: 'f-found', text: 'Enter what you found.' },
  ],
  questions: [],
};

it('leaves the other fields as they were', () => {
  expect(withoutProblem(before, 'f-reached', 'patient').problems).toEqual([before.problems[1]]);
});

it('stays where the field was emptied, and where it had no problem', () => {
  expect(withoutProblem(before, 'f-found', '  ')).toBe(before);
  expect(withoutProblem(before, 'f-advised', 'Rest')).toBe(before);
});
