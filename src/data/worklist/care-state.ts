/**
 * What the care around the dose tells the worklist: one patient by that patient's indexes, or a whole
 * clinic in a fixed number of queries. Both end in the same function, so that they cannot differ.
 */
import { asc, eq } from 'drizzle-orm';
import { type CorrectionIndex, inForce } from '#core/corrections/correction.ts';
import { limitsInForce } from '#core/decision/dose/limits.ts';
import type { Episode } from '#core/episode/episode.ts';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import {
  type AskedScreening,
  eventEffects,
  isAskedAgain,
  type RecordedEvent,
  stillToAskAfter,
} from '#core/episode/event-effects.ts';
import { isUnwritten, nextPhase, type Protocol } from '#core/episode/protocol/protocol.ts';
import { joints } from '#core/exercises/joints.ts';
import type { Limit } from '#core/record/limit.ts';
import { type Day, dayNumber } from '#core/time/day.ts';
import { urgentItems } from '#core/worklist/due-items.ts';
import type { CareState, PatientState } from '#core/worklist/item.ts';
import { worklistSettings } from '#core/worklist/settings.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import { type CoveringClinician, coveringClinicianOf } from '../clinic/covering-clinicians.ts';
import { correctionIndexOfClinic } from '../corrections/correction-index.ts';
import { eventsOf } from '../episode/care-events.ts';
import { episodesFrom, episodesOf } from '../episode/episodes.ts';
import { limitsFrom, limitsOf, limitsThatBind } from '../episode/limits-and-pre-approvals.ts';
import { protocolsOf, protocolsOfClinic } from '../episode/protocols.ts';
import {
  careEvent,
  careLimit,
  careLimitLift,
  episode,
  episodeChange,
  medicineChange,
  preVisit,
} from '../schema/schema.ts';
import { newestPreVisit } from '../screening/pre-visits.ts';
import { newestScreening } from '../screening/screenings.ts';
import { lastAskedOfClinic, screeningsBesideTreatment } from './last-asked.ts';

/** What holds for the whole clinic. */
interface Passing {
  readonly zone: string;
  readonly afterMilliseconds: number;
  readonly coveringClinician: CoveringClinician | null;
}

interface Parts {
  readonly episodes: readonly Episode[];
  readonly limits: readonly Limit[];
  readonly protocols: readonly Protocol[];
  readonly events: readonly Pick<RecordedEvent, 'id' | 'kind' | 'day' | 'recordedAt' | 'medicine'>[];
  readonly preVisitAt: number | null;
  readonly screening: AskedScreening | null;
}

const passingOf = async (access: Access, zone: string): Promise<Passing> => ({
  zone,
  afterMilliseconds:
    (await settingValue(access, worklistSettings, 'covering-clinician-after-hours')) * 3_600_000,
  coveringClinician: await coveringClinicianOf(access),
});

const stateFrom = (parts: Parts, plan: PatientState['plan'], passing: Passing, today: Day): CareState => {
  const episodeStatus = episodeStatusOn(parts.episodes, today);
  const seen = parts.screening?.recordedAt ?? Number.NEGATIVE_INFINITY;
  // As of the last of days, so that a limit whose first day is still to come is due without another write.
  const ending = limitsInForce(parts.limits, joints, dayNumber('9999-12-31'));
  return {
    episodeStatus,
    closedAt: episodeStatus.state === 'closed' ? (episodeStatus.change?.recordedAt ?? null) : null,
    limits: ending.flatMap(({ joint, kind, to, author }) =>
      to === null ? [] : [{ joint, kind, to, author }],
    ),
    phases: parts.protocols.flatMap((one) => {
      const next = nextPhase(one) ?? (isUnwritten(one) ? { place: 1, name: null, from: one.on } : null);
      return next
        ? [{ protocolId: one.id, joint: one.joint, place: next.place, name: next.name, from: next.from }]
        : [];
    }),
    events: parts.events
      .filter((event) => eventEffects[event.kind].opensReview && !isAskedAgain(event, parts.screening))
      .map((event) => ({
        id: event.id,
        kind: event.kind,
        day: event.day,
        at: event.recordedAt,
        toAsk: stillToAskAfter(event, parts.screening)?.length ?? null,
      })),
    answeredAt: parts.preVisitAt !== null && parts.preVisitAt > seen ? parts.preVisitAt : null,
    passes: urgentItems(plan).map((item) => {
      const at = item.since + passing.afterMilliseconds;
      return { ...item, at, on: dayAt(at, passing.zone), to: passing.coveringClinician };
    }),
  };
};

export const careStateOf = async (
  access: Access,
  patientId: string,
  plan: PatientState['plan'],
  zone: string,
): Promise<CareState> => {
  const parts: Parts = {
    episodes: await episodesOf(access, patientId),
    limits: await limitsOf(access, patientId),
    protocols: await protocolsOf(access, patientId),
    events: await eventsOf(access, patientId),
    preVisitAt: (await newestPreVisit(access, patientId))?.recordedAt ?? null,
    screening: await newestScreening(access, patientId),
  };
  return stateFrom(parts, plan, await passingOf(access, zone), access.day);
};

const grouped = <R extends { readonly patientId: string }>(rows: readonly R[]) => {
  const groups = new Map<string, R[]>();
  for (const row of rows) groups.set(row.patientId, [...(groups.get(row.patientId) ?? []), row]);
  return (patientId: string): readonly R[] => groups.get(patientId) ?? [];
};

const episodesOfClinic = async (access: Access) => {
  const { read } = access.store;
  const rows = await read
    .select()
    .from(episode)
    .where(eq(episode.clinicId, access.clinicId))
    .orderBy(asc(episode.recordedAt), asc(episode.id));
  const changes = await read
    .select()
    .from(episodeChange)
    .where(eq(episodeChange.clinicId, access.clinicId))
    .orderBy(asc(episodeChange.recordedAt), asc(episodeChange.on));
  const [episodes, changesOf] = [grouped(rows), grouped(changes)];
  return (patientId: string) => episodesFrom(episodes(patientId), changesOf(patientId));
};

const limitsOfClinic = async (access: Access, index: CorrectionIndex) => {
  const rows = await access.store.read
    .select()
    .from(careLimit)
    .leftJoin(careLimitLift, eq(careLimitLift.limitId, careLimit.id))
    .where(eq(careLimit.clinicId, access.clinicId))
    .orderBy(asc(careLimit.fromDay));
  const byOwner = grouped(rows.map((row) => ({ patientId: row.care_limit.patientId, row })));
  return (patientId: string) => limitsThatBind(limitsFrom(byOwner(patientId).map(({ row }) => row)), index);
};

const eventsOfClinic = async (access: Access) => {
  const rows = await access.store.read
    .select()
    .from(careEvent)
    .leftJoin(medicineChange, eq(medicineChange.eventId, careEvent.id))
    .where(eq(careEvent.clinicId, access.clinicId))
    .orderBy(asc(careEvent.day), asc(careEvent.recordedAt));
  return grouped(
    rows.map(({ care_event, medicine_change }) => ({ ...care_event, medicine: medicine_change })),
  );
};

/** The newest answers before a visit of each patient. */
const answeredOfClinic = async (access: Access) => {
  const answered = await access.store.read
    .select({ patientId: preVisit.patientId, recordedAt: preVisit.recordedAt })
    .from(preVisit)
    .where(eq(preVisit.clinicId, access.clinicId))
    .orderBy(asc(preVisit.recordedAt));
  return new Map(answered.map((row) => [row.patientId, row.recordedAt]));
};

/** Care states of a clinic: give a patient and what is decided, get the state. */
export const careStatesOf = async (access: Access, zone: string) => {
  const passing = await passingOf(access, zone);
  const episodes = await episodesOfClinic(access);
  const index = await correctionIndexOfClinic(access);
  const limits = await limitsOfClinic(access, index);
  const protocols = await protocolsOfClinic(access);
  const events = await eventsOfClinic(access);
  const answered = await answeredOfClinic(access);
  const screened = await lastAskedOfClinic(access);
  const sheets = await screeningsBesideTreatment(access, index);
  return (patientId: string, plan: PatientState['plan']): CareState =>
    stateFrom(
      {
        episodes: episodes(patientId),
        limits: limits(patientId),
        protocols: protocols(patientId),
        events: inForce(events(patientId), index),
        preVisitAt: answered.get(patientId) ?? null,
        screening: sheets.get(patientId) ?? screened.get(patientId) ?? null,
      },
      plan,
      passing,
      access.day,
    );
};
