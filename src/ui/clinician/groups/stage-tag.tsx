/** Where a person of the hour stands, by shape and word. */
import { say } from '#messages/en/staff/groups/hour.ts';
import type { Shape } from '#ui/design-system/mark.tsx';
import { StatusTag, type StatusTone } from '#ui/design-system/status-tag.tsx';
import type { Stage } from './group-answers.ts';

/** "closed": not shown. "aside": at the clinic beside another session, and not counted. */
type Shown = Stage | 'closed' | 'aside';

const stageLooks: Readonly<Record<Shown, { readonly shape: Shape; readonly tone: StatusTone }>> = {
  waiting: { shape: 'waiting', tone: 'care' },
  signs: { shape: 'waiting', tone: 'care' },
  before: { shape: 'waiting', tone: 'plain' },
  work: { shape: 'forward', tone: 'accent' },
  after: { shape: 'waiting', tone: 'plain' },
  sent: { shape: 'done', tone: 'accent' },
  stopped: { shape: 'stop', tone: 'danger' },
  reporting: { shape: 'stop', tone: 'danger' },
  aside: { shape: 'care', tone: 'care' },
  closed: { shape: 'closed', tone: 'soft' },
};

export const StageTag = ({ stage }: { readonly stage: Shown }) => (
  <StatusTag {...stageLooks[stage]}>{say(`stage.${stage}`)}</StatusTag>
);
