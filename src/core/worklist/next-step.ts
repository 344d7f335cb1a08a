/**
 * The one thing to do next for a person, as the bar of the record names it. Danger comes first, then the
 * first visit until an exercise is prescribed, then what it rests on, then what waits on the worklist, most
 * pressing first, and last what a first visit leaves to do once a dose is signed. It proposes an
 * order of work and decides nothing; a choice of this project.
 */
import type { FirstVisitStep } from '../episode/first-visit/first-visit-steps.ts';
import type { Joint } from '../exercises/joints.ts';
import { dangers, type WorklistItemKind } from './item.ts';

/** What is asked for again where an exercise is prescribed and something it rests on has gone. */
export const setupSteps = ['screen', 'ask-consent', 'follow-joint', 'set-baseline'] as const;
type SetupStep = (typeof setupSteps)[number];

interface NextItem {
  readonly kind: WorklistItemKind;
  readonly joint: Joint | null;
  readonly decisionId: string | null;
  /** Of a re-test: what is to be measured. */
  readonly measure?: string | undefined;
}

export type NextStep =
  | ({ readonly because: 'item' } & NextItem)
  | { readonly because: 'setup'; readonly step: SetupStep; readonly joint: Joint | null }
  | { readonly because: 'first-visit'; readonly step: FirstVisitStep };

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
  /** Where the first visit goes on; null where it is finished. */
  readonly firstVisit: FirstVisitStep | null;
}

/** Of a first visit, what is left to do once a dose is signed; it waits behind what waits already. */
const afterSigning: readonly FirstVisitStep[] = ['week', 'invitation'];

const setupOf = (input: NextStepInput): NextStep | null => {
  const step = (name: SetupStep, joint: Joint | null = null): NextStep => ({
    because: 'setup',
    step: name,
    joint,
  });
  if (!input.isPrescribed) return { because: 'first-visit', step: input.firstVisit ?? 'exercise' };
  if (!input.isScreened) return step('screen');
  if (!input.isTreatmentAnswered) return step('ask-consent');
  if (input.followedJoints.length === 0) return step('follow-joint');
  const open = input.followedJoints.find((joint) => !input.jointsWithBaseline.includes(joint));
  return open ? step('set-baseline', open) : null;
};

const restOfVisit = ({ firstVisit }: NextStepInput): NextStep | null =>
  firstVisit && afterSigning.includes(firstVisit) ? { because: 'first-visit', step: firstVisit } : null;

/** null = nothing was found that waits. */
export const nextStepOf = (input: NextStepInput): NextStep | null => {
  const [first] = input.items;
  const item: NextStep | null = first
    ? {
        because: 'item',
        kind: first.kind,
        joint: first.joint,
        decisionId: first.decisionId,
        measure: first.measure,
      }
    : null;
  if (item && first && dangers.includes(first.kind)) return item;
  return input.isAway ? item : (setupOf(input) ?? item ?? restOfVisit(input));
};
