/** The patient in the address of the page of incidents. */
import 'server-only';
import type { NamedPatient } from '#ui/clinician/incidents/incidents-screen.tsx';
import { recordPage } from '../../(clinician)/clinic-page.ts';

/** Of the record it was opened from: whoever may not open that is sent away as from the record itself. */
export const namedPatient = async (
  asked: string | readonly string[] | undefined,
): Promise<NamedPatient | null> => {
  if (asked === undefined || asked === 'none') return null;
  const { patient } = await recordPage(Promise.resolve({ id: String(asked) }));
  return { patientId: patient.id, name: `${patient.givenName} ${patient.familyName}` };
};
