/** Where an item is dealt with, and the one thing that can be done about it in its row. */
import type { Contact } from '#core/decision/answers.ts';
import { say } from '#messages/en/staff/worklist.ts';
import type { WorklistItem, WorklistLine } from '../answers.ts';

/** Settled by a contact, or by resuming; a pause of the engine is answered beside its decision. */
const contactKinds: readonly WorklistItem['kind'][] = ['red-flag', 'same-day-contact', 'resume-due'];

type Place = Pick<WorklistItem, 'kind' | 'decisionId' | 'joint'> & Partial<Pick<WorklistItem, 'facts'>>;

export const hrefOf = (patientId: string, { kind, decisionId, joint, facts }: Place): string => {
  const record = `/patients/${patientId}`;
  if (contactKinds.includes(kind)) return `${record}/warning-signs`;
  if (kind === 'dose-stopped') return `${record}/prescriptions`;
  if (decisionId)
    return `${record}/review?${joint ? `joint=${joint}&` : ''}decision=${decisionId}#decision-${decisionId}`;
  if (kind === 'awaiting-signature') return `${record}/prescriptions#unsigned`;
  if (kind === 'message') return `${record}/review#messages`;
  if (kind === 'review-day') return `${record}/review#next-review`;
  if (kind === 'phase-due') return `${record}/care/protocol`;
  if (kind === 'retest-due') return `${record}/measurements${facts?.measure ? `?kind=${facts.measure}` : ''}`;
  if (kind === 'screening-due') return `${record}/screening`;
  if (kind === 'pressure-due') return `${record}/measurements?kind=limb-occlusion-pressure`;
  return kind === 'danger-passed' ? `${record}/warning-signs` : `${record}/review`;
};

/** What a contact recorded in the row would be about: every open sign and call of the patient that is listed. */
interface ContactAbout {
  readonly signIds: readonly string[];
  readonly decisionIds: readonly string[];
  /** The server knows how urgent a call of today is; here it is of the day. */
  readonly urgencies: readonly Contact[];
}

const aboutOf = (items: readonly WorklistItem[]): ContactAbout => ({
  signIds: items.flatMap(({ kind, facts }) => (kind === 'red-flag' ? String(facts.signId) : [])),
  decisionIds: items.flatMap(({ kind, decisionId }) =>
    kind === 'same-day-contact' && decisionId ? decisionId : [],
  ),
  urgencies: items.flatMap(({ kind, facts }) =>
    kind === 'red-flag' ? (facts.urgency as Contact) : kind === 'same-day-contact' ? 'same-day' : [],
  ),
});

export type Primary =
  | { readonly act: 'contact'; readonly about: ContactAbout }
  | { readonly act: 'sign' }
  | { readonly act: 'reply' }
  | { readonly act: 'go'; readonly href: string; readonly label: string };

const labels: Partial<Record<WorklistItem['kind'], string>> = {
  'resume-due': say('go.resume'),
  'missing-answers': say('go.type-in'),
  'phase-due': say('go.phase'),
  'screening-due': say('go.screen'),
  'pressure-due': say('go.measure'),
  'retest-due': say('go.measure'),
  'dose-stopped': say('go.stopped'),
};

export const primaryOf = ({ patientId, item, others, doses }: WorklistLine): Primary => {
  const about = aboutOf([item, ...others]);
  const isUrgent = item.kind === 'danger-passed' || contactKinds.includes(item.kind);
  if (isUrgent && item.kind !== 'resume-due' && about.signIds.length + about.decisionIds.length > 0)
    return { act: 'contact', about };
  if (item.kind === 'awaiting-signature' && doses.length > 0) return { act: 'sign' };
  if (item.kind === 'message') return { act: 'reply' };
  const href =
    item.kind === 'missing-answers' ? `/patients/${patientId}/data-entry` : hrefOf(patientId, item);
  return { act: 'go', href, label: labels[item.kind] ?? say('go.review') };
};
