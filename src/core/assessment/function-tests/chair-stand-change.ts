/**
 * Change on the 30-second chair stand against its error: 2.5 stands for one person.
 *
 * From 93 people with early knee osteoarthritis. A second trial gains 0.5 to 0.8 stands by practice alone, so
 * a first trial is discarded before comparing.
 */
import { calculation } from '#core/calculations/calculation.ts';
import { answer } from '#core/outcome.ts';
import { judgeChange, judgedChangeFields } from '../change/change-beyond-error.ts';

const minimalDetectableStands = 2.5;

export const chairStandChangeRow = calculation({
  id: 'chair-stand-change',
  title: 'Change on the 30-second chair stand',
  area: 'outcomes',
  input: [
    { name: 'before', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
    { name: 'after', kind: 'integer', unit: '{stand}', min: 0, max: 60 },
  ],
  result: judgedChangeFields('{stand}'),
  citations: [
    { source: 'gill-2022', locator: 'abstract: minimal detectable change of one person', mark: 'seen' },
  ],
  calculate: (input) =>
    answer(judgeChange(input.before, input.after, minimalDetectableStands, 'higher'), [
      {
        code: 'practice-effect',
        text: 'A second trial gains about half a stand by practice; discard a first trial.',
      },
    ]),
  example: { before: 10, after: 13 },
});
