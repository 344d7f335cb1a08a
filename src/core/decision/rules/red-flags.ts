/**
 * How fast each red flag wants a person to look. The class of each sign is a proposal, to be confirmed by a licensed
 * clinician and local rules.
 */
import type { Contact } from '../answers.ts';
import { type RedFlag, redFlagClasses } from '../facts/facts.ts';

const classOf: ReadonlyMap<string, Contact> = new Map(
  Object.entries(redFlagClasses).flatMap(([contact, flags]) =>
    flags.map((flag): [string, Contact] => [flag, contact as Contact]),
  ),
);

const urgency: readonly Contact[] = ['emergency', 'same-day', 'routine'];

/** The most urgent class among the signs. A sign this version does not know is read as an emergency. */
export const redFlagContact = (flags: readonly RedFlag[]): Contact => {
  const found = new Set(flags.map((flag) => classOf.get(flag) ?? 'emergency'));
  return urgency.find((contact) => found.has(contact)) ?? 'none';
};
