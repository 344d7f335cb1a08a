/** Incidents of the clinic: written down, corrected by a later entry, closed with a reason, handed on as a file. */
import { z } from 'zod';
import { checked } from '#api/inputs/checked.ts';
import { requirePatient } from '#api/patient-of-clinic.ts';
import type { Person } from '#api/person.ts';
import {
  type ClinicMoment,
  type Incident,
  type IncidentOnRecord,
  incidentFields,
  incidentReasonFields,
  incidentRefusals,
} from '#core/clinic/incident.ts';
import type { Access } from '#data/access.ts';
import { digestOfIds, noteRead } from '#data/audit/audit.ts';
import { wallTime } from '#data/civil-time.ts';
import { changeIncident, incidentsOf, writeIncident } from '#data/clinic/incidents.ts';
import { mayOpen } from '#data/patients/care-team.ts';
import { clinicOf } from '#data/patients/people.ts';
import { Problem } from '../../errors.ts';
import { madeId, nothing } from '../../outputs.ts';
import { router, staffProcedure } from '../../trpc.ts';
import { toldTo } from './about-whom.ts';
import { incidentFile } from './incident-file.ts';

const id = z.string().min(1).max(64);

interface Asking {
  readonly access: Access;
  readonly person: Person;
}

const momentNow = async ({ store, clinicId, now, day }: Access): Promise<ClinicMoment> => {
  const zone = (await clinicOf(store, clinicId))?.zone ?? 'UTC';
  return { day, time: wallTime(now, zone) };
};

const readIncident = async (access: Access, value: unknown): Promise<Incident> => {
  const now = await momentNow(access);
  return checked(incidentFields, value, (row) => incidentRefusals(row, now));
};

/** Only who may open a record names its patient. */
const requireNameable = async ({ access, person }: Asking, patientId: string, path: string) => {
  if (person.role !== 'clinician')
    throw new Problem('not-yours', 'Only clinicians name a patient. Leave the patient out.');
  const patient = await requirePatient(access, patientId, path);
  if (!(await mayOpen(access, patient.id)))
    throw new Problem('care-team', 'Only the care team can open this record and name this patient.');
};

const incidentWith = async (access: Access, incidentId: string): Promise<IncidentOnRecord> => {
  const found = (await incidentsOf(access)).find((one) => one.id === incidentId);
  if (!found) throw new Problem('not-found', 'There is no such incident in your clinic.');
  return found;
};

const meanwhile = 'Somebody changed this incident meanwhile. Reload the page; what you typed is not saved.';

const told = async ({ access, person }: Asking, subject: string) => {
  const incidents = await incidentsOf(access);
  const ids = incidents.map((one) => one.id);
  noteRead(access, { subject, detail: { count: ids.length, ids: digestOfIds(ids) } });
  return toldTo(person, access, incidents);
};

const change = staffProcedure.input(z.object({ incidentId: id, reason: z.unknown() }));

export const incidentsRouter = router({
  /** The latest first, with every entry each was written by. */
  list: staffProcedure.query(({ ctx }) => told(ctx, 'incidents')),

  /** Rows of RFC 4180. */
  file: staffProcedure.query(async ({ ctx }) => incidentFile(await told(ctx, 'incident-file'))),

  record: staffProcedure
    .input(z.object({ incident: z.unknown(), patientId: id.nullable().default(null) }))
    .output(madeId)
    .mutation(async ({ ctx, input, path }) => {
      const row = await readIncident(ctx.access, input.incident);
      if (input.patientId !== null) await requireNameable(ctx, input.patientId, path);
      return writeIncident(ctx.access, { patientId: input.patientId, row, replaces: null });
    }),

  /** Stands in the place of version `seen`, about the same patient where none is given and null is not. */
  correct: staffProcedure
    .input(
      z.object({
        incident: z.unknown(),
        incidentId: id,
        seen: z.number().int().min(1),
        patientId: id.nullable().optional(),
      }),
    )
    .output(madeId)
    .mutation(async ({ ctx, input, path }) => {
      const { access } = ctx;
      const row = await readIncident(access, input.incident);
      if (input.patientId) await requireNameable(ctx, input.patientId, path);
      return access.store.write(async () => {
        const replaces = await incidentWith(access, input.incidentId);
        if (replaces.entry.version !== input.seen) throw new Problem('conflict', meanwhile);
        const patientId = input.patientId === undefined ? replaces.entry.patientId : input.patientId;
        return writeIncident(access, { patientId, row, replaces });
      });
    }),

  close: change.output(nothing).mutation(({ ctx: { access }, input }) => {
    const { reason } = checked(incidentReasonFields, { reason: input.reason });
    return access.store.write(async () => {
      const found = await incidentWith(access, input.incidentId);
      if (!found.isOpen) throw new Problem('conflict', 'It is closed already. Reload the page.');
      await changeIncident(access, found, 'closed', reason);
    });
  }),

  reopen: change.output(nothing).mutation(({ ctx: { access }, input }) => {
    const { reason } = checked(incidentReasonFields, { reason: input.reason });
    return access.store.write(async () => {
      const found = await incidentWith(access, input.incidentId);
      if (found.isOpen) throw new Problem('conflict', 'It is open already. Reload the page.');
      await changeIncident(access, found, 'reopened', reason);
    });
  }),
});
