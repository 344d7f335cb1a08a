/** Beside a new dose stand the earlier ones with what was counted, and nothing where nothing was. */
import { expect, it } from 'vitest';
import { kneeDose } from '#tests/core/decision/small-record.ts';
import { earlierInWords } from '#ui/clinician/prescribing/earlier/earlier-doses.ts';

it('says each earlier dose with its mornings at usual, and a part of a dose by its share', () => {
  const doses = [
    { share: 0.5, dose: null, atUsual: 1, overUsual: 0 },
    { share: 1, dose: { ...kneeDose, sets: 3 }, atUsual: 6, overUsual: 2 },
  ];
  const [line] = earlierInWords([{ joint: 'left-knee', since: '2026-01-05', doses }] as never, '2026-04-20');
  expect(line).toMatch(/^Left knee at usual the morning after, since 5 Jan: /);
  expect(line).toContain('0.50 of the first signed dose: 1 of 1');
  expect(line).toMatch(/3 × .*: 6 of 8\.$/);
});

it('says nothing where no session could be counted', () => {
  expect(earlierInWords([], '2026-04-20')).toEqual([]);
});
