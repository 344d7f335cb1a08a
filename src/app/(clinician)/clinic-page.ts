/** What every page of the clinic starts from: who is signed in, the procedures, the clinic's clock. */
import 'server-only';
import { notFound, redirect } from 'next/navigation';
import { requirePerson, serverCaller } from '#server/http/caller.ts';
import { runtime, zoneOf } from '#server/runtime.ts';
import { today } from '#ui/clinician/when.ts';

export const clinicPage = async () => {
  const person = await requirePerson('clinician');
  const { clinician } = await serverCaller();
  const at = runtime();
  const clock = { zone: await zoneOf(at, person.clinicId), now: at.clock.now() };
  return { person, clinician, clock, day: today(clock) };
};

export type RecordParams = Promise<{ readonly id: string }>;

const hasProblem = (error: unknown, problem: string): boolean =>
  typeof error === 'object' && error !== null && 'problem' in error && error.problem === problem;

/** A page of one patient's record; a patient who is not of this clinic does not exist here. */
export const recordPage = async (params: RecordParams) => {
  const [page, { id: patientId }] = [await clinicPage(), await params];
  try {
    const patient = await page.clinician.people.get({ patientId });
    return { ...page, patient, bar: await page.clinician.people.bar({ patientId }) };
  } catch (error) {
    // An address with something else than an id in it names nobody either.
    if (hasProblem(error, 'not-found') || hasProblem(error, 'refused')) notFound();
    if (hasProblem(error, 'care-team')) redirect(`/emergency-access/${encodeURIComponent(patientId)}`);
    throw error;
  }
};

export type AtRecord = Awaited<ReturnType<typeof recordPage>>;
