/**
 * Why something was decided. For the patient: the rules that made the decision, which are put in words
 * where they are read. For the clinician: what was found, the threshold, who says so and how that was seen.
 */
import type { Mark } from '../sources/citation.ts';
import { sources } from '../sources/index.ts';
import type { Answers, DecisionWord, Reason, Step, Today } from './answers.ts';
import { decisionRank } from './decide.ts';
import { type RuleId, ruleById } from './rules/table.ts';

export interface PatientExplanation {
  readonly decision: DecisionWord;
  readonly today: Today;
  /** The rules that made the decision, most cautious first; at most the three that weigh most. */
  readonly because: readonly RuleId[];
}

const mostReasons = 3;

const weight = (reason: Reason): number => decisionRank[reason.effect.decision ?? 'progress'];

/** A rule that has left the table since is not given as a reason: nothing says it in words any more. */
const isRuleId = (id: string): id is RuleId => ruleById.has(id);

export const explainToPatient = ({ decision, largestStep, today, reasons }: Answers): PatientExplanation => {
  const deciding = reasons
    .filter(
      ({ effect }) =>
        effect.decision === decision ||
        effect.today === today ||
        (largestStep !== null && effect.largestStep === largestStep),
    )
    .sort((a, b) => weight(a) - weight(b));
  const rules = new Set(deciding.map(({ rule }) => rule));
  return { decision, today, because: [...rules].filter(isRuleId).slice(0, mostReasons) };
};

/** A fact's value, as a person says it. */
export const factInWords = (value: unknown): string => {
  if (value === null) return 'not answered';
  if (value === true) return 'yes';
  if (value === false) return 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.join(', ');
  return typeof value === 'number' ? String(Math.round(value * 100) / 100) : String(value);
};

/** "painNextMorning" → "pain next morning". */
export const factName = (name: string): string =>
  name
    .replace(/([A-Z])/g, ' $1')
    .replace(/(\d+)/g, ' $1')
    .toLowerCase();

const markWords: Readonly<Record<Mark, string>> = {
  seen: 'seen',
  'second-hand': 'restated by others',
  memory: 'from memory, not seen',
  computed: 'computed',
  design: 'choice of this project',
  'common-practice': 'common practice, no source',
};

const supportInWords = (reason: Reason): string => {
  const rule = ruleById.get(reason.rule);
  const cited = rule?.citations.find(({ source }) => source === reason.support) ?? rule?.citations[0];
  if (!cited) return 'clinic setting';
  const source = sources[cited.source]!;
  const who = `${source.authors}${source.year === null ? '' : ` ${source.year}`}, ${cited.locator} (${markWords[cited.mark]})`;
  return reason.support === 'clinic-choice' ? `clinic setting; related source: ${who}` : who;
};

const effectInWords = ({ effect }: Reason): string =>
  [
    effect.decision && `decision no more than ${effect.decision}`,
    effect.largestStep && `step no more than ${effect.largestStep}`,
    effect.today && `today no more than ${effect.today}`,
    effect.contact && effect.contact !== 'none' && `contact ${effect.contact}`,
  ]
    .filter(Boolean)
    .join(', ');

/** One line of the trace: "P2 Pain over the acceptable pain limit. Found: … Threshold: … Says: … Effect: …" */
export const explainToClinician = (reason: Reason): string => {
  const found = Object.entries(reason.observed)
    .map(([name, value]) => `${factName(name)} ${factInWords(value)}`)
    .join(', ');
  const title = ruleById.get(reason.rule)?.title ?? '';
  return `${reason.rule} ${title}. Found: ${found}. Threshold: ${reason.threshold}. Support: ${supportInWords(reason)}. Effect: ${effectInWords(reason)}.`;
};

export const stepInWords: Readonly<Record<Step, string>> = {
  repetitions: 'repetitions only',
  load: 'load, harder variation or set',
};
