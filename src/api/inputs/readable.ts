/**
 * What the store gives back as it was typed. A control character or half a character cuts a text short
 * or comes back as another one; an id goes into addresses and the audit, and is a plain name.
 */
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';

/** C0 controls but tab, line feed and carriage return, and surrogates without their partner. */
const unkept = /[^\P{Cc}\t\n\r\u007F-\u009F]|\p{Surrogate}/u;

/** Fields that name a row. How long an id may be is each schema's matter. */
const idField = /^(id|amends|replaces)$|Id$/;
const idCharacters = /^[A-Za-z0-9_.-]*$/;

/** A name that may be repeated in an answer; whatever else was sent as a name is not. */
const plainName = /^[A-Za-z][A-Za-z0-9-]{0,40}$/;

interface Unreadable {
  /** From "input" down, as far as the names on the way are plain. */
  readonly field: string;
  readonly what: 'text' | 'id';
}

interface Part {
  readonly field: string;
  readonly name: string;
  readonly value: unknown;
}

export const isReadable = (text: string): boolean => !unkept.test(text);

const unreadablePart = ({ field, name, value }: Part): Unreadable | null => {
  if (!isReadable(name)) return { field, what: 'text' };
  if (typeof value !== 'string') return null;
  if (idField.test(name) && !idCharacters.test(value)) return { field, what: 'id' };
  return isReadable(value) ? null : { field, what: 'text' };
};

/** No field of ours is named at such length; what is nested deeper is told by where it begins. */
const longestField = 200;

const within = (field: string, step: string): string =>
  field.length < longestField ? `${field}${step}` : field;

const partsOf = ({ field, name, value }: Part): readonly Part[] => {
  if (Array.isArray(value)) {
    return value.map((item, index) => ({ field: within(field, `[${index}]`), name, value: item }));
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).map(([own, item]) => ({
    field: plainName.test(own) ? within(field, `.${own}`) : field,
    name: own,
    value: item,
  }));
};

/** The first text or name anywhere in what was sent that could not be kept; null when there is none. */
const firstUnreadable = (sent: unknown): Unreadable | null => {
  // A list, not a recursion: what was sent may be nested deeper than the stack is.
  const waiting: Part[] = [{ field: 'input', name: '', value: sent }];
  for (let part = waiting.pop(); part; part = waiting.pop()) {
    const found = unreadablePart(part);
    if (found) return found;
    for (const inner of partsOf(part)) waiting.push(inner);
  }
  return null;
};

/** Throws a refusal for the first text that could not be kept as it was typed. */
export const requireReadable = (sent: unknown): void => {
  const found = firstUnreadable(sent);
  if (!found) return;
  const text = refusalText(found.what === 'id' ? 'request-unread-on-page' : 'text-unreadable');
  const { field } = found;
  throw new Problem('refused', text, { refusals: [{ field, code: 'wrong-type', reason: text.en, text }] });
};
