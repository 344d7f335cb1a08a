/** The Patient of a FHIR file as somebody new at the clinic: name, day of birth and telephone, no more. */
import type { Patient } from 'fhir/r4';
import { newPatientRefusals } from '#core/record/patient-detail-checks.ts';
import type { NewPatient } from '#core/record/patient-details.ts';
import type { Day } from '#core/time/day.ts';
import { type Bytes, CannotRead } from '../source.ts';
import { peopleIn } from './people.ts';

const mostOfName = 60;

const nameIn = (text: unknown, what: string): string => {
  const name = typeof text === 'string' ? text.trim() : '';
  if (name.length > 0 && name.length <= mostOfName) return name;
  throw new CannotRead(`The Patient has no ${what} of 1 to ${mostOfName} characters.`);
};

const phoneIn = ({ telecom }: Patient): string | null => {
  const found = (Array.isArray(telecom) ? telecom : []).find((one) => one?.system === 'phone')?.value;
  return typeof found === 'string' ? found : null;
};

export const newPersonIn = async (bytes: Bytes, isLines: boolean, today: Day): Promise<NewPatient> => {
  const [only, ...others] = (await peopleIn(bytes, isLines)).patients;
  if (!only || others.length > 0)
    throw new CannotRead('Somebody new is made from a file with one Patient; this one has none, or several.');
  const { patient } = only;
  const [name] = Array.isArray(patient.name) ? patient.name : [];
  const row: NewPatient = {
    familyName: nameIn(name?.family, 'family name'),
    givenName: nameIn(Array.isArray(name?.given) ? name.given[0] : undefined, 'given name'),
    birthDay: typeof patient.birthDate === 'string' ? patient.birthDate : '',
    phone: phoneIn(patient),
  };
  const refused = newPatientRefusals(row, today);
  if (refused.length > 0) throw new CannotRead(refused.map(({ reason }) => reason).join(' '));
  return row;
};
