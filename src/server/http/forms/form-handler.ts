/**
 * Forms sent by the browser itself: from our own pages only, as whoever is signed in, through the procedure the
 * page would have called. The answer is always a page: the form’s own, with what was typed where it was not taken.
 */

import type { ApiContext } from '#api/context.ts';
import {
  confirmedName,
  type Posted,
  type PostedAnswer,
  type PostedForm,
  type PostedOutcome,
  proofName,
  type Reached,
} from '#api/inputs/posted-form.ts';
import { createCaller } from '#api/root.ts';
import { refusalText } from '#messages/refusals.ts';
import type { Runtime } from '../../runtime.ts';
import { signInHandler } from '../../sign-in/sign-in-handler.ts';
import { faultOf, observeCalls, telemetry } from '../../telemetry/telemetry.ts';
import { contextFor } from '../context.ts';
import { networkOf } from '../network.ts';
import { isOwnOrigin } from '../origin.ts';
import { askedTooOften } from '../rate.ts';
import { answered, refusal } from '../requests.ts';
import { inTurnOf } from '../turns.ts';
import { asClient } from './as-client.ts';
import { aboutIn, fieldsIn } from './form-fields.ts';
import { keptAnswers } from './kept-answers.ts';
import { markCookie, markIn } from './mark-cookie.ts';

export interface FormRequest {
  readonly name: string;
  readonly forms: ReadonlyMap<string, PostedForm>;
}

const refusedByHandler = (at: Runtime, { headers, method }: Request): Response | null => {
  if (method !== 'POST') return refusal(404, 'not-found', refusalText('nothing-here'));
  if (!isOwnOrigin(headers, at.settings.PUBLIC_ORIGIN)) {
    return refusal(403, 'foreign-origin', refusalText('foreign-origin'));
  }
  return /^application\/x-www-form-urlencoded\b/.test(headers.get('content-type') ?? '')
    ? null
    : refusal(415, 'refused', 'Send this as a form.');
};

type DoorJson = Readonly<Record<string, unknown>>;

/** The sign-in door, asked as a page asks it; what it wants the browser to keep is handed on. */
const doorFor = (at: Runtime, request: Request, cookies: string[]): Reached['door'] => {
  return async (path, fields) => {
    const headers = new Headers(request.headers);
    headers.delete('content-length');
    headers.set('content-type', 'application/json');
    const address = new URL(`/api/auth${path}`, at.settings.PUBLIC_ORIGIN);
    const body = JSON.stringify(fields);
    const answer = await signInHandler(at, new Request(address, { method: 'POST', headers, body }));
    cookies.push(...answer.headers.getSetCookie());
    const json = (await answer.json().catch(() => null)) as DoorJson | null;
    const wait = Number(answer.headers.get('retry-after') ?? '60');
    return { status: answer.status, json: json ?? {}, waitSeconds: Number.isInteger(wait) ? wait : 60 };
  };
};

const problem = (text: PostedAnswer['problems'][number]['text'], field = 'posted'): PostedOutcome => ({
  problems: [{ field, text }],
});

interface Asked {
  readonly at: Runtime;
  readonly request: Request;
  readonly requestId: string;
  readonly context: ApiContext;
  readonly cookies: string[];
}

const contextOf = (asked: Omit<Asked, 'context'>): Promise<ApiContext> =>
  contextFor(asked.at, asked.request.headers, observeCalls(asked.requestId));

const clientOf = (asked: Asked, context: ApiContext): unknown => {
  const turn = context.person?.sessionId ?? networkOf(asked.request.headers);
  return asClient(createCaller({ ...context, inTurn: inTurnOf(turn) }));
};

/** The passphrase given once more counts from here on. */
const proved = async (asked: Asked, passphrase: string): Promise<PostedOutcome | ApiContext> => {
  const { account } = clientOf(asked, asked.context) as {
    readonly account: { readonly prove: { readonly mutate: (input: unknown) => Promise<unknown> } };
  };
  try {
    await account.prove.mutate({ passphrase });
    return contextOf(asked);
  } catch (error) {
    return { ...problem((error as Error).message, proofName), needsProof: true };
  }
};

const tried = async (asked: Asked, form: PostedForm, posted: Posted): Promise<PostedOutcome> => {
  const { at, request, cookies } = asked;
  const sessionId = asked.context.person?.sessionId ?? null;
  // Of somebody nobody knows it was counted before anything was read.
  const wait = sessionId ? askedTooOften(sessionId, networkOf(request.headers)) : 0;
  if (wait > 0) return problem(refusalText('wait-seconds', { seconds: wait }));
  try {
    const passphrase = posted.sent.get(proofName);
    const context = passphrase ? await proved(asked, passphrase) : asked.context;
    if (!('clockOffset' in context)) return context;
    const client = clientOf(asked, context);
    return await form.send({ client, door: doorFor(at, request, cookies) }, posted);
  } catch (fault) {
    telemetry().log.error({ requestId: asked.requestId, fault: faultOf(fault) }, 'form');
    return problem(refusalText('server-failed-on-page'));
  }
};

/** What the form’s own page was narrowed to or showed stands in its address, and stays there. */
const searchOf = (at: Runtime, request: Request, page: string): string => {
  const referer = request.headers.get('referer') ?? '';
  if (!URL.canParse(referer)) return '';
  const { origin, pathname, search } = new URL(referer);
  return origin === at.settings.PUBLIC_ORIGIN && pathname === page ? search : '';
};

const shownNext = (asked: Asked, page: string, mark: string | null): Response => {
  const { at, request } = asked;
  const address = new URL(`${page}${searchOf(at, request, page)}`, at.settings.PUBLIC_ORIGIN);
  const headers = new Headers({
    Location: `${address}${mark ? '#posted' : ''}`,
    'Cache-Control': 'no-store',
  });
  for (const cookie of asked.cookies) headers.append('Set-Cookie', cookie);
  if (mark) headers.append('Set-Cookie', markCookie(at, mark));
  return new Response(null, { status: 303, headers });
};

const handle = async (asked: Asked, name: string, form: PostedForm, sent: URLSearchParams) => {
  const { at, request, context } = asked;
  const about = aboutIn(form, sent);
  if (!about) return refusal(400, 'refused', refusalText('request-unread'));
  const sessionId = context.person?.sessionId ?? null;
  const keeper = keptAnswers(at.store);
  const mark = markIn(at, request.headers);
  const typed = form.typedIn(sent, about);
  const parts = { problems: [], questions: [], needsProof: false, done: null, step: null };
  const blank: PostedAnswer = { form: name, about, typed, ...parts };
  const before = keeper.typedBefore(mark, sessionId, blank, Date.now());
  // Confirmed is what was asked about, and not what was typed since.
  const isConfirmed =
    sent.get(confirmedName) === 'yes' && JSON.stringify(before?.typed) === JSON.stringify(typed);
  const { page, ...outcome } = await tried(asked, form, { about, typed, sent, isConfirmed });
  if (page !== undefined) {
    keeper.forget(mark, sessionId, blank, Date.now());
    return shownNext(asked, page, null);
  }
  const answer = { ...blank, ...outcome };
  const shown = answer.done === null ? answer : { ...answer, typed: {} };
  return shownNext(asked, form.page(about), keeper.keep(mark, sessionId, shown, Date.now()));
};

export const formHandler = (at: Runtime, request: Request, of: FormRequest): Promise<Response> =>
  answered('forms', async (requestId) => {
    const refused = refusedByHandler(at, request);
    if (refused) return refused;
    const form = of.forms.get(of.name);
    if (!form) return refusal(404, 'not-found', refusalText('nothing-here'));
    const sent = await fieldsIn(request);
    if (!sent)
      return refusal(413, 'too-long', 'That is more than one form can hold. Go back: it is still there.');
    const part = { at, request, requestId, cookies: [] };
    const context = await contextOf(part);
    // Whoever is not known is not read any further, and nothing of it is kept.
    if (!context.person) {
      if (!form.isOfStrangers) return refusal(401, 'signed-out', refusalText('signed-out'));
      const wait = askedTooOften(null, networkOf(request.headers));
      if (wait > 0) return refusal(429, 'too-often', refusalText('wait-seconds', { seconds: wait }));
    }
    return handle({ ...part, context }, of.name, form, sent);
  });
