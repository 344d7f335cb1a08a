/** The page of what followed each rule: counts with intervals, small groups left out, and no word of cause. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { ruleBoard } from '#core/decision/followed/rule-board.ts';
import { RulesFollowedView } from '#ui/clinician/rules/followed/rules-followed.tsx';

const made = (patientId: string, rule: string) => ({
  patientId,
  decision: 'hold' as const,
  reasons: [{ rule, effect: { decision: 'hold' as const } }],
  answered: patientId === 'a',
  instead: null,
  followed: 'nothing' as const,
});

it('shows counts with their intervals, leaves small groups out and names what never fired', () => {
  const decisions = [
    ...['a', 'b', 'c', 'd', 'e'].map((id) => made(id, 'C2')),
    ...['a', 'b', 'c', 'd'].map((id) => made(id, 'P2')),
  ];
  const rows = ruleBoard(['P2', 'C2', 'X1'], decisions).map((row) => ({
    ...row,
    title: `title of ${row.rule}`,
  }));
  const html = renderToStaticMarkup(<RulesFollowedView answer={{ rows, weeks: 26, people: 5 }} />);
  expect(html).toContain('5 (57–100 %)');
  expect(html).toContain('0 of 1 answered');
  expect(html).toContain('0 (0–43 %)');
  expect(html).toContain('since fewer than 5 people are behind each: P2 title of P2.');
  expect(html).not.toMatch(/<th[^>]*>P2/);
  expect(html).toContain('Never fired: X1 title of X1.');
  expect(html).toContain('was not brought about by it');
});

it('says that nothing has fired rather than showing an empty table', () => {
  const html = renderToStaticMarkup(<RulesFollowedView answer={{ rows: [], weeks: 26, people: 5 }} />);
  expect(html).toContain('In this time no rule has fired for 5 people or more in this clinic.');
  expect(html).not.toContain('<table');
});
