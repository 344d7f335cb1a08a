/**
 * The one thing to do next for a person, as the bar of the record names it. Danger comes first, then what
 * nothing can be prescribed without, then what waits on the worklist, most pressing first. It proposes an
 * order of work and decides nothing; a choice of this project.
 */
import type { Joint } from '../exercises/joints.ts';
import { dangers, type WorklistItemKind } from './item.ts';

/** What has to be there before a first dose can be signed. */
export const setupSteps = ['screen', 'ask-consent', 'follow-joint', 'set-baseline', 'prescribe'] as const;
type SetupStep = (typeof setupSteps)[number];

interface NextItem {
  readonly kind: WorklistItemKind;
  readonly joint: Joint | null;
  readonly decisionId: string | null;
}

export type NextStep =
  | ({ readonly because: 'item' } & NextItem)
  | { readonly because: 'setup'; readonly step: SetupStep; readonly joint: Joint | null };

export interface NextStepInput {
  /** What shows today, most pressing first. */
  readonly items: readonly NextItem[];
  /** Care was closed, or the person is on a break: nothing new is begun. */
  readonly isAway: boolean;
  readonly isScreened: boolean;
  readonly isTreatmentAnswered: boolean;
  readonly followedJoints: readonly Joint[];
  readonly jointsWithBaseline: readonly Joint[];
  /** An exercise is signed and in force, or waits for a signature. */
  readonly isPrescribed: boolean;
}

const setupOf = (input: NextStepInput): NextStep | null => {
  const step = (name: SetupStep, joint: Joint | null = null): NextStep => ({
    because: 'setup',
    step: name,
    joint,
  });
  if (input.isAway) return null;
  if (!input.isScreened) return step('screen');
  if (!input.isTreatmentAnswered) return step('ask-consent');
  if (input.followedJoints.length === 0) return step('follow-joint');
  const open = input.followedJoints.find((joint) => !input.jointsWithBaseline.includes(joint));
  if (open) return step('set-baseline', open);
  return input.isPrescribed ? null : step('prescribe');
};

/** null = nothing was found that waits. */
export const nextStepOf = (input: NextStepInput): NextStep | null => {
  const [first] = input.items;
  const item: NextStep | null = first
    ? { because: 'item', kind: first.kind, joint: first.joint, decisionId: first.decisionId }
    : null;
  return item && first && dangers.includes(first.kind) ? item : (setupOf(input) ?? item);
};
