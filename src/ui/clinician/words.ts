/** Statuses of the clinic's screens: each a shape, a tone and a word. */
import { signInWords } from '#core/danger/sign-words.ts';
import type { Contact, DecisionWord, Today } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import type { Eligibility } from '#core/prescribing/methods.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { words as factWords } from '#messages/en/staff/review/facts.ts';
import type { Shape } from '#ui/design-system/mark.tsx';
import type { StatusTone } from '#ui/design-system/status-tag.tsx';
import type { WorklistItemKind } from './answers.ts';
import { capital } from './capital.ts';

interface Status {
  readonly word: string;
  readonly shape: Shape;
  readonly tone: StatusTone;
}

export const decisionStatus: Readonly<Record<DecisionWord, Status>> = {
  progress: { word: 'Progress', shape: 'forward', tone: 'accent' },
  hold: { word: 'Hold', shape: 'level', tone: 'plain' },
  'ease-back': { word: say('ease-back'), shape: 'back', tone: 'care' },
  pause: { word: 'Pause', shape: 'stop', tone: 'danger' },
};

export const todayInWords: Readonly<Record<Today, string>> = {
  'as-planned': say('session-as-planned-today'),
  'bad-day': say('easier-session-today'),
  'rest-this-joint': say('rest-this-joint-today'),
  none: say('no-session-today'),
};

export const contactInWords: Readonly<Record<Contact, string>> = {
  none: say('no-contact-asked'),
  routine: say('contact-routine'),
  'same-day': say('contact-the-same-day'),
  emergency: say('emergency-contact'),
};

const eligibilityStatuses: Readonly<Record<Eligibility, Status>> = {
  open: { word: 'Eligible', shape: 'done', tone: 'accent' },
  'open-with-precautions': { word: say('eligible-with-precautions'), shape: 'care', tone: 'care' },
  'closed-until-cleared': { word: say('needs-clearance'), shape: 'closed', tone: 'danger' },
  closed: { word: 'Contraindicated', shape: 'closed', tone: 'danger' },
};

/** What closes a method without contraindicating it, the first that applies in words. */
const notContraindicated: readonly (readonly [RegExp, string])[] = [
  [
    /^(never-screened$|not-asked-|screening-|returned-from-break$|after-)|-not-measured$/,
    say('assessment-needed'),
  ],
  [/^no-consent-/, say('consent-needed')],
  [/^(care-closed|on-break)$/, say('not-available-now')],
];

/** A method is called contraindicated only where a finding says so. */
export const eligibilityStatus = (
  eligibility: Eligibility,
  reasons: readonly { readonly code: string; readonly eligibility: Eligibility }[],
): Status => {
  if (eligibility !== 'closed') return eligibilityStatuses[eligibility];
  const needsClearance = reasons.some((reason) => reason.eligibility === 'closed-until-cleared');
  const codes = reasons.filter((reason) => reason.eligibility === 'closed').map(({ code }) => code);
  const isOther = (code: string) => notContraindicated.some(([shape]) => shape.test(code));
  const word = codes.every(isOther)
    ? needsClearance
      ? eligibilityStatuses['closed-until-cleared'].word
      : notContraindicated.find(([shape]) => codes.some((code) => shape.test(code)))?.[1]
    : undefined;
  return word ? { ...eligibilityStatuses.closed, word } : eligibilityStatuses.closed;
};

const itemStatuses: Readonly<Record<string, Status>> = {
  'red-flag': { word: say('warning-sign'), shape: 'stop', tone: 'danger' },
  pause: { word: 'Paused', shape: 'stop', tone: 'danger' },
  'same-day-contact': { word: say('call-today'), shape: 'care', tone: 'danger' },
  'eased-twice': { word: say('eased-back-twice'), shape: 'back', tone: 'care' },
  'entry-conflict': { word: say('conflicting-entries'), shape: 'care', tone: 'care' },
  'ease-back': { word: say('eased-back'), shape: 'back', tone: 'care' },
  'resume-due': { word: say('still-paused'), shape: 'waiting', tone: 'care' },
  'dose-stopped': { word: say('dose-stopped'), shape: 'stop', tone: 'care' },
  'floor-reached': { word: say('lowest-dose-reached'), shape: 'back', tone: 'care' },
  'override-ended': { word: say('override-ended'), shape: 'waiting', tone: 'plain' },
  'pre-visit-answers': { word: say('pre-visit-answers'), shape: 'note', tone: 'accent' },
  'break-over': { word: say('return-overdue'), shape: 'waiting', tone: 'plain' },
  'danger-passed': { word: say('not-acknowledged-in-time'), shape: 'care', tone: 'danger' },
  'reported-new': { word: say('new-since-last-session'), shape: 'care', tone: 'care' },
  'event-review': { word: say('event-to-review'), shape: 'care', tone: 'care' },
  'phase-due': { word: say('phase-due'), shape: 'waiting', tone: 'accent' },
  'limit-ended': { word: say('limit-ended'), shape: 'waiting', tone: 'plain' },
  'awaiting-signature': { word: say('to-sign'), shape: 'waiting', tone: 'accent' },
  'clock-doubtful': { word: say('check-phone-clock'), shape: 'unknown', tone: 'care' },
  'missing-answers': { word: say('no-morning-answers'), shape: 'unknown', tone: 'plain' },
  message: { word: 'Message', shape: 'note', tone: 'accent' },
  'review-day': { word: say('review-booked'), shape: 'waiting', tone: 'accent' },
  'routine-contact': { word: say('review-due'), shape: 'note', tone: 'plain' },
  'screening-due': { word: say('screening-due'), shape: 'note', tone: 'plain' },
  'retest-due': { word: say('retest-due'), shape: 'note', tone: 'plain' },
  'pressure-due': { word: say('cuff-pressure-due'), shape: 'note', tone: 'plain' },
  'baseline-due': { word: say('baseline-due'), shape: 'note', tone: 'plain' },
};

/** A kind without words of its own is named plainly, so that no line is ever left out. */
export const itemStatusOf = (kind: WorklistItemKind): Status =>
  itemStatuses[kind] ?? {
    word: capital(kind).replace(/-/g, ' '),
    shape: 'note',
    tone: 'plain',
  };

export const methodInWords = {
  variation: 'Variation',
  'low-load': say('low-load'),
  occlusion: 'Occlusion',
} as const;

const factNames: Readonly<Record<string, string>> = factWords;

/** As it stands in a sentence; one without words of its own is named plainly, so that none is left out. */
export const factInWords = (name: string): string => {
  const words = factNames[`fact.${name}`] ?? name.replace(/([A-Z])/g, ' $1').toLowerCase();
  return words.charAt(0).toLowerCase() + words.slice(1);
};

export const valueInWords = (value: unknown): string => {
  if (value === null || value === undefined) return say('not-answered');
  if (value === true) return 'yes';
  if (value === false) return 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'none' : value.map(valueInWords).join(', ');
  if (typeof value === 'number') return String(Math.round(value * 100) / 100);
  const text = String(value);
  if (Object.hasOwn(signInWords, text)) return signInWords[text as RedFlag];
  return /^[a-z][a-zA-Z]*[A-Z]/.test(text) ? factInWords(text) : text;
};
