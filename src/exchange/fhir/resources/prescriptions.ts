/** The plan and each version of each prescribed exercise, with the whole dose and every caution. */
import type { CarePlan, ServiceRequest } from 'fhir/r4';
import { doseInShort } from '#core/prescribing/dose-in-short.ts';
import { tradeNames } from '#messages/trade-names.ts';
import type { PersonRecord } from '../../person-record.ts';
import { doseDetails } from '../codes/dose-details.ts';
import { idOf, instantOf, notes, own, periodOf, refTo, subjectOf, writerOf } from './parts.ts';

type Version = PersonRecord['rows']['prescription'][number];

interface State {
  readonly status: ServiceRequest['status'];
  readonly signed: { readonly at: number; readonly by: string } | null;
  readonly endedAt: number | null;
}

type Rows = PersonRecord['rows'];

/** No episode of care goes on, and one is on a break. */
const isOnBreak = ({ episode, episode_change }: Rows): boolean => {
  const last = episode.map(
    ({ id }) =>
      episode_change
        .filter(({ episodeId }) => episodeId === id)
        .toSorted((a, b) => a.recordedAt - b.recordedAt)
        .at(-1)?.state,
  );
  return last.includes('on-break') && !last.some((state) => state === 'active' || state === 'open');
};

/** Rests under a pause of its joint or of everything, until that or the exercise was resumed; or during a break. */
const isHeld = (rows: Rows, { itemId, joints }: Pick<Version, 'itemId' | 'joints'>): boolean => {
  const isOver = (pauseId: string) =>
    rows.pause_resumption.some(
      (row) => row.pauseId === pauseId && (row.itemId === null || row.itemId === itemId),
    );
  return (
    isOnBreak(rows) ||
    rows.pause.some(({ id, joint }) => (joint === null || joints.includes(joint)) && !isOver(id))
  );
};

/** A signature that was withdrawn leaves the version unsigned; a newer signed one takes the place of an older. */
const stateOf = ({ rows }: PersonRecord, { id, itemId, version, joints }: Version): State => {
  const withdrawn = new Set(rows.signature_withdrawal.map(({ prescriptionId }) => prescriptionId));
  const signature = rows.signature.find((one) => one.prescriptionId === id && !withdrawn.has(id));
  const end = rows.prescription_end.find(({ prescriptionId }) => prescriptionId === id);
  const isReplaced = rows.prescription.some(
    (other) =>
      other.itemId === itemId &&
      other.version > version &&
      rows.signature.some((one) => one.prescriptionId === other.id && !withdrawn.has(other.id)),
  );
  const signed = signature ? { at: signature.signedAt, by: signature.signedBy } : null;
  const active = isHeld(rows, { itemId, joints }) ? 'on-hold' : 'active';
  const status = end ? 'revoked' : isReplaced ? 'completed' : signed ? active : 'draft';
  return { status, signed, endedAt: end?.endedAt ?? null };
};

const requestOf = (record: PersonRecord, row: Version): ServiceRequest => {
  const { status, signed } = stateOf(record, row);
  const before = record.rows.prescription.find(
    ({ itemId, version }) => itemId === row.itemId && version === row.version - 1,
  );
  const end = record.rows.prescription_end.find(({ prescriptionId }) => prescriptionId === row.id);
  const name = tradeNames[row.exerciseId as keyof typeof tradeNames] ?? row.exerciseId;
  return {
    resourceType: 'ServiceRequest',
    id: idOf(row.id),
    ...(before ? { replaces: [refTo('ServiceRequest', before.id)] } : {}),
    requisition: { value: row.itemId },
    status,
    intent: signed ? 'order' : 'proposal',
    category: [own(`method.${row.method}`)],
    code: own(`exercise.${row.exerciseId}`, `${name}: ${doseInShort(row.dose)}`),
    orderDetail: doseDetails.flatMap(({ code, text }) => {
      const words = text(row.dose);
      return words === null ? [] : [own(`dose.${code}`, words)];
    }),
    subject: subjectOf(record),
    occurrenceTiming: { repeat: { frequency: row.dose.sessionsPerWeek, period: 1, periodUnit: 'wk' } },
    authoredOn: instantOf(signed?.at ?? row.recordedAt),
    requester: writerOf(record, signed?.by ?? row.recordedBy),
    bodySite: row.joints.map((joint) => ({ text: joint.replaceAll('-', ' ') })),
    ...notes(
      `Easier session: ${doseInShort(row.badDay)}.`,
      ...row.cautions.map(({ text }) => `Caution: ${text}`),
      end ? `Ended: ${end.reason}` : null,
    ),
  };
};

export const serviceRequests = (record: PersonRecord): readonly ServiceRequest[] =>
  record.rows.prescription.map((row) => requestOf(record, row));

/** One plan: it is active while a signed dose is in force, and on hold while all that are rest. */
export const carePlans = (record: PersonRecord, requests: readonly ServiceRequest[]): readonly CarePlan[] => {
  if (requests.length === 0) return [];
  const began = record.rows.prescription.map(({ recordedAt }) => recordedAt).sort((a, b) => a - b)[0]!;
  const isActive = requests.some(({ status }) => status === 'active');
  const isHeldBack = requests.some(({ status }) => status === 'on-hold');
  const isDraft = requests.some(({ status }) => status === 'draft');
  return [
    {
      resourceType: 'CarePlan',
      id: idOf('plan', record.patient.id),
      status: isActive ? 'active' : isHeldBack ? 'on-hold' : isDraft ? 'draft' : 'completed',
      intent: 'plan',
      subject: subjectOf(record),
      ...periodOf(instantOf(began)),
      activity: requests.map(({ id }) => ({ reference: refTo('ServiceRequest', id!) })),
    },
  ];
};
