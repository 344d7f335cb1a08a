/** Who a FHIR file is about, and which of its resources are of that person. */
import type { FhirResource, Patient } from 'fhir/r4';
import type { Day } from '#core/time/day.ts';
import { type Bytes, CannotRead } from '../source.ts';
import { type Placed, resourcesOf } from './resources.ts';

interface PlacedPatient extends Pick<Placed, 'place' | 'fullUrl'> {
  readonly patient: Patient;
}

export interface FilePeople {
  readonly patients: readonly PlacedPatient[];
  /** Different subjects of what is taken; no more than two are kept, since only one or several is asked. */
  readonly subjects: readonly string[];
}

/** The only Patient of the file, or the one of several that is this person. */
export interface FhirPerson {
  readonly found: PlacedPatient | null;
  /** Why it may be somebody else; null when name and birth agree. */
  readonly doubt: string | null;
}

const plain = (text: unknown): string =>
  String(text ?? '')
    .normalize('NFC')
    .trim()
    .toLowerCase();

export interface Sought {
  readonly born: Day;
  readonly familyName: string;
}

const isSought = ({ patient: { name, birthDate } }: PlacedPatient, { familyName, born }: Sought): boolean =>
  birthDate === born &&
  (Array.isArray(name) ? name : []).some((one) => plain(one?.family) === plain(familyName));

const isOnServer = (address: string): boolean => /^https?:/i.test(address);

const relative = (address: string): string | null => /(?:^|\/)(Patient\/[^/]+)$/.exec(address)?.[1] ?? null;

/** Whom a resource says it is of, as the reference is written; null = of nobody, or of no person of the file. */
const subjectOf = (resource: FhirResource | null): string | null => {
  if (resource?.resourceType !== 'Observation' && resource?.resourceType !== 'Condition') return null;
  const reference: unknown = resource.subject?.reference;
  // "#…" is a resource within this one: two of them may be two people under one name.
  if (typeof reference !== 'string' || reference === '' || reference.startsWith('#')) return null;
  const address = reference.replace(/\/_history\/[^/]+$/, '');
  return /(^|\/)[A-Z]\w*\/[^/]+$/.test(address) && relative(address) === null ? null : address;
};

/** Every way in which a reference may name this Patient. */
const namesOf = ({ fullUrl, patient: { id } }: PlacedPatient): readonly string[] => {
  const own = typeof id === 'string' && id !== '' ? [`Patient/${id}`, `urn:uuid:${id}`] : [];
  const short = fullUrl === null ? null : relative(fullUrl);
  return [...own, ...(fullUrl === null ? [] : [fullUrl]), ...(short === null ? [] : [short])];
};

/** An address on a server is that of the Patient alone; without one to compare, its end has to do. */
const isOf = (subject: string, found: PlacedPatient): boolean =>
  namesOf(found).includes(
    found.fullUrl === null && isOnServer(subject) ? (relative(subject) ?? subject) : subject,
  );

/** Whether a resource is of the person; where nothing names the Patient, one subject alone was let through. */
export const isOfPerson = (resource: FhirResource, { found }: FhirPerson): boolean => {
  const subject = subjectOf(resource);
  if (subject === null) return false;
  return found === null || namesOf(found).length === 0 || isOf(subject, found);
};

export const peopleIn = async (bytes: Bytes, isLines: boolean): Promise<FilePeople> => {
  const patients: PlacedPatient[] = [];
  const subjects = new Set<string>();
  for await (const piece of resourcesOf(bytes, isLines))
    for (const { place, fullUrl, resource } of piece) {
      if (resource?.resourceType === 'Patient') patients.push({ place, fullUrl, patient: resource });
      const subject = subjectOf(resource);
      if (subject !== null && subjects.size < 2) subjects.add(subject);
    }
  return { patients, subjects: [...subjects] };
};

const areToldApart = (patients: readonly PlacedPatient[]): boolean => {
  const seen = new Set<string>();
  return patients.every((one) => {
    const names = new Set(namesOf(one));
    const isNew = names.size > 0 && ![...names].some((name) => seen.has(name));
    for (const name of names) seen.add(name);
    return isNew;
  });
};

const unlessSeveral = (doubt: string, subjects: readonly string[]): string => {
  if (subjects.length < 2) return doubt;
  throw new CannotRead(
    'The file is of several people, and no Patient in it can be matched with what it holds. Give a file of one person.',
  );
};

export const personIn = ({ patients, subjects }: FilePeople, sought: Sought): FhirPerson => {
  const same = patients.filter((one) => isSought(one, sought));
  if (same.length > 1)
    throw new CannotRead('Two Patients of the file have this name and birth date. Give a file of one.');
  if (patients.length > 1 && !areToldApart(patients))
    throw new CannotRead(
      'The Patients of the file cannot be told apart: each needs an id or a fullUrl that no other has. Give a file of one.',
    );
  if (patients.length > 1 && same.length === 0)
    throw new CannotRead(
      'None of the Patients of the file has the family name and birth date of this person.',
    );
  const [found] = same.length > 0 ? same : patients;
  if (!found) return { found: null, doubt: unlessSeveral('It holds no Patient.', subjects) };
  const unnamed =
    namesOf(found).length > 0
      ? null
      : unlessSeveral('Its Patient has no id and no fullUrl, so nothing in it says whose it is.', subjects);
  return {
    found,
    doubt: same.length > 0 ? unnamed : 'Its Patient has another family name or birth date.',
  };
};
