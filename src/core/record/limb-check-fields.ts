/** How a session carries what was seen of fingers or toes after a cuff, and what in it cannot be. */
import type { Field } from '../calculations/describe.ts';
import type { Refusal } from '../outcome.ts';
import {
  inconsistentPulse,
  type LimbCheck,
  limbMoments,
  pulseStates,
  signAnswers,
} from '../prescribing/occlusion/limb-check.ts';

const sign = <const N extends string>(name: N) =>
  ({ name, kind: 'enum', values: signAnswers, nullable: true }) as const;

export const limbChecksField = {
  name: 'limbChecks',
  kind: 'list',
  optional: true,
  maxItems: 40,
  of: {
    name: 'check',
    kind: 'record',
    fields: [
      { name: 'itemId', kind: 'text', minLength: 1, maxLength: 64 },
      { name: 'moment', kind: 'enum', values: limbMoments },
      sign('colour'),
      sign('feeling'),
      sign('pulse'),
      { name: 'pulseState', kind: 'enum', values: pulseStates },
    ],
  },
} as const satisfies Field;

const refusal = (reason: string): Refusal => ({ field: 'input.limbChecks', code: 'inconsistent', reason });

export const limbRefusals = (checks: readonly LimbCheck[]): readonly Refusal[] => {
  const looks = checks.map(({ itemId, moment }) => `${itemId} ${moment}`);
  const twice = looks.find((look, index) => looks.indexOf(look) !== index);
  return [
    ...(twice ? [refusal(`Give the look at ${twice} once, not twice.`)] : []),
    ...(inconsistentPulse(checks) ? [refusal('A pulse that was not asked about has no answer.')] : []),
  ];
};
