/**
 * One form of descriptor fields, described once: the page sends it through the client of the procedures, and the
 * route for forms that the browser sends itself through the same procedures on the server.
 */
import type { PostedTexts } from '#api/inputs/posted-form.ts';
import type { Field } from '#core/calculations/describe.ts';
import type { client } from '../../client.ts';

export type Client = typeof client;

interface SentValue {
  readonly about: PostedTexts;
  readonly value: Record<string, unknown>;
  /** Unlikely values were confirmed. */
  readonly isConfirmed: boolean;
}

export interface SentForm {
  /** In the address of the route. */
  readonly name: string;
  /** Names of what it is about, such as the patient's id; each is part of an address or a procedure's input. */
  readonly about: readonly string[];
  /** Stands before the ids of the fields. */
  readonly prefix: (about: PostedTexts) => string;
  readonly fields: (about: PostedTexts) => readonly Field[];
  readonly send: (client: Client, sent: SentValue) => Promise<unknown>;
  readonly page: (about: PostedTexts) => string;
  /** Where the answer leads to, if to another page than its own. */
  readonly next?: (answer: never, about: PostedTexts) => string;
  readonly taken: string;
}

/** Stands for what there is none of, where the procedure takes null. */
const none = 'none';

export const orNone = (id: string | null): string => id ?? none;

export const nullFrom = (id: string | undefined): string | null =>
  id === undefined || id === none ? null : id;

/** Several ids in one text. */
export const listText = (ids: readonly string[]): string => (ids.length > 0 ? ids.join('~') : none);

export const listFrom = (text: string | undefined): string[] =>
  text === undefined || text === none ? [] : text.split('~');

export const ofPatient = (about: PostedTexts): string => about.patientId ?? '';

type Simple = Pick<SentForm, 'name' | 'send' | 'taken'> & {
  readonly prefix: string;
  readonly fields: readonly Field[];
  /** Behind the patient's address. */
  readonly place: string;
};

/** About a patient and nothing else. */
export const patientForm = ({ prefix, fields, place, ...form }: Simple): SentForm => ({
  ...form,
  about: ['patientId'],
  prefix: () => prefix,
  fields: () => fields,
  page: (about) => `/patients/${ofPatient(about)}${place}`,
});
