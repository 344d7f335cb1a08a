/** What the rules decided, each with the rules that spoke and what they saw, and what a clinician answered. */
import type { DetectedIssue } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { idOf, instantOf, own, refTo, subjectOf, text, writerOf } from './parts.ts';

type Decision = PersonRecord['rows']['decision'][number];
type Reason = Decision['reasons'][number];

const observed = (values: Reason['observed']): string =>
  Object.entries(values)
    .map(([name, value]) => `${name} ${JSON.stringify(value)}`)
    .join(', ');

const evidenceOf = ({ rule, observed: seen, threshold }: Reason) => ({
  code: [own(`rule.${rule}`, `${rule}: ${threshold}. Observed: ${observed(seen)}`)],
});

const answersTo = (record: PersonRecord, decisionId: string) => {
  const mitigation = record.rows.decision_response
    .filter((row) => row.decisionId === decisionId)
    .map(({ kind, decision, reason, until, answeredAt, answeredBy }) => ({
      action: text(
        kind === 'accept'
          ? `Accepted. ${reason}`.trim()
          : `Overridden: ${decision}${until ? ` until ${until}` : ''}. ${reason}`,
      ),
      date: instantOf(answeredAt),
      author: writerOf(record, answeredBy),
    }));
  return mitigation.length > 0 ? { mitigation } : {};
};

export const detectedIssues = (record: PersonRecord): readonly DetectedIssue[] => {
  const sessions = new Set(record.rows.training_session.map(({ id }) => id));
  return record.rows.decision.map((row) => ({
    resourceType: 'DetectedIssue',
    id: idOf(row.id),
    status: 'final',
    code: own(`decision.${row.decision}`),
    patient: subjectOf(record),
    identifiedDateTime: instantOf(row.evaluatedAt),
    ...(row.sessionId && sessions.has(row.sessionId)
      ? { implicated: [refTo('Procedure', row.sessionId)] }
      : {}),
    ...(row.reasons.length > 0 ? { evidence: row.reasons.map(evidenceOf) } : {}),
    detail: `Joint: ${row.joint.replaceAll('-', ' ')}. Next session: ${row.today}. Contact: ${row.contact}. Rules of version ${row.engineVersion}.`,
    ...answersTo(record, row.id),
  }));
};
