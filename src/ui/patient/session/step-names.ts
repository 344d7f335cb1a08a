/** The pages of a session by their names, and a step: the name with what it is about. */

const stepNames = [
  'flags-before',
  'flags-during',
  'flags-now',
  'confirm',
  'before',
  'usual',
  'other-joint',
  'relief',
  'news',
  'offer',
  'item',
  'cuff-on',
  'set',
  'stop-count',
  'stop',
  'stop-pain',
  'stop-advice',
  'stop-next',
  'rest',
  'cuff-off',
  'limb',
  'limb-later',
  'during',
  'after',
  'gave-way',
  'burn',
  'cuff',
  'statement',
  'extra',
  'check',
] as const;
export type StepName = (typeof stepNames)[number];

/** The compiler knows every step by its name, so none is without its page. */
export type Step = StepName | `${StepName}:${string}`;

export const stepAt = (name: StepName, ...places: readonly (string | number)[]): Step =>
  `${name}:${places.join(':')}`;

export interface StepParts {
  readonly name: StepName;
  /** Joint of a question, or empty. */
  readonly joint: string;
  readonly item: number;
  readonly set: number;
}

export const partsOf = (step: string): StepParts => {
  const [name = '', second = '', third = '', fourth = ''] = step.split(':');
  const isNumber = /^\d+$/.test(second);
  return {
    // A step of an earlier release that is no more: everything stands on the page that shows it all.
    name: stepNames.find((one) => one === name) ?? 'check',
    joint: isNumber ? fourth : second,
    item: isNumber ? Number(second) : -1,
    set: third === '' ? 0 : Number(third),
  };
};
