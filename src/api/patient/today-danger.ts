/** How warning signs and pauses stand, said to the patient. The sentence always equals the state of the plan. */

import type { PauseState, SignState } from '#core/danger/danger-state.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { textOf } from '#messages/every-language.ts';
import type { Text } from '#messages/text.ts';

interface ClinicToRing {
  readonly name: string;
  readonly phone: string;
}

const signText = ({ sign, acknowledged, state }: SignState, clinic: ClinicToRing): Text => {
  if (state === 'attempted')
    return textOf('danger', 'attempted', { clinic: clinic.name, phone: clinic.phone });
  if (acknowledged) return textOf('danger', 'acknowledged', { name: acknowledged.by });
  return textOf('danger', sign.source === 'patient' ? 'reported' : 'reported-to-us');
};

const pauseText = (state: PauseState, plan: Plan): Text | null => {
  const { pause, resumedItemIds } = state;
  if (state.isSignOpen) return null;
  const held = plan.items.filter(({ reasons }) =>
    reasons.some((reason) => reason.code === 'paused' && reason.pauseId === pause.id),
  );
  if (held.length === 0) return null;
  const endedBy = plan.signs.find(({ sign }) => sign.id === pause.signId)?.endedBy;
  if (endedBy) {
    const some = resumedItemIds.size > 0;
    const key = endedBy.reached === 'carer' ? 'ended-carer' : 'ended';
    return textOf('danger', some ? `${key}-some` : key, { name: endedBy.by });
  }
  if (pause.joint !== null) return textOf('danger', 'paused-joint', { joint: pause.joint });
  return textOf('danger', resumedItemIds.size > 0 ? 'paused-some' : 'paused-all');
};

const answeredLeast: readonly SignState['state'][] = ['reported', 'acknowledged', 'attempted'];

/** Of several open signs the one answered least speaks; without one, each pause for itself. */
export const dangerTexts = (plan: Plan, clinic: ClinicToRing): readonly Text[] => {
  const [first] = openSigns(plan).toSorted(
    (a, b) => answeredLeast.indexOf(a.state) - answeredLeast.indexOf(b.state),
  );
  if (first) return [signText(first, clinic)];
  const texts = plan.pauses.map((one) => pauseText(one, plan)).filter((text) => text !== null);
  return [...new Map(texts.map((text) => [text.en, text])).values()];
};
