/** For each rule in one clinic: how often it fired and decided, how it was overruled, and what followed. */
import { type ShareInterval, wilsonInterval } from '../../statistics/wilson.ts';
import type { DecisionWord, Reason } from '../answers.ts';
import { decisionRank } from '../decide.ts';
import { type Following, followings } from './what-followed.ts';

/** Under so many people a figure speaks of persons and not of a rule. */
export const fewestPeople = 5;

/** One decision as it was made, what a clinician put in its place, and what followed. */
export interface FollowedDecision {
  readonly patientId: string;
  readonly decision: DecisionWord;
  readonly reasons: readonly Pick<Reason, 'rule' | 'effect'>[];
  /** A clinician accepted or overruled it. */
  readonly answered: boolean;
  /** Null where it was not overruled, or is no more. */
  readonly instead: DecisionWord | null;
  /** Null while it is too early to say. */
  readonly followed: Following | null;
}

interface Share {
  readonly count: number;
  readonly interval: ShareInterval | null;
}

interface RuleFigures {
  readonly fired: number;
  /** Its cap is the decision that was made; where others cap alike, each of them decided. */
  readonly decided: number;
  /** By a clinician: what was overruled is of these, and one nobody answered was not agreed to. */
  readonly answered: number;
  readonly overruled: { readonly bolder: number; readonly moreCautious: number; readonly same: number };
  /** Of the decisions it fired in that are old enough. */
  readonly followed: Readonly<Record<Following, Share>>;
  readonly tooEarly: number;
}

export interface BoardRow {
  readonly rule: string;
  /** Null where fewer people than five are behind them. */
  readonly figures: RuleFigures | null;
}

const decidedBy = (rule: string, { decision, reasons }: FollowedDecision): boolean =>
  reasons.some((one) => one.rule === rule && one.effect.decision === decision);

const overruledIn = (all: readonly FollowedDecision[]): RuleFigures['overruled'] => {
  const steps = all.flatMap(({ decision, instead }) =>
    instead === null ? [] : [Math.sign(decisionRank[instead] - decisionRank[decision])],
  );
  const count = (sign: number) => steps.filter((step) => step === sign).length;
  return { bolder: count(1), moreCautious: count(-1), same: count(0) };
};

const figuresOf = (rule: string, fired: readonly FollowedDecision[]): RuleFigures => {
  const told = fired.flatMap(({ followed }) => followed ?? []);
  const shares = followings.map((following): readonly [Following, Share] => {
    const count = told.filter((one) => one === following).length;
    return [following, { count, interval: wilsonInterval(count, told.length) }];
  });
  return {
    fired: fired.length,
    decided: fired.filter((one) => decidedBy(rule, one)).length,
    answered: fired.filter(({ answered }) => answered).length,
    overruled: overruledIn(fired),
    followed: Object.fromEntries(shares) as Record<Following, Share>,
    tooEarly: fired.length - told.length,
  };
};

/** A row for each rule named, in that order; one that never fired stands with noughts, which speak of nobody. */
export const ruleBoard = (
  rules: readonly string[],
  decisions: readonly FollowedDecision[],
): readonly BoardRow[] =>
  rules.map((rule) => {
    const fired = decisions.filter(({ reasons }) => reasons.some((one) => one.rule === rule));
    const people = new Set(fired.map(({ patientId }) => patientId)).size;
    return { rule, figures: people > 0 && people < fewestPeople ? null : figuresOf(rule, fired) };
  });
