/** What came with a form that the browser sent itself, held to what any form of ours has. */
import { aboutName, type PostedForm, type PostedTexts, wordsName } from '#api/inputs/posted-form.ts';
import { limitedBody } from '../origin.ts';

/** As much as a procedure is sent at most. */
const mostBytes = 256 * 1024;
/** A part of a note may have so many characters; no field of a form has more. */
const mostInField = 5000;
/** A whole screening sheet is a third of it. */
const mostFields = 1000;

/** An id, several, or a word of ours: it becomes part of an address. */
const plainValue = /^[A-Za-z0-9][A-Za-z0-9_.:~-]{0,2000}$/;

const mostWords = 400;

/** null = more than one form can hold. */
export const fieldsIn = async (request: Request): Promise<URLSearchParams | null> => {
  const bytes = await limitedBody(request, mostBytes);
  if (!bytes) return null;
  // A browser ends the lines of a long text its own way.
  const sent = new URLSearchParams(bytes.toString('utf8').replaceAll('%0D%0A', '%0A'));
  const isTooLong = [...sent.values()].some((text) => text.length > mostInField);
  return sent.size > mostFields || isTooLong ? null : sent;
};

/** null = one of them is no id or word of ours. */
export const aboutIn = (form: PostedForm, sent: URLSearchParams): PostedTexts | null => {
  const pairs = form.about.map((name) => [name, sent.get(aboutName(name)) ?? ''] as const);
  const isGood = pairs.every(([name, value]) =>
    name === wordsName ? value.length <= mostWords : plainValue.test(value),
  );
  return isGood ? Object.fromEntries(pairs) : null;
};
