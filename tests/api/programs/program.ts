/** Another program of the clinic, which knows the document and its token and nothing else. */

import { Ajv2020 } from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import { testOrigin } from '#tests/support/server.ts';
import { GET } from '../../../src/app/api/programs/v1/[...path]/route.ts';
import type { InterfaceDocument } from './breaks.ts';

export interface Answer {
  readonly status: number;
  readonly json: unknown;
  readonly headers: Headers;
}

/** Asks as HTTP would, from a network of its own. */
export const ask = async (
  address: string,
  secret: string | null,
  network = '203.0.113.40',
): Promise<Answer> => {
  const headers = new Headers({ 'x-forwarded-for': network });
  if (secret !== null) headers.set('authorization', `Bearer ${secret}`);
  const { pathname } = new URL(address, testOrigin);
  const path = pathname.replace(/^\/api\/programs\/v1\//, '').split('/');
  const response = await GET(new Request(`${testOrigin}${address}`, { headers }), {
    params: Promise.resolve({ path }),
  });
  return { status: response.status, json: await response.json(), headers: response.headers };
};

export const documentAsked = async (): Promise<InterfaceDocument> =>
  (await ask('/api/programs/v1/openapi.json', null)).json as InterfaceDocument;

/** What is wrong with an answer, by the schema that the document gives it; null = nothing. */
export const faultsOf = (document: InterfaceDocument, name: string, answer: unknown): unknown => {
  const ajv = new Ajv2020({ strict: true, allErrors: true });
  addFormats.default(ajv);
  const validate = ajv.compile(document.components.schemas[name]!);
  return validate(answer) ? null : validate.errors;
};
