/** Signing out where something would be left behind. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { LeaveQuestion } from '#ui/patient/leaving/leave-question.tsx';
import { haveWords } from '#ui/patient/leaving/words.ts';

await haveWords();
const asked = (isCuffOn: boolean, hasSignal: boolean) =>
  renderToStaticMarkup(
    <LeaveQuestion left={{ begun: 1, unsent: 0, isCuffOn }} hasSignal={hasSignal} onStay={() => undefined} />,
  );

it.each([true, false])(
  'with a cuff on leads to its clock and offers no other way, signal or none (%s)',
  (has) => {
    const html = asked(true, has);
    expect(html).toContain('The cuff is on');
    expect(html).toMatch(/<a href="\/today"/);
    expect(html).not.toContain('<button');
  },
);

it('with no cuff on offers to stay, to keep what was begun, and to throw it away', () => {
  expect(asked(false, true).match(/<button/g)).toHaveLength(3);
});
