/** The built product on a copy of a group, its clock where the group stands, with two people who sign in. */
import { randomBytes } from 'node:crypto';
import { constants, copyFileSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build } from '#commands/build.mjs';
import { readEnvironment } from '#commands/environment.mjs';
import { addressOf, startServer, untilReady } from '#commands/server/server-process.mjs';
import { openRuntime } from '#server/runtime.ts';
import { openAccount } from '#server/sign-in/auth.ts';
import { benchFolder, groupFile } from '../group/make-group.ts';
import { clinicId, type GroupPlan, now, patientId } from '../group/plan.ts';
import { ended, freePort, signedIn } from './page-servers.ts';

/** Whose own page is read. */
const patientSignedIn = 7;
const passphrase = randomBytes(12).toString('hex');
const people = [
  { email: 'clinician@bench.invalid', name: 'Bench Clinician', role: 'clinician', patientId: null },
  {
    email: 'patient@bench.invalid',
    name: 'Bench Patient',
    role: 'patient',
    patientId: patientId(patientSignedIn),
  },
] as const;

export interface GroupServer {
  readonly address: string;
  readonly clinician: string;
  readonly patient: string;
}

type Settings = ReturnType<typeof readEnvironment>;

/** The keys the group was written with, as the server looks for them. */
const writeKeys = (file: string): void => {
  mkdirSync(`${file}.keys`, { recursive: true, mode: 0o700 });
  for (const name of ['audit', 'encryption'])
    writeFileSync(path.join(`${file}.keys`, `${name}.key`), Buffer.alloc(32, 7).toString('hex'), {
      mode: 0o600,
    });
};

const openAccounts = async (settings: Settings): Promise<void> => {
  const at = openRuntime(settings);
  try {
    for (const person of people) await openAccount(at.auth, { ...person, clinicId, password: passphrase });
  } finally {
    at.store.close();
  }
};

export const withGroupServer = async <T>(
  plan: GroupPlan,
  work: (server: GroupServer) => Promise<T>,
): Promise<T> => {
  const group = await groupFile(plan);
  await build();
  const folder = path.join(benchFolder, 'group-server');
  const file = path.join(folder, 'clinic.sqlite');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  copyFileSync(group, file, constants.COPYFILE_FICLONE);
  writeKeys(file);
  const clock = { DEMO: '1', CLINIC_NOW: new Date(now).toISOString(), JOBS: '0' };
  const settings = readEnvironment({ ...clock, DATABASE_FILE: file, PORT: String(await freePort()) });
  await openAccounts(settings);
  const server = startServer(settings, clock);
  try {
    const address = addressOf(settings);
    await untilReady(server, address);
    const [clinician, patient] = [people[0].email, people[1].email];
    return await work({
      address,
      clinician: await signedIn(address, clinician, passphrase),
      patient: await signedIn(address, patient, passphrase),
    });
  } finally {
    await ended(server.child);
    rmSync(folder, { recursive: true, force: true });
  }
};
