/** A FHIR file of another system as what it says of one person: every resource is taken, or told with why not. */
import type { Condition, Observation } from 'fhir/r4';
import type { ImportedThing } from '#core/record/imported.ts';
import { type Day, isDay } from '#core/time/day.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Bytes, Read, Source } from '../source.ts';
import { measurementIn } from './observation.ts';
import { type FhirPerson, isOfPerson } from './people.ts';
import { type Placed, resourcesOf } from './resources.ts';

export interface FhirAbout {
  readonly today: Day;
  readonly born: Day;
  /** Of the clinic, in which an instant falls on a day. */
  readonly zone: string;
}

type Told = ImportedThing | { readonly at: string; readonly found: string; readonly write: string };

const dayIn = (text: unknown, { today, born, zone }: FhirAbout): Day | null => {
  if (typeof text !== 'string') return null;
  const isInstant = /^\d{4}-\d\d-\d\dT.*(Z|[+-]\d\d:\d\d)$/.test(text) && !Number.isNaN(Date.parse(text));
  const day = isInstant ? dayAt(Date.parse(text), zone) : text;
  return isDay(day) && day <= today && day >= born ? day : null;
};

const final: readonly string[] = ['final', 'amended', 'corrected'];

const observed = (one: Observation, about: FhirAbout): Told => {
  const { status, effectiveDateTime, effectivePeriod } = one;
  if (!final.includes(status))
    return {
      at: 'status',
      found: String(status),
      write: 'Only what is final, amended or corrected is taken.',
    };
  const when = effectiveDateTime ?? effectivePeriod?.start;
  const day = dayIn(when, about);
  if (day === null)
    return {
      at: 'effective',
      found: String(when ?? ''),
      write: 'A whole day, no later than today and no earlier than the birth.',
    };
  const value = measurementIn(one);
  const code = one.code?.coding?.[0]?.code ?? one.code?.text ?? '';
  return 'write' in value
    ? { at: 'value', found: code, write: value.write }
    : { kind: 'measurement', day, value };
};

const mostOfCondition = 300;

/** Only a text is kept of a condition, and a text alone reads as one that is there: what is not, or not surely, stays out. */
const standings = {
  verificationStatus: { kept: ['confirmed'], write: 'Only what is confirmed, or does not say, is taken.' },
  clinicalStatus: {
    kept: ['active', 'recurrence', 'relapse'],
    write: 'Only what is active, or does not say, is taken.',
  },
} as const;

const whyNotStanding = (condition: Condition): Exclude<Told, ImportedThing> | null => {
  for (const at of ['verificationStatus', 'clinicalStatus'] as const) {
    const said = condition[at];
    if (said === undefined) continue;
    const { kept, write } = standings[at];
    const codes = (said.coding ?? []).map(({ code }) => code ?? '');
    if (codes.length === 0 || !codes.every((code) => (kept as readonly string[]).includes(code)))
      return { at, found: codes.join(' ') || String(said.text ?? ''), write };
  }
  const ended = Object.keys(condition).find((name) => name.startsWith('abatement'));
  return ended === undefined ? null : { at: ended, found: '', write: 'It has ended.' };
};

const told = (condition: Condition, about: FhirAbout): Told => {
  const why = whyNotStanding(condition);
  if (why) return why;
  const { code, onsetDateTime } = condition;
  const text = code?.text ?? code?.coding?.find(({ display }) => display)?.display;
  if (typeof text !== 'string' || text.trim() === '' || text.length > mostOfCondition)
    return {
      at: 'code',
      found: '',
      write: `A text of at most ${mostOfCondition} characters, or a coding with a display.`,
    };
  return {
    kind: 'condition',
    day: dayIn(onsetDateTime, about),
    value: { text },
  };
};

/** A malformed resource of another system must not end the reading of the rest. */
const carefully = (read: () => Told): Told => {
  try {
    return read();
  } catch {
    return { at: '', found: '', write: 'The resource is not written as the standard says.' };
  }
};

const thingOf = (resource: Observation | Condition, person: FhirPerson, about: FhirAbout): Told => {
  if (!isOfPerson(resource, person))
    return {
      at: 'subject',
      found: String(resource.subject?.reference ?? ''),
      write: 'It is of somebody else, or says of nobody.',
    };
  return resource.resourceType === 'Observation' ? observed(resource, about) : told(resource, about);
};

const readOne = ({ place, resource }: Placed, person: FhirPerson, about: FhirAbout): Read => {
  const leave = (at: string, found: string, write: string): Read => ({
    place,
    things: [],
    faults: [{ place, at, found, write }],
  });
  if (resource === null) return leave('', '', 'No resource stands here.');
  const { resourceType: type } = resource;
  if (type === 'Patient') {
    const why =
      place === person.found?.place
        ? 'Name and birth date were compared with the record; nothing of it is taken.'
        : 'It is somebody else.';
    return leave(type, String(resource.id ?? '').slice(0, 60), why);
  }
  if (type !== 'Observation' && type !== 'Condition')
    return leave(type.slice(0, 60), '', 'Resources of this type are not taken.');
  const thing = carefully(() => thingOf(resource, person, about));
  return 'write' in thing
    ? leave(`${type}.${thing.at}`, String(thing.found).slice(0, 60), thing.write)
    : { place, things: [thing], faults: [] };
};

export const fhirSource = (bytes: Bytes, isLines: boolean, person: FhirPerson, about: FhirAbout): Source => ({
  async *read() {
    for await (const piece of resourcesOf(bytes, isLines))
      yield piece.map((one) => readOne(one, person, about));
  },
});
