/** The four answers of the engine, each ordered from most cautious to boldest. */
export const decisions = ['pause', 'ease-back', 'hold', 'progress'] as const;
export type DecisionWord = (typeof decisions)[number];

export const steps = ['repetitions', 'load'] as const;
/** Largest step when the decision is progress: repetitions only, or load (weight, level or set). */
export type Step = (typeof steps)[number];

export const todays = ['none', 'rest-this-joint', 'bad-day', 'as-planned'] as const;
export type Today = (typeof todays)[number];

/** Ordered from most urgent. */
export const contacts = ['emergency', 'same-day', 'routine', 'none'] as const;
export type Contact = (typeof contacts)[number];

export interface Reason {
  /** Rule id of the table, such as "P5". */
  readonly rule: string;
  /** What was found, by fact name. */
  readonly observed: Readonly<Record<string, unknown>>;
  /** The threshold in words with its figures. */
  readonly threshold: string;
  /** Source key, or "clinic-choice". */
  readonly support: string;
  readonly effect: {
    readonly decision?: DecisionWord;
    readonly largestStep?: Step;
    readonly today?: Today;
    readonly contact?: Contact;
  };
}

export interface Answers {
  readonly decision: DecisionWord;
  /** null unless the decision is progress. */
  readonly largestStep: Step | null;
  readonly today: Today;
  readonly contact: Contact;
  readonly reasons: readonly Reason[];
}
