/**
 * One decision looked up in the independent table: the second statement of the rules, which shares no code with the
 * engine. It states the settings as delivered, and those called version 3; of others it says nothing.
 */
import type { SettingValues } from '../../sources/clinic-setting.ts';
import type { Answers } from '../answers.ts';
import { engineDefaults } from '../settings.ts';
import { version3 } from '../version-3-settings.ts';
import { isBeyondDecisions } from '../what-if/what-if-fields.ts';
import { type Second, secondStatement } from './independent-table.ts';
import { secondStatement2, statedRules } from './independent-table-2.ts';
import { secondStatement3 } from './independent-table-3.ts';

export interface Tabled {
  readonly facts: Readonly<Record<string, unknown>>;
  readonly settings: SettingValues;
  readonly engineVersion: string;
  readonly answers: Omit<Answers, 'reasons'>;
  /** Rules that fired, in their order. */
  readonly rules: readonly string[];
}

export type TableVerdict =
  | { readonly says: 'the-same'; readonly table: string }
  | { readonly says: 'otherwise'; readonly table: string; readonly instead: Second }
  | { readonly says: 'nothing'; readonly reason: string };

/** Settings that decide and stand otherwise than in a statement. */
const otherwise = (settings: SettingValues, stated: SettingValues): readonly string[] =>
  Object.keys(stated).filter(
    (id) => id !== 'engine-version' && !isBeyondDecisions(id) && (settings[id] ?? stated[id]) !== stated[id],
  );

interface Statement {
  readonly table: string;
  readonly second: (facts: Tabled['facts']) => Second;
}

const statementFor = ({ settings, engineVersion }: Tabled): Statement | string => {
  const away = otherwise(settings, engineDefaults);
  if (away.length === 0) {
    if (engineVersion === '1') return { table: '1', second: secondStatement };
    if (engineVersion === '2') return { table: '2', second: secondStatement2 };
    return `no table states version ${engineVersion} of the rules`;
  }
  if (engineVersion === '2' && otherwise(settings, { ...engineDefaults, ...version3 }).length === 0)
    return { table: '3', second: secondStatement3 };
  return `the table states the settings as delivered, and these stand otherwise here: ${away.join(', ')}`;
};

const isSaidBy = ({ answers }: Tabled, second: Second): boolean =>
  answers.decision === second.decision &&
  answers.largestStep === second.largestStep &&
  answers.today === second.today &&
  answers.contact === second.contact;

export const byTable = (decision: Tabled): TableVerdict => {
  const statement = statementFor(decision);
  if (typeof statement === 'string') return { says: 'nothing', reason: statement };
  const { table, second } = statement;
  const instead = second(decision.facts);
  const unstated = decision.rules.filter((rule) => !statedRules.has(rule));
  const isSameRules = decision.rules.filter((rule) => statedRules.has(rule)).join(' ') === instead.rules;
  // A rule that came after its version was stated may add to the answers of the rest and nothing else.
  if (isSameRules && unstated.length > 0)
    return { says: 'nothing', reason: `the table does not state ${unstated.join(', ')}` };
  return isSameRules && isSaidBy(decision, instead)
    ? { says: 'the-same', table }
    : { says: 'otherwise', table, instead };
};
