/**
 * Signs that end exercise advice and begin care advice. For every joint and every method.
 * The rule never diagnoses: it stops the plan and says whom to ask and how fast. The class of each
 * sign is a proposal, to be confirmed by a licensed clinician and local rules.
 */
import type { Contact } from '../answers.ts';
import { type RedFlag, redFlagClasses } from '../facts/facts.ts';
import type { Rule } from './rule.ts';

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

/** A calf leans on the scores for clots, unless a hot joint was told as well. */
const supportFor: Rule['supportFor'] = ({ redFlags }) =>
  redFlags?.includes('calf-pain-swelling') && !redFlags.includes('hot-swollen-joint')
    ? 'clot-score-2003'
    : null;

export const redFlagRules = [
  {
    id: 'R1',
    title: 'Red flag',
    effect: { decision: 'pause', today: 'none', contact: 'emergency' },
    effectFor: (facts) => ({
      decision: 'pause',
      today: 'none',
      contact: redFlagContact(facts.redFlags ?? []),
    }),
    condition: (facts) => facts.redFlags !== null && facts.redFlags.length > 0,
    observes: ['redFlags'],
    threshold: () => 'any red flag',
    restsOn: 'source',
    citations: [
      {
        source: 'coakley-2006',
        locator: 'guideline text',
        mark: 'seen',
        remark: 'A hot swollen joint of short history, with or without fever, is assessed the same day.',
      },
      {
        source: 'scalco-2016',
        locator: 'abstract',
        mark: 'seen',
        remark: 'Dark urine or pain out of proportion one to three days after a session.',
      },
      {
        source: 'clot-score-2003',
        locator: 'two-level table: items on the calf',
        mark: 'seen',
        remark: 'One calf at least 3 cm larger, tenderness along the deep veins: a clot is looked for.',
      },
      {
        source: 'clot-score-1997',
        locator: 'table 1: items on the calf',
        mark: 'seen',
        remark: 'The same signs, with more than 3 cm.',
      },
      {
        source: 'exercise-stop-signs',
        locator: 'stop signs',
        mark: 'second-hand',
        remark: 'Chest pain and breathlessness; the remaining signs of the list are from memory.',
      },
    ],
    supportFor,
    settings: [],
  },
] as const satisfies readonly Rule[];
