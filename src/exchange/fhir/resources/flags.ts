/** What stands in the way: warning signs, pauses, limits on a joint. */
import type { Flag } from 'fhir/r4';
import type { PersonRecord } from '../../person-record.ts';
import { idOf, instantOf, own, periodOf, struckOut, subjectOf, text, writerOf } from './parts.ts';

type Rows = PersonRecord['rows'];

/** A sign ends by a contact that reached the patient, or who cares for the patient, and by nothing else. */
const endOfSign = ({ contact_attempt }: Rows, id: string, wrong: ReadonlySet<string>): number | null =>
  contact_attempt.find((row) => row.reached !== 'nobody' && row.signIds.includes(id) && !wrong.has(row.id))
    ?.recordedAt ?? null;

const where = (joint: string | null): string => (joint ? ` (${joint.replaceAll('-', ' ')})` : '');

const signs = (record: PersonRecord, wrong: ReadonlySet<string>): Flag[] =>
  record.rows.warning_sign.flatMap((row) => {
    const end = endOfSign(record.rows, row.id, wrong);
    const named = row.flags.length > 0 ? row.flags : (['other'] as const);
    return named.map((flag) => ({
      resourceType: 'Flag',
      id: idOf(row.id, flag),
      status: end === null ? 'active' : 'inactive',
      code: own(
        `sign.${flag}`,
        `Warning sign${where(row.joint)}, urgency ${row.urgency}${row.remark ? `: ${row.remark}` : ''}`,
      ),
      subject: subjectOf(record),
      period: { start: instantOf(row.recordedAt), ...(end === null ? {} : { end: instantOf(end) }) },
      author: writerOf(record, row.recordedBy),
    }));
  });

/** Over only when whatever it held was resumed. */
const pauses = (record: PersonRecord): Flag[] =>
  record.rows.pause.map((row) => {
    const end = record.rows.pause_resumption.find(
      ({ pauseId, itemId }) => pauseId === row.id && itemId === null,
    );
    return {
      resourceType: 'Flag',
      id: idOf(row.id),
      status: end ? 'inactive' : 'active',
      code: own(`pause.${row.cause}`, `Paused${where(row.joint)}: ${row.reason}`),
      subject: subjectOf(record),
      period: { start: instantOf(row.recordedAt), ...(end ? { end: instantOf(end.recordedAt) } : {}) },
      author: writerOf(record, row.recordedBy),
    };
  });

const limitWords = (row: Rows['care_limit'][number]): string => {
  const bound = row.limitKg !== null ? ` ${row.limitKg} kg` : '';
  const range =
    row.movement !== null ? ` ${row.movement} from ${row.fromDegrees} to ${row.toDegrees} degrees` : '';
  return `${row.kind.replaceAll('-', ' ')}${bound}${range}${where(row.joint)}, by ${row.author}${row.remark ? `: ${row.remark}` : ''}`;
};

const limits = (record: PersonRecord, today: string, wrong: ReadonlySet<string>): Flag[] =>
  record.rows.care_limit.map((row) => {
    const lift = record.rows.care_limit_lift.find(({ limitId }) => limitId === row.id);
    const end = lift?.liftedOn ?? row.toDay;
    const isOver = end !== null && end !== undefined && end < today;
    return {
      resourceType: 'Flag',
      id: idOf(row.id),
      status: wrong.has(row.id) ? 'entered-in-error' : isOver || lift ? 'inactive' : 'active',
      code: own(`limit.${row.kind}`, limitWords(row)),
      subject: subjectOf(record),
      ...periodOf(row.fromDay, end && end >= row.fromDay ? end : null),
      author: writerOf(record, row.recordedBy),
    };
  });

type Phase = Rows['protocol_phase'][number];

const phaseWords = (row: Phase, protocol: Rows['protocol'][number]): string => {
  const bear = row.bearKg === null ? '' : `, ${row.bearKg} kg`;
  const range =
    row.movement === null ? '' : `, ${row.movement} from ${row.fromDegrees} to ${row.toDegrees} degrees`;
  const load = row.limitKg === null ? '' : `, load up to ${row.limitKg} kg`;
  return `Phase after ${protocol.procedure}${where(protocol.joint)} by ${protocol.author}: ${row.name}. Weight-bearing ${row.weightBearing}${bear}${range}${load}.`;
};

/** Phases after surgery as last written. What a clinician confirmed last is active; a planned day opens nothing. */
const phases = (record: PersonRecord): Flag[] =>
  record.rows.protocol.flatMap((protocol) => {
    const isOfIt = ({ protocolId }: { readonly protocolId: string }) => protocolId === protocol.id;
    const byTime = (a: { readonly recordedAt: number }, b: typeof a) => a.recordedAt - b.recordedAt;
    const steps = record.rows.protocol_step.filter(isOfIt).toSorted(byTime);
    const written = record.rows.protocol_phase.filter(isOfIt).toSorted(byTime);
    const newest = [...new Map(written.map((row) => [row.place, row])).values()];
    const now = steps.at(-1)?.place ?? 1;
    return newest.map((row): Flag => {
      const confirmed = steps.findLast(({ place }) => place === row.place)?.on;
      return {
        resourceType: 'Flag',
        id: idOf(row.id),
        status: row.place === now ? 'active' : 'inactive',
        code: text(phaseWords(row, protocol)),
        subject: subjectOf(record),
        ...periodOf(confirmed),
        author: writerOf(record, row.recordedBy),
      };
    });
  });

export const flags = (record: PersonRecord, today: string): readonly Flag[] => {
  const wrong = struckOut(record);
  return [...signs(record, wrong), ...pauses(record), ...limits(record, today, wrong), ...phases(record)];
};
