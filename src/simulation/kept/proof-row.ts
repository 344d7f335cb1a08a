/** What is behind each rule, as the last run of its tests and generated cases left it. */
export interface RuleCounts {
  readonly rule: string;
  /** Of the random facts. */
  readonly fired: number;
  /** Of the looks at diaries in which nothing changes. */
  readonly firedUnchanged: number;
  readonly decidedUnchanged: number;
}

/** As it is written, a line a rule. */
export type ProofRow = readonly [
  rule: string,
  /** Folder of the rule and of its tests. */
  group: string,
  /** The rule’s own tests, all of which passed. */
  tests: number,
  fired: number,
  firedUnchanged: number,
  decidedUnchanged: number,
  /** Of rule, tests and second statement as they were; another one shows that they were changed since. */
  digest: string,
];

export interface ProofRun {
  readonly ranOn: string;
  /** Of the rules. */
  readonly version: number;
  readonly seed: number;
  /** Random facts, each decided by the engine and looked up in the independent table. */
  readonly facts: number;
  readonly disagreements: number;
  /** Invented, with a diary in which nothing changes. */
  readonly people: number;
  readonly looks: number;
}
