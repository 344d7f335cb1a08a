/**
 * Creates a clinic in the database file and opens its first administrator's sign-in. The passphrase is
 * printed once; everybody else is added by that person on the pages.
 */
import { randomUUID } from 'node:crypto';
import { parseArgs } from 'node:util';
import { type MonitoringHours, monitoringHoursFrom, weekdays } from '#core/episode/monitoring-hours.ts';
import { addStaff } from '#data/accounts/staff.ts';
import { dayAt, isZone } from '#data/civil-time.ts';
import { createClinic } from '#data/patients/people.ts';
import { openRuntime } from '#server/runtime.ts';
import { readEnvironment } from './environment.mjs';
import { CannotGoOn } from './say.mjs';

const names = ['name', 'zone', 'phone', 'emergency', 'monitoring-hours', 'administrator', 'email'] as const;
/** May be left out; patients' phones then show the emergency number in its place. */
const urgent = 'urgent';
type Typed = Readonly<Record<(typeof names)[number], string>> & { readonly [urgent]?: string };
type Given = Typed & { readonly monitoringHours: MonitoringHours };

const usage =
  'Usage: DATABASE_FILE=… npm run create-clinic -- --name "…" --zone Europe/Dublin --phone "…" --emergency 112 [--urgent "116 117"] --monitoring-hours "Mon-Fri 08:30-18:30; Sat 09:00-12:00" --administrator "Given Family" --email a@clinic.example';

const givenIn = (args: readonly string[]): Given => {
  const options = Object.fromEntries([...names, urgent].map((name) => [name, { type: 'string' as const }]));
  let values: Partial<Record<string, unknown>>;
  try {
    values = parseArgs({ args: [...args], options, strict: true }).values;
  } catch {
    throw new CannotGoOn(usage, 2);
  }
  const missing = names.filter((name) => typeof values[name] !== 'string' || values[name] === '');
  if (missing.length > 0) throw new CannotGoOn(`Missing: ${missing.join(', ')}. ${usage}`, 2);
  const given = values as Typed;
  if (!isZone(given.zone)) throw new CannotGoOn(`"${given.zone}" is not the name of a time zone.`, 2);
  if (!/^\S+@\S+$/.test(given.email)) throw new CannotGoOn('--email is an address with an @ in it.', 2);
  const monitoringHours = monitoringHoursFrom(given['monitoring-hours']);
  if (monitoringHours === null) {
    throw new CannotGoOn(
      `--monitoring-hours: "${given['monitoring-hours']}" cannot be read as hours. Write days and times such as "Mon-Fri 08:30-18:30; Sat 09:00-12:00": ${weekdays.join(', ')}, a semicolon between, no two that overlap on a day.`,
      2,
    );
  }
  return { ...given, monitoringHours };
};

export const run = async (args: readonly string[]): Promise<number> => {
  const given = givenIn(args);
  const { store, keys } = openRuntime(readEnvironment());
  try {
    const clinicId = randomUUID();
    const now = Date.now();
    const { name, zone, phone, emergency: emergencyNumber, monitoringHours } = given;
    const urgentNumber = given.urgent?.trim() || null;
    const handed = await store.write(async () => {
      const row = { id: clinicId, name, zone, phone, emergencyNumber, urgentNumber, monitoringHours };
      await createClinic(store, row, now);
      const actor = { actorId: 'set-up', actorName: 'Set-up' };
      const access = { store, auditKey: keys.audit, clinicId, now, day: dayAt(now, zone), ...actor };
      const { administrator, email } = given;
      const added = await addStaff(access, {
        name: administrator,
        email,
        role: 'administrator',
        administers: true,
      });
      if (!added) throw new CannotGoOn('Somebody already signs in with this address.', 1);
      return added;
    });
    console.log(`clinic ${clinicId}`);
    if (urgentNumber === null) {
      console.log(
        `No --urgent number was given: enter under Administration what patients ring when nobody answers at the clinic. Until then their phones show ${emergencyNumber}.`,
      );
    }
    console.log(`passphrase of ${given.email}, shown once and good for seven days: ${handed.passphrase}`);
    return 0;
  } finally {
    store.close();
  }
};
