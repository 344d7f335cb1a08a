/** The page of a rule says whom its sources studied, how often it decides on scatter, and what is not proven. */
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { proofRun, ruleProofs } from '#simulation/kept/kept-proof.ts';
import { asClinician } from '#tests/support/callers.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { RuleProofView } from '#ui/clinician/rules/proof/rule-proof.tsx';

it('is there for every rule with figures of the last run, and none says that it is proven', async () => {
  const store = freshStore();
  const { clinician } = await twoClinics(store);
  const { rules, proofRun: run } = await asClinician(clinician).clinician.rules.list();
  expect(run).toEqual(proofRun);
  expect(rules.map(({ id }) => id)).toEqual(ruleProofs.map(({ rule }) => rule));
  for (const rule of rules) {
    const page = renderToStaticMarkup(<RuleProofView rule={rule} run={run} />);
    expect(page).toContain(`tests/core/decision/rules/`);
    expect(page).toContain(`It decided ${rule.proof.decidedUnchanged} of ${run.looks} looks`);
    expect(page).toContain('No person’s course under this rule was compared');
    expect(page).not.toMatch(/undefined|NaN|\bsafe\b/);
    for (const { studied } of rule.citations)
      expect(page).toContain(studied.replaceAll("'", '&#x27;').replaceAll('&', '&amp;'));
  }
  const p5 = renderToStaticMarkup(<RuleProofView rule={rules.find(({ id }) => id === 'P5')!} run={run} />);
  expect(p5).toContain('Its figure was chosen near one that a source prints.');
  expect(p5).toContain('Studied in: 38 people with Achilles tendinopathy.');
  expect(p5).toContain('from memory, not checked against the source');
  store.close();
});
