/**
 * The decision: every rule that fires caps each answer it names, and the most cautious cap wins.
 * Pure and total. No rule is known here by name, so precedence has one home: the order of the answers.
 */
import type { SettingValues } from '../sources/clinic-setting.ts';
import {
  type Answers,
  type Contact,
  contacts,
  type DecisionWord,
  decisions,
  type Reason,
  type Step,
  steps,
  type Today,
  todays,
} from './answers.ts';
import type { Facts } from './facts/facts.ts';
import type { Derived, Effect, Rule, RuleForm } from './rules/rule.ts';
import { type OrderedRule, rulesOf } from './rules/table.ts';
import {
  type EngineSettingValues,
  type EngineVersion,
  engineSettingValues,
  engineVersionOf,
} from './settings.ts';

const ranks = <W extends string>(words: readonly W[]): Readonly<Record<W, number>> =>
  Object.fromEntries(words.map((word, rank) => [word, rank])) as Record<W, number>;

/** From most cautious (0) to boldest. */
export const decisionRank: Readonly<Record<DecisionWord, number>> = ranks(decisions);
export const stepRank: Readonly<Record<Step, number>> = ranks(steps);
export const todayRank: Readonly<Record<Today, number>> = ranks(todays);
export const contactRank: Readonly<Record<Contact, number>> = ranks(contacts);

const higher = (peak: number | null, score: number | null | 'not-applicable'): number | null =>
  typeof score === 'number' && (peak === null || score > peak) ? score : peak;

const derive = (facts: Facts, version: EngineVersion): Derived => {
  let peak = higher(null, facts.painBefore);
  peak = higher(peak, facts.painDuring);
  peak = higher(peak, facts.painAfter);
  peak = higher(peak, facts.painTwoHours);
  peak = higher(peak, facts.painNextMorning);
  if (version >= 2) peak = higher(peak, facts.painLaterMorning);
  const usual = facts.usualPain ?? 0;
  return { peak, usual, top: facts.usualPain === null ? 0 : (facts.usualPainTop ?? usual) };
};

/** Threshold texts depend on the choices alone, so they are written once for each set of choices. */
const thresholdTexts = new WeakMap<EngineSettingValues, readonly string[]>();

const thresholdsFor = (settings: EngineSettingValues): readonly string[] => {
  let texts = thresholdTexts.get(settings);
  if (!texts) {
    texts = rulesOf(engineVersionOf(settings)).map((rule) => rule.threshold(settings));
    thresholdTexts.set(settings, texts);
  }
  return texts;
};

const observedBy = (rule: RuleForm, facts: Facts, derived: Derived): Readonly<Record<string, unknown>> => {
  if (rule.observed) return rule.observed(facts, derived);
  const observed: Record<string, unknown> = {};
  for (const name of rule.observes) {
    // The top is shown as it was read: usual pain itself where no clinician widened the band.
    const isTop = name === 'usualPainTop' && facts.usualPain !== null;
    observed[name] = name === 'peak' ? derived.peak : isTop ? derived.top : facts[name];
  }
  return observed;
};

const supportOf = (rule: OrderedRule): string =>
  rule.restsOn === 'source' ? (rule.citations[0]?.source ?? 'clinic-choice') : 'clinic-choice';

/** The most cautious of every cap; `largestStep` only where the decision is progress. */
export const mostCautious = (effects: readonly Effect[]): Omit<Answers, 'reasons'> => {
  let decision: DecisionWord = 'progress';
  let largestStep: Step = 'load';
  let today: Today = 'as-planned';
  let contact: Contact = 'none';
  for (const effect of effects) {
    if (effect.decision && decisionRank[effect.decision] < decisionRank[decision]) decision = effect.decision;
    if (effect.largestStep && stepRank[effect.largestStep] < stepRank[largestStep]) {
      largestStep = effect.largestStep;
    }
    if (effect.today && todayRank[effect.today] < todayRank[today]) today = effect.today;
    if (effect.contact && contactRank[effect.contact] < contactRank[contact]) contact = effect.contact;
  }
  return { decision, largestStep: decision === 'progress' ? largestStep : null, today, contact };
};

/** Reasons in table order, from the given rules (all of them unless a gate asks for fewer). */
export const reasonsFor = (
  facts: Facts,
  settings: EngineSettingValues,
  applies?: (rule: Pick<Rule, 'id'>) => boolean,
): readonly Reason[] => {
  const version = engineVersionOf(settings);
  const rules = rulesOf(version);
  const derived = derive(facts, version);
  const thresholds = thresholdsFor(settings);
  const reasons: Reason[] = [];
  for (let place = 0; place < rules.length; place++) {
    const rule = rules[place]!;
    if ((applies && !applies(rule)) || !rule.condition(facts, derived, settings)) continue;
    reasons.push({
      rule: rule.id,
      observed: observedBy(rule, facts, derived),
      threshold: thresholds[place]!,
      support: rule.supportFor?.(facts) ?? supportOf(rule),
      effect: rule.effectFor ? rule.effectFor(facts, derived, settings) : rule.effect,
    });
  }
  return reasons;
};

const combine = (reasons: readonly Reason[]): Answers => {
  const { decision, largestStep, today, contact } = mostCautious(reasons.map((reason) => reason.effect));
  return { decision, largestStep, today, contact, reasons };
};

/** The version of the rules is one of the clinic's settings; the newest where none is given. */
export const decide = (facts: Facts, settings?: SettingValues): Answers =>
  combine(reasonsFor(facts, engineSettingValues(settings)));
