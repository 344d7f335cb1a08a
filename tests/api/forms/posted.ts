/** A form as a browser sends it itself, without any script. */
import { keptAnswers } from '#server/http/forms/kept-answers.ts';
import { markIn } from '#server/http/forms/mark-cookie.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import type { Browser } from '#tests/support/server.ts';
import { POST } from '../../../src/app/forms/[form]/route.ts';

type Fields = Readonly<Record<string, string | readonly string[]>>;

const bodyOf = (fields: Fields): URLSearchParams => {
  const body = new URLSearchParams();
  for (const [name, value] of Object.entries(fields))
    for (const one of typeof value === 'string' ? [value] : value) body.append(name, one);
  return body;
};

const keepCookies = (from: Browser, headers: Headers): void => {
  for (const line of headers.getSetCookie()) {
    const [pair = ''] = line.split(';');
    from.cookies.set(pair.slice(0, pair.indexOf('=')), pair.slice(pair.indexOf('=') + 1));
  }
};

export const postForm = async (
  at: Runtime,
  from: Browser,
  form: string,
  fields: Fields,
  more: HeadersInit = {},
) => {
  const headers = from.headers();
  headers.set('content-type', 'application/x-www-form-urlencoded');
  for (const [name, value] of new Headers(more)) headers.set(name, value);
  const address = `${at.settings.PUBLIC_ORIGIN}/forms/${form}`;
  const request = new Request(address, { method: 'POST', headers, body: bodyOf(fields).toString() });
  const response = await POST(request, { params: Promise.resolve({ form }) });
  keepCookies(from, response.headers);
  const location = response.headers.get('location');
  return { status: response.status, location, headers: response.headers, text: await response.text() };
};

/** What the next page of this browser would be given. */
export const shownTo = async (at: Runtime, from: Browser) => {
  const person = await personOf(at, from.headers());
  const mark = markIn(at, from.headers());
  return mark ? keptAnswers(at.store).take(mark, person?.sessionId ?? null, Date.now()) : [];
};
