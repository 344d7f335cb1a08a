/** What generated cases say of each rule: how often it fires, and whether the table stated a second time agrees. */

import { decide } from '#core/decision/decide.ts';
import { byTable } from '#core/decision/independent/by-table.ts';
import { rulesOf } from '#core/decision/rules/table.ts';
import { engineDefaults, newestVersion } from '#core/decision/settings.ts';
import type { ProofRun, RuleCounts } from '../kept/proof-row.ts';
import { randomFacts } from '../raises/random-facts.ts';
import { seeded } from '../raises/seeded.ts';
import { looksAtUnchanged, type RuleLook } from './unchanged-diaries.ts';

type Generated = Pick<ProofRun, 'seed' | 'facts' | 'people'>;

interface Counts {
  readonly rows: readonly RuleCounts[];
  readonly disagreements: number;
  readonly looks: number;
}

const randomCounts = ({ seed, facts }: Generated) => {
  const random = seeded(seed);
  const fired = new Map<string, number>();
  let disagreements = 0;
  for (let count = 0; count < facts; count++) {
    const given = randomFacts(random);
    const answers = decide(given, engineDefaults);
    const rules = answers.reasons.map(({ rule }) => rule);
    for (const rule of rules) fired.set(rule, (fired.get(rule) ?? 0) + 1);
    const verdict = byTable({
      facts: { ...given },
      settings: engineDefaults,
      engineVersion: String(newestVersion),
      answers,
      rules,
    });
    if (verdict.says !== 'the-same') disagreements += 1;
  }
  return { fired, disagreements };
};

const decidedBy = (rule: string, { decision, fired }: RuleLook): boolean =>
  fired.some((one) => one.rule === rule && one.caps === decision);

/** Of the newest version, under the settings as delivered. */
export const ruleCounts = (run: Generated): Counts => {
  const { fired, disagreements } = randomCounts(run);
  const looks = looksAtUnchanged(run.seed, run.people);
  return {
    disagreements,
    looks: looks.length,
    rows: rulesOf(newestVersion).map(({ id }) => ({
      rule: id,
      fired: fired.get(id) ?? 0,
      firedUnchanged: looks.filter((look) => look.fired.some(({ rule }) => rule === id)).length,
      decidedUnchanged: looks.filter((look) => decidedBy(id, look)).length,
    })),
  };
};
