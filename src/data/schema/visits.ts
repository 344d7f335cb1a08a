/** Appointments: where they happen, and who is there. */
import { sql } from 'drizzle-orm';
import { visitPlaces } from '#core/episode/remote-visit.ts';
import { kit, words } from './kit.ts';
import { owned } from './owned.ts';

export const visit = kit.appendOnly(
  'visit',
  {
    ...owned(),
    day: kit.day('day'),
    place: kit.word('place', visitPlaces),
    /** Where the patient is during a remote appointment. */
    whereabouts: kit.textOrNull('whereabouts'),
    callBackPhone: kit.textOrNull('call_back_phone'),
    present: kit.json<readonly string[]>('present'),
    /** Whose appointment it is; who only put the entry right is who recorded it. */
    heldBy: kit.id('held_by'),
    heldName: kit.text('held_name'),
  },
  (t) => [
    kit.index('visit_by_patient').on(t.patientId, t.recordedAt),
    kit.check('visit_place', sql`${t.place} IN (${words(visitPlaces)})`),
    kit.check(
      'visit_remote',
      sql`${t.place} NOT IN ('video', 'telephone') OR (${t.whereabouts} IS NOT NULL AND ${t.callBackPhone} IS NOT NULL)`,
    ),
  ],
);
