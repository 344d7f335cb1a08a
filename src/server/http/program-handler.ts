/** Questions of other programs over HTTP: by an address and a token, never by a cookie. */
import { TRPCError } from '@trpc/server';
import { getHTTPStatusCodeFromError } from '@trpc/server/http';
import { z } from 'zod';
import type { ApiContext } from '#api/context.ts';
import { Problem, toldOf } from '#api/errors.ts';
import { inputsOf, interfaceDocument } from '#api/programs/document.ts';
import { type Exported, exportedAt } from '#api/programs/exported.ts';
import { createCaller } from '#api/root.ts';
import { dayAt } from '#data/civil-time.ts';
import { type ProgramToken, tokenBySecret } from '#data/programs/tokens.ts';
import { inventedClinics } from '../demo-file.ts';
import { type Runtime, zoneOf } from '../runtime.ts';
import { observeCalls } from '../telemetry/telemetry.ts';
import { networkOf } from './network.ts';
import { askedTooOften, countMinutes } from './rate.ts';
import { answered, refusal, tooOften } from './requests.ts';
import { inTurnOf } from './turns.ts';

/** Two a second: enough to follow a clinic, too few to be in anybody's way. */
export const tokenMinute = 120;
const tokens = countMinutes(tokenMinute);

/** A wrong token costs as much as so many questions of a stranger. */
const callsOfWrong = 10;

/** The same for everybody, and costly to make. */
let made: ReturnType<typeof interfaceDocument> | null = null;
const documentOnce = () => {
  made ??= interfaceDocument();
  return made;
};

const tooMany = (seconds: number): Response =>
  tooOften(seconds, `Too many questions. Wait ${seconds} seconds.`);

const noToken = (): Response =>
  refusal(
    401,
    'signed-out',
    'Send a token that an administrator of the clinic made: "Authorization: Bearer …".',
    {
      'WWW-Authenticate': 'Bearer',
    },
  );

/** One of the demo opens nothing outside it. */
const tokenIn = async (at: Runtime, headers: Headers): Promise<ProgramToken | null> => {
  const [, secret] = /^Bearer (\S+)$/i.exec(headers.get('authorization') ?? '') ?? [];
  const token = secret === undefined ? null : await tokenBySecret(at.store, secret, Date.now());
  return token && (at.settings.DEMO || !inventedClinics.includes(token.clinicId)) ? token : null;
};

const contextFor = async (at: Runtime, token: ProgramToken, requestId: string): Promise<ApiContext> => {
  const now = at.clock.now();
  const day = dayAt(now, await zoneOf(at, token.clinicId));
  const who = { clinicId: token.clinicId, actorId: token.id, actorName: token.name };
  return {
    person: null,
    token,
    access: { store: at.store, auditKey: at.keys.audit, ...who, now, day },
    clockOffset: at.clock.offset(),
    observe: observeCalls(requestId),
    inTurn: inTurnOf(token.id),
  };
};

/** A number where the procedure takes one; a parameter nobody knows is refused, since it would be left out unseen. */
const inputIn = (one: Exported, query: URLSearchParams): Readonly<Record<string, unknown>> => {
  const known = Object.assign({}, ...inputsOf(one).map(({ properties }) => properties)) as Readonly<
    Record<string, { readonly type?: string }>
  >;
  return Object.fromEntries(
    [...query].map(([name, text]) => {
      if (!known[name] || one.path.includes(`{${name}}`) || query.getAll(name).length > 1)
        throw new Problem('refused', `"${name}" is no parameter of this, or stands in it twice.`);
      return [name, known[name].type === 'integer' && text.trim() !== '' ? Number(text) : text];
    }),
  );
};

/** Whoever writes a program is told which parameter is wrong and how. */
const wrongInput = ({ code, cause }: TRPCError): string | null =>
  code === 'BAD_REQUEST' && cause instanceof z.core.$ZodError
    ? cause.issues.map(({ path, message }) => `${path.join('.')}: ${message}.`).join(' ')
    : null;

/** What is our own fault is logged by whoever awaits this, and told without internals. */
const told = (error: unknown): Response => {
  if (!(error instanceof TRPCError)) throw error;
  if (error.code === 'INTERNAL_SERVER_ERROR') throw error.cause ?? error;
  const problem = error instanceof Problem ? error.problem : 'refused';
  return refusal(getHTTPStatusCodeFromError(error), problem, wrongInput(error) ?? toldOf(error).message);
};

const answerTo = async (
  context: ApiContext,
  { one, patientId }: NonNullable<ReturnType<typeof exportedAt>>,
  query: URLSearchParams,
): Promise<Response> => {
  const ask = createCaller(context).programs[one.procedure] as (input: unknown) => Promise<unknown>;
  const answer = await ask({ ...inputIn(one, query), ...(patientId === null ? {} : { patientId }) });
  return Response.json(answer, { headers: { 'Cache-Control': 'no-store' } });
};

export const programHandler = (at: Runtime, request: Request, path: string): Promise<Response> =>
  answered('programs', async (requestId) => {
    const network = networkOf(request.headers);
    if (path === '/openapi.json') {
      const wait = askedTooOften(null, network);
      return wait > 0 ? tooMany(wait) : Response.json(documentOnce());
    }
    const token = await tokenIn(at, request.headers);
    if (!token) {
      const wait = askedTooOften(null, network, Date.now(), callsOfWrong);
      return wait > 0 ? tooMany(wait) : noToken();
    }
    const wait = tokens.wait(token.id, Date.now());
    if (wait > 0) return tooMany(wait);
    tokens.add(token.id, Date.now());
    const found = exportedAt(path);
    if (!found)
      return refusal(
        404,
        'not-found',
        'There is nothing at this address; /openapi.json names what there is.',
      );
    const context = await contextFor(at, token, requestId);
    return answerTo(context, found, new URL(request.url).searchParams).catch(told);
  });
