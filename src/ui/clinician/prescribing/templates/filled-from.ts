/** One dose of a template as the form starts with it: what was missing is typed there. */
import { say } from '#messages/en/staff/prescribing/templates.ts';
import type { ProposedTemplate } from '../../answers.ts';
import { type Typed, typedFrom } from '../../forms/typed.ts';
import type { ChoiceAddress } from '../choose/choice-address.ts';

interface Filled {
  readonly typed: Typed;
  readonly said: readonly string[];
}

export const filledFrom = (
  template: ProposedTemplate | null,
  at: Pick<ChoiceAddress, 'place' | 'exerciseId'>,
): Filled | null => {
  const dose = template?.doses.find(({ place }) => place === at.place);
  // Another exercise was chosen since: the template is not about it.
  if (!template || !dose || dose.request.exerciseId !== at.exerciseId) return null;
  const { method: _, limb: __, ...request } = dose.request;
  return { typed: typedFrom(request), said: [say('use.filled', { name: template.name })] };
};
