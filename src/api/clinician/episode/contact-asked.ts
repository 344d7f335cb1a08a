/** Whether what a contact is about still asks for one. */
import { Problem } from '#api/errors.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';

/** What the contact names must be open and this patient's; what a colleague has ended meanwhile is said. */
export const requireAsked = (
  plan: Plan,
  signIds: readonly string[],
  decisionIds: readonly string[],
): void => {
  const open = new Set(openSigns(plan).map(({ sign }) => sign.id));
  const asked = new Set(plan.asks.filter(({ settled }) => settled === null).map(({ id }) => id));
  if (signIds.every((id) => open.has(id)) && decisionIds.every((id) => asked.has(id))) return;
  const ended = plan.signs.find(({ sign, endedBy }) => endedBy && signIds.includes(sign.id))?.endedBy;
  throw new Problem(
    'conflict',
    ended
      ? `${ended.by} has recorded a contact that ended this warning sign. Yours was not saved; reload the page.`
      : 'This warning sign or decision is no longer open. Nothing was saved; reload the page.',
  );
};
